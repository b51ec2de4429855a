// A store in the hands of somebody who can write its file: what they do is found and named, by the program
// and by a verifier that shares no line with it.
#include "db/verify/verify.h"

#include <QFile>
#include <QProcess>
#include <catch2/catch.hpp>
#include <nlohmann/json.hpp>
#include <set>

#include "core/ledger/signing.h"
#include "core/records/json.h"
#include "db/journal/shop_fact_json.h"
#include "db/journal/subject.h"
#include "db/verify/leaf_content.h"
#include "tampered.h"
#include "test_shop.h"

using namespace wm;
using namespace wm::db;
using Json = nlohmann::json;
using verify::FindingKind;
using Lines = std::set<std::string>;

namespace {

/// With a check-out, notes, a birth date, and somebody whose details are erased.
const std::string& honest_file() {
  static TestShop shop;
  static const bool made = [] {
    shop.enter("mia", EnterPerson{Person{{}, "M 77", "Ana", "Aster", {}, {}, {}, {}, {}}, Day{12000}});
    shop.enter("mia", EnterPerson{Person{{}, "M 78", "Bo", "Birch", {}, {}, {}, {}, {}}, Day{12500}});
    Command noted = shop.command("mia", fact(Lesson{"kim", "guards", 1}));
    noted.note = "came with her own \"glasses\"";
    REQUIRE(shop.store().commit(noted));
    SignCheckout sign;
    sign.checkout = {"kim", "bandsaw", 0, wm::Outcome::passed, "ivo"};
    sign.pin = "2222";
    sign.restrictions = {"no resawing"};
    sign.marks = {Mark::none};
    sign.measured = {{1, "25,2", "25.2 mm", "0.1 mm"}};
    REQUIRE(shop.commit("ivo", sign));
    Booking booking{"kim", "ivo", "b1", "bandsaw", shop.now() + day, shop.now() + day + hour};
    booking.instead_of = shop.enter("dee", own(booking));
    booking.to = booking.to + hour;
    shop.enter("dee", own(booking));
    Booking held{"dee", "mia", "b2", "bandsaw", shop.now() + 2 * day, shop.now() + 2 * day + hour};
    held.held_through = shop.now() + day;
    shop.enter("dee", own(held));
    held = {"dee", "mia", "b2", "bandsaw", shop.now() + day, shop.now() + day + hour};
    shop.enter("dee", own(Cancel{shop.enter("dee", own(held)), "ill"}));
    const RecordId wrong = shop.enter("mia", own(Waiting{"lou", "bandsaw"}));
    shop.enter("mia", StrikeOutRecord{wrong, "Lou meant the sander"});
    const Person kim = *shop.store().person("kim");
    Person wrongly = kim;
    wrongly.given = "Kimberly";
    const RecordId corrected = shop.enter("mia", CorrectPerson{wrongly});
    shop.enter("mia", CorrectPerson{kim});
    shop.enter("mia", BlankRecord{corrected});
    shop.enter("mia", own(small_bank()));
    Command begin = shop.command("kim", own(begun_by("kim")));
    begin.quiz_station = true;
    REQUIRE(shop.store().commit(begin));
    Command handed = shop.command("kim", HandIn{begin.id, small_attempt()});
    handed.quiz_station = true;
    REQUIRE(shop.store().commit(handed));
    shop.enter("mia", BlankPerson{"lou"});
    shop.enter("mia", own(StationTold{"bureau", Station::office}));
    shop.reopen("bureau");
    shop.enter("dee", own(Presence{"dee"}));
    shop.close();
    return true;
  }();
  (void)made;
  return shop.path();
}

verify::KnownRoot known(const ledger::Head& head) {
  return verify::read_known_root("the paper", ledger::to_text(ledger::shortened(head))).value();
}

/// What the other verifier finds, the roots apart.
Lines python(const std::string& path, const std::vector<std::string>& against,
             const std::vector<std::string>& verified, std::vector<std::string>& roots) {
  QStringList words = {"-B", WM_TESTS "/oracles/ledger.py", QString::fromStdString(path)};
  for (const std::string& root : against) words << "--against" << QString::fromStdString(root);
  for (const std::string& root : verified) words << "--verified" << QString::fromStdString(root);
  QProcess program;
  program.setProcessChannelMode(QProcess::SeparateChannels);
  program.start("python3", words);
  REQUIRE(program.waitForFinished());
  INFO(program.readAllStandardError().toStdString());
  REQUIRE(program.exitCode() == 0);
  const Json said = Json::parse(program.readAllStandardOutput().toStdString());
  roots = said.at("roots").get<std::vector<std::string>>();
  return said.at("found").get<Lines>();
}

std::string_view word(verify::Outcome outcome) {
  return outcome == verify::Outcome::holds     ? "holds"
         : outcome == verify::Outcome::altered ? "altered"
                                               : "cut_off";
}

/// What the program finds, after the other verifier has found the same.
verify::Report look(const std::string& path, const std::vector<ledger::Head>& heads = {},
                    const std::optional<ledger::Head>& verified = std::nullopt) {
  verify::Ask ask;
  std::vector<std::string> texts, verified_texts, theirs;
  if (verified) {
    ask.verified = known(*verified);
    verified_texts.push_back(ledger::to_text(ledger::shortened(*verified)));
  }
  for (const ledger::Head& head : heads) {
    ask.against.push_back(known(head));
    texts.push_back(ledger::to_text(ledger::shortened(head)));
  }
  verify::Report report = verify::look_through(path, ask).value();
  Lines ours;
  for (const verify::Finding& finding : report.findings.kept())
    if (finding.kind != FindingKind::altered && finding.kind != FindingKind::cut_off)
      ours.insert(std::string(word(finding.kind)) + ": " + finding.place);
  CHECK(ours == python(path, texts, verified_texts, theirs));
  std::vector<std::string> outcomes;
  for (const auto& answer : report.roots) outcomes.emplace_back(word(answer.outcome));
  CHECK(outcomes == theirs);
  return report;
}

/// Every finding as "kind: place".
Lines found(const verify::Report& report) {
  Lines out;
  for (const verify::Finding& finding : report.findings.kept())
    out.insert(std::string(word(finding.kind)) + ": " + finding.place);
  return out;
}

template <class Variant, class Each, std::size_t... I>
void each_kind(const Each& each, std::index_sequence<I...>) {
  (each(Variant(std::in_place_index<I>)), ...);
}
template <class Variant, class Each>
void for_each_kind(const Each& each) {
  each_kind<Variant>(each, std::make_index_sequence<kinds_in<Variant>>());
}

std::string order_of(Tampered& file, const std::string& where) {
  return file.rows("SELECT max(ord) FROM records WHERE " + where).at(0).at(0);
}

}  // namespace

TEST_CASE("an honest store is found to be one", "[verify]") {
  Tampered file(honest_file());
  const ledger::Head head = file.head();
  const verify::Report report = look(file.path(), {{head.size / 2, {}, {}}, head});
  CHECK(found(report) == Lines{"altered: the paper"});  // the first of the two is no root of this shop
  CHECK(found(look(file.path(), {head})).empty());
  CHECK(report.head.size == head.size);
  CHECK(report.head.root == head.root);
  CHECK(report.checkouts.held == 1);  // a root that was only written down says nothing of signatures
  CHECK(report.checkouts.unsigned_here == 0);
  CHECK(look(file.path()).checkouts.held == 1);
}

TEST_CASE("what was verified before is not verified again, where its root holds", "[verify]") {
  Tampered file(honest_file());
  const ledger::Head before = file.head();
  const verify::Report report = look(file.path(), {}, before);
  CHECK(found(report).empty());
  CHECK(report.checkouts.verified_before == 1);
  CHECK(report.checkouts.held == 0);
  REQUIRE(report.roots.size() == 1);
  verify::Ask all;
  all.verified = known(before);
  all.all = true;
  CHECK(verify::look_through(file.path(), all)->checkouts.held == 1);
  SECTION("and everything is, where it does not") {
    file.rebuild([](std::vector<Json>& leaves) {
      for (Json& leaf : leaves)
        if (leaf["body"]["kind"] == "checkout") leaf["body"]["outcome"] = "failed";
    });
    CHECK(found(look(file.path(), {}, before)) ==
          Lines{"altered: the paper", "signature: record " + order_of(file, "kind = 'signature'")});
  }
}

TEST_CASE("records beyond one stretch of reading are looked at in their order", "[verify]") {
  Tampered file(honest_file());
  const std::size_t short_size = file.head().size;
  file.rebuild([](std::vector<Json>& leaves) {
    const auto lesson = std::find_if(leaves.begin(), leaves.end(),
                                     [](const Json& leaf) { return leaf["body"]["kind"] == "lesson"; });
    Json more = *lesson;
    more.erase("note");
    for (int i = 0; i < 30'000; ++i) {
      more["body"]["id"] = "more " + std::to_string(i);
      more["commit"] = 10'000 + i;
      leaves.push_back(more);
    }
  });
  const verify::Report report = look(file.path());
  CHECK(found(report).empty());
  CHECK(report.head.root == file.head().root);
  CHECK(report.head.size == short_size + 30'000);
  file.run("UPDATE records SET kind = 'quiz' WHERE ord = 25000; DELETE FROM records WHERE ord = 29000");
  const Lines wrong = found(look(file.path()));
  CHECK(wrong.contains("column: record 25000, kind"));
  CHECK(wrong.contains("order: record 29000"));
}

TEST_CASE("whichever column of whichever table is changed, it is found", "[verify]") {
  Tampered honest(honest_file());
  for (const char* table : {"shop", "records", "private_values", "tree_edge", "taken"}) {
    for (const auto& column :
         honest.rows("SELECT name FROM pragma_table_info('" + std::string(table) + "')")) {
      const std::string name = column[0];
      for (const char* order : {"", " DESC"}) {
        Tampered file(honest_file());
        const std::string row = " WHERE rowid = (SELECT rowid FROM " + std::string(table) + " WHERE " + name +
                                " IS NOT NULL ORDER BY rowid" + order + " LIMIT 1)";
        file.run("UPDATE OR REPLACE " + std::string(table) + " SET " + name + " = CASE typeof(" + name +
                 ") WHEN 'integer' THEN " + name + " + 3 WHEN 'blob' THEN x'00' ELSE " + name +
                 " || '1' END" + row);
        INFO(table << "." << name << order);
        CHECK_FALSE(found(look(file.path())).empty());
      }
    }
  }
}

TEST_CASE("what was done is named", "[verify]") {
  Tampered file(honest_file());
  SECTION("two names swapped") {
    const std::string kim = order_of(file, "kind = 'details' AND person = 'kim'"),
                      ivo = order_of(file, "kind = 'details' AND person = 'ivo'");
    file.run("UPDATE private_values SET ord = -1 WHERE field = 'details' AND ord = " + kim +
             "; UPDATE private_values SET ord = " + kim + " WHERE field = 'details' AND ord = " + ivo +
             "; UPDATE private_values SET ord = " + ivo + " WHERE ord = -1");
    CHECK(found(look(file.path())) ==
          Lines{"private_value: record " + kim + ", details", "private_value: record " + ivo + ", details"});
  }
  SECTION("a birth date blanked without a record that erases it") {
    const std::string born = order_of(file, "kind = 'birth'");
    file.run("UPDATE private_values SET salt = NULL, value = NULL WHERE field = 'born' AND ord = " + born);
    CHECK(found(look(file.path())) == Lines{"blanked: record " + born + ", born"});
  }
  SECTION("a note taken away, and one added") {
    const std::string noted = file.rows("SELECT ord FROM private_values WHERE field = 'note'")[0][0];
    file.run("UPDATE private_values SET ord = 1 WHERE field = 'note'");
    CHECK(found(look(file.path())) ==
          Lines{"private_value: record " + noted + ", note", "private_value: record 1, note"});
  }
  SECTION("a leaf changed, with its hash") {
    const std::string lesson = order_of(file, "kind = 'lesson'");
    const std::string leaf =
        file.rows("SELECT replace(leaf, 'kim', 'dee') FROM records WHERE ord = " + lesson)[0][0];
    file.run("UPDATE records SET leaf = '" + leaf + "', hash = x'" + ledger::to_hex(ledger::leaf_hash(leaf)) +
             "', person = 'dee' WHERE ord = " + lesson);
    CHECK(found(look(file.path())) == Lines{"edge: the tree's edge, hashes"});
  }
  SECTION("a record taken out of the middle") {
    file.run("DELETE FROM private_values WHERE ord = 9; DELETE FROM records WHERE ord = 9");
    CHECK(found(look(file.path())).contains("order: record 9"));
  }
  SECTION("a time that is taken set free, one made longer, and one taken by nobody") {
    const std::string held = order_of(file, "ord IN (SELECT ord FROM taken WHERE held_through IS NOT NULL)"),
                      moved = order_of(file, "ord IN (SELECT ord FROM taken WHERE held_through IS NULL)");
    file.run(
        "DELETE FROM taken WHERE what = 'machine b2'; UPDATE taken SET until_at = until_at + 60 WHERE what = "
        "'person ivo'; INSERT INTO taken VALUES (1, 'machine s1', 0, 60, NULL)");
    CHECK(found(look(file.path())) == Lines{"taken: record " + held + ", machine b2",
                                            "taken: record " + moved + ", person ivo",
                                            "taken: record 1, machine s1"});
  }
  SECTION("a guard gone, one changed, one added") {
    file.run_plain(
        "DROP TRIGGER records_delete; DROP TRIGGER records_update; CREATE TRIGGER records_update BEFORE "
        "UPDATE "
        "ON records BEGIN SELECT 1; END; CREATE TABLE more (one)");
    CHECK(found(look(file.path())) ==
          Lines{"schema: trigger records_delete", "schema: trigger records_update", "schema: table more"});
  }
}

TEST_CASE("what a root covered can't be cut off, altered or rebuilt", "[verify]") {
  Tampered file(honest_file());
  const ledger::Head paper = file.head();
  SECTION("the end cut off, all else put right") {
    file.rebuild([](std::vector<Json>& leaves) { leaves.pop_back(); });
    CHECK(found(look(file.path(), {paper})).contains("cut_off: the paper"));
  }
  SECTION("everything rebuilt with another result: the signature tells, without a root") {
    file.rebuild([](std::vector<Json>& leaves) {
      for (Json& leaf : leaves)
        if (leaf["body"]["kind"] == "checkout") leaf["body"]["outcome"] = "failed";
    });
    CHECK(found(look(file.path())) == Lines{"signature: record " + order_of(file, "kind = 'signature'")});
    CHECK(found(look(file.path(), {paper})).contains("altered: the paper"));
  }
  SECTION("everything rebuilt with another person at a lesson") {
    file.rebuild([](std::vector<Json>& leaves) {
      for (Json& leaf : leaves)
        if (leaf["body"]["kind"] == "lesson") leaf["body"]["person"] = "dee";
    });
    CHECK(found(look(file.path())).empty());  // nobody can know without a root
    const verify::Report report = look(file.path(), {paper});
    CHECK(found(report) == Lines{"altered: the paper"});
  }
  SECTION("a record put in between is bracketed by the roots") {
    Tampered earlier(file.path());
    earlier.rebuild([](std::vector<Json>& leaves) { leaves.resize(10); });
    const ledger::Head before = earlier.head();
    file.rebuild([](std::vector<Json>& leaves) {
      Json more = leaves[12];
      more["body"]["id"] = "slipped in";
      more["commit"] = 10'000;
      leaves.insert(leaves.begin() + 14, more);
    });
    const verify::Report report = look(file.path(), {paper, before});
    REQUIRE(report.roots.size() == 2);
    CHECK(report.roots[0].outcome == verify::Outcome::holds);
    CHECK(report.roots[1].outcome == verify::Outcome::altered);
    const auto& kept = report.findings.kept();
    REQUIRE_FALSE(kept.empty());
    CHECK(kept.back().says == "one or more of the records 11 to " + std::to_string(paper.size - 1) +
                                  " altered, added, removed or rebuilt");
  }
}

TEST_CASE("check-outs are held to their signatures", "[verify]") {
  Tampered file(honest_file());
  const ledger::SigningKey key = ledger::SigningKey::random(), other = ledger::SigningKey::random();
  const std::string salt(32, 'a'), value = "sealed";
  const Json times = {{"at", "2026-11-24T18:05:00Z"}, {"recorded", "2026-11-24T18:05:00Z"}};
  const auto body = [&](Json said) {
    said.update(times);
    return said;
  };
  const std::string hash =
      ledger::to_hex(ledger::sha256(ledger::from_hex(salt).value() + "pin" + std::string(1, '\0') + value));
  file.rebuild([&](std::vector<Json>& leaves) {
    leaves.push_back({{"commit", 10'000},
                      {"order", 0},
                      {"body", body({{"id", "key"},
                                     {"kind", "pin"},
                                     {"person", "ivo"},
                                     {"pin", hash},
                                     {"key", ledger::to_hex(key.public_key())}})}});
    leaves.push_back({{"commit", 10'001},
                      {"order", 0},
                      {"body", body({{"id", "passed"},
                                     {"kind", "checkout"},
                                     {"person", "kim"},
                                     {"checkout", "bandsaw"},
                                     {"revision", 0},
                                     {"outcome", "passed"},
                                     {"assessor", "ivo"}})}});
  });
  file.run("INSERT INTO private_values VALUES (" + order_of(file, "id = 'key'") + ", 'pin', '" + salt +
           "', '" + value + "')");
  const auto signed_by = [&](const ledger::SigningKey& with, const ledger::SigningKey& named,
                             const std::string& person) {
    const std::string leaf = file.rows("SELECT leaf FROM records WHERE id = 'passed'")[0][0];
    const auto message = ledger::checkout_message(std::vector{ledger::leaf_hash(leaf)});
    file.rebuild([&](std::vector<Json>& leaves) {
      leaves.push_back({{"commit", leaves.back()["commit"]},
                        {"order", 0},
                        {"body", body({{"id", "signed"},
                                       {"kind", "signature"},
                                       {"checkout", "passed"},
                                       {"person", person},
                                       {"key", ledger::to_hex(named.public_key())},
                                       {"signature", ledger::to_hex(with.sign(message))}})}});
    });
    return look(file.path());
  };
  const std::string place = "signature: record " + std::to_string(file.head().size);
  SECTION("one that holds") {
    const verify::Report report = signed_by(key, key, "ivo");
    CHECK(found(report).empty());
    CHECK(report.checkouts.held == 2);  // with the one that the shop's own assessor signed
    CHECK(look(file.path(), {}, file.head()).checkouts.verified_before == 2);
  }
  SECTION("another key's signature") { CHECK(found(signed_by(other, key, "ivo")) == Lines{place}); }
  SECTION("a key that was never theirs") { CHECK(found(signed_by(other, other, "ivo")) == Lines{place}); }
  SECTION("not the one who assessed") { CHECK(found(signed_by(key, key, "mia")) == Lines{place}); }
  SECTION("the check-out changed after it, everything rebuilt") {
    (void)signed_by(key, key, "ivo");
    file.rebuild([](std::vector<Json>& leaves) {
      for (Json& leaf : leaves)
        if (leaf["body"]["id"] == "passed") leaf["body"]["person"] = "dee";
    });
    CHECK(found(look(file.path())) == Lines{place});
  }
}

namespace {

/// Kim's check-out by Ivo, ready to be signed; Kim's PIN is 7777.
SignCheckout kims(TestShop& shop) {
  shop.enter("dee", fact(Lesson{"kim", "guards", 1}));
  shop.enter("dee", ChoosePin{"kim", "7777"});
  shop.wait(60);
  SignCheckout sign;
  sign.checkout = {"kim", "bandsaw", 0, wm::Outcome::passed, "ivo"};
  sign.pin = "2222";
  return sign;
}

}  // namespace

TEST_CASE("a member's countersignature is held to their own key", "[verify]") {
  TestShop shop;
  SignCheckout sign = kims(shop);
  sign.countersign = Countersign{Hand::pin, "7777"};
  REQUIRE(shop.commit("ivo", sign));
  shop.close();
  Tampered file(shop.path());
  const auto is_members = [](const Json& leaf) {
    return leaf["body"]["kind"] == "signature" && leaf["body"]["person"] == "kim";
  };
  const auto order = [&](const std::string& kind) {
    return order_of(file, "kind = '" + kind + "' AND person = 'kim'");
  };
  SECTION("as it was signed") {
    const verify::Report report = look(file.path());
    CHECK(found(report).empty());
    CHECK(report.checkouts.held == 1);  // one check-out, however many signed it
  }
  SECTION("the member's signature taken out, everything rebuilt") {
    // The assessor's comes where the member's should stand.
    file.rebuild([&](std::vector<Json>& leaves) { std::erase_if(leaves, is_members); });
    CHECK(found(look(file.path())).contains("signature: record " + order_of(file, "kind = 'signature'")));
  }
  SECTION("both signatures taken out, everything rebuilt") {
    const std::string place = "signature: record " + order("countersigned");
    file.rebuild([&](std::vector<Json>& leaves) {
      std::erase_if(leaves, [](const Json& leaf) { return leaf["body"]["kind"] == "signature"; });
    });
    CHECK(found(look(file.path())).contains(place));
  }
  SECTION("the member's signature made with another key") {
    const std::string place = "signature: record " + order("signature");
    const ledger::SigningKey other = ledger::SigningKey::random();
    file.rebuild([&](std::vector<Json>& leaves) {
      for (Json& leaf : leaves)
        if (is_members(leaf)) leaf["body"]["signature"] = ledger::to_hex(other.sign("anything"));
    });
    CHECK(found(look(file.path())).contains(place));
  }
  SECTION("somebody else put in the member's place") {
    file.rebuild([&](std::vector<Json>& leaves) {
      for (Json& leaf : leaves)
        if (leaf["body"]["kind"] == "countersigned") leaf["body"]["person"] = "dee";
    });
    CHECK_FALSE(found(look(file.path())).empty());
  }
}

TEST_CASE("a signature of who countersigned later is held to their own key", "[verify]") {
  TestShop shop;
  const auto done = shop.commit("ivo", kims(shop));
  REQUIRE(done);
  shop.wait(60);
  shop.enter("dee", CountersignCheckout{done->entries[0].id, {Hand::pin, "7777"}});
  shop.close();
  Tampered file(shop.path());
  const auto seen = [&] { return found(look(file.path())); };
  const auto order = [&](const std::string& kind) {
    return "signature: record " + order_of(file, "kind = '" + kind + "' AND person = 'kim'");
  };
  SECTION("as it was signed") { CHECK(seen().empty()); }
  SECTION("taken out, everything rebuilt") {
    file.rebuild([&](std::vector<Json>& leaves) {
      std::erase_if(leaves, [](const Json& leaf) {
        return leaf["body"]["kind"] == "signature" && leaf["body"]["person"] == "kim";
      });
    });
    CHECK(seen() == Lines{order("countersigned")});
  }
  SECTION("made to be under the check-out, everything rebuilt") {
    file.rebuild([&](std::vector<Json>& leaves) {
      for (Json& leaf : leaves)
        if (leaf["body"]["kind"] == "signature" && leaf["body"]["person"] == "kim")
          leaf["body"]["checkout"] = done->entries[0].id;
    });
    CHECK(seen().contains(order("signature")));
  }
}

TEST_CASE("a second assessor's signature is held to their own key, and missed where it is gone", "[verify]") {
  TestShop shop;
  shop.enter("dee", fact(Lesson{"kim", "guards", 1}));
  shop.enter("dee", ChoosePin{"kim", "7777"});
  shop.enter("dee", own(Printed{"Run sheet", 1, std::string(64, 'a'), "7K2Q9X"}));
  Rulebook rulebook = small_rulebook(shop.store().rulebooks().back().version + 1, shop.now() + 1);
  rulebook.tiers[1].two_assessors = true;
  shop.enter("mia", PublishRulebook{rulebook});
  shop.wait(60);
  SignCheckout sign;
  sign.checkout = {"kim", "bandsaw", 0, wm::Outcome::passed, "ivo"};
  sign.pin = "2222";
  sign.second = SecondAssessor{"mia", "1111"};
  sign.countersign = Countersign{Hand::pin, "7777"};
  REQUIRE(shop.commit("ivo", sign));
  // From paper nobody signs here.
  EnterPaperSheet paper{sign, "7K2Q9X"};
  paper.sheet.pin.clear();
  paper.sheet.second->pin.clear();
  paper.sheet.countersign.reset();
  paper.sheet.sheet = "bandsaw";
  paper.sheet.sheet_revision = 1;
  paper.sheet.marks = {Mark::shown};
  REQUIRE(shop.from_paper("mia", paper, shop.now()));
  Booking booking{"lou", "ivo", "b2", "bandsaw", shop.now() + day, shop.now() + day + hour};
  booking.second = "mia";
  shop.enter("dee", own(booking));
  shop.close();
  Tampered file(shop.path());
  const auto is_by = [](const char* who) {
    return [who](const Json& leaf) {
      return leaf["body"]["kind"] == "signature" && leaf["body"]["person"] == who;
    };
  };
  const auto order = [&](const std::string& where) { return "signature: record " + order_of(file, where); };
  const auto seen = [&] { return found(look(file.path())); };
  SECTION("as it was signed, by three") {
    CHECK(seen().empty());
    CHECK(look(file.path()).checkouts.held == 1);
  }
  SECTION("the second's signature taken out, everything rebuilt") {
    file.rebuild([&](std::vector<Json>& leaves) { std::erase_if(leaves, is_by("mia")); });
    CHECK(seen().contains(order("kind = 'signature' AND person = 'ivo'")));
  }
  SECTION("the second's and the assessor's taken out, everything rebuilt") {
    const std::string place = order(
        "kind = 'witnessed' AND ord < (SELECT max(ord) FROM records WHERE kind = "
        "'signature')");
    file.rebuild([&](std::vector<Json>& leaves) {
      std::erase_if(leaves, is_by("mia"));
      std::erase_if(leaves, is_by("ivo"));
    });
    CHECK(seen().contains(place));
  }
  SECTION("the second's signature made with another key") {
    const std::string place = order("kind = 'signature' AND person = 'mia'");
    const ledger::SigningKey other = ledger::SigningKey::random();
    file.rebuild([&](std::vector<Json>& leaves) {
      for (Json& leaf : leaves)
        if (is_by("mia")(leaf)) leaf["body"]["signature"] = ledger::to_hex(other.sign("anything"));
    });
    CHECK(seen().contains(place));
  }
  SECTION("somebody else put in the second's place") {
    file.rebuild([&](std::vector<Json>& leaves) {
      for (Json& leaf : leaves)
        if (leaf["body"]["kind"] == "witnessed") leaf["body"]["assessor"] = "dee";
    });
    CHECK(seen().contains(order("kind = 'signature' AND person = 'mia'")));
  }
  SECTION("what was signed said to have been on paper, everything rebuilt") {
    file.rebuild([&](std::vector<Json>& leaves) {
      for (Json& leaf : leaves)
        if (leaf["body"]["kind"] == "witnessed") leaf["paper"] = true;
    });
    CHECK_FALSE(seen().empty());
  }
  SECTION("the second's time taken out of what is taken") {
    file.run("DELETE FROM taken WHERE what = 'person mia'");
    CHECK(seen().contains("taken: record " + order_of(file, "kind = 'booking'") + ", person mia"));
  }
}

TEST_CASE("who signs with a PIN that they chose under another entry of theirs is who assessed", "[verify]") {
  TestShop shop;
  shop.enter("dee", fact(Lesson{"kim", "guards", 1}));
  shop.enter("mia",
             EnterPerson{Person{"ivo-again", "M 90", "Ivo", "Again", {}, {}, {}, {}, {}}, std::nullopt});
  shop.enter("mia", own(Join{"ivo-again", "ivo"}));
  shop.wait(60);
  SignCheckout sign;
  sign.checkout = {"kim", "bandsaw", 0, wm::Outcome::passed, "ivo-again"};
  sign.pin = "2222";
  const auto done = shop.commit("ivo-again", sign);
  INFO((done ? "" : done.error().what));
  REQUIRE(done);
  shop.close();
  const verify::Report report = look(shop.path());
  CHECK(found(report).empty());
  CHECK(report.checkouts.held == 1);
}

TEST_CASE("one record, and the growth from one root to the next, are proved", "[verify]") {
  Tampered file(honest_file()), earlier(honest_file());
  earlier.rebuild([](std::vector<Json>& leaves) { leaves.resize(10); });
  const std::string id = file.rows("SELECT id FROM records WHERE ord = 12")[0][0];
  const auto report = verify::look_through(file.path(), {{known(earlier.head())}, {}, false, true, id});
  REQUIRE(report);
  REQUIRE(report->record);
  CHECK(report->record->order == 12);
  CHECK(ledger::verify_inclusion(ledger::leaf_hash(report->record->leaf), 12, report->head.size,
                                 report->record->proof, report->head.root));
  REQUIRE(report->growth.size() == 1);
  CHECK(ledger::verify_consistency(11, earlier.head().root, report->head.size, report->head.root,
                                   report->growth[0].proof));
}

TEST_CASE("what a record is about is read as the program itself reads it, for every kind", "[verify]") {
  // Each text of a fact says its own name, so that one taken for another is seen.
  const auto subject = [](Json body) -> Subject {
    const std::string kind = body["kind"];
    if (!is_shop_kind(kind)) return subject_of(read_record(body.dump()).value().fact);
    const auto tree = json::Tree::parse(body.dump());
    return subject_of(read_shop_fact(kind, tree->root(), {}).value());
  };
  const auto check = [&](Json body) {
    for (auto& [key, value] : body.items())
      if (value == "") value = key;
    INFO(body.dump());
    const Subject theirs = subject(body);
    if (body["kind"] == "details" || body["kind"] == "pin")
      body[std::string(body["kind"])] = std::string(64, 'a');
    verify::LeafContent ours;
    REQUIRE_FALSE(verify::read_leaf(Json{{"body", body}, {"commit", 1}, {"order", 1}}.dump(), ours));
    CHECK(ours.person == theirs.person);
    CHECK(ours.refers_to == theirs.refers_to);
  };
  for_each_kind<ShopFact>([&](const ShopFact& fact) {
    if (!std::holds_alternative<RulebookIssued>(fact)) check(to_json("x", evening, evening, fact));
    if (Booking moves; std::holds_alternative<Booking>(fact)) {  // left out where it says nothing
      moves.instead_of = "instead_of";
      check(to_json("x", evening, evening, moves));
    }
    if (SheetMarks marks; std::holds_alternative<SheetMarks>(fact)) {
      marks.opened = "opened";
      check(to_json("x", evening, evening, marks));
    }
  });
  for_each_kind<Fact>([&](const Fact& fact) {
    if (!std::holds_alternative<Birth>(fact))
      check(Json::parse(to_json(Record{"x", evening, evening, {}, fact})));
  });
}

TEST_CASE("what is no store is refused", "[verify]") {
  CHECK_FALSE(verify::look_through("/nowhere/shop.wmk", {}));
  CHECK_FALSE(verify::look_through(WM_TESTS "/CMakeLists.txt", {}));
}

TEST_CASE("JSON is canonical or it is not", "[verify]") {
  verify::Members members;
  for (const char* text : {R"({})", R"({"a":[1,-2,true,null,{}],"b":"\"\\\b\f\n\r\t\u0001\u001f","ü":"é€😀"})",
                           R"({"a":9007199254740991,"b":{"c":false}})"})
    CHECK(verify::Members::read(text, members));
  for (const char* text : {"",
                           "[]",
                           "{",
                           "{} ",
                           R"({"b":1,"a":1})",
                           R"({"a":1,"a":1})",
                           R"({"":1,"":1})",
                           R"({"a": 1})",
                           R"({"a":01})",
                           R"({"a":-0})",
                           R"({"a":1.0})",
                           R"({"a":1e3})",
                           R"({"a":9007199254740992})",
                           R"({"a":+1})",
                           R"({"a":"\/"})",
                           R"({"a":"\u000a"})",
                           R"({"a":"\u001F"})",
                           R"({"a":"\u0020"})",
                           R"({"a":[1,]})",
                           "{\"a\":\"\n\"}",
                           "{\"a\":\"\xff\"}",
                           "{\"a\":\"\xc0\xaf\"}",
                           "{\"a\":\"\xed\xa0\x80\"}",
                           R"({"a":tru})",
                           R"({"a":nulll})",
                           R"({"a":-})"}) {
    INFO(text);
    CHECK_FALSE(verify::Members::read(text, members));
  }
  REQUIRE(verify::Members::read(R"({"a":"x\"y","b":7})", members));
  CHECK(members.text("a") == "x\"y");
  CHECK(members.whole("b") == 7);
  CHECK_FALSE(members.text("b"));
}

TEST_CASE("what stands in a text is looked at wherever it stands", "[verify]") {
  verify::Members members;
  for (std::size_t at = 0; at < 20; ++at)
    for (int byte = 0; byte < 256; ++byte) {
      std::string text = R"({"a":"....................é"})";
      text[6 + at] = static_cast<char>(byte);
      const Json read = Json::parse(text, nullptr, false);
      INFO("byte " << byte << " at " << at);
      CHECK(verify::Members::read(text, members) == (!read.is_discarded() && read.dump() == text));
    }
}

TEST_CASE("the members of an object within are read with those around it, and no others", "[verify]") {
  verify::Members around, within;
  using Pairs = std::vector<std::pair<std::string_view, std::string_view>>;
  REQUIRE(verify::Members::read(R"({"":{"q":1},"a":{"b":{"c":1},"d":"x"},"e":{"a":{"f":2}}})", around, "a",
                                within));
  CHECK(around.all().size() == 3);
  CHECK(around.raw("e") == R"({"a":{"f":2}})");
  CHECK(within.all() == Pairs{{"b", R"({"c":1})"}, {"d", R"("x")"}});
  REQUIRE(verify::Members::read(R"({"a":[{"b":1}]})", around, "a", within));
  CHECK(within.all().empty());
  CHECK_FALSE(verify::Members::read(R"({"a":{"c":1,"b":1}})", around, "a", within));
}

TEST_CASE("a row that its order does not lead to is missed by no look", "[verify]") {
  Tampered file(honest_file());
  const std::string id = file.rows("SELECT id FROM records ORDER BY ord DESC LIMIT 1").at(0).at(0);
  const auto last = static_cast<unsigned char>(std::stoi(order_of(file, "1")));
  REQUIRE(last < 128);  // so that it takes one byte
  QFile bytes(QString::fromStdString(file.path()));
  REQUIRE(bytes.open(QIODevice::ReadWrite));
  QByteArray all = bytes.readAll();
  // A cell of the table: its size and the row's number, each of seven bits a byte, then the row itself
  // (sqlite.org/fileformat2.html, 1.6). The last row gets the number of the third.
  int changed = 0;
  for (qsizetype page = 0; page < all.size(); page += 4096) {
    const auto at = [&](qsizetype offset) { return static_cast<unsigned char>(all[page + offset]); };
    if (page == 0 || at(0) != 13) continue;  // no leaf of a table
    for (int cell = 0; cell < (at(3) << 8 | at(4)); ++cell) {
      qsizetype from = at(8 + 2 * cell) << 8 | at(9 + 2 * cell);
      while (at(from) >= 128) ++from;
      if (at(from + 1) != last || all.indexOf(id.c_str(), page + from) > page + from + 64) continue;
      all[page + from + 1] = 3;
      ++changed;
    }
  }
  REQUIRE(changed == 1);
  bytes.seek(0);
  bytes.write(all);
  bytes.close();
  const verify::Report report = verify::look_through(file.path(), {}).value();
  const Lines lines = found(report);
  for (const std::string& line : lines) UNSCOPED_INFO(line);
  CHECK(lines.contains("unreadable: record 4"));
}
