-- A booking with a second assessor takes their time too, in PostgreSQL's own words.

CREATE OR REPLACE VIEW standing_bookings AS
SELECT b.ord, b.id,
  b.leaf::json -> 'body' ->> 'person' AS person,
  b.leaf::json -> 'body' ->> 'assessor' AS assessor,
  b.leaf::json -> 'body' ->> 'machine' AS machine,
  extract(epoch FROM (b.leaf::json -> 'body' ->> 'from')::timestamptz)::bigint AS from_at,
  extract(epoch FROM (b.leaf::json -> 'body' ->> 'to')::timestamptz)::bigint AS until_at,
  CASE WHEN EXISTS (SELECT 1 FROM live_about_booking c WHERE c.refers_to = b.id AND c.kind = 'confirmed') THEN NULL
    ELSE extract(epoch FROM (b.leaf::json -> 'body' ->> 'held_through')::timestamptz)::bigint END AS held_through,
  b.leaf::json -> 'body' ->> 'second_assessor' AS second_assessor
FROM records b
WHERE b.kind = 'booking'
  AND (SELECT s.ord FROM records s WHERE s.kind = 'strike_out' AND s.refers_to = b.id) IS NULL
  AND (SELECT count(*) FROM live_about_booking e WHERE e.refers_to = b.id AND e.kind IN ('booking', 'cancel')) = 0
  AND coalesce((SELECT a.leaf::json -> 'body' ->> 'turnout' FROM live_about_booking a
    WHERE a.refers_to = b.id AND a.kind = 'attendance' ORDER BY a.ord DESC LIMIT 1), '') <> 'not_come';

CREATE OR REPLACE VIEW time_taken AS
SELECT ord, id, 'person ' || person AS what, from_at, until_at, held_through FROM standing_bookings
UNION ALL SELECT ord, id, 'person ' || assessor, from_at, until_at, held_through FROM standing_bookings
UNION ALL SELECT ord, id, 'person ' || second_assessor, from_at, until_at, held_through FROM standing_bookings WHERE second_assessor IS NOT NULL
UNION ALL SELECT ord, id, 'machine ' || machine, from_at, until_at, held_through FROM standing_bookings;
