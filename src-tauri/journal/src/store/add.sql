-- Numbers follow one another: a line that is there already must not use one
-- up, as the number that AUTOINCREMENT gives would be.
INSERT INTO entries (nr, hash, id, act, device, seq, lamport, kind, line)
VALUES ((SELECT COALESCE(MAX(nr), 0) + 1 FROM entries), ?1, ?2, ?3, ?4, ?5, ?6, ?7, ?8)
ON CONFLICT (hash) DO NOTHING
