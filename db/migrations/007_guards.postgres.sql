-- What makes records append-only, in PostgreSQL's own words; 002, 004 and 007 say it in SQLite's.

CREATE FUNCTION refuse_it() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  RAISE EXCEPTION '%', TG_ARGV[0];
END $$;

-- Not even where no row is met: whoever tries is told.
CREATE TRIGGER records_keep BEFORE UPDATE OR DELETE OR TRUNCATE ON records
  FOR EACH STATEMENT EXECUTE FUNCTION refuse_it('records are never changed or deleted: strike the record out');

CREATE TRIGGER private_values_keep BEFORE DELETE OR TRUNCATE ON private_values
  FOR EACH STATEMENT EXECUTE FUNCTION refuse_it('a private value is blanked, not deleted');

CREATE TRIGGER tree_edge_keep BEFORE DELETE OR TRUNCATE ON tree_edge
  FOR EACH STATEMENT EXECUTE FUNCTION refuse_it('the tree only grows');

CREATE TRIGGER shop_keep BEFORE UPDATE OR DELETE OR TRUNCATE ON shop
  FOR EACH STATEMENT EXECUTE FUNCTION refuse_it('a shop keeps its name and its zone');

CREATE FUNCTION check_record() RETURNS trigger LANGUAGE plpgsql AS $$
DECLARE
  last records%ROWTYPE;
BEGIN
  SELECT * INTO last FROM records ORDER BY ord DESC LIMIT 1;
  IF NEW.ord IS DISTINCT FROM coalesce(last.ord, 0) + 1 THEN
    RAISE EXCEPTION 'a record takes the next order number';
  END IF;
  IF NEW.commit_no IS NULL OR NEW.commit_no = 0 OR NEW.commit_no - coalesce(last.commit_no, 0) NOT IN (0, 1) THEN
    RAISE EXCEPTION 'a record belongs to the last commit or begins the next';
  END IF;
  IF NEW.recorded_at < last.recorded_at THEN
    RAISE EXCEPTION 'recorded_at never runs backwards';
  END IF;
  RETURN NEW;
END $$;

CREATE TRIGGER records_next BEFORE INSERT ON records FOR EACH ROW EXECUTE FUNCTION check_record();

CREATE FUNCTION check_private_value() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  IF TG_OP = 'UPDATE' THEN
    IF NEW.ord <> OLD.ord OR NEW.field <> OLD.field OR NEW.salt IS NOT NULL OR NEW.value IS NOT NULL THEN
      RAISE EXCEPTION 'a private value is blanked or left alone';
    END IF;
  ELSIF NEW.ord IS DISTINCT FROM (SELECT max(ord) FROM records) THEN
    RAISE EXCEPTION 'a private value comes with its record';
  END IF;
  RETURN NEW;
END $$;

CREATE TRIGGER private_values_check BEFORE INSERT OR UPDATE ON private_values
  FOR EACH ROW EXECUTE FUNCTION check_private_value();

CREATE FUNCTION check_edge() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  IF NEW.one <> 1 OR NEW.size IS DISTINCT FROM (SELECT coalesce(max(ord), 0) + 1 FROM records) THEN
    RAISE EXCEPTION 'the tree grows with the records';
  END IF;
  RETURN NEW;
END $$;

CREATE TRIGGER tree_edge_update BEFORE UPDATE ON tree_edge FOR EACH ROW EXECUTE FUNCTION check_edge();

-- Every other desk is told of a commit in the moment in which it is kept.
CREATE FUNCTION tell_desks() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  PERFORM pg_notify('witnessmark', NEW.size::text);
  RETURN NULL;
END $$;

CREATE TRIGGER tree_edge_told AFTER UPDATE ON tree_edge FOR EACH ROW EXECUTE FUNCTION tell_desks();

-- A desk's rights, and no more: to read, to add, to blank, and to let the tree grow. They are given to whoever may connect
-- to this database, and that is for whoever owns it to say: GRANT CONNECT ON DATABASE … TO desk1. A login that owns the
-- tables could take the guards away; no desk should have that one.
GRANT SELECT ON shop, records, private_values, tree_edge, witnessmark_store TO PUBLIC;

GRANT INSERT ON records, private_values TO PUBLIC;

GRANT UPDATE (salt, value) ON private_values TO PUBLIC;

GRANT UPDATE ON tree_edge TO PUBLIC;

DO $$ BEGIN EXECUTE format('REVOKE CONNECT, TEMPORARY ON DATABASE %I FROM PUBLIC', current_database()); END $$;
