-- A store as version 5 of the schema keeps it, written by the sqlite3 program's .dump.
PRAGMA journal_mode = WAL;
PRAGMA application_id = 1466788657;
PRAGMA user_version = 5;
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
INSERT INTO records VALUES(1,1,'past-1','details',1772924400,'mia',NULL,'{"action":"enter_person","body":{"at":"2026-03-07T23:00:00Z","details":"bd5697658a945bf44b2dc2dcf9459ea293af85982c3629d8bf5e74218236bbcf","id":"past-1","kind":"details","person":"mia","recorded":"2026-03-07T23:00:00Z"},"commit":1,"order":1,"station":"import"}',X'0c5b783773a9a44641c212f4da8c5060ac1f94c09331306a9ae85c866f8b06e5');
INSERT INTO records VALUES(2,1,'past-1.2','birth',1772924400,'mia',NULL,'{"action":"enter_person","body":{"at":"2026-03-07T23:00:00Z","born":"092414da64f77a31b89520ddc7f4e9d075ad7ccdd5c9cadd92fa484ab9dbecc2","id":"past-1.2","kind":"birth","person":"mia","recorded":"2026-03-07T23:00:00Z"},"commit":1,"order":2,"station":"import"}',X'3a483176e631977a409503bef28a360fb532e0bd45e4c5a66393aa38fd35f215');
INSERT INTO records VALUES(3,2,'past-2','details',1772924400,'ivo',NULL,'{"action":"enter_person","body":{"at":"2026-03-07T23:00:00Z","details":"aa86878cbc8e14a1134acbb8919feac5f335050f91e39411299d22c021b07a79","id":"past-2","kind":"details","person":"ivo","recorded":"2026-03-07T23:00:00Z"},"commit":2,"order":3,"station":"import"}',X'0205ba9d40b3b422fc0c25bd8689b92702ad0e1b535d9ea8f711396a191ca32f');
INSERT INTO records VALUES(4,2,'past-2.2','birth',1772924400,'ivo',NULL,'{"action":"enter_person","body":{"at":"2026-03-07T23:00:00Z","born":"ab2aafa2288b897e5d4263be049f2fa6bc8dfe69869600f201c3ae65a3dfebc6","id":"past-2.2","kind":"birth","person":"ivo","recorded":"2026-03-07T23:00:00Z"},"commit":2,"order":4,"station":"import"}',X'875554ae36b111aedb3ba39fae5bb6f3aea5d2dd9da7ab722e31feed19ba3821');
INSERT INTO records VALUES(5,3,'past-3','details',1772924400,'dee',NULL,'{"action":"enter_person","body":{"at":"2026-03-07T23:00:00Z","details":"e6afb5c2ac9a691f640ad9b591708d8cf0e31f895c8a3ca448c510420206fb68","id":"past-3","kind":"details","person":"dee","recorded":"2026-03-07T23:00:00Z"},"commit":3,"order":5,"station":"import"}',X'ca46f7437f38562b232d59fa2f111f71fdec7dae08d6e64e3aa2d2bd3987c463');
INSERT INTO records VALUES(6,4,'past-4','details',1772924400,'kim',NULL,'{"action":"enter_person","body":{"at":"2026-03-07T23:00:00Z","details":"13b18264860d0b3821db3a31808841d5af964883c1cdc8aa8e038c7f8ef0244a","id":"past-4","kind":"details","person":"kim","recorded":"2026-03-07T23:00:00Z"},"commit":4,"order":6,"station":"import"}',X'60b46b376c41357c6643083cf39f7fac83298bca33cf1d799efb72d69a82ad5c');
INSERT INTO records VALUES(7,4,'past-4.2','birth',1772924400,'kim',NULL,'{"action":"enter_person","body":{"at":"2026-03-07T23:00:00Z","born":"dc7090b877d4c2a8b5d97fff0e989db8c34e6771d6cb830761c0c76f9ede6493","id":"past-4.2","kind":"birth","person":"kim","recorded":"2026-03-07T23:00:00Z"},"commit":4,"order":7,"station":"import"}',X'4e381d7da9d2218a93471d0bca0c44be15f27e6c674f6fabceb7ff5a054c24e3');
INSERT INTO records VALUES(8,5,'past-5','details',1772924400,'lou',NULL,'{"action":"enter_person","body":{"at":"2026-03-07T23:00:00Z","details":"1fa84efb2610f356348ea3350956d8a7e598e6a7fc6dacc7306774723aa7d070","id":"past-5","kind":"details","person":"lou","recorded":"2026-03-07T23:00:00Z"},"commit":5,"order":8,"station":"import"}',X'28ec80f811156d0426f3517938a9653e6098feda00e6e570225a1ff54128d661');
INSERT INTO records VALUES(9,6,'past-6','rulebook',1772924400,NULL,NULL,'{"body":{"at":"2026-03-07T23:00:00Z","id":"past-6","kind":"rulebook","recorded":"2026-03-07T23:00:00Z","rulebook":{"classes":[{"class":"bandsaw","gates":[{"for":"independent","id":"bandsaw-checkout","need":{"checkout":"bandsaw","kind":"checkout"}},{"for":"supervised","id":"guards","need":{"kind":"lesson","lesson":"guards"}}],"tier":2},{"class":"combi","gates":[{"for":"independent","id":"combi-checkout","need":{"checkout":"combi","kind":"checkout"}}],"modes":["joint","plane"],"tier":2},{"class":"sander","tier":1}],"effective_from":"2026-03-07T23:00:00Z","recorded":"2026-03-07T23:00:00Z","tiers":[{"tier":1},{"tier":2}],"version":1}},"commit":6,"order":9,"station":"import"}',X'0c9a850740eb2974d4df885f178b6a930c60ea264fe346f1b512e14b7ee8153e');
INSERT INTO records VALUES(10,7,'past-7','machine_added',1772924400,NULL,NULL,'{"body":{"at":"2026-03-07T23:00:00Z","class":"bandsaw","id":"past-7","kind":"machine_added","label":"Unit b1","machine":"b1","recorded":"2026-03-07T23:00:00Z"},"commit":7,"order":10,"station":"import"}',X'f11894b4b4117a0b230827bf396b42914f4fc5a6b8272cc825a7bda932e5b9d9');
INSERT INTO records VALUES(11,8,'past-8','machine_added',1772924400,NULL,NULL,'{"body":{"at":"2026-03-07T23:00:00Z","class":"bandsaw","id":"past-8","kind":"machine_added","label":"Unit b2","machine":"b2","recorded":"2026-03-07T23:00:00Z"},"commit":8,"order":11,"station":"import"}',X'0470be51feebba15ee82064bb2d17963eecf6908b8d7d4a17786384c3b50a037');
INSERT INTO records VALUES(12,9,'past-9','machine_added',1772924400,NULL,NULL,'{"body":{"at":"2026-03-07T23:00:00Z","class":"sander","id":"past-9","kind":"machine_added","label":"Unit s1","machine":"s1","recorded":"2026-03-07T23:00:00Z"},"commit":9,"order":12,"station":"import"}',X'1d9e1cdfc5f3ede5f123b4caa25403402804d7ada3ba2b57e15b84e05e398c66');
INSERT INTO records VALUES(13,10,'past-10','machine_added',1772924400,NULL,NULL,'{"body":{"at":"2026-03-07T23:00:00Z","class":"combi","id":"past-10","kind":"machine_added","label":"Unit c1","machine":"c1","recorded":"2026-03-07T23:00:00Z"},"commit":10,"order":13,"station":"import"}',X'248af62068b5c4e1f3d20cf6dd0504d91142c494d29baf46f7a158dc615b1086');
INSERT INTO records VALUES(14,11,'past-11','role',1772924400,'mia',NULL,'{"body":{"at":"2026-03-07T23:00:00Z","id":"past-11","kind":"role","person":"mia","recorded":"2026-03-07T23:00:00Z","role":"manager"},"commit":11,"order":14,"station":"import"}',X'1d1bb8f7cb08a0ef2877af65e42bd7db669c66434962567f985dd1d383917603');
INSERT INTO records VALUES(15,12,'past-12','role',1772924400,'ivo',NULL,'{"body":{"at":"2026-03-07T23:00:00Z","id":"past-12","kind":"role","person":"ivo","recorded":"2026-03-07T23:00:00Z","role":"instructor"},"commit":12,"order":15,"station":"import"}',X'009d51ff99b8e433a6b838750ccc04073c15b14b7518d3cd25fdb968c17fdc47');
INSERT INTO records VALUES(16,13,'past-13','role',1772924400,'dee',NULL,'{"body":{"at":"2026-03-07T23:00:00Z","id":"past-13","kind":"role","person":"dee","recorded":"2026-03-07T23:00:00Z","role":"desk"},"commit":13,"order":16,"station":"import"}',X'bb28547a951573a5691728c9fb1fbe3ca981401a8102f1f8b59bfa40a82479bf');
INSERT INTO records VALUES(17,14,'past-14','pin',1772924400,'mia',NULL,'{"action":"choose_pin","body":{"at":"2026-03-07T23:00:00Z","id":"past-14","key":"95c64377f0d70c239c1907a298df63645162dcbdfd99d213a4ab1a458ecd69b1","kind":"pin","person":"mia","pin":"81292c147d745b650a60ebefb764bfae62a4da7af314f688d173234b08409740","recorded":"2026-03-07T23:00:00Z"},"commit":14,"order":17,"station":"import"}',X'cae44fd8649d69ec7051f806d1135878de9f7a6fc67e446d4ffc0a5425dfd28d');
INSERT INTO records VALUES(18,15,'past-15','pin',1772924400,'ivo',NULL,'{"action":"choose_pin","body":{"at":"2026-03-07T23:00:00Z","id":"past-15","key":"4dd29f181bc6fd6fa2ce0b8463a24b08e715ff6dd9154a97185290580d66a272","kind":"pin","person":"ivo","pin":"c80b5a5baf34ee16beb9fbabddb4face1d408518bad92cd679e67e99c72e7625","recorded":"2026-03-07T23:00:00Z"},"commit":15,"order":18,"station":"import"}',X'6fc9bf5556d8452a8fa60af862b7ab8333818b5e143f12b3b5146f5820452018');
INSERT INTO records VALUES(19,16,'past-16','pin',1772924400,'dee',NULL,'{"action":"choose_pin","body":{"at":"2026-03-07T23:00:00Z","id":"past-16","key":"aaf3399dc6e0690bc97303e5d3b4b3c2ad6e1b40c2c7b9e047df0ea03446dccd","kind":"pin","person":"dee","pin":"c3af50e0c2a319e901e3077c476f907866c9f58e4203142449a340df58137bed","recorded":"2026-03-07T23:00:00Z"},"commit":16,"order":19,"station":"import"}',X'6934a4ba5de388430146afba8d01746fba23edede13e2b05ba06c3782b7b5486');
INSERT INTO records VALUES(20,17,'past-17','appoint',1772924400,'mia',NULL,'{"body":{"at":"2026-03-07T23:00:00Z","founding":true,"id":"past-17","kind":"appoint","person":"mia","recorded":"2026-03-07T23:00:00Z","scope":"all","until":"2027-07-01"},"commit":17,"order":20,"station":"import"}',X'8c0578bad2aeff5021cae476cbc89d4e91fba9e7f7af2ec8ba989a9987ddc7bd');
INSERT INTO records VALUES(21,18,'past-18','appoint',1772924400,'ivo',NULL,'{"body":{"at":"2026-03-07T23:00:00Z","founding":true,"id":"past-18","kind":"appoint","person":"ivo","recorded":"2026-03-07T23:00:00Z","scope":"all","until":"2027-07-01"},"commit":18,"order":21,"station":"import"}',X'6858a1f418499c07c0039e5dcb06837e8f1e2238e5d6cafa493288a251a1924b');
INSERT INTO records VALUES(22,19,'past-19','publish',1772924400,NULL,NULL,'{"body":{"at":"2026-03-07T23:00:00Z","id":"past-19","item":"guards","kind":"publish","recorded":"2026-03-07T23:00:00Z","revision":1},"commit":19,"order":22,"station":"import"}',X'f210c46c17cdae55edc5b6cf204b30e56799e761c098385569ee2d7df3cfa378');
INSERT INTO records VALUES(23,20,'c1','document',1773529260,'kim',NULL,'{"body":{"at":"2026-03-14T23:01:00Z","document":"induction","id":"c1","kind":"document","person":"kim","recorded":"2026-03-14T23:01:00Z","until":"2027-07-01"},"by":"dee","commit":20,"note":"a4cad14b9252b8a848cb1620c1f684f7c12574de787c2d5e4160a9c48ebb357e","order":23}',X'5713ecb97f09e3b166f5406f7b9e02adbc943646559a43778995001d5c67fbb8');
INSERT INTO records VALUES(24,21,'c2','lesson',1773529320,'kim',NULL,'{"body":{"at":"2026-03-14T23:02:00Z","id":"c2","kind":"lesson","lesson":"guards","person":"kim","recorded":"2026-03-14T23:02:00Z","revision":1},"by":"dee","commit":21,"note":"7d0d64d80a26ce440869cb96a4bf735c6c0e4cb28a6006ba663ad0d619616461","order":24}',X'f69ed397bec64c72086de09fe85350c0ebf56dc9da8bc245794baf4fd3d988ed');
INSERT INTO records VALUES(25,22,'c3','booking',1773529380,'kim',NULL,'{"body":{"assessor":"ivo","at":"2026-03-14T23:03:00Z","from":"2026-03-15T00:00:00Z","id":"c3","kind":"booking","machine":"b1","person":"kim","purpose":"check_out","recorded":"2026-03-14T23:03:00Z","target":"bandsaw","to":"2026-03-15T01:00:00Z"},"by":"dee","commit":22,"order":25}',X'70218c477b9131adfc5c0af67a5375e4b03355584cfe71bb2f352e8c85e13df1');
INSERT INTO records VALUES(26,23,'c4','presence',1773529440,'lou',NULL,'{"body":{"at":"2026-03-14T23:04:00Z","id":"c4","in":true,"kind":"presence","person":"lou","recorded":"2026-03-14T23:04:00Z","staff":false},"by":"dee","commit":23,"order":26}',X'da7986c145ea4356bbd958fcd64a7adde5d3b5fd4f9eee75c6f3dabcfb1ea9f7');
INSERT INTO records VALUES(27,24,'c5','waiting',1773529500,'kim',NULL,'{"body":{"at":"2026-03-14T23:05:00Z","id":"c5","kind":"waiting","person":"kim","recorded":"2026-03-14T23:05:00Z","target":"combi"},"by":"dee","commit":24,"order":27}',X'93cfbaa6f5470cb30f19496891b7e6a7bfb7c4794a79d160b8aa695a124368de');
INSERT INTO records VALUES(28,25,'c6','checkout',1773529560,'kim',NULL,'{"action":"sign_checkout","body":{"assessor":"ivo","at":"2026-03-14T23:06:00Z","checkout":"bandsaw","id":"c6","kind":"checkout","outcome":"passed","person":"kim","recorded":"2026-03-14T23:06:00Z","revision":0},"by":"ivo","commit":25,"order":28}',X'2cb768fe13f564e820a07c36b73ccc726e410060f1a9a69353a85a8dbd7ba542');
INSERT INTO records VALUES(29,25,'c6.2','marks',1773529560,NULL,'c6','{"action":"sign_checkout","body":{"again":[],"at":"2026-03-14T23:06:00Z","checkout":"c6","id":"c6.2","kind":"marks","machine":"b1","marks":["shown","shown_when_asked","shown"],"recorded":"2026-03-14T23:06:00Z","sheet":"bandsaw","sheet_revision":1},"by":"ivo","commit":25,"order":29}',X'13f2b239bb5c3ab0ad2be39ce51980eb212fcaae8f9b6b3524256a7820fc9f4e');
INSERT INTO records VALUES(30,25,'c6.3','restriction',1773529560,NULL,'c6','{"action":"sign_checkout","body":{"at":"2026-03-14T23:06:00Z","checkout":"c6","id":"c6.3","kind":"restriction","recorded":"2026-03-14T23:06:00Z","text":"no resawing"},"by":"ivo","commit":25,"order":30}',X'72c9818e7bc4cd7ff8adcfec284d9f81446497690d7105167381fe85d9b14654');
INSERT INTO records VALUES(31,25,'c6.4','attendance',1773529560,NULL,'c3','{"action":"sign_checkout","body":{"at":"2026-03-14T23:06:00Z","booking":"c3","id":"c6.4","kind":"attendance","recorded":"2026-03-14T23:06:00Z","turnout":"arrived"},"by":"ivo","commit":25,"order":31}',X'cdd1dbde16ab3e9c2a28edcc001255b76d064631e41a16fddae9262651bb7e12');
INSERT INTO records VALUES(32,25,'c6.5','signature',1773529560,'ivo','c6','{"action":"sign_checkout","body":{"at":"2026-03-14T23:06:00Z","checkout":"c6","id":"c6.5","key":"4dd29f181bc6fd6fa2ce0b8463a24b08e715ff6dd9154a97185290580d66a272","kind":"signature","person":"ivo","recorded":"2026-03-14T23:06:00Z","signature":"e4fb63c164cf815dd14f0e63670f4c68438e11abb5da8c3215260acf078981be1ad119370d3dbe705e92684599eefc2257e7f08064d67f18371f1c65e64d7705"},"by":"ivo","commit":25,"order":32}',X'd0d64e0dbccf25d66553180dfcc2ffc81e8730dff2ff5ee0dde8c3270f82fd34');
INSERT INTO records VALUES(33,26,'c7','lockout',1773529620,NULL,NULL,'{"action":"out_of_service","body":{"at":"2026-03-14T23:07:00Z","id":"c7","kind":"lockout","machine":"b2","recorded":"2026-03-14T23:07:00Z"},"by":"dee","commit":26,"order":33}',X'2edf864e98e3fbfa49f84db21a0d29ddd95829e32904c8b814e43c246eb5f14c');
INSERT INTO records VALUES(34,26,'c7.2','tag',1773529620,NULL,'c7','{"action":"out_of_service","body":{"at":"2026-03-14T23:07:00Z","id":"c7.2","key_holder":"dee","kind":"tag","lockout":"c7","padlock":"3","reason":"blade cracked","recorded":"2026-03-14T23:07:00Z","tag":"7"},"by":"dee","commit":26,"order":34}',X'61c7e69b9571c3a276c4f4466bc443716806e707fad83c30c831092bb2268d68');
INSERT INTO records VALUES(35,27,'c8','role',1773529680,'kim',NULL,'{"body":{"at":"2026-03-14T23:08:00Z","id":"c8","kind":"role","person":"kim","recorded":"2026-03-14T23:08:00Z","role":"desk"},"by":"mia","commit":27,"order":35}',X'f5f20c0bb881835c1083a6ed1f912cb764112b1c2faf04fc3576302eb320e376');
INSERT INTO records VALUES(36,28,'c9','rulebook',1773529740,NULL,NULL,'{"body":{"at":"2026-03-14T23:09:00Z","id":"c9","kind":"rulebook","recorded":"2026-03-14T23:09:00Z","rulebook":{"classes":[{"class":"bandsaw","gates":[{"for":"independent","id":"bandsaw-checkout","need":{"checkout":"bandsaw","kind":"checkout"}},{"for":"supervised","id":"guards","need":{"kind":"lesson","lesson":"guards"}}],"tier":2},{"class":"combi","gates":[{"for":"independent","id":"combi-checkout","need":{"checkout":"combi","kind":"checkout"}}],"modes":["joint","plane"],"tier":2},{"class":"sander","tier":1}],"effective_from":"2026-03-16T23:00:00Z","recorded":"2026-03-14T23:09:00Z","tiers":[{"tier":1},{"tier":2}],"version":2}},"by":"mia","commit":28,"order":36}',X'8e8e80ca40706122d95e884c230223859dcdbccc06482495ed3fcd87e8278c7e');
INSERT INTO records VALUES(37,29,'c10','details',1773529800,'p6',NULL,'{"action":"enter_person","body":{"at":"2026-03-14T23:10:00Z","details":"0c407b40f00717aa80f5c64e3e556eb46a9650f7b0d2a1bce49cfe412afed21c","id":"c10","kind":"details","person":"p6","recorded":"2026-03-14T23:10:00Z"},"by":"dee","commit":29,"order":37}',X'305fa46607d8e00d850dc3db75c1ea38a1b5dc3bc12384c5e4809b1cacd9b27a');
INSERT INTO records VALUES(38,29,'c10.2','birth',1773529800,'p6',NULL,'{"action":"enter_person","body":{"at":"2026-03-14T23:10:00Z","born":"2c90226204f3779a244fbaa1520d94390ec2a3d45390081448e4e4a6c82e0e6c","id":"c10.2","kind":"birth","person":"p6","recorded":"2026-03-14T23:10:00Z"},"by":"dee","commit":29,"order":38}',X'f1f085cb2534fb5606ea3355ffbb7525d6daeead101ff9149555a446b662c8b2');
INSERT INTO records VALUES(39,30,'c11','strike_out',1773529860,NULL,'c4','{"body":{"at":"2026-03-14T23:11:00Z","id":"c11","kind":"strike_out","reason":"it was kim","record":"c4","recorded":"2026-03-14T23:11:00Z"},"by":"dee","commit":30,"order":39}',X'4a8e039c5ec126a4c178f1c575da62b0b337b94bc341b6827d87cad8fac5de1a');
INSERT INTO records VALUES(40,31,'c12','suspend',1773529920,'lou',NULL,'{"body":{"at":"2026-03-14T23:12:00Z","id":"c12","kind":"suspend","person":"lou","recorded":"2026-03-14T23:12:00Z","scope":{"tier":2},"until":"2027-07-01"},"by":"mia","commit":31,"order":40}',X'87f73284e70bfd794d02996330767549375ae29db150121529fa0cb34f21b13e');
INSERT INTO records VALUES(41,32,'c13','erased',1773529980,'lou',NULL,'{"action":"blank_person","body":{"at":"2026-03-14T23:13:00Z","id":"c13","kind":"erased","person":"lou","recorded":"2026-03-14T23:13:00Z"},"by":"mia","commit":32,"order":41}',X'c915ad41b117a69900dd91481b6b7bced4d359b46396d1334cebe1a8a460b412');
INSERT INTO records VALUES(42,33,'c14','use',1773530040,'kim',NULL,'{"body":{"at":"2026-03-13T23:00:00Z","id":"c14","kind":"use","person":"kim","recorded":"2026-03-14T23:14:00Z","target":"sander"},"by":"mia","commit":33,"note":"d45c3961d2f1daa0dc3a6ceda1156125e817294669398852b0a1c122bab93801","order":42,"paper":true}',X'd3adb1640e3e9be3b97a465b7acecf724e0a6537083efc5ca3b217be90bd8300');
INSERT INTO records VALUES(43,34,'c15','pin',1773530100,'dee',NULL,'{"action":"choose_pin","body":{"at":"2026-03-14T23:15:00Z","id":"c15","key":"eaf260f819403a6a21dc54f51e2419c5a17836590175de2b8cbc76a5d421f9b4","kind":"pin","person":"dee","pin":"ba14edf2101d3dc45d5dc2c19502b0c63dddbd3e62819afba3476fe110b31739","recorded":"2026-03-14T23:15:00Z"},"by":"dee","commit":34,"order":43}',X'180f8c377607333b27bf5439c6cac037b5d4fefadf3074c676210016a87b3723');
CREATE TABLE private_values (
  ord INTEGER NOT NULL REFERENCES records (ord),
  field TEXT NOT NULL CHECK (field IN ('born', 'details', 'note', 'pin')),
  salt TEXT,
  value TEXT,
  PRIMARY KEY (ord, field),
  CHECK ((salt IS NULL) = (value IS NULL))
);
INSERT INTO private_values VALUES(1,'details','21c694376ba323899b2318e03b63b977','{"card":"","email":"","emergency_contact":"","family":"Okafor","given":"Mia","nickname":"","number":"1","phone":""}');
INSERT INTO private_values VALUES(2,'born','3a3d5d9c80329071607fdb471c98a9a5','1980-12-14');
INSERT INTO private_values VALUES(3,'details','b0a636ba479003c4e852aeb65130e76e','{"card":"","email":"","emergency_contact":"","family":"Lindqvist","given":"Ivo","nickname":"","number":"2","phone":""}');
INSERT INTO private_values VALUES(4,'born','254e007e290ab7cb34ebd47b07b2b39b','1983-09-10');
INSERT INTO private_values VALUES(5,'details','fe1889d87c62221a8927247744419622','{"card":"","email":"","emergency_contact":"","family":"Castellano","given":"Dee","nickname":"","number":"3","phone":""}');
INSERT INTO private_values VALUES(6,'details','8ab7565d0119095d1ac4397a03791e7d','{"card":"","email":"","emergency_contact":"","family":"Abara","given":"Kim","nickname":"","number":"4","phone":""}');
INSERT INTO private_values VALUES(7,'born','62d6609cd158d4023c337e389d9b09fc','2000-02-13');
INSERT INTO private_values VALUES(8,'details',NULL,NULL);
INSERT INTO private_values VALUES(17,'pin','75e00327c6418323c2a199dbb8edcf5d',replace('$argon2id$v=19$m=8,t=1,p=1$lKri0nl5uO56D1UVY5Ufig$KNxq+zlqFLLSqbR0OmKRBadMLTzAmT8tp6PgSwzrehA\n1$1$8192$a649a4527c880d5e8c4c53dab040b9f5$c95d8f9d47b22635d580becc3cb7a5f340183198e2639735$01a94115350a9646f38cdbcab77d1e35f71e8671d2602764dbec1264d9580ef5082f3f52ba59f2f85967315e66e55d63$395ee1c9','\n',char(10)));
INSERT INTO private_values VALUES(18,'pin','a4f5b4e67b051ebfe7c9f8a923447f29',replace('$argon2id$v=19$m=8,t=1,p=1$NP6SYK3eWBlf54Eit6kfAw$YJ9wDWZRdU3KGvuu+tXrmSfBb8n+QbYgfvEvhYqEtuA\n1$1$8192$2997f3aaf083fb1e715bc21ea58e4a81$d6acd533489ebd2faae0c69f89d8bd546ebf6d74f11a1d93$67522bc1bfc339901532fea230a5270745ec1eaae6a67d6553384a4d9947c0a1b5aa86ed7a2aa827aa11807a5840a6fe$a65ba68f','\n',char(10)));
INSERT INTO private_values VALUES(19,'pin',NULL,NULL);
INSERT INTO private_values VALUES(23,'note','081f9e8d747af8565ac75e353f23e965','signed in pencil');
INSERT INTO private_values VALUES(24,'note','a1b6e57220f6624eee3ac149f5e8aaa7','late');
INSERT INTO private_values VALUES(37,'details','1cc060bc81073945162fcd9991175a20','{"card":"778106","email":"noor@example.org","emergency_contact":"","family":"Winterbourne","given":"Noor","nickname":"","number":"6","phone":""}');
INSERT INTO private_values VALUES(38,'born','21b392f27b8c31880c5fc46bc4312881','1994-08-23');
INSERT INTO private_values VALUES(42,'note','8cee8a333fde275d6e623aef37d07197','from the book');
INSERT INTO private_values VALUES(43,'pin','151a7e17c722638424f5de2c85293a25',replace('$argon2id$v=19$m=8,t=1,p=1$SJY6s3FhS7QCnxrrjMZ33w$G5Fn8lPbFuLLuEO19XeIzYIQZQQtSEl8O63AOjq1RPc\n1$1$8192$b90562d88de8db71b7eeeb5868b77d5f$4add05de1a628b3a597519988d3057b00e948014da036119$36a63b4e1e39062ae151defffbaf251e3bfd0954cf0d8d0c9223515d40977ddc33bb028e154a6a2ef9a73128f49955bf$96e216a1','\n',char(10)));
CREATE TABLE tree_edge (
  one INTEGER PRIMARY KEY CHECK (one = 1),
  size BIGINT NOT NULL,
  hashes BLOB NOT NULL
);
INSERT INTO tree_edge VALUES(1,44,X'227ff98f310d5ec76a0ba0d3d160442cc7f2fe7150321186891096e77447587a097c5c0e989d01539bf3abe5cb6814ed529dee0ada597b6263dc55d0d1218e6cf2e3c0705755bb9fda708172121351fd6225fde752c820cc36a891da5c3154f5');
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
CREATE INDEX records_of_shop ON records (kind) WHERE kind IN ('details', 'erased', 'join', 'rulebook', 'publish', 'change', 'machine_added', 'lockout', 'release', 'reinstate', 'dismiss', 'restriction', 'strike_out');
COMMIT;
