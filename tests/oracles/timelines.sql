-- Timelines of standings by a database's own ranges: what a requirement covers is a tstzmultirange, all_of an
-- intersection, any_of a union, what is taken away a difference. Reads scenarios as they are (table world) and leaves
-- the answers to their timeline asks in the table answer.
-- Covers document, lesson, quiz without retry, checkout without given, all_of, any_of, some_of; several rulebooks; founding
-- assessors; suspensions; what was struck out.
SET client_min_messages = warning;
SET TimeZone = 'UTC';

CREATE TABLE world (w int PRIMARY KEY, body jsonb);
CREATE TABLE answer (w int, ask int, body jsonb, PRIMARY KEY (w, ask));

-- ---- The calendar, by the server's own ---------------------------------------------------------------------

-- The first instant whose civil date is d or later. `d::timestamp AT TIME ZONE zone` would be shorter, but where midnight
-- comes twice it takes the second: so every quarter of an hour is asked for its date. (Since 1972 every change of a clock
-- and every midnight lies on one.)
CREATE FUNCTION seek_start(zone text, d date) RETURNS timestamptz LANGUAGE sql STABLE AS $$
  SELECT min(t) FROM generate_series((d - 2)::timestamp AT TIME ZONE 'UTC', (d + 2)::timestamp AT TIME ZONE 'UTC',
                                     interval '15 minutes') t
  WHERE (t AT TIME ZONE zone)::date >= d
$$;
CREATE TABLE started (zone text, d date, t timestamptz, PRIMARY KEY (zone, d));
CREATE FUNCTION start_of(z text, day date) RETURNS timestamptz LANGUAGE plpgsql AS $$
DECLARE first timestamptz;
BEGIN
  SELECT t INTO first FROM started WHERE zone = z AND d = day;
  IF first IS NULL THEN
    first := seek_start(z, day);
    INSERT INTO started VALUES (z, day, first);
  END IF;
  RETURN first;
END $$;

CREATE FUNCTION last_day(d date, period jsonb) RETURNS date LANGUAGE sql IMMUTABLE AS $$
  SELECT CASE
    WHEN period ? 'days' THEN d + (period->>'days')::int
    WHEN period ? 'months' THEN (d + make_interval(months => (period->>'months')::int))::date
    ELSE (date_trunc('month', d::timestamp) + make_interval(months => (period->>'calendar_months')::int + 1)
          - interval '1 day')::date
  END
$$;

-- ---- What is known -----------------------------------------------------------------------------------------
CREATE TABLE entry (w int, id text, kind text, person text, happened timestamptz, zone text, body jsonb);

CREATE FUNCTION not_after(happened timestamptz, ends timestamptz) RETURNS tstzmultirange LANGUAGE sql IMMUTABLE AS $$
  SELECT CASE WHEN ends <= happened THEN '{}'::tstzmultirange ELSE tstzmultirange(tstzrange(happened, ends)) END
$$;
CREATE FUNCTION until_end(r entry) RETURNS timestamptz LANGUAGE sql AS $$
  SELECT CASE WHEN r.body ? 'until' THEN start_of(r.zone, (r.body->>'until')::date + 1) END
$$;
-- What a record covers by itself, good for what the requirement says.
CREATE FUNCTION covered(r entry, need jsonb) RETURNS tstzmultirange LANGUAGE plpgsql AS $$
DECLARE due date; lapses timestamptz;
BEGIN
  IF need ? 'valid' THEN
    due := last_day((r.happened AT TIME ZONE r.zone)::date, need->'valid');
    IF need ? 'grace' THEN due := last_day(due, need->'grace'); END IF;
    lapses := start_of(r.zone, due + 1);
  END IF;
  RETURN not_after(r.happened, lapses) * not_after(r.happened, until_end(r));
END $$;

CREATE FUNCTION within_scope(scope jsonb, target text) RETURNS boolean LANGUAGE sql IMMUTABLE AS $$
  SELECT scope = '"all"' OR scope->>'target' = target
$$;
CREATE FUNCTION ended_at(world int, ending text, field text, ended text) RETURNS timestamptz LANGUAGE sql STABLE AS $$
  SELECT min(e.happened) FROM entry e WHERE e.w = world AND e.kind = ending AND e.body->>field = ended
$$;
CREATE FUNCTION suspended(world int, who text, target text) RETURNS tstzmultirange LANGUAGE sql AS $$
  SELECT coalesce(range_agg(not_after(r.happened, until_end(r))
                            * not_after(r.happened, ended_at(world, 'reinstate', 'suspension', r.id))), '{}')
  FROM entry r WHERE r.w = world AND r.person = who AND r.kind = 'suspend' AND within_scope(r.body->'scope', target)
$$;
CREATE FUNCTION assesses(world int, who text, target text) RETURNS tstzmultirange LANGUAGE sql AS $$
  SELECT coalesce(range_agg(not_after(r.happened, until_end(r))
                            * not_after(r.happened, ended_at(world, 'dismiss', 'appointment', r.id))), '{}')
         - suspended(world, who, target)
  FROM entry r WHERE r.w = world AND r.person = who AND r.kind = 'appoint' AND (r.body->>'founding')::boolean
                      AND within_scope(r.body->'scope', target)
$$;

-- ---- Requirements ------------------------------------------------------------------------------------------
CREATE FUNCTION item_of(need jsonb) RETURNS text LANGUAGE sql IMMUTABLE AS $$
  SELECT need->>(need->>'kind')
$$;
-- From when on revision v is no longer enough: a greater one is in force, for good.
CREATE FUNCTION outdated(world int, need jsonb, v int) RETURNS tstzmultirange LANGUAGE sql AS $$
  SELECT coalesce(range_agg(tstzmultirange(tstzrange(
           CASE WHEN need ? 'changeover'
             THEN start_of(r.zone, last_day((r.happened AT TIME ZONE r.zone)::date, need->'changeover') + 1)
             ELSE r.happened END, NULL))), '{}')
  FROM entry r WHERE r.w = world AND r.kind = 'publish' AND r.body->>'item' = item_of(need)
       AND (r.body->>'revision')::int > v
       AND coalesce(need->>'revision', CASE need->>'kind' WHEN 'checkout' THEN 'any' ELSE 'current' END) = 'current'
$$;
CREATE FUNCTION taken_away(world int, who text, x text, need jsonb, since timestamptz) RETURNS tstzmultirange
LANGUAGE sql AS $$
  SELECT coalesce(range_agg(tstzmultirange(tstzrange(r.happened, NULL))), '{}')
  FROM entry r WHERE r.w = world AND r.happened > since AND (
    (r.kind = 'checkout' AND r.person = who AND r.body->>'checkout' = item_of(need) AND r.body->>'outcome' = 'failed')
    OR (r.kind = 'incident' AND r.person = who AND r.body->>'part' = 'operating' AND r.body->>'target' = x
        AND (r.body->>'severity')::int <= (need->>'renew_after_severity')::int)
    OR (r.kind = 'change' AND (need->>'renew_after_change')::boolean AND r.body->>'target' = x))
$$;
CREATE FUNCTION counts(r entry, x text, need jsonb) RETURNS boolean LANGUAGE sql AS $$
  SELECT CASE r.kind
    WHEN 'quiz' THEN 100 * (r.body->>'correct')::int >= (need->>'pass_percent')::int * (r.body->>'total')::int
                     AND (r.body->>'critical_missed')::int = 0
    WHEN 'checkout' THEN r.body->>'outcome' = 'passed' AND r.body->>'assessor' <> r.person
                         AND r.happened - interval '1 second' <@ assesses(r.w, r.body->>'assessor', x)
    ELSE true END
$$;
CREATE FUNCTION carried(world int, who text, x text, need jsonb) RETURNS tstzmultirange LANGUAGE sql AS $$
  SELECT coalesce(range_agg(covered(r, need)
                            - CASE WHEN r.kind = 'document' THEN '{}'::tstzmultirange
                                   ELSE outdated(world, need, (r.body->>'revision')::int) END
                            - CASE WHEN r.kind = 'checkout' THEN taken_away(world, who, x, need, r.happened)
                                   ELSE '{}'::tstzmultirange END), '{}')
  FROM entry r
  WHERE r.w = world AND r.person = who AND r.kind = need->>'kind' AND r.body->>r.kind = item_of(need) AND counts(r, x, need)
$$;
CREATE FUNCTION held(world int, who text, x text, need jsonb) RETURNS tstzmultirange LANGUAGE plpgsql AS $$
BEGIN
  IF need ? 'of' THEN
    RETURN held_of(world, who, x, need->'of', CASE need->>'kind' WHEN 'all_of' THEN jsonb_array_length(need->'of')
                                              WHEN 'any_of' THEN 1 ELSE (need->>'count')::int END);
  END IF;
  RETURN carried(world, who, x, need);
END $$;
-- At least `count` of the list: the first and one less of the others, or as many of the others.
CREATE FUNCTION held_of(world int, who text, x text, list jsonb, count int) RETURNS tstzmultirange LANGUAGE plpgsql AS $$
BEGIN
  IF count = 0 THEN RETURN tstzmultirange(tstzrange(NULL, NULL)); END IF;
  IF count > jsonb_array_length(list) THEN RETURN '{}'; END IF;
  RETURN held(world, who, x, list->0) * held_of(world, who, x, list - 0, count - 1)
         + held_of(world, who, x, list - 0, count);
END $$;

-- ---- Standing ----------------------------------------------------------------------------------------------
CREATE TABLE book (w int, version int, in_force tstzmultirange, body jsonb);
CREATE TABLE gate (w int, version int, target text, rung int, need jsonb);
CREATE FUNCTION rung(word text) RETURNS int LANGUAGE sql IMMUTABLE AS $$
  SELECT array_position('{barred,supervised,independent}', word) - 1
$$;
-- When the person stands at least on the rung.
CREATE FUNCTION stands(world int, who text, x text, lowest int) RETURNS tstzmultirange LANGUAGE plpgsql AS $$
DECLARE together tstzmultirange := '{}'; one tstzmultirange; the_book book%ROWTYPE; g gate%ROWTYPE;
BEGIN
  FOR the_book IN SELECT * FROM book WHERE book.w = world LOOP
    CONTINUE WHEN NOT EXISTS (SELECT FROM jsonb_array_elements(the_book.body->'classes') c WHERE c->>'class' = x);
    one := the_book.in_force;
    FOR g IN SELECT * FROM gate WHERE gate.w = world AND version = the_book.version AND target = x AND rung <= lowest LOOP
      one := one * held(world, who, x, g.need);
    END LOOP;
    together := together + one;
  END LOOP;
  RETURN together - suspended(world, who, x);
END $$;
CREATE FUNCTION edges(m tstzmultirange) RETURNS SETOF timestamptz LANGUAGE sql IMMUTABLE AS $$
  SELECT lower(r) FROM unnest(m) r WHERE NOT lower_inf(r) UNION SELECT upper(r) FROM unnest(m) r WHERE NOT upper_inf(r)
$$;
CREATE FUNCTION utc(t timestamptz) RETURNS text LANGUAGE sql STABLE AS $$
  SELECT to_char(t AT TIME ZONE 'UTC', 'YYYY-MM-DD"T"HH24:MI:SS"Z"')
$$;
CREATE FUNCTION timeline(world int, ask jsonb) RETURNS jsonb LANGUAGE sql AS $$
  WITH asked AS (SELECT (ask->>'from')::timestamptz a, (ask->>'to')::timestamptz b,
                        stands(world, ask->>'person', ask->>'target', 1) supervised,
                        stands(world, ask->>'person', ask->>'target', 2) independent),
       at AS (SELECT a t FROM asked
              UNION SELECT e FROM asked, edges(supervised) e WHERE a < e AND e <= b
              UNION SELECT e FROM asked, edges(independent) e WHERE a < e AND e <= b),
       level AS (SELECT t, CASE WHEN t <@ independent THEN 'independent' WHEN t <@ supervised THEN 'supervised'
                                ELSE 'barred' END word FROM at, asked),
       step AS (SELECT t, word, lag(word) OVER (ORDER BY t) before FROM level)
  SELECT jsonb_build_object('steps', jsonb_agg(jsonb_build_object('at', utc(t), 'standing', word) ORDER BY t))
  FROM step WHERE before IS DISTINCT FROM word
$$;
