-- The times that are taken, kept by the store itself, in SQLite's own words.
-- By json_each alone: SQLite 3.40 takes json_extract for unsafe in triggers and views where it does not trust the schema, as we ask.

CREATE VIEW standing_bookings AS
SELECT b.ord, b.id,
  (SELECT value FROM json_each(b.leaf, '$.body.person')) AS person,
  (SELECT value FROM json_each(b.leaf, '$.body.assessor')) AS assessor,
  (SELECT value FROM json_each(b.leaf, '$.body.machine')) AS machine,
  CAST(strftime('%s', (SELECT value FROM json_each(b.leaf, '$.body.from'))) AS INTEGER) AS from_at,
  CAST(strftime('%s', (SELECT value FROM json_each(b.leaf, '$.body.to'))) AS INTEGER) AS until_at,
  CASE WHEN EXISTS (SELECT 1 FROM live_about_booking c WHERE c.refers_to = b.id AND c.kind = 'confirmed') THEN NULL
    ELSE CAST(strftime('%s', (SELECT value FROM json_each(b.leaf, '$.body.held_through'))) AS INTEGER) END AS held_through
FROM records b
WHERE b.kind = 'booking'
  AND (SELECT s.ord FROM records s WHERE s.kind = 'strike_out' AND s.refers_to = b.id) IS NULL
  AND (SELECT count(*) FROM live_about_booking e WHERE e.refers_to = b.id AND e.kind IN ('booking', 'cancel')) = 0
  AND coalesce((SELECT (SELECT value FROM json_each(a.leaf, '$.body.turnout')) FROM live_about_booking a
    WHERE a.refers_to = b.id AND a.kind = 'attendance' ORDER BY a.ord DESC LIMIT 1), '') <> 'not_come';

CREATE VIEW time_taken AS
SELECT ord, id, 'person ' || person AS what, from_at, until_at, held_through FROM standing_bookings
UNION ALL SELECT ord, id, 'person ' || assessor, from_at, until_at, held_through FROM standing_bookings
UNION ALL SELECT ord, id, 'machine ' || machine, from_at, until_at, held_through FROM standing_bookings;

INSERT INTO taken (ord, what, from_at, until_at, held_through)
SELECT ord, what, from_at, until_at, held_through FROM time_taken
WHERE until_at > (SELECT recorded_at FROM records ORDER BY ord DESC LIMIT 1)
  AND coalesce(held_through > (SELECT recorded_at FROM records ORDER BY ord DESC LIMIT 1), 1);

CREATE INDEX taken_what ON taken (what, until_at);

-- The columns that all this goes by say what the leaf says.
CREATE TRIGGER records_said BEFORE INSERT ON records
WHEN (SELECT count(*) FROM json_each(NEW.leaf, '$.body') WHERE (key = 'id' AND value = NEW.id) OR (key = 'kind' AND value = NEW.kind)) <> 2
BEGIN SELECT RAISE(ABORT, 'the columns of a record say what its leaf says'); END;

CREATE TRIGGER records_said_of_booking BEFORE INSERT ON records
WHEN NEW.kind IN ('attendance', 'booking', 'cancel', 'confirmed', 'strike_out')
  AND (NEW.refers_to IS NOT CASE NEW.kind
      WHEN 'booking' THEN (SELECT value FROM json_each(NEW.leaf, '$.body.instead_of'))
      WHEN 'strike_out' THEN (SELECT value FROM json_each(NEW.leaf, '$.body.record'))
      ELSE (SELECT value FROM json_each(NEW.leaf, '$.body.booking')) END
    OR NEW.recorded_at IS NOT CAST(strftime('%s', (SELECT value FROM json_each(NEW.leaf, '$.body.recorded'))) AS INTEGER))
BEGIN SELECT RAISE(ABORT, 'the columns of a record say what its leaf says'); END;

-- Looked at again are the booking itself, the one that a record is about, and the one that what is struck out was about.
CREATE TRIGGER records_take_time AFTER INSERT ON records
WHEN NEW.kind IN ('attendance', 'booking', 'cancel', 'confirmed', 'strike_out')
BEGIN
  DELETE FROM taken WHERE until_at <= NEW.recorded_at;
  DELETE FROM taken WHERE held_through <= NEW.recorded_at;
  DELETE FROM taken
  WHERE ord IN (SELECT ord FROM records WHERE id IN (NEW.id, NEW.refers_to, (SELECT refers_to FROM records WHERE id = NEW.refers_to)))
    AND NOT EXISTS (SELECT 1 FROM standing_bookings b WHERE b.ord = taken.ord AND b.held_through IS taken.held_through);
  INSERT INTO taken (ord, what, from_at, until_at, held_through)
  SELECT t.ord, t.what, t.from_at, t.until_at, t.held_through FROM time_taken t
  WHERE t.id IN (NEW.id, NEW.refers_to, (SELECT refers_to FROM records WHERE id = NEW.refers_to))
    AND (t.until_at IS NULL OR t.until_at > NEW.recorded_at) AND (t.held_through IS NULL OR t.held_through > NEW.recorded_at)
    AND NOT EXISTS (SELECT 1 FROM taken o WHERE o.ord = t.ord AND o.what = t.what);
END;

CREATE TRIGGER taken_twice BEFORE INSERT ON taken
WHEN EXISTS (SELECT 1 FROM taken o WHERE o.what = NEW.what AND o.until_at > NEW.from_at AND o.from_at < NEW.until_at)
BEGIN SELECT RAISE(ABORT, 'this time is taken by another booking'); END;

CREATE TRIGGER taken_insert BEFORE INSERT ON taken
WHEN NEW.from_at >= NEW.until_at OR NOT EXISTS (SELECT 1 FROM time_taken t WHERE t.ord = NEW.ord AND t.what = NEW.what
  AND t.from_at = NEW.from_at AND t.until_at = NEW.until_at AND t.held_through IS NEW.held_through)
BEGIN SELECT RAISE(ABORT, 'only a booking takes time'); END;

CREATE TRIGGER taken_update BEFORE UPDATE ON taken
BEGIN SELECT RAISE(ABORT, 'what a booking takes is never changed: move the booking'); END;

CREATE TRIGGER taken_delete BEFORE DELETE ON taken
WHEN EXISTS (SELECT 1 FROM standing_bookings b WHERE b.ord = OLD.ord AND b.held_through IS OLD.held_through)
  AND OLD.until_at > (SELECT recorded_at FROM records ORDER BY ord DESC LIMIT 1)
  AND coalesce(OLD.held_through > (SELECT recorded_at FROM records ORDER BY ord DESC LIMIT 1), 1)
BEGIN SELECT RAISE(ABORT, 'a booking takes its time until it ends: cancel the booking'); END;
