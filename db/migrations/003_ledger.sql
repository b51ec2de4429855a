-- The ledger: every change is a record, people's details and PINs too, and each record is a leaf of one hash tree. What
-- earlier tables hold is carried over by the program before the next file takes them away.

DROP INDEX records_of_person;

DROP INDEX records_of_machine;

DROP INDEX one_strike_out;

ALTER TABLE records RENAME TO earlier_records;

ALTER TABLE private_values RENAME TO earlier_private_values;

-- Every record of every kind in one order, without gaps. `leaf` is its canonical JSON exactly as written, `hash` the
-- leaf's in the tree (RFC 6962); the other columns are an index, made of what the leaf says.
CREATE TABLE records (
  ord INTEGER PRIMARY KEY,
  commit_no INTEGER NOT NULL,
  id TEXT NOT NULL UNIQUE,
  kind TEXT NOT NULL,
  recorded_at BIGINT NOT NULL,
  person TEXT,
  refers_to TEXT,
  leaf TEXT NOT NULL,
  hash BLOB NOT NULL
);

CREATE INDEX records_of_person ON records (person) WHERE person IS NOT NULL;

-- A record is struck out once.
CREATE UNIQUE INDEX one_strike_out ON records (refers_to) WHERE kind = 'strike_out';

-- What is personal in a record: a leaf holds a salted hash of it. Blanked, salt and value are both gone.
CREATE TABLE private_values (
  ord INTEGER NOT NULL REFERENCES records (ord),
  field TEXT NOT NULL CHECK (field IN ('born', 'details', 'note', 'pin')),
  salt TEXT,
  value TEXT,
  PRIMARY KEY (ord, field),
  CHECK ((salt IS NULL) = (value IS NULL))
);

-- The right edge of the tree, so that the next leaf can be added without reading the others: how many leaves there
-- are, and the roots of the whole subtrees, largest first. Leaf 0 is the shop itself.
CREATE TABLE tree_edge (
  one INTEGER PRIMARY KEY CHECK (one = 1),
  size BIGINT NOT NULL,
  hashes BLOB NOT NULL
);

