-- Times that are taken, so that the store itself refuses to book anybody or any unit twice, whatever program asks. An index
-- like the columns of `records`: triggers make it of bookings and of what ends one, and verify derives it again. A booking has a
-- row for each of its two people and one for its unit ("person kim", "machine b1"), from when it is entered until it no
-- longer stands or is over. Times are seconds since 1970; `held_through` is of what is only held and may be given up.
CREATE TABLE taken (
  ord INTEGER NOT NULL REFERENCES records (ord),
  what TEXT NOT NULL,
  from_at BIGINT NOT NULL,
  until_at BIGINT NOT NULL,
  held_through BIGINT,
  PRIMARY KEY (ord, what),
  CHECK (from_at < until_at)
);

CREATE INDEX taken_until ON taken (until_at);

CREATE INDEX taken_held ON taken (held_through) WHERE held_through IS NOT NULL;

-- What was entered about a booking is found by the booking.
CREATE INDEX records_about_booking ON records (refers_to) WHERE kind IN ('attendance', 'booking', 'cancel', 'confirmed') AND refers_to IS NOT NULL;

-- A booking ends by being struck out, cancelled, or moved to another time, or if nobody came to it; each of these counts unless
-- it is struck out itself. Whether it is over, or has been given up, is for whoever asks: that goes by the time.
-- (Asked in a way that looks each one up, whatever a server thinks of how many there are.)
CREATE VIEW live_about_booking AS
SELECT e.ord, e.kind, e.refers_to, e.leaf FROM records e
WHERE e.kind IN ('attendance', 'booking', 'cancel', 'confirmed') AND e.refers_to IS NOT NULL
  AND (SELECT s.ord FROM records s WHERE s.kind = 'strike_out' AND s.refers_to = e.id) IS NULL;

