-- The store's tables, in the SQL that SQLite and PostgreSQL share. A statement ends at a ";" with an empty line
-- after it.

-- The shop itself: one row.
CREATE TABLE shop (
  one INTEGER PRIMARY KEY CHECK (one = 1),
  name TEXT NOT NULL,
  zone TEXT NOT NULL,
  demo_clock BIGINT NOT NULL
);

-- One row for each command that was carried out, without gaps.
CREATE TABLE commits (
  commit_no INTEGER PRIMARY KEY,
  command_id TEXT NOT NULL UNIQUE,
  action TEXT NOT NULL,
  person TEXT NOT NULL,
  entered_by TEXT NOT NULL,
  station TEXT NOT NULL CHECK (station IN ('desk', 'quiz', 'import')),
  recorded_at BIGINT NOT NULL
);

-- Every entry of every kind in one order, without gaps. `body` is the entry exactly as written, canonical JSON;
-- the columns beside it repeat what is searched for.
CREATE TABLE records (
  ord INTEGER PRIMARY KEY,
  commit_no INTEGER NOT NULL REFERENCES commits (commit_no),
  id TEXT NOT NULL UNIQUE,
  kind TEXT NOT NULL,
  happened_at BIGINT NOT NULL,
  recorded_at BIGINT NOT NULL,
  entered_by TEXT NOT NULL,
  station TEXT NOT NULL CHECK (station IN ('desk', 'quiz', 'import')),
  from_paper INTEGER NOT NULL CHECK (from_paper IN (0, 1)),
  note_hash TEXT,
  person TEXT,
  machine TEXT,
  refers_to TEXT,
  body TEXT NOT NULL
);

CREATE INDEX records_of_person ON records (person, happened_at);

CREATE INDEX records_of_machine ON records (machine, happened_at);

-- A record is struck out once.
CREATE UNIQUE INDEX one_strike_out ON records (refers_to) WHERE kind = 'strike_out';

-- What is personal inside a record. The record holds a salted hash of it; blanked, salt and value are both gone.
CREATE TABLE private_values (
  ord INTEGER NOT NULL REFERENCES records (ord),
  field TEXT NOT NULL CHECK (field IN ('born', 'note')),
  salt TEXT,
  value TEXT,
  PRIMARY KEY (ord, field),
  CHECK ((salt IS NULL) = (value IS NULL))
);

-- Details of people: can be corrected and blanked.
CREATE TABLE people (
  id TEXT NOT NULL PRIMARY KEY,
  commit_no INTEGER NOT NULL UNIQUE REFERENCES commits (commit_no),
  number TEXT NOT NULL,
  given TEXT NOT NULL,
  family TEXT NOT NULL,
  nickname TEXT NOT NULL,
  card TEXT NOT NULL,
  email TEXT NOT NULL,
  phone TEXT NOT NULL,
  emergency_contact TEXT NOT NULL
);

-- The hash of a person's PIN, with its salt and cost, as libsodium writes it.
CREATE TABLE pins (
  person TEXT NOT NULL PRIMARY KEY REFERENCES people (id),
  hash TEXT NOT NULL
);

