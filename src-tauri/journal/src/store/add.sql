INSERT INTO entries (nr, hash, id, act, device, seq, lamport, kind, line)
VALUES (?1, ?2, ?3, ?4, ?5, ?6, ?7, ?8, ?9)
ON CONFLICT (hash) DO NOTHING
