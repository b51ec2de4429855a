-- A booking with a second assessor takes their time too, in SQLite's own words.

DROP VIEW time_taken;

DROP VIEW standing_bookings;

CREATE VIEW standing_bookings AS
SELECT b.ord, b.id,
  (SELECT value FROM json_each(b.leaf, '$.body.person')) AS person,
  (SELECT value FROM json_each(b.leaf, '$.body.assessor')) AS assessor,
  (SELECT value FROM json_each(b.leaf, '$.body.machine')) AS machine,
  CAST(strftime('%s', (SELECT value FROM json_each(b.leaf, '$.body.from'))) AS INTEGER) AS from_at,
  CAST(strftime('%s', (SELECT value FROM json_each(b.leaf, '$.body.to'))) AS INTEGER) AS until_at,
  CASE WHEN EXISTS (SELECT 1 FROM live_about_booking c WHERE c.refers_to = b.id AND c.kind = 'confirmed') THEN NULL
    ELSE CAST(strftime('%s', (SELECT value FROM json_each(b.leaf, '$.body.held_through'))) AS INTEGER) END AS held_through,
  (SELECT value FROM json_each(b.leaf, '$.body.second_assessor')) AS second_assessor
FROM records b
WHERE b.kind = 'booking'
  AND (SELECT s.ord FROM records s WHERE s.kind = 'strike_out' AND s.refers_to = b.id) IS NULL
  AND (SELECT count(*) FROM live_about_booking e WHERE e.refers_to = b.id AND e.kind IN ('booking', 'cancel')) = 0
  AND coalesce((SELECT (SELECT value FROM json_each(a.leaf, '$.body.turnout')) FROM live_about_booking a
    WHERE a.refers_to = b.id AND a.kind = 'attendance' ORDER BY a.ord DESC LIMIT 1), '') <> 'not_come';

CREATE VIEW time_taken AS
SELECT ord, id, 'person ' || person AS what, from_at, until_at, held_through FROM standing_bookings
UNION ALL SELECT ord, id, 'person ' || assessor, from_at, until_at, held_through FROM standing_bookings
UNION ALL SELECT ord, id, 'person ' || second_assessor, from_at, until_at, held_through FROM standing_bookings WHERE second_assessor IS NOT NULL
UNION ALL SELECT ord, id, 'machine ' || machine, from_at, until_at, held_through FROM standing_bookings;
