SELECT answer, lamport, device, seq FROM jobs WHERE subject = x'00'
UNION ALL
SELECT j.answer, j.lamport, j.device, j.seq
FROM states AS s CROSS JOIN jobs AS j ON j.subject = s.subject
WHERE s.alive = 1 AND s.kind IN ('place', 'packet', 'tray', 'sowing', 'batch', 'test')
ORDER BY lamport, device, seq
