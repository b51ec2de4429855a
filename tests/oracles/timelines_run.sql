-- What timelines.sql defines, done: from the table world to the table answer.
INSERT INTO entry SELECT w, r->>'id', r->>'kind', r->>'person', (r->>'at')::timestamptz, body->>'zone', r
  FROM world, jsonb_array_elements(body->'records') r WHERE NOT r ? 'voided';
CREATE INDEX IF NOT EXISTS entries ON entry (w, person, kind);
INSERT INTO book
  SELECT w, version, tstzmultirange(tstzrange(starts, lead(starts) OVER (PARTITION BY w ORDER BY starts, entered, version))), b
  FROM world, jsonb_array_elements(body->'rulebooks') b,
       LATERAL (SELECT (b->>'version')::int version, (b->>'effective_from')::timestamptz starts,
                       (b->>'recorded')::timestamptz entered) k;
INSERT INTO gate
  SELECT book.w, version, c->>'class', rung(g->>'for'), g->'need'
  FROM book, jsonb_array_elements(body->'classes') c, jsonb_array_elements(body->'tiers') t,
       jsonb_array_elements(coalesce(t->'gates', '[]') || coalesce(c->'gates', '[]')) g
  WHERE t->'tier' = c->'tier';
CREATE INDEX IF NOT EXISTS gates ON gate (w, version, target);
ANALYZE;
INSERT INTO answer SELECT w, i - 1, timeline(w, ask)
  FROM world, jsonb_array_elements(body->'asks') WITH ORDINALITY a(ask, i);
