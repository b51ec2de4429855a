-- Free text and the answers to a quiz are kept apart too, each under a field of its own: which fields there are is the
-- program's to say.
ALTER TABLE private_values RENAME TO earlier_private_values;

CREATE TABLE private_values (
  ord INTEGER NOT NULL REFERENCES records (ord),
  field TEXT NOT NULL,
  salt TEXT,
  value TEXT,
  PRIMARY KEY (ord, field),
  CHECK ((salt IS NULL) = (value IS NULL))
);

INSERT INTO private_values (ord, field, salt, value) SELECT ord, field, salt, value FROM earlier_private_values ORDER BY ord, field;

DROP TABLE earlier_private_values;

