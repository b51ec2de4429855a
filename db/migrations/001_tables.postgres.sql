-- What the shared files take for granted and PostgreSQL has not: SQLite's name for bytes, and a place for the version.
CREATE DOMAIN blob AS bytea;

CREATE TABLE witnessmark_store (
  one INTEGER PRIMARY KEY CHECK (one = 1),
  version INTEGER NOT NULL
);

INSERT INTO witnessmark_store (one, version) VALUES (1, 0);
