INSERT INTO states (subject, kind, alive, last_ms, state, code)
VALUES (?1, ?2, ?3, ?4, ?5, upper(trim(?6)))
ON CONFLICT (subject) DO UPDATE SET
  alive = excluded.alive,
  last_ms = excluded.last_ms,
  state = excluded.state,
  code = excluded.code
