SELECT 1 FROM states
WHERE kind = 'tray' AND alive = 1 AND subject <> ?1 AND code = upper(trim(?2))
LIMIT 1
