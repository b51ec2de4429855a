-- What is said in an emergency is found before all of the file has been read.
CREATE INDEX records_of_emergency_call ON records (ord) WHERE kind = 'emergency_call';
