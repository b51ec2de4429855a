-- The earlier tables go, with their guards, and the new ones get theirs.

DROP TABLE earlier_private_values;

DROP TABLE earlier_records;

DROP TABLE pins;

DROP TABLE people;

DROP TABLE commits;

CREATE TRIGGER records_update BEFORE UPDATE ON records
BEGIN SELECT RAISE(ABORT, 'records are never changed: strike the record out'); END;

CREATE TRIGGER records_delete BEFORE DELETE ON records
BEGIN SELECT RAISE(ABORT, 'records are never deleted: strike the record out'); END;

CREATE TRIGGER records_next BEFORE INSERT ON records
WHEN NEW.ord IS NOT (SELECT coalesce(max(ord), 0) + 1 FROM records)
BEGIN SELECT RAISE(ABORT, 'a record takes the next order number'); END;

CREATE TRIGGER records_commit BEFORE INSERT ON records
WHEN NEW.commit_no - coalesce((SELECT commit_no FROM records WHERE ord = NEW.ord - 1), 0) NOT IN (0, 1)
  OR NEW.commit_no IS NULL OR NEW.commit_no = 0
BEGIN SELECT RAISE(ABORT, 'a record belongs to the last commit or begins the next'); END;

CREATE TRIGGER records_id BEFORE INSERT ON records
WHEN EXISTS (SELECT 1 FROM records WHERE id = NEW.id)
BEGIN SELECT RAISE(ABORT, 'a record with this id exists'); END;

CREATE TRIGGER records_strike_out BEFORE INSERT ON records
WHEN NEW.kind = 'strike_out'
 AND EXISTS (SELECT 1 FROM records WHERE kind = 'strike_out' AND refers_to = NEW.refers_to)
BEGIN SELECT RAISE(ABORT, 'this record is struck out already'); END;

CREATE TRIGGER records_clock BEFORE INSERT ON records
WHEN NEW.recorded_at < (SELECT recorded_at FROM records WHERE ord = NEW.ord - 1)
BEGIN SELECT RAISE(ABORT, 'recorded_at never runs backwards'); END;

CREATE TRIGGER private_values_update BEFORE UPDATE ON private_values
WHEN NEW.ord IS NOT OLD.ord OR NEW.field IS NOT OLD.field OR NEW.salt IS NOT NULL OR NEW.value IS NOT NULL
BEGIN SELECT RAISE(ABORT, 'a private value is blanked or left alone'); END;

CREATE TRIGGER private_values_delete BEFORE DELETE ON private_values
BEGIN SELECT RAISE(ABORT, 'a private value is blanked, not deleted'); END;

CREATE TRIGGER private_values_insert BEFORE INSERT ON private_values
WHEN EXISTS (SELECT 1 FROM private_values WHERE ord = NEW.ord AND field = NEW.field)
BEGIN SELECT RAISE(ABORT, 'this private value exists'); END;

CREATE TRIGGER private_values_late BEFORE INSERT ON private_values
WHEN NEW.ord IS NOT (SELECT max(ord) FROM records)
BEGIN SELECT RAISE(ABORT, 'a private value comes with its record'); END;

CREATE TRIGGER tree_edge_update BEFORE UPDATE ON tree_edge
WHEN NEW.one IS NOT 1 OR NEW.size IS NOT (SELECT coalesce(max(ord), 0) + 1 FROM records)
BEGIN SELECT RAISE(ABORT, 'the tree grows with the records'); END;

CREATE TRIGGER tree_edge_delete BEFORE DELETE ON tree_edge
BEGIN SELECT RAISE(ABORT, 'the tree only grows'); END;

CREATE TRIGGER tree_edge_insert BEFORE INSERT ON tree_edge
WHEN EXISTS (SELECT 1 FROM tree_edge)
BEGIN SELECT RAISE(ABORT, 'there is one tree'); END;

CREATE TRIGGER shop_update BEFORE UPDATE ON shop
BEGIN SELECT RAISE(ABORT, 'a shop keeps its name and its zone'); END;

CREATE TRIGGER shop_delete BEFORE DELETE ON shop
BEGIN SELECT RAISE(ABORT, 'a shop is not deleted'); END;

CREATE TRIGGER shop_insert BEFORE INSERT ON shop
WHEN EXISTS (SELECT 1 FROM shop)
BEGIN SELECT RAISE(ABORT, 'a file holds one shop'); END;

