-- A store as version 2 of the schema kept it, written by the sqlite3 program's .dump.
PRAGMA journal_mode = WAL;
PRAGMA application_id = 1466788657;
PRAGMA user_version = 2;
PRAGMA foreign_keys=OFF;
BEGIN TRANSACTION;
CREATE TABLE shop (
  one INTEGER PRIMARY KEY CHECK (one = 1),
  name TEXT NOT NULL,
  zone TEXT NOT NULL,
  demo_clock BIGINT NOT NULL
);
INSERT INTO shop VALUES(1,'Hollow Oak Workshop','America/Chicago',0);
CREATE TABLE commits (
  commit_no INTEGER PRIMARY KEY,
  command_id TEXT NOT NULL UNIQUE,
  action TEXT NOT NULL,
  person TEXT NOT NULL,
  entered_by TEXT NOT NULL,
  station TEXT NOT NULL CHECK (station IN ('desk', 'quiz', 'import')),
  recorded_at BIGINT NOT NULL
);
INSERT INTO commits VALUES(1,'past-1','enter_person','mia','','import',1772924400);
INSERT INTO commits VALUES(2,'past-2','enter_person','ivo','','import',1772924400);
INSERT INTO commits VALUES(3,'past-3','enter_person','dee','','import',1772924400);
INSERT INTO commits VALUES(4,'past-4','enter_person','kim','','import',1772924400);
INSERT INTO commits VALUES(5,'past-5','enter_person','lou','','import',1772924400);
INSERT INTO commits VALUES(6,'past-6','rulebook','','','import',1772924400);
INSERT INTO commits VALUES(7,'past-7','machine_added','','','import',1772924400);
INSERT INTO commits VALUES(8,'past-8','machine_added','','','import',1772924400);
INSERT INTO commits VALUES(9,'past-9','machine_added','','','import',1772924400);
INSERT INTO commits VALUES(10,'past-10','machine_added','','','import',1772924400);
INSERT INTO commits VALUES(11,'past-11','role','','','import',1772924400);
INSERT INTO commits VALUES(12,'past-12','role','','','import',1772924400);
INSERT INTO commits VALUES(13,'past-13','role','','','import',1772924400);
INSERT INTO commits VALUES(14,'past-14','choose_pin','mia','','import',1772924400);
INSERT INTO commits VALUES(15,'past-15','choose_pin','ivo','','import',1772924400);
INSERT INTO commits VALUES(16,'past-16','choose_pin','dee','','import',1772924400);
INSERT INTO commits VALUES(17,'past-17','appoint','','','import',1772924400);
INSERT INTO commits VALUES(18,'past-18','appoint','','','import',1772924400);
INSERT INTO commits VALUES(19,'past-19','publish','','','import',1772924400);
INSERT INTO commits VALUES(20,'c1','document','','dee','desk',1773529260);
INSERT INTO commits VALUES(21,'c2','lesson','','dee','desk',1773529320);
INSERT INTO commits VALUES(22,'c3','strike_out','','mia','desk',1773529380);
INSERT INTO commits VALUES(23,'c4','correct_person','kim','dee','desk',1773529440);
INSERT INTO commits VALUES(24,'c5','choose_pin','dee','mia','desk',1773529500);
INSERT INTO commits VALUES(25,'c6','enter_person','p6','dee','desk',1773529560);
INSERT INTO commits VALUES(26,'c7','lesson','','dee','desk',1773529620);
INSERT INTO commits VALUES(27,'c8','sign_checkout','','ivo','desk',1773529680);
INSERT INTO commits VALUES(28,'c9','blank_person','lou','mia','desk',1773529740);
INSERT INTO commits VALUES(29,'c10','out_of_service','','mia','desk',1773529800);
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
INSERT INTO records VALUES(1,1,'past-1','birth',1772924400,1772924400,'','import',0,NULL,'mia',NULL,NULL,'{"at":"2026-03-07T23:00:00Z","born":"db2a29a408aa822682bb9fcd0f41bbafa67784603c2fdce8b1c0e714208c8ad9","id":"past-1","kind":"birth","person":"mia","recorded":"2026-03-07T23:00:00Z"}');
INSERT INTO records VALUES(2,2,'past-2','birth',1772924400,1772924400,'','import',0,NULL,'ivo',NULL,NULL,'{"at":"2026-03-07T23:00:00Z","born":"786c41081962528d281f12c6f3263c9eeecbfacee0f644ef6afd1a712869f53e","id":"past-2","kind":"birth","person":"ivo","recorded":"2026-03-07T23:00:00Z"}');
INSERT INTO records VALUES(3,4,'past-4','birth',1772924400,1772924400,'','import',0,NULL,'kim',NULL,NULL,'{"at":"2026-03-07T23:00:00Z","born":"b992df4eb481f5d664f26b7e6f84d2686d98aced629a80d5ede59716302fd5d6","id":"past-4","kind":"birth","person":"kim","recorded":"2026-03-07T23:00:00Z"}');
INSERT INTO records VALUES(4,6,'past-6','rulebook',1772924400,1772924400,'','import',0,NULL,NULL,NULL,NULL,'{"version":1,"effective_from":"2026-03-07T23:00:00Z","recorded":"2026-03-07T23:00:00Z","tiers":[{"tier":1},{"tier":2}],"classes":[{"class":"bandsaw","tier":2,"gates":[{"id":"bandsaw-checkout","for":"independent","need":{"kind":"checkout","checkout":"bandsaw"}},{"id":"guards","for":"supervised","need":{"kind":"lesson","lesson":"guards"}}]},{"class":"combi","tier":2,"modes":["joint","plane"],"gates":[{"id":"combi-checkout","for":"independent","need":{"kind":"checkout","checkout":"combi"}}]},{"class":"sander","tier":1}]}');
INSERT INTO records VALUES(5,7,'past-7','machine_added',1772924400,1772924400,'','import',0,NULL,NULL,'b1',NULL,'{"at":"2026-03-07T23:00:00Z","class":"bandsaw","id":"past-7","kind":"machine_added","label":"Unit b1","machine":"b1","recorded":"2026-03-07T23:00:00Z"}');
INSERT INTO records VALUES(6,8,'past-8','machine_added',1772924400,1772924400,'','import',0,NULL,NULL,'b2',NULL,'{"at":"2026-03-07T23:00:00Z","class":"bandsaw","id":"past-8","kind":"machine_added","label":"Unit b2","machine":"b2","recorded":"2026-03-07T23:00:00Z"}');
INSERT INTO records VALUES(7,9,'past-9','machine_added',1772924400,1772924400,'','import',0,NULL,NULL,'s1',NULL,'{"at":"2026-03-07T23:00:00Z","class":"sander","id":"past-9","kind":"machine_added","label":"Unit s1","machine":"s1","recorded":"2026-03-07T23:00:00Z"}');
INSERT INTO records VALUES(8,10,'past-10','machine_added',1772924400,1772924400,'','import',0,NULL,NULL,'c1',NULL,'{"at":"2026-03-07T23:00:00Z","class":"combi","id":"past-10","kind":"machine_added","label":"Unit c1","machine":"c1","recorded":"2026-03-07T23:00:00Z"}');
INSERT INTO records VALUES(9,11,'past-11','role',1772924400,1772924400,'','import',0,NULL,'mia',NULL,NULL,'{"at":"2026-03-07T23:00:00Z","id":"past-11","kind":"role","person":"mia","recorded":"2026-03-07T23:00:00Z","role":"manager"}');
INSERT INTO records VALUES(10,12,'past-12','role',1772924400,1772924400,'','import',0,NULL,'ivo',NULL,NULL,'{"at":"2026-03-07T23:00:00Z","id":"past-12","kind":"role","person":"ivo","recorded":"2026-03-07T23:00:00Z","role":"instructor"}');
INSERT INTO records VALUES(11,13,'past-13','role',1772924400,1772924400,'','import',0,NULL,'dee',NULL,NULL,'{"at":"2026-03-07T23:00:00Z","id":"past-13","kind":"role","person":"dee","recorded":"2026-03-07T23:00:00Z","role":"desk"}');
INSERT INTO records VALUES(12,17,'past-17','appoint',1772924400,1772924400,'','import',0,NULL,'mia',NULL,NULL,'{"at":"2026-03-07T23:00:00Z","founding":true,"id":"past-17","kind":"appoint","person":"mia","recorded":"2026-03-07T23:00:00Z","scope":"all","until":"2027-07-01"}');
INSERT INTO records VALUES(13,18,'past-18','appoint',1772924400,1772924400,'','import',0,NULL,'ivo',NULL,NULL,'{"at":"2026-03-07T23:00:00Z","founding":true,"id":"past-18","kind":"appoint","person":"ivo","recorded":"2026-03-07T23:00:00Z","scope":"all","until":"2027-07-01"}');
INSERT INTO records VALUES(14,19,'past-19','publish',1772924400,1772924400,'','import',0,NULL,NULL,NULL,NULL,'{"at":"2026-03-07T23:00:00Z","id":"past-19","item":"guards","kind":"publish","recorded":"2026-03-07T23:00:00Z","revision":1}');
INSERT INTO records VALUES(15,20,'c1','document',1773529260,1773529260,'dee','desk',0,'0a8478ccb6fc9ffbc0c41675a1333c117305351357779fcc50c1214283100041','kim',NULL,NULL,'{"at":"2026-03-14T23:01:00Z","document":"induction","id":"c1","kind":"document","person":"kim","recorded":"2026-03-14T23:01:00Z","until":"2027-07-01"}');
INSERT INTO records VALUES(16,21,'c2','lesson',1773529320,1773529320,'dee','desk',0,NULL,'lou',NULL,NULL,'{"at":"2026-03-14T23:02:00Z","id":"c2","kind":"lesson","lesson":"guards","person":"lou","recorded":"2026-03-14T23:02:00Z","revision":1}');
INSERT INTO records VALUES(17,22,'c3','strike_out',1773529380,1773529380,'mia','desk',0,NULL,NULL,NULL,'c2','{"at":"2026-03-14T23:03:00Z","id":"c3","kind":"strike_out","reason":"the wrong person","record":"c2","recorded":"2026-03-14T23:03:00Z"}');
INSERT INTO records VALUES(18,25,'c6','birth',1773529560,1773529560,'dee','desk',0,NULL,'p6',NULL,NULL,'{"at":"2026-03-14T23:06:00Z","born":"dfa52b457a167fdd78ba74c3a6e0cc0a81d788cc8cc44a5e5ea4a1b717d97e30","id":"c6","kind":"birth","person":"p6","recorded":"2026-03-14T23:06:00Z"}');
INSERT INTO records VALUES(19,26,'c7','lesson',1773529620,1773529620,'dee','desk',0,NULL,'kim',NULL,NULL,'{"at":"2026-03-14T23:07:00Z","id":"c7","kind":"lesson","lesson":"guards","person":"kim","recorded":"2026-03-14T23:07:00Z","revision":1}');
INSERT INTO records VALUES(20,27,'c8','checkout',1773529680,1773529680,'ivo','desk',0,NULL,'kim',NULL,NULL,'{"assessor":"ivo","at":"2026-03-14T23:08:00Z","checkout":"bandsaw","id":"c8","kind":"checkout","outcome":"passed","person":"kim","recorded":"2026-03-14T23:08:00Z","revision":0}');
INSERT INTO records VALUES(21,27,'c8.2','marks',1773529680,1773529680,'ivo','desk',0,NULL,NULL,'b1','c8','{"again":[],"at":"2026-03-14T23:08:00Z","checkout":"c8","id":"c8.2","kind":"marks","machine":"b1","marks":[],"recorded":"2026-03-14T23:08:00Z","sheet":"bandsaw","sheet_revision":1}');
INSERT INTO records VALUES(22,27,'c8.3','restriction',1773529680,1773529680,'ivo','desk',0,NULL,NULL,NULL,'c8','{"at":"2026-03-14T23:08:00Z","checkout":"c8","id":"c8.3","kind":"restriction","recorded":"2026-03-14T23:08:00Z","text":"no thin stock"}');
INSERT INTO records VALUES(23,29,'c10','lockout',1773529800,1773529800,'mia','desk',0,NULL,NULL,'s1',NULL,'{"at":"2026-03-14T23:10:00Z","id":"c10","kind":"lockout","machine":"s1","recorded":"2026-03-14T23:10:00Z"}');
INSERT INTO records VALUES(24,29,'c10.2','tag',1773529800,1773529800,'mia','desk',0,NULL,NULL,NULL,'c10','{"at":"2026-03-14T23:10:00Z","id":"c10.2","key_holder":"mia","kind":"tag","lockout":"c10","padlock":"7","reason":"belt torn","recorded":"2026-03-14T23:10:00Z","tag":"T-4"}');
CREATE TABLE private_values (
  ord INTEGER NOT NULL REFERENCES records (ord),
  field TEXT NOT NULL CHECK (field IN ('born', 'note')),
  salt TEXT,
  value TEXT,
  PRIMARY KEY (ord, field),
  CHECK ((salt IS NULL) = (value IS NULL))
);
INSERT INTO private_values VALUES(1,'born','88eadd6c5dd9801e0610aabfadef553a','1980-12-14');
INSERT INTO private_values VALUES(2,'born','9fce803d5c91b1f7e182559ae6e087af','1983-09-10');
INSERT INTO private_values VALUES(3,'born','8bfd05ac54e2f07b3b4a841e61511c5b','2000-02-13');
INSERT INTO private_values VALUES(15,'note','d06c401626a58edfc9ce59474a42ae8a','asked for an interpreter');
INSERT INTO private_values VALUES(18,'born','4616312343007500fa6e2d975cfe5b00','2002-11-09');
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
INSERT INTO people VALUES('mia',1,'1','Mia','Okafor','','','','','');
INSERT INTO people VALUES('ivo',2,'2','Ivo','Lindqvist','','','','','');
INSERT INTO people VALUES('dee',3,'3','Dee','Castellano','','','','','');
INSERT INTO people VALUES('kim',4,'4','Kim','Abara','Kimmy','','','555 0142','');
INSERT INTO people VALUES('lou',5,'','','','','','','','');
INSERT INTO people VALUES('p6',25,'C-77','Zoë','Łukasik','','','','','');
CREATE TABLE pins (
  person TEXT NOT NULL PRIMARY KEY REFERENCES people (id),
  hash TEXT NOT NULL
);
INSERT INTO pins VALUES('mia','$argon2id$v=19$m=8,t=1,p=1$+FRu5rMt8nOiGvB3fPjwBA$ch9Prdv6g0gCi83PmEpeDVGPcr/70sOfFw7dvlajG2A');
INSERT INTO pins VALUES('ivo','$argon2id$v=19$m=8,t=1,p=1$YDjaV+POd6BAP6LklJMTww$UJdDBDOEe17UFUxESVkZcjKa6P0CyvIuO1qi1/jRMbg');
INSERT INTO pins VALUES('dee','$argon2id$v=19$m=8,t=1,p=1$XjNdEmHWyRXOkGqLPG1M8A$zAz9Dwg/uWPi2rFgnWyMEMpxbl5Vw2xdTm00IFUUwr0');
CREATE INDEX records_of_person ON records (person, happened_at);
CREATE INDEX records_of_machine ON records (machine, happened_at);
CREATE UNIQUE INDEX one_strike_out ON records (refers_to) WHERE kind = 'strike_out';
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
COMMIT;
