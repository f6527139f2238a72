SELECT 1 FROM states
WHERE kind = 'tray' AND alive = 1 AND subject <> ?1
  AND upper(trim(json_extract(state, '$.described.code'))) = upper(trim(?2))
LIMIT 1
