-- The latest that touch a subject, whether or not they weigh.
FROM (
  SELECT * FROM (
    SELECT entry, at_ms FROM touches WHERE subject = ?1 AND weighs = 0
    ORDER BY at_ms DESC, entry DESC LIMIT ?2
  )
  UNION ALL
  SELECT * FROM (
    SELECT entry, at_ms FROM touches WHERE subject = ?1 AND weighs = 1
    ORDER BY at_ms DESC, entry DESC LIMIT ?2
  )
) AS t JOIN entries AS e ON e.nr = t.entry
ORDER BY t.at_ms DESC, t.entry DESC LIMIT ?2
