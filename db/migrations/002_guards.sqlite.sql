-- What makes records and commits append-only, in SQLite's own words. An insert is looked at too: INSERT OR REPLACE
-- takes rows away without asking a delete trigger, unless recursive_triggers is on.

CREATE TRIGGER records_update BEFORE UPDATE ON records
BEGIN SELECT RAISE(ABORT, 'records are never changed: strike the record out'); END;

CREATE TRIGGER records_delete BEFORE DELETE ON records
BEGIN SELECT RAISE(ABORT, 'records are never deleted: strike the record out'); END;

CREATE TRIGGER records_next BEFORE INSERT ON records
WHEN NEW.ord IS NOT (SELECT coalesce(max(ord), 0) + 1 FROM records)
BEGIN SELECT RAISE(ABORT, 'a record takes the next order number'); END;

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

CREATE TRIGGER commits_update BEFORE UPDATE ON commits
BEGIN SELECT RAISE(ABORT, 'commits are never changed'); END;

CREATE TRIGGER commits_delete BEFORE DELETE ON commits
BEGIN SELECT RAISE(ABORT, 'commits are never deleted'); END;

CREATE TRIGGER commits_next BEFORE INSERT ON commits
WHEN NEW.commit_no IS NOT (SELECT coalesce(max(commit_no), 0) + 1 FROM commits)
BEGIN SELECT RAISE(ABORT, 'a commit takes the next number'); END;

CREATE TRIGGER commits_command BEFORE INSERT ON commits
WHEN EXISTS (SELECT 1 FROM commits WHERE command_id = NEW.command_id)
BEGIN SELECT RAISE(ABORT, 'this command is committed already'); END;

CREATE TRIGGER commits_clock BEFORE INSERT ON commits
WHEN NEW.recorded_at < (SELECT recorded_at FROM commits WHERE commit_no = NEW.commit_no - 1)
BEGIN SELECT RAISE(ABORT, 'recorded_at never runs backwards'); END;

CREATE TRIGGER private_values_update BEFORE UPDATE ON private_values
WHEN NEW.ord IS NOT OLD.ord OR NEW.field IS NOT OLD.field OR NEW.salt IS NOT NULL OR NEW.value IS NOT NULL
BEGIN SELECT RAISE(ABORT, 'a private value is blanked or left alone'); END;

CREATE TRIGGER private_values_delete BEFORE DELETE ON private_values
BEGIN SELECT RAISE(ABORT, 'a private value is blanked, not deleted'); END;

CREATE TRIGGER private_values_insert BEFORE INSERT ON private_values
WHEN EXISTS (SELECT 1 FROM private_values WHERE ord = NEW.ord AND field = NEW.field)
BEGIN SELECT RAISE(ABORT, 'this private value exists'); END;

CREATE TRIGGER people_update BEFORE UPDATE ON people
WHEN NEW.id IS NOT OLD.id OR NEW.commit_no IS NOT OLD.commit_no
BEGIN SELECT RAISE(ABORT, 'a person keeps their id'); END;

CREATE TRIGGER people_delete BEFORE DELETE ON people
BEGIN SELECT RAISE(ABORT, 'a person is blanked, not deleted'); END;

CREATE TRIGGER people_insert BEFORE INSERT ON people
WHEN EXISTS (SELECT 1 FROM people WHERE id = NEW.id OR commit_no = NEW.commit_no)
BEGIN SELECT RAISE(ABORT, 'a person with this id exists'); END;

