// All about one person, read back by Python, which knows the form from its page alone.
#include "db/export/person_export.h"

#include <QProcess>
#include <catch2/catch.hpp>
#include <nlohmann/json.hpp>

#include "test_shop.h"

using namespace wm;
using namespace wm::db;
using Json = nlohmann::json;

namespace {

std::string exported(const Store& store, const PersonId& id) {
  const auto text = export_person(store, id);
  if (!text) FAIL(text.error().what);
  return *text;
}

/// Every leaf gives its hash, and every kept value the hash that its leaf holds.
const char* const judge = R"(
import hashlib, json, sys
told = json.load(sys.stdin)
for record in told["records"]:
    if "leaf" not in record:
        assert record["says"]["kind"] == "pin" and "pin" not in record["says"]
        continue
    leaf = json.loads(record["leaf"])
    assert hashlib.sha256(b"\0" + record["leaf"].encode()).hexdigest() == record["hash"]
    assert leaf["order"] == record["order"] and leaf["body"] == record["says"]
    for field, kept in record["private"].items():
        if kept["state"] != "kept": continue
        made = hashlib.sha256(bytes.fromhex(kept["salt"]) + field.encode() + b"\0" + kept["value"].encode())
        assert made.hexdigest() == (
            leaf["note"] if field == "note" else leaf["body"].get("hashed", leaf["body"]).get(field) or leaf["body"][field])
print(len(told["records"]))
)";

int python_counts(const std::string& text) {
  QProcess program;
  program.start("python3", {"-c", judge});
  program.write(text.data(), static_cast<qint64>(text.size()));
  program.closeWriteChannel();
  REQUIRE(program.waitForFinished());
  INFO(program.readAllStandardError().toStdString());
  REQUIRE(program.exitCode() == 0);
  return program.readAllStandardOutput().trimmed().toInt();
}

const Json* record_of(const Json& told, const RecordId& id) {
  for (const Json& record : told.at("records"))
    if (record.at("says").at("id") == id) return &record;
  return nullptr;
}

}  // namespace

TEST_CASE("An export has every record that names a person, with notes about them and strike-outs") {
  TestShop shop;
  Command noted = shop.command("mia", fact(Lesson{"kim", "guards", 1}));
  noted.note = "came with her own \"glasses\"";
  REQUIRE(shop.store().commit(noted));
  const RecordId struck = shop.enter("mia", own(Waiting{"kim", "bandsaw"}));
  shop.enter("mia", StrikeOutRecord{struck, "the wrong list"});
  SignCheckout sign;
  sign.checkout = {"kim", "bandsaw", 0, wm::Outcome::passed, "ivo"};
  sign.pin = "2222";
  sign.restrictions = {"no resawing"};
  REQUIRE(shop.commit("ivo", sign));
  const std::string text = exported(shop.store(), "kim");
  CHECK(text == exported(shop.store(), "kim"));
  const Json told = Json::parse(text);
  CHECK(python_counts(text) == static_cast<int>(told.at("records").size()));
  CHECK(record_of(told, noted.id)->at("private").at("note").at("value") == noted.note);
  CHECK(record_of(told, struck)->at("struck_out").at("reason") == "the wrong list");
  CHECK(text.find("no resawing") != std::string::npos);
  CHECK(told.at("names_of_others").size() == 1);
  CHECK(told.at("names_of_others").contains("ivo"));
}

TEST_CASE("An export tells of a PIN that it is set, and nothing of others' details") {
  TestShop shop;
  Command noted = shop.command("mia", fact(Lesson{"kim", "guards", 1}));
  noted.note = "about kim alone";
  REQUIRE(shop.store().commit(noted));
  const std::string text = exported(shop.store(), "mia");
  const Json told = Json::parse(text);
  CHECK(python_counts(text) > 0);
  CHECK(told.at("pin").at("set") == true);
  CHECK(told.at("role") == "manager");
  CHECK(text.find("argon2") == std::string::npos);
  CHECK(text.find("about kim alone") == std::string::npos);
  REQUIRE(record_of(told, noted.id) != nullptr);
  CHECK(record_of(told, noted.id)->at("as") == Json{"entered_by"});
}

TEST_CASE("Somebody erased is exported by id, with what is left") {
  TestShop shop;
  const std::string given = shop.store().person("lou")->given;
  shop.enter("mia", BlankPerson{"lou"});
  const std::string text = exported(shop.store(), "lou");
  const Json told = Json::parse(text);
  CHECK(python_counts(text) > 0);
  CHECK(told.at("entries").at(0).at("erased") == true);
  CHECK(text.find("\"" + given + "\"") == std::string::npos);
}

TEST_CASE("A person is found by number or id; another word is refused in a sentence") {
  TestShop shop;
  const auto made =
      shop.commit("mia", EnterPerson{Person{{}, "M 77", "Ana", "Aster", {}, {}, {}, {}, {}}, {}});
  REQUIRE(made);
  CHECK(find_person(shop.store(), "M 77") == made->person);
  CHECK(find_person(shop.store(), "kim") == PersonId("kim"));
  const auto none = find_person(shop.store(), "M 9999");
  REQUIRE(!none);
  CHECK(none.error().where == "M 9999");
  CHECK(find_person(shop.store(), "").has_value() == false);
}
