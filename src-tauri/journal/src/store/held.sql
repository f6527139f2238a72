SELECT e.line, (
  SELECT w.line
  FROM amendments AS a JOIN entries AS w ON w.nr = a.entry
  WHERE a.root = e.id
  ORDER BY a.lamport DESC, a.device DESC, a.seq DESC, a.hash DESC
  LIMIT 1
)
