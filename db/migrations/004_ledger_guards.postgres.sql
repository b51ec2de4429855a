-- The earlier tables go; no store on a server ever had anything in them. The guards come with 007.

DROP TABLE earlier_private_values;

DROP TABLE earlier_records;

DROP TABLE pins;

DROP TABLE people;

DROP TABLE commits;
