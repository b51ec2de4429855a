-- A store as version 4 of the schema kept it, written by the sqlite3 program's .dump.
PRAGMA journal_mode = WAL;
PRAGMA application_id = 1466788657;
PRAGMA user_version = 4;
PRAGMA foreign_keys=OFF;
BEGIN TRANSACTION;
CREATE TABLE shop (
  one INTEGER PRIMARY KEY CHECK (one = 1),
  name TEXT NOT NULL,
  zone TEXT NOT NULL,
  demo_clock BIGINT NOT NULL
);
INSERT INTO shop VALUES(1,'Hollow Oak Workshop','America/Chicago',0);
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
INSERT INTO records VALUES(1,1,'past-1','birth',1772924400,'mia',NULL,'{"action":"enter_person","body":{"at":"2026-03-07T23:00:00Z","born":"db2a29a408aa822682bb9fcd0f41bbafa67784603c2fdce8b1c0e714208c8ad9","id":"past-1","kind":"birth","person":"mia","recorded":"2026-03-07T23:00:00Z"},"commit":1,"order":1,"station":"import"}',X'bfb1c4eb88d67d7a4276caf033a9a297417f73f8c1d3597229ea492eac8652de');
INSERT INTO records VALUES(2,1,'past-1.2','details',1772924400,'mia',NULL,'{"action":"enter_person","body":{"at":"2026-03-07T23:00:00Z","details":"b8e44cae12dbe8accf412bbe39be38f8180aaab1498b042bd73d4a565262a55a","id":"past-1.2","kind":"details","person":"mia","recorded":"2026-03-07T23:00:00Z"},"commit":1,"order":2,"station":"import"}',X'80607ccad3b79e5bb09c5c123aafb154d3f14639ecbd09aa85d746c9e326c926');
INSERT INTO records VALUES(3,2,'past-2','birth',1772924400,'ivo',NULL,'{"action":"enter_person","body":{"at":"2026-03-07T23:00:00Z","born":"786c41081962528d281f12c6f3263c9eeecbfacee0f644ef6afd1a712869f53e","id":"past-2","kind":"birth","person":"ivo","recorded":"2026-03-07T23:00:00Z"},"commit":2,"order":3,"station":"import"}',X'943fb29981acd866f58dfca4ef80276cf069d3c38e9485a068c6d84b911f6157');
INSERT INTO records VALUES(4,2,'past-2.2','details',1772924400,'ivo',NULL,'{"action":"enter_person","body":{"at":"2026-03-07T23:00:00Z","details":"583ce81babe10e42c388e525d2ae1172fdb298673b9a36cd3797d8f2462364c2","id":"past-2.2","kind":"details","person":"ivo","recorded":"2026-03-07T23:00:00Z"},"commit":2,"order":4,"station":"import"}',X'b1bd0eaa41c8426fb661880f7b14477dd143154eba018805855169978942f609');
INSERT INTO records VALUES(5,3,'past-3','details',1772924400,'dee',NULL,'{"action":"enter_person","body":{"at":"2026-03-07T23:00:00Z","details":"b720caadb7fbdd62172b8309bf3f4686217d24a4300f4ab016734d5bb37dc81c","id":"past-3","kind":"details","person":"dee","recorded":"2026-03-07T23:00:00Z"},"commit":3,"order":5,"station":"import"}',X'7a3d5b9379fda544fb08e91cb084cc5c0d0675eb983b292f752c8472f5435bfd');
INSERT INTO records VALUES(6,4,'past-4','birth',1772924400,'kim',NULL,'{"action":"enter_person","body":{"at":"2026-03-07T23:00:00Z","born":"b992df4eb481f5d664f26b7e6f84d2686d98aced629a80d5ede59716302fd5d6","id":"past-4","kind":"birth","person":"kim","recorded":"2026-03-07T23:00:00Z"},"commit":4,"order":6,"station":"import"}',X'8cd1a54d3820b63b4cc3843ef072b6643f683413c2d75d2203ec35513256a98b');
INSERT INTO records VALUES(7,4,'past-4.2','details',1772924400,'kim',NULL,'{"action":"enter_person","body":{"at":"2026-03-07T23:00:00Z","details":"f58353f077b47cfe8f9276b38dbac8a1402b4b8579152eade7c74ada9f501b9b","id":"past-4.2","kind":"details","person":"kim","recorded":"2026-03-07T23:00:00Z"},"commit":4,"order":7,"station":"import"}',X'951833bc7e46ccc920e6c6b82ea75b719efe2780bc6a1fbfab0b52e1435d4cc3');
INSERT INTO records VALUES(8,5,'past-5','details',1772924400,'lou',NULL,'{"action":"enter_person","body":{"at":"2026-03-07T23:00:00Z","details":"d25d0e817aead26e54fe5cb6d76cadac89c43e0004c4907bc831678f66285af5","id":"past-5","kind":"details","person":"lou","recorded":"2026-03-07T23:00:00Z"},"commit":5,"order":8,"station":"import"}',X'1c64bc109a6fa9952c0685a742faf74af434490c4008a38f6bc702e0b5d5c164');
INSERT INTO records VALUES(9,6,'past-6','rulebook',1772924400,NULL,NULL,'{"body":{"at":"2026-03-07T23:00:00Z","id":"past-6","kind":"rulebook","recorded":"2026-03-07T23:00:00Z","rulebook":{"classes":[{"class":"bandsaw","gates":[{"for":"independent","id":"bandsaw-checkout","need":{"checkout":"bandsaw","kind":"checkout"}},{"for":"supervised","id":"guards","need":{"kind":"lesson","lesson":"guards"}}],"tier":2},{"class":"combi","gates":[{"for":"independent","id":"combi-checkout","need":{"checkout":"combi","kind":"checkout"}}],"modes":["joint","plane"],"tier":2},{"class":"sander","tier":1}],"effective_from":"2026-03-07T23:00:00Z","recorded":"2026-03-07T23:00:00Z","tiers":[{"tier":1},{"tier":2}],"version":1}},"commit":6,"order":9,"station":"import"}',X'0c9a850740eb2974d4df885f178b6a930c60ea264fe346f1b512e14b7ee8153e');
INSERT INTO records VALUES(10,7,'past-7','machine_added',1772924400,NULL,NULL,'{"body":{"at":"2026-03-07T23:00:00Z","class":"bandsaw","id":"past-7","kind":"machine_added","label":"Unit b1","machine":"b1","recorded":"2026-03-07T23:00:00Z"},"commit":7,"order":10,"station":"import"}',X'f11894b4b4117a0b230827bf396b42914f4fc5a6b8272cc825a7bda932e5b9d9');
INSERT INTO records VALUES(11,8,'past-8','machine_added',1772924400,NULL,NULL,'{"body":{"at":"2026-03-07T23:00:00Z","class":"bandsaw","id":"past-8","kind":"machine_added","label":"Unit b2","machine":"b2","recorded":"2026-03-07T23:00:00Z"},"commit":8,"order":11,"station":"import"}',X'0470be51feebba15ee82064bb2d17963eecf6908b8d7d4a17786384c3b50a037');
INSERT INTO records VALUES(12,9,'past-9','machine_added',1772924400,NULL,NULL,'{"body":{"at":"2026-03-07T23:00:00Z","class":"sander","id":"past-9","kind":"machine_added","label":"Unit s1","machine":"s1","recorded":"2026-03-07T23:00:00Z"},"commit":9,"order":12,"station":"import"}',X'1d9e1cdfc5f3ede5f123b4caa25403402804d7ada3ba2b57e15b84e05e398c66');
INSERT INTO records VALUES(13,10,'past-10','machine_added',1772924400,NULL,NULL,'{"body":{"at":"2026-03-07T23:00:00Z","class":"combi","id":"past-10","kind":"machine_added","label":"Unit c1","machine":"c1","recorded":"2026-03-07T23:00:00Z"},"commit":10,"order":13,"station":"import"}',X'248af62068b5c4e1f3d20cf6dd0504d91142c494d29baf46f7a158dc615b1086');
INSERT INTO records VALUES(14,11,'past-11','role',1772924400,'mia',NULL,'{"body":{"at":"2026-03-07T23:00:00Z","id":"past-11","kind":"role","person":"mia","recorded":"2026-03-07T23:00:00Z","role":"manager"},"commit":11,"order":14,"station":"import"}',X'1d1bb8f7cb08a0ef2877af65e42bd7db669c66434962567f985dd1d383917603');
INSERT INTO records VALUES(15,12,'past-12','role',1772924400,'ivo',NULL,'{"body":{"at":"2026-03-07T23:00:00Z","id":"past-12","kind":"role","person":"ivo","recorded":"2026-03-07T23:00:00Z","role":"instructor"},"commit":12,"order":15,"station":"import"}',X'009d51ff99b8e433a6b838750ccc04073c15b14b7518d3cd25fdb968c17fdc47');
INSERT INTO records VALUES(16,13,'past-13','role',1772924400,'dee',NULL,'{"body":{"at":"2026-03-07T23:00:00Z","id":"past-13","kind":"role","person":"dee","recorded":"2026-03-07T23:00:00Z","role":"desk"},"commit":13,"order":16,"station":"import"}',X'bb28547a951573a5691728c9fb1fbe3ca981401a8102f1f8b59bfa40a82479bf');
INSERT INTO records VALUES(17,14,'past-14','pin',1772924400,'mia',NULL,'{"action":"choose_pin","body":{"at":"2026-03-07T23:00:00Z","id":"past-14","kind":"pin","person":"mia","pin":"770165a9ffb7044b6b80d925e12eb9615333711f83f2ec30bb9b0ca21e3ecf38","recorded":"2026-03-07T23:00:00Z"},"commit":14,"order":17,"station":"import"}',X'65229d4da63441083a814ce8bd001bd026b5a9fbb6fccefdedfe9cbeffeb9034');
INSERT INTO records VALUES(18,15,'past-15','pin',1772924400,'ivo',NULL,'{"action":"choose_pin","body":{"at":"2026-03-07T23:00:00Z","id":"past-15","kind":"pin","person":"ivo","pin":"9fd6dabd788ef49490dbb094563eec68bd582fb671bb67f8c472c582957d5d69","recorded":"2026-03-07T23:00:00Z"},"commit":15,"order":18,"station":"import"}',X'4971a8b74f64dcd545ad307c0dd7e521836814876fc7de87b3243d1cdedd4df2');
INSERT INTO records VALUES(19,16,'past-16','pin',1772924400,'dee',NULL,'{"action":"choose_pin","body":{"at":"2026-03-07T23:00:00Z","id":"past-16","kind":"pin","person":"dee","pin":"dd149e4e4037118b982c40ef6f97d2c9841ecef1e34915a22258a210851cdc42","recorded":"2026-03-07T23:00:00Z"},"commit":16,"order":19,"station":"import"}',X'b0d090afeb08f3c56082fc0fbe9d8beca1206fbd0e971ec459f318fc91947e5c');
INSERT INTO records VALUES(20,17,'past-17','appoint',1772924400,'mia',NULL,'{"body":{"at":"2026-03-07T23:00:00Z","founding":true,"id":"past-17","kind":"appoint","person":"mia","recorded":"2026-03-07T23:00:00Z","scope":"all","until":"2027-07-01"},"commit":17,"order":20,"station":"import"}',X'8c0578bad2aeff5021cae476cbc89d4e91fba9e7f7af2ec8ba989a9987ddc7bd');
INSERT INTO records VALUES(21,18,'past-18','appoint',1772924400,'ivo',NULL,'{"body":{"at":"2026-03-07T23:00:00Z","founding":true,"id":"past-18","kind":"appoint","person":"ivo","recorded":"2026-03-07T23:00:00Z","scope":"all","until":"2027-07-01"},"commit":18,"order":21,"station":"import"}',X'6858a1f418499c07c0039e5dcb06837e8f1e2238e5d6cafa493288a251a1924b');
INSERT INTO records VALUES(22,19,'past-19','publish',1772924400,NULL,NULL,'{"body":{"at":"2026-03-07T23:00:00Z","id":"past-19","item":"guards","kind":"publish","recorded":"2026-03-07T23:00:00Z","revision":1},"commit":19,"order":22,"station":"import"}',X'f210c46c17cdae55edc5b6cf204b30e56799e761c098385569ee2d7df3cfa378');
INSERT INTO records VALUES(23,20,'c1','document',1773529260,'kim',NULL,'{"body":{"at":"2026-03-14T23:01:00Z","document":"induction","id":"c1","kind":"document","person":"kim","recorded":"2026-03-14T23:01:00Z","until":"2027-07-01"},"by":"dee","commit":20,"note":"0a8478ccb6fc9ffbc0c41675a1333c117305351357779fcc50c1214283100041","order":23}',X'be84c2f6e2bfed8dae48c8bf75f536389a99efda1d6308a806104d7394445964');
INSERT INTO records VALUES(24,21,'c2','lesson',1773529320,'lou',NULL,'{"body":{"at":"2026-03-14T23:02:00Z","id":"c2","kind":"lesson","lesson":"guards","person":"lou","recorded":"2026-03-14T23:02:00Z","revision":1},"by":"dee","commit":21,"order":24}',X'6ed73d15b3e624638aa7092da7d4116714df024ed25cd89994ca85050581b396');
INSERT INTO records VALUES(25,22,'c3','strike_out',1773529380,NULL,'c2','{"body":{"at":"2026-03-14T23:03:00Z","id":"c3","kind":"strike_out","reason":"the wrong person","record":"c2","recorded":"2026-03-14T23:03:00Z"},"by":"mia","commit":22,"order":25}',X'b8f69ceba8779f13f7a9e3cae2667f145f6ce57c30dcbe0d435e03bd36625180');
INSERT INTO records VALUES(26,23,'c4','details',1773529440,'kim',NULL,'{"action":"correct_person","body":{"at":"2026-03-14T23:04:00Z","details":"a82117a6ed479ac427f4aa680451ff7810e9ff9848e179b1569d691f7412fadf","id":"c4","kind":"details","person":"kim","recorded":"2026-03-14T23:04:00Z"},"by":"dee","commit":23,"order":26}',X'7d83fef712edad09ea123273df4a772105e5eda8bc6d8f3f0a1b93b0c1b27ed3');
INSERT INTO records VALUES(27,24,'c5','pin',1773529500,'dee',NULL,'{"action":"choose_pin","body":{"at":"2026-03-14T23:05:00Z","id":"c5","kind":"pin","person":"dee","pin":"201dc2384bc5cfd36e5d8e4cf32b5ad06bf0fe9ee4a3fff404c6465a382dc0cd","recorded":"2026-03-14T23:05:00Z"},"by":"mia","commit":24,"order":27}',X'0f599a89495998b2d114d5eb64b5ef10bc256e9cb2ce04d93ed4ce42d878f75f');
INSERT INTO records VALUES(28,25,'c6','birth',1773529560,'p6',NULL,'{"action":"enter_person","body":{"at":"2026-03-14T23:06:00Z","born":"dfa52b457a167fdd78ba74c3a6e0cc0a81d788cc8cc44a5e5ea4a1b717d97e30","id":"c6","kind":"birth","person":"p6","recorded":"2026-03-14T23:06:00Z"},"by":"dee","commit":25,"order":28}',X'6e7bf86cd7ec76c32433a934a9374b3dc93346757ed45d3100e18469f807ea85');
INSERT INTO records VALUES(29,25,'c6.2','details',1773529560,'p6',NULL,'{"action":"enter_person","body":{"at":"2026-03-14T23:06:00Z","details":"742901392f0bcfe5236b461fc80067f86b37b5c2db5391a702567e4fb94db012","id":"c6.2","kind":"details","person":"p6","recorded":"2026-03-14T23:06:00Z"},"by":"dee","commit":25,"order":29}',X'88ef75a1a113db2a2c3bdee5ca1f7e145374f8fc979485dcf0091407220106d9');
INSERT INTO records VALUES(30,26,'c7','lesson',1773529620,'kim',NULL,'{"body":{"at":"2026-03-14T23:07:00Z","id":"c7","kind":"lesson","lesson":"guards","person":"kim","recorded":"2026-03-14T23:07:00Z","revision":1},"by":"dee","commit":26,"order":30}',X'7c9ba1813a3cb94cf45b23fcd2411803ae1ac6e31fb765eefb791502c4f7d0f0');
INSERT INTO records VALUES(31,27,'c8','checkout',1773529680,'kim',NULL,'{"action":"sign_checkout","body":{"assessor":"ivo","at":"2026-03-14T23:08:00Z","checkout":"bandsaw","id":"c8","kind":"checkout","outcome":"passed","person":"kim","recorded":"2026-03-14T23:08:00Z","revision":0},"by":"ivo","commit":27,"order":31}',X'e8c4e777ecd622fe4a6b7605650450429f3199fdfaafca01c4e7b5a0d333098d');
INSERT INTO records VALUES(32,27,'c8.2','marks',1773529680,NULL,'c8','{"action":"sign_checkout","body":{"again":[],"at":"2026-03-14T23:08:00Z","checkout":"c8","id":"c8.2","kind":"marks","machine":"b1","marks":[],"recorded":"2026-03-14T23:08:00Z","sheet":"bandsaw","sheet_revision":1},"by":"ivo","commit":27,"order":32}',X'c013b1f46d6a4232ff9a3aa97bda839530aea5ef85862b29f877ad0a654e08ef');
INSERT INTO records VALUES(33,27,'c8.3','restriction',1773529680,NULL,'c8','{"action":"sign_checkout","body":{"at":"2026-03-14T23:08:00Z","checkout":"c8","id":"c8.3","kind":"restriction","recorded":"2026-03-14T23:08:00Z","text":"no thin stock"},"by":"ivo","commit":27,"order":33}',X'730e63c1d92cdc769882c03d12f1467a39117973464b393853678087c0119238');
INSERT INTO records VALUES(34,28,'c9','erased',1773529740,'lou',NULL,'{"action":"blank_person","body":{"at":"2026-03-14T23:09:00Z","id":"c9","kind":"erased","person":"lou","recorded":"2026-03-14T23:09:00Z"},"by":"mia","commit":28,"order":34}',X'fc59ab4e240db2dca39758e24ea757cda5f00248f955abce6b8dfe95121333b3');
INSERT INTO records VALUES(35,29,'c10','lockout',1773529800,NULL,NULL,'{"action":"out_of_service","body":{"at":"2026-03-14T23:10:00Z","id":"c10","kind":"lockout","machine":"s1","recorded":"2026-03-14T23:10:00Z"},"by":"mia","commit":29,"order":35}',X'59cbf886f6de2d8a06f8206528fd8fc7792b32b10154ac10c9d7a0ff48c0fb33');
INSERT INTO records VALUES(36,29,'c10.2','tag',1773529800,NULL,'c10','{"action":"out_of_service","body":{"at":"2026-03-14T23:10:00Z","id":"c10.2","key_holder":"mia","kind":"tag","lockout":"c10","padlock":"7","reason":"belt torn","recorded":"2026-03-14T23:10:00Z","tag":"T-4"},"by":"mia","commit":29,"order":36}',X'b8c7587d361bed674b4eab29271da0c139b626480cfb6fb5202e8220cd1561c5');
CREATE TABLE private_values (
  ord INTEGER NOT NULL REFERENCES records (ord),
  field TEXT NOT NULL CHECK (field IN ('born', 'details', 'note', 'pin')),
  salt TEXT,
  value TEXT,
  PRIMARY KEY (ord, field),
  CHECK ((salt IS NULL) = (value IS NULL))
);
INSERT INTO private_values VALUES(1,'born','88eadd6c5dd9801e0610aabfadef553a','1980-12-14');
INSERT INTO private_values VALUES(2,'details','7d3cdad7d93b176ac6a7eda1faed9608','{"card":"","email":"","emergency_contact":"","family":"Okafor","given":"Mia","nickname":"","number":"1","phone":""}');
INSERT INTO private_values VALUES(3,'born','9fce803d5c91b1f7e182559ae6e087af','1983-09-10');
INSERT INTO private_values VALUES(4,'details','abc1d239a9af09b0b310f85162456277','{"card":"","email":"","emergency_contact":"","family":"Lindqvist","given":"Ivo","nickname":"","number":"2","phone":""}');
INSERT INTO private_values VALUES(5,'details','e8ffaf470abf7b47724935def3ca35cc','{"card":"","email":"","emergency_contact":"","family":"Castellano","given":"Dee","nickname":"","number":"3","phone":""}');
INSERT INTO private_values VALUES(6,'born','8bfd05ac54e2f07b3b4a841e61511c5b','2000-02-13');
INSERT INTO private_values VALUES(7,'details','f72b789459698e37933491a7c0559ffe','{"card":"","email":"","emergency_contact":"","family":"Abara","given":"Kim","nickname":"Kimmy","number":"4","phone":"555 0142"}');
INSERT INTO private_values VALUES(8,'details',NULL,NULL);
INSERT INTO private_values VALUES(17,'pin','22a867edc6eba74716d6ec53279586e1','$argon2id$v=19$m=8,t=1,p=1$+FRu5rMt8nOiGvB3fPjwBA$ch9Prdv6g0gCi83PmEpeDVGPcr/70sOfFw7dvlajG2A');
INSERT INTO private_values VALUES(18,'pin','72698621aede30900ea0aa50d0e92746','$argon2id$v=19$m=8,t=1,p=1$YDjaV+POd6BAP6LklJMTww$UJdDBDOEe17UFUxESVkZcjKa6P0CyvIuO1qi1/jRMbg');
INSERT INTO private_values VALUES(19,'pin',NULL,NULL);
INSERT INTO private_values VALUES(23,'note','d06c401626a58edfc9ce59474a42ae8a','asked for an interpreter');
INSERT INTO private_values VALUES(26,'details','d2ed64aab5ab538bf5b2ab18cba0e962','{"card":"","email":"","emergency_contact":"","family":"Abara","given":"Kim","nickname":"Kimmy","number":"4","phone":"555 0142"}');
INSERT INTO private_values VALUES(27,'pin','0eadda5d1fe67b7c6356c2a82998803c','$argon2id$v=19$m=8,t=1,p=1$XjNdEmHWyRXOkGqLPG1M8A$zAz9Dwg/uWPi2rFgnWyMEMpxbl5Vw2xdTm00IFUUwr0');
INSERT INTO private_values VALUES(28,'born','4616312343007500fa6e2d975cfe5b00','2002-11-09');
INSERT INTO private_values VALUES(29,'details','eed6827c9a65229d90884f731985ebc4','{"card":"","email":"","emergency_contact":"","family":"Łukasik","given":"Zoë","nickname":"","number":"C-77","phone":""}');
CREATE TABLE tree_edge (
  one INTEGER PRIMARY KEY CHECK (one = 1),
  size BIGINT NOT NULL,
  hashes BLOB NOT NULL
);
INSERT INTO tree_edge VALUES(1,37,X'884659ff2388aa0ffafae5274fc5b947c12dbbed39c872a0300ddb9dfc0059abbaabd9144eae8199417955ecc12dffee21dfd819bd7c7d29a99a105be46fb998b8c7587d361bed674b4eab29271da0c139b626480cfb6fb5202e8220cd1561c5');
CREATE INDEX records_of_person ON records (person) WHERE person IS NOT NULL;
CREATE UNIQUE INDEX one_strike_out ON records (refers_to) WHERE kind = 'strike_out';
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
COMMIT;
