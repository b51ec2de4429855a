-- The guards of the table that was made anew.
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

