-- The times that are taken, kept by the store itself, in PostgreSQL's own words.

CREATE VIEW standing_bookings AS
SELECT b.ord, b.id,
  b.leaf::json -> 'body' ->> 'person' AS person,
  b.leaf::json -> 'body' ->> 'assessor' AS assessor,
  b.leaf::json -> 'body' ->> 'machine' AS machine,
  extract(epoch FROM (b.leaf::json -> 'body' ->> 'from')::timestamptz)::bigint AS from_at,
  extract(epoch FROM (b.leaf::json -> 'body' ->> 'to')::timestamptz)::bigint AS until_at,
  CASE WHEN EXISTS (SELECT 1 FROM live_about_booking c WHERE c.refers_to = b.id AND c.kind = 'confirmed') THEN NULL
    ELSE extract(epoch FROM (b.leaf::json -> 'body' ->> 'held_through')::timestamptz)::bigint END AS held_through
FROM records b
WHERE b.kind = 'booking'
  AND (SELECT s.ord FROM records s WHERE s.kind = 'strike_out' AND s.refers_to = b.id) IS NULL
  AND (SELECT count(*) FROM live_about_booking e WHERE e.refers_to = b.id AND e.kind IN ('booking', 'cancel')) = 0
  AND coalesce((SELECT a.leaf::json -> 'body' ->> 'turnout' FROM live_about_booking a
    WHERE a.refers_to = b.id AND a.kind = 'attendance' ORDER BY a.ord DESC LIMIT 1), '') <> 'not_come';

CREATE VIEW time_taken AS
SELECT ord, id, 'person ' || person AS what, from_at, until_at, held_through FROM standing_bookings
UNION ALL SELECT ord, id, 'person ' || assessor, from_at, until_at, held_through FROM standing_bookings
UNION ALL SELECT ord, id, 'machine ' || machine, from_at, until_at, held_through FROM standing_bookings;

INSERT INTO taken (ord, what, from_at, until_at, held_through)
SELECT ord, what, from_at, until_at, held_through FROM time_taken
WHERE until_at > (SELECT recorded_at FROM records ORDER BY ord DESC LIMIT 1)
  AND coalesce(held_through > (SELECT recorded_at FROM records ORDER BY ord DESC LIMIT 1), true);

-- An index over ranges can tell equal texts only as ranges of one: so it needs no extension of the server's.
CREATE TYPE word_range AS RANGE (subtype = text, collation = "C");

ALTER TABLE taken ADD CONSTRAINT taken_once
  EXCLUDE USING gist (word_range(what, what, '[]') WITH =, int8range(from_at, until_at) WITH &&);

-- The columns that all this goes by say what the leaf says.
CREATE FUNCTION check_said() RETURNS trigger LANGUAGE plpgsql AS $$
DECLARE
  body json := NEW.leaf::json -> 'body';
BEGIN
  IF NEW.id IS DISTINCT FROM body ->> 'id' OR NEW.kind IS DISTINCT FROM body ->> 'kind' THEN
    RAISE EXCEPTION 'the columns of a record say what its leaf says';
  END IF;
  IF NEW.kind IN ('attendance', 'booking', 'cancel', 'confirmed', 'strike_out') AND (
    NEW.refers_to IS DISTINCT FROM CASE NEW.kind
      WHEN 'booking' THEN body ->> 'instead_of'
      WHEN 'strike_out' THEN body ->> 'record'
      ELSE body ->> 'booking' END
    OR NEW.recorded_at IS DISTINCT FROM extract(epoch FROM (body ->> 'recorded')::timestamptz)::bigint) THEN
    RAISE EXCEPTION 'the columns of a record say what its leaf says';
  END IF;
  RETURN NEW;
END $$;

CREATE TRIGGER records_said BEFORE INSERT ON records FOR EACH ROW EXECUTE FUNCTION check_said();

-- Looked at again are the booking itself, the one that a record is about, and the one that what is struck out was about.
-- A desk has no right of its own to what is written here.
CREATE FUNCTION take_time() RETURNS trigger LANGUAGE plpgsql SECURITY DEFINER SET search_path FROM CURRENT AS $$
DECLARE
  touched text[] := ARRAY[NEW.id, NEW.refers_to, (SELECT refers_to FROM records WHERE id = NEW.refers_to)];
BEGIN
  DELETE FROM taken WHERE until_at <= NEW.recorded_at;
  DELETE FROM taken WHERE held_through <= NEW.recorded_at;
  DELETE FROM taken t WHERE ord IN (SELECT ord FROM records WHERE id = ANY (touched))
    AND (SELECT b.ord FROM standing_bookings b WHERE b.ord = t.ord AND b.held_through IS NOT DISTINCT FROM t.held_through) IS NULL;
  INSERT INTO taken (ord, what, from_at, until_at, held_through)
  SELECT t.ord, t.what, t.from_at, t.until_at, t.held_through FROM time_taken t
  WHERE t.id = ANY (touched)
    AND (t.until_at IS NULL OR t.until_at > NEW.recorded_at) AND (t.held_through IS NULL OR t.held_through > NEW.recorded_at)
    AND NOT EXISTS (SELECT 1 FROM taken o WHERE o.ord = t.ord AND o.what = t.what);
  RETURN NULL;
END $$;

CREATE TRIGGER records_take_time AFTER INSERT ON records FOR EACH ROW
  WHEN (NEW.kind IN ('attendance', 'booking', 'cancel', 'confirmed', 'strike_out')) EXECUTE FUNCTION take_time();

CREATE TRIGGER taken_keep BEFORE INSERT OR UPDATE OR DELETE ON taken FOR EACH STATEMENT
  WHEN (pg_trigger_depth() = 0) EXECUTE FUNCTION refuse_it('only a booking takes time, and until it ends');

CREATE TRIGGER taken_keep_all BEFORE TRUNCATE ON taken
  FOR EACH STATEMENT EXECUTE FUNCTION refuse_it('only a booking takes time, and until it ends');

GRANT SELECT ON taken TO PUBLIC;
