-- What is about the whole shop is found without looking through every record: enough, with one person's records, to answer
-- about that person before all of the file has been read.
CREATE INDEX records_of_shop ON records (kind) WHERE kind IN ('details', 'erased', 'join', 'rulebook', 'publish', 'change', 'machine_added', 'lockout', 'release', 'reinstate', 'dismiss', 'restriction', 'strike_out');

