// Who may enter what: written down from what the roles are for, and not from the program.
//   desk: books, enters people, takes papers, stops anybody for tonight, puts a machine out of service, takes
//   off their own lock.
//   instructor: also signs check-outs, supervises, records incidents.
//   manager: also rulebook, appointments, suspensions lifted, another's lock after an attempt to reach them.
//   quiz station: an attempt, nothing else.
// And where: the front desk takes what is booked, entered and brought on paper; the tablet what happens at
// machines; the office what the shop goes by; the quiz station what somebody enters for themselves.
#include <algorithm>
#include <array>
#include <catch2/catch.hpp>
#include <cstdlib>
#include <fstream>
#include <functional>
#include <map>

#include "db/journal/shop_fact_json.h"
#include "test_shop.h"

using namespace wm;
using namespace wm::db;

namespace {

/// What the table's actions refer to.
struct Records {
  RecordId desk_lock, instructor_lock, manager_lock, reached_lock, suspension, appointment, booking, waiting;
  RecordId change, lesson, visit, entered_for_instructor;
  RecordId started, held, desk_entry, manager_entry, old_desk_entry, checkout, noted, begun, watched, opened;
};

/// Makes a shop in which each of the table's actions could have happened.
Records prepare(TestShop& shop) {
  Records r;
  // The combi alone is of a tier in which two assess.
  Rulebook rulebook = small_rulebook(shop.store().rulebooks().back().version + 1, shop.now() + 1);
  rulebook.tiers.push_back(rulebook.tiers[1]);
  rulebook.tiers.back().tier = 3;
  rulebook.tiers.back().two_assessors = true;
  for (MachineClass& each : rulebook.classes)
    if (each.name == "combi") each.tier = 3;
  shop.enter("mia", PublishRulebook{rulebook});
  shop.wait(1);
  r.desk_lock = shop.enter("dee", fact(Lockout{"b2"}));
  r.instructor_lock = shop.enter("ivo", fact(Lockout{"b2"}));
  r.manager_lock = shop.enter("mia", fact(Lockout{"b2"}));
  r.reached_lock = shop.enter("dee", fact(Lockout{"b2"}));
  shop.enter("mia", own(Reached{r.reached_lock, "phoned twice"}));
  r.entered_for_instructor = shop.enter("dee", PutOutOfService{"b2", "8", "4", "belt torn", "ivo", "ivo"});
  r.suspension = shop.enter("mia", fact(Suspend{"lou", Everything{}, std::nullopt}));
  r.appointment = shop.enter("mia", fact(Appoint{"lou", Everything{}, false, std::nullopt}));
  r.booking =
      shop.enter("dee", own(Booking{"kim", "ivo", "b1", "bandsaw", evening + day, evening + day + hour}));
  Booking held{"kim", "ivo", "b1", "bandsaw", evening + 2 * day, evening + 2 * day + hour};
  held.held_through = evening + 2 * day;
  r.held = shop.enter("dee", own(held));
  shop.enter("mia", fact(Appoint{"dee", Everything{}, true, Day{21000}}));  // able, but no instructor
  r.waiting = shop.enter("dee", own(Waiting{"kim", "bandsaw"}));
  const auto paper =
      shop.from_paper("mia", fact(Checkout{"lou", "bandsaw", 0, Outcome::passed, "ivo"}), evening);
  REQUIRE(paper);
  r.checkout = paper->entries.front().id;
  shop.enter("mia", own(small_bank()));
  r.opened = shop.enter("ivo", own(SheetOpened{"lou", "b1", "bandsaw", "bandsaw", 1}));
  shop.enter("dee", own(Printed{"Run sheet", 1, std::string(64, 'a'), "7K2Q9X"}));
  shop.enter("mia", ChoosePin{"lou", "5555"});
  Command begin = shop.command("mia", own(begun_by("mia")));
  begin.quiz_station = true;
  r.begun = begin.id;
  REQUIRE(shop.store().commit(begin));
  const RecordId mistake = shop.enter("dee", own(Presence{"lou"}));
  r.noted = shop.enter("mia", StrikeOutRecord{mistake, "it was Kim, who is ill"});
  r.old_desk_entry = shop.enter("dee", own(Presence{"lou"}));
  shop.wait(day);
  shop.enter("dee", own(Presence{"mia"}));
  SignCheckout watched;
  watched.checkout = {"lou", "bandsaw", 0, Outcome::passed, "ivo"};
  watched.pin = "2222";
  watched.machine = "b1";
  watched.sheet = "bandsaw";
  watched.sheet_revision = 1;
  watched.marks = {Mark::shown};
  r.watched = shop.enter("ivo", watched);
  r.change = shop.enter("ivo", fact(Change{"sander"}));
  r.lesson = shop.enter("dee", fact(Lesson{"kim", "guards", 1}));
  r.visit = shop.enter("dee", own(Visit{"Noor Tamsin", "visitor's paper", "mia"}));
  r.started = shop.enter("dee", own(Started{"ivo", "s1", "sander", ""}));
  r.desk_entry = shop.enter("dee", own(Presence{"kim"}));
  r.manager_entry = shop.enter("mia", own(Presence{"kim"}));
  return r;
}

SignCheckout signing(const PersonId& assessor, const std::string& pin) {
  SignCheckout sign;
  sign.checkout = {"kim", "bandsaw", 0, Outcome::passed, assessor};
  sign.pin = pin;
  sign.machine = "b1";
  return sign;
}

/// On the combi, which two assess.
SignCheckout signed_by_two(const PersonId& assessor, const std::string& pin, const PersonId& second,
                           const std::string& second_pin) {
  SignCheckout sign = signing(assessor, pin);
  sign.checkout.checkout = "combi";
  sign.machine = "c1";
  if (!second.empty()) sign.second = SecondAssessor{second, second_pin};
  return sign;
}

struct Line {
  std::string what;
  std::string who;  // who may: d(esk), i(nstructor), m(anager), q(uiz station)
  std::function<Action(const Records&)> action;
  bool from_paper = false;
};

Person with(const PersonId& id, const std::string& given) {
  Person person;
  person.id = id;
  person.given = given;
  return person;
}

Day today() { return Zone::named("America/Chicago")->day(evening + day); }

const std::vector<Line>& lines() {
  static const std::vector<Line> all = {
      {"enter a person", "dim",
       [](auto&) {
         return EnterPerson{with("", "Noor"), Day{9000}};
       }},
      {"correct a person", "dim", [](auto&) { return CorrectPerson{with("kim", "Kimberly")}; }},
      {"blank a person", "m", [](auto&) { return BlankPerson{"kim"}; }},
      {"give the desk's own PIN", "dm",
       [](auto&) {
         return ChoosePin{"dee", "4444"};
       }},
      {"give the instructor's own PIN", "im",
       [](auto&) {
         return ChoosePin{"ivo", "4444"};
       }},
      {"give a member their first PIN", "dim",
       [](auto&) {
         return ChoosePin{"kim", "4444"};
       }},
      {"give a member who has a PIN another", "m",
       [](auto&) {
         return ChoosePin{"lou", "4444"};
       }},
      {"enter a birth date", "dim",
       [](auto&) {
         return fact(Birth{"lou", Day{9000}});
       }},
      {"take a paper", "dim",
       [](auto&) {
         return fact(Document{"kim", "induction", {}});
       }},
      {"attest a lesson", "dim",
       [](auto&) {
         return fact(Lesson{"kim", "guards", 1});
       }},
      {"take a quiz", "q",
       [](auto&) {
         return fact(Quiz{"kim", "guards", 1, 9, 10, 0});
       }},
      {"take a quiz from paper", "m",
       [](auto&) {
         return fact(Quiz{"kim", "guards", 1, 9, 10, 0});
       },
       true},
      {"enter a check-out by hand", "",
       [](auto&) {
         return fact(Checkout{"kim", "bandsaw", 0, Outcome::passed, "ivo"});
       }},
      {"enter a check-out from paper", "m",
       [](auto&) {
         return fact(Checkout{"kim", "bandsaw", 0, Outcome::passed, "ivo"});
       },
       true},
      {"sign as the instructor", "i", [](auto&) { return signing("ivo", "2222"); }},
      {"sign as the manager", "m", [](auto&) { return signing("mia", "1111"); }},
      {"sign as an assessor at the desk", "", [](auto&) { return signing("dee", "3333"); }},
      {"take a paper from the past", "m",
       [](auto&) {
         return fact(Document{"kim", "induction", {}});
       },
       true},
      {"record a supervised session", "im",
       [](auto&) {
         return fact(Supervised{"kim", "bandsaw", 30, "ivo"});
       }},
      {"record a use", "im",
       [](auto&) {
         return fact(Use{"kim", "bandsaw"});
       }},
      {"record an incident", "im",
       [](auto&) {
         return fact(Incident{"kim", "bandsaw", 4, Part::saw});
       }},
      {"record a near miss of nobody named", "dim",
       [](auto&) {
         return RecordIncident{"bandsaw", "b1", 4, {}, {Part::operating}, "a board kicked back"};
       }},
      {"record what happened to several people", "im",
       [](auto&) {
         return RecordIncident{
             "bandsaw", "b1", 2, {{"kim", Part::operating}, {"lou", Part::saw}}, {}, "the blade jumped off"};
       }},
      {"enter what happened as a fact", "",
       [](auto&) {
         return own(Happened{"bandsaw", "b1", 4, {}, {}, "a board kicked back"});
       }},
      {"start a machine", "dim",
       [](auto&) {
         return own(Started{"kim", "c1", "combi/joint", "mia"});
       }},
      {"leave a machine", "dim", [](auto& e) { return LeaveMachine{e.started}; }},
      {"enter as a fact that a machine was left", "", [](auto& e) { return own(Left{e.started}); }},
      {"stop somebody for tonight", "dim",
       [](auto&) {
         return fact(Suspend{"kim", Everything{}, today()});
       }},
      {"stop somebody through tomorrow", "m",
       [](auto&) {
         return fact(Suspend{"kim", Everything{}, today() + 1});
       }},
      {"stop somebody without an end", "m",
       [](auto&) {
         return fact(Suspend{"kim", Everything{}, {}});
       }},
      {"stop somebody on one tier", "m",
       [](auto&) {
         return fact(Suspend{"kim", TierScope{2}, today()});
       }},
      {"stop somebody on one machine", "m",
       [](auto&) {
         return fact(Suspend{"kim", TargetScope{"bandsaw"}, today()});
       }},
      {"lift a suspension", "m", [](auto& e) { return fact(Reinstate{e.suspension}); }},
      {"appoint", "m",
       [](auto&) {
         return fact(Appoint{"kim", Everything{}, false, {}});
       }},
      {"dismiss", "m", [](auto& e) { return fact(Dismiss{e.appointment}); }},
      {"publish a lesson", "m",
       [](auto&) {
         return fact(Publish{"guards", 2});
       }},
      {"lock a machine", "dim", [](auto&) { return fact(Lockout{"b1"}); }},
      {"put a machine out of service", "dim",
       [](auto&) {
         return PutOutOfService{"b1", "7", "3", "blade cracked", "dee"};
       }},
      {"tag a lock", "dim",
       [](auto& e) {
         return own(Tag{e.desk_lock, "7", "3", "blade cracked", "dee"});
       }},
      {"take off the desk's lock", "d", [](auto& e) { return fact(Release{e.desk_lock}); }},
      {"take off the instructor's lock", "i", [](auto& e) { return fact(Release{e.instructor_lock}); }},
      {"take off the manager's lock", "m", [](auto& e) { return fact(Release{e.manager_lock}); }},
      {"take off the desk's lock after trying to reach them", "dm",
       [](auto& e) { return fact(Release{e.reached_lock}); }},
      {"record an attempt to reach somebody", "m",
       [](auto& e) {
         return own(Reached{e.desk_lock, "phoned"});
       }},
      {"record a machine's change", "im", [](auto&) { return fact(Change{"bandsaw"}); }},
      {"record what was changed on a machine", "im",
       [](auto&) {
         return RecordChange{"bandsaw", "b1", Alteration::cutter, "a wider blade"};
       }},
      {"record a repair that leaves its use as it was", "m",
       [](auto&) {
         return RecordChange{"bandsaw", "b1", Alteration::repair, "a new lamp", true};
       }},
      {"record another guard that leaves its use as it was", "",
       [](auto&) {
         return RecordChange{"bandsaw", "b1", Alteration::guard, "another guard", true};
       }},
      {"enter what was changed as a fact", "",
       [](auto& e) {
         return own(Altered{e.change, "b1", Alteration::cutter, "a wider blade"});
       }},
      {"take off the instructor's lock that the desk entered", "i",
       [](auto& e) { return fact(Release{e.entered_for_instructor}); }},
      {"make a lock one's own by its tag", "",
       [](auto& e) {
         return own(Tag{e.desk_lock, "7", "3", "blade cracked", "ivo", "ivo"});
       }},
      {"enter a lesson given to a group", "dim",
       [](auto&) {
         return TeachGroup{"guards", 1, {"ivo"}, {"kim", "lou"}};
       }},
      {"enter a group as a fact", "",
       [](auto& e) {
         return own(GroupTaught{"guards", {"ivo"}, {e.lesson}});
       }},
      {"let a visitor in", "dim",
       [](auto&) {
         return own(Visit{"Ada Quill", "visitor's paper", "mia"});
       }},
      {"say that a visitor left", "dim", [](auto& e) { return own(VisitEnd{e.visit}); }},
      {"give a role", "m",
       [](auto&) {
         return own(RoleGiven{"kim", Role::desk});
       }},
      {"make a manager", "m",
       [](auto&) {
         return own(RoleGiven{"dee", Role::manager});
       }},
      {"join two entries of one person", "m",
       [](auto&) {
         return own(Join{"kim", "lou"});
       }},
      {"book", "dim",
       [](auto&) {
         return own(Booking{"kim", "ivo", "b1", "bandsaw", evening + 3 * day, evening + 3 * day + hour});
       }},
      {"cancel a booking", "dim",
       [](auto& e) {
         return own(Cancel{e.booking, "ill"});
       }},
      {"mark attendance", "dim",
       [](auto& e) {
         return own(Attendance{e.booking, Turnout::late});
       }},
      {"mark presence", "dim",
       [](auto&) {
         return own(Presence{"kim", true, false});
       }},
      {"put on the waiting list", "dim",
       [](auto&) {
         return own(Waiting{"lou", "bandsaw"});
       }},
      {"take off the waiting list", "dim", [](auto& e) { return own(WaitingEnd{e.waiting}); }},
      {"enter a restriction by hand", "",
       [](auto& e) {
         return own(Restriction{e.checkout, "no dado"});
       }},
      {"enter a restriction from paper", "m",
       [](auto& e) {
         return own(Restriction{e.checkout, "no dado"});
       },
       true},
      {"enter marks from paper", "m",
       [](auto& e) {
         return own(SheetMarks{e.checkout, "bandsaw", 1, {Mark::shown}, {}, "b1", {}});
       },
       true},
      {"take a run sheet in hand", "im",
       [](auto&) {
         return own(SheetOpened{"kim", "b1", "bandsaw", "bandsaw", 1});
       }},
      {"mark a line of it", "im",
       [](auto& e) {
         return own(LineMarked{e.opened, 1, Mark::shown, Mark::none, {}});
       }},
      {"put it by", "im",
       [](auto& e) {
         return own(SheetPutBy{e.opened, "the edge is left", {}});
       }},
      {"let a member countersign later", "dim",
       [](auto& e) {
         return CountersignCheckout{e.watched, {Hand::pin, "5555"}};
       }},
      {"countersign by hand", "",
       [](auto& e) {
         return own(Countersigned{e.checkout, "lou", Hand::paper});
       }},
      {"enter a countersignature from paper", "m",
       [](auto& e) {
         return own(Countersigned{e.checkout, "lou", Hand::paper});
       },
       true},
      {"enter a marked sheet from paper", "m",
       [](auto&) {
         SignCheckout sheet = signing("ivo", "");
         sheet.sheet = "bandsaw";
         sheet.sheet_revision = 1;
         sheet.marks = {Mark::shown};
         return EnterPaperSheet{sheet, "7K2Q9X"};
       },
       true},
      {"sign with a second assessor, as the instructor", "i",
       [](auto&) { return signed_by_two("ivo", "2222", "mia", "1111"); }},
      {"sign with a second assessor, as the manager", "m",
       [](auto&) { return signed_by_two("mia", "1111", "ivo", "2222"); }},
      {"sign by one what two assess", "", [](auto&) { return signed_by_two("ivo", "2222", "", ""); }},
      {"sign with a second who only sits at the desk", "",
       [](auto&) { return signed_by_two("ivo", "2222", "dee", "3333"); }},
      {"sign as the second by hand", "",
       [](auto& e) {
         return own(Witnessed{e.checkout, "mia"});
       }},
      {"enter from paper what two signed", "m",
       [](auto&) {
         SignCheckout sheet = signed_by_two("ivo", "", "dee", "");
         sheet.sheet = "combi";
         sheet.sheet_revision = 1;
         sheet.marks = {Mark::shown};
         return EnterPaperSheet{sheet, "7K2Q9X"};
       },
       true},
      {"mark a check-out apart, as the instructor", "",
       [](auto& e) {
         return ScoreApart{{e.watched, "ivo", "bandsaw", 1, {Mark::shown}}, "2222"};
       }},
      {"mark a check-out apart, as the manager", "m",
       [](auto& e) {
         return ScoreApart{{e.watched, "mia", "bandsaw", 1, {Mark::shown}}, "1111"};
       }},
      {"mark a check-out apart by hand", "",
       [](auto& e) {
         return own(ScoredApart{e.watched, "mia", "bandsaw", 1, {Mark::shown}});
       }},
      {"enter from paper what was marked apart", "m",
       [](auto& e) {
         return own(ScoredApart{e.watched, "mia", "bandsaw", 1, {Mark::shown}, "7K2Q9X"});
       },
       true},
      {"add a machine", "m",
       [](auto&) {
         return own(MachineAdded{"b3", "bandsaw", "Third"});
       }},
      {"set hours", "m",
       [](auto&) {
         return own(Hours{"ivo", 1, 1080, 1260});
       }},
      {"set the shop's hours", "m",
       [](auto&) {
         return own(WeekHours{Doing::open, 1, 1080, 1260});
       }},
      {"close the shop on a day", "m",
       [](auto&) {
         return own(OtherHours{"", Doing::open, Day{20600}, Day{20600}, {}, 1, "holiday"});
       }},
      {"say when the instructor is away", "im",
       [](auto&) {
         return own(OtherHours{"ivo", Doing::open, Day{20600}, Day{20600}, {}, 1, ""});
       }},
      {"say when the desk is away", "m",
       [](auto&) {
         return own(OtherHours{"dee", Doing::open, Day{20600}, Day{20600}, {}, 1, ""});
       }},
      {"take in the instructor's busy times", "im",
       [](auto&) {
         return own(Busy{"ivo", evening, evening + day, {}});
       }},
      {"take in the desk's busy times", "m",
       [](auto&) {
         return own(Busy{"dee", evening, evening + day, {}});
       }},
      {"set a break", "m",
       [](auto&) {
         return own(Break{"ivo", 1, 1080, 1140});
       }},
      {"say what an assessor takes on", "m",
       [](auto&) {
         return own(TakesOn{"ivo", 120, {}, {}});
       }},
      {"say how long a one-on-one lasts", "m",
       [](auto&) {
         return own(Lasts{"bandsaw", 90});
       }},
      {"say how the shop books", "m",
       [](auto&) {
         return own(DiaryRules{60, {}, {}, {}, {}});
       }},
      {"enter maintenance", "m",
       [](auto&) {
         return own(Upkeep{"b1", evening + 9 * day, evening + 9 * day + hour, "new belt"});
       }},
      {"confirm what is held", "dim", [](auto& e) { return own(Confirmed{e.held}); }},
      {"publish a rulebook", "m",
       [](auto&) { return PublishRulebook{small_rulebook(3, evening + 2 * day)}; }},
      {"strike out the desk's entry of today", "dm",
       [](auto& e) {
         return StrikeOutRecord{e.desk_entry, "wrong person"};
       }},
      {"strike out the desk's entry of yesterday", "m",
       [](auto& e) {
         return StrikeOutRecord{e.old_desk_entry, "wrong person"};
       }},
      {"strike out the manager's entry", "m",
       [](auto& e) {
         return StrikeOutRecord{e.manager_entry, "wrong person"};
       }},
      {"strike out another's lock that is on", "",
       [](auto& e) {
         return StrikeOutRecord{e.instructor_lock, "wrong machine"};
       }},
      {"enter a strike-out as a fact", "",
       [](auto& e) {
         return own(StrikeOut{e.desk_entry, "wrong person"});
       }},
      {"name whom the instructor is close to", "im",
       [](auto&) {
         return own(Close{"ivo", "kim"});
       }},
      {"name whom the desk is close to", "m",
       [](auto&) {
         return own(Close{"dee", "kim"});
       }},
      {"note a printed paper", "dimn",
       [](auto&) {
         return own(Printed{"Roster", 2, std::string(64, 'a')});
       }},
      {"go through a lesson oneself", "dimq",
       [](auto&) {
         return fact(Lesson{"mia", "guards", 1});
       }},
      {"ask for a one-on-one oneself", "dimq",
       [](auto&) {
         return own(Waiting{"mia", "bandsaw"});
       }},
      {"issue a question bank", "m", [](auto&) { return own(small_bank(2)); }},
      {"begin a quiz oneself", "q", [](auto&) { return own(begun_by("mia")); }},
      {"begin a quiz for somebody else", "", [](auto&) { return own(begun_by("kim")); }},
      {"hand a quiz in", "q",
       [](auto& e) {
         return HandIn{e.begun, small_attempt()};
       }},
      {"enter answers by hand", "",
       [](auto& e) {
         return own(AttemptSat{"mia", e.begun, e.begun, small_attempt()});
       }},
      {"say what a computer is for", "m",
       [](auto&) {
         return own(StationTold{"loft", Station::office});
       }},
      {"say what to call when somebody is hurt", "m",
       [](auto&) {
         return own(EmergencyCall{"112", "Mill Road 12, door to the yard"});
       }},
      {"note that somebody's emergency contact was shown", "dimn",
       [](auto&) { return own(ContactShown{"kim"}); }},
      {"erase the text of one record", "m", [](auto& e) { return BlankRecord{e.noted}; }},
      {"enter an erased text as a fact", "", [](auto& e) { return own(Blanked{e.noted}); }},
      {"enter a confirmed clock as a fact", "",
       [](auto&) {
         return own(ClockConfirmed{evening, 0});
       }},
      {"enter a rulebook's line alone", "", [](auto&) { return own(RulebookIssued{7}); }},
  };
  return all;
}

/// By what is entered and by seat: "yes", or why not.
using RoleTable = std::map<std::string, std::map<char, std::string>>;

constexpr std::array kinds = {Station::front, Station::machine, Station::office, Station::quiz};

/// By what is entered, in the order of `kinds`, by somebody who may: "yes", or why not there.
using StationTable = std::map<std::string, std::vector<std::string>>;

std::string page_of(const RoleTable& table) {
  std::string page =
      "# Who may enter what\n\n"
      "Made by `db_tests`, which fails where the program says something else; `WM_WRITE=1` writes it anew. "
      "Each line was tried at\n"
      "each seat on a shop of its own.\n\n"
      "| | desk | instructor | manager | quiz station | nobody sits there |\n|---|---|---|---|---|---|\n";
  for (const Line& line : lines()) {
    page += "| " + line.what;
    for (const char seat : {'d', 'i', 'm', 'q', 'n'}) page += " | " + table.at(line.what).at(seat);
    page += " |\n";
  }
  return page;
}

std::string page_of(const StationTable& table) {
  std::string page =
      "# What may be entered at which computer\n\n"
      "Made by `db_tests` like `ROLES.md`: each line by somebody whose role lets them, at each computer of a "
      "shop "
      "that has\nseveral. A computer of which nothing was said takes what all of them take.\n\n"
      "| | front desk | tablet at the machines | office | quiz station |\n|---|---|---|---|---|\n";
  for (const Line& line : lines()) {
    if (!table.contains(line.what)) continue;
    page += "| " + line.what;
    for (const std::string& said : table.at(line.what)) page += " | " + said;
    page += " |\n";
  }
  return page;
}

/// Against the page as it is kept.
void check_page(const std::string& name, const std::string& page) {
  const std::string path = std::string(WM_TESTS) + "/db/" + name;
  if (std::getenv("WM_WRITE") != nullptr) std::ofstream(path) << page;
  std::ifstream kept(path);
  CHECK(std::string(std::istreambuf_iterator<char>(kept), {}) == page);
}

}  // namespace

TEST_CASE("Each role may enter what it is for, and nothing else") {
  struct Seat {
    char letter;
    PersonId by;
    bool quiz_station;
  };
  std::vector<Seat> seats = {{'m', "mia", false},   {'q', "mia", true},  {'d', "dee", false},
                             {'i', "ivo", false},   {'-', "kim", false}, {'n', "", false},
                             {'-', "nobody", false}};
  // Who may is decided before a store is asked. On a server a shop takes longer to copy: those who may most.
  if (on_test_server()) seats.resize(2);
  TestShop prepared;
  const Records records = prepare(prepared);
  prepared.close();
  RoleTable table;
  int n = 0;
  for (const Seat& seat : seats) {
    TestShop shop = prepared.copy();
    for (const Line& line : lines()) {
      INFO(line.what << " as '" << seat.by << "'" << (seat.quiz_station ? " at the quiz station" : ""));
      Command command = shop.command(seat.by, line.action(records));
      command.id = "line-" + std::to_string(++n);
      command.quiz_station = seat.quiz_station;
      command.from_paper = line.from_paper;
      const auto last = shop.store().last_commit();
      const auto done = shop.store().commit(command);
      table[line.what][seat.letter] = done ? "yes" : done.error().what;
      if (!done) UNSCOPED_INFO(done.error().where << ": " << done.error().what);
      CHECK(done.has_value() == (line.who.find(seat.letter) != std::string::npos));
      if (done) {
        shop = prepared.copy();  // the next line finds a shop untouched by this one
      } else {
        CHECK_FALSE(done.error().what.empty());
        CHECK_FALSE(done.error().remedy.empty());
        CHECK(shop.store().last_commit() == last);
      }
    }
  }
  if (!on_test_server()) check_page("ROLES.md", page_of(table));
}

TEST_CASE("Each computer takes what it is for, whoever sits at it", "[file]") {
  TestShop prepared;
  const Records records = prepare(prepared);
  prepared.enter("mia", own(StationTold{"bureau", Station::office}));
  for (const Station kind : kinds)
    prepared.enter("mia", own(StationTold{"at " + std::string(word(kind)), kind}));
  prepared.close();
  StationTable table;
  int n = 0;
  for (const Station kind : kinds) {
    TestShop shop = prepared.copy();
    const auto reopen = [&] { shop.reopen("at " + std::string(word(kind))); };
    reopen();
    CHECK(shop.store().station() == kind);
    for (const Line& line : lines()) {
      if (line.who.empty()) continue;
      const bool by_role = line.who.find_first_of("dim") != std::string::npos;
      INFO(line.what << " at " << word(kind));
      Command command = shop.command("mia", line.action(records));
      command.id = "at-" + std::to_string(++n);
      if (by_role && line.who.find('m') == std::string::npos)
        command.by = line.who.find('i') != std::string::npos ? "ivo" : "dee";
      command.quiz_station = kind == Station::quiz || !by_role;
      command.from_paper = line.from_paper;
      const auto last = shop.store().last_commit();
      const auto done = shop.store().commit(command);
      table[line.what].push_back(done ? "yes" : done.error().what);
      if (kind == Station::quiz) CHECK(done.has_value() == (line.who.find('q') != std::string::npos));
      if (done) {
        CHECK(shop.store().entries().back().station == (command.quiz_station ? Station::quiz : kind));
        shop = prepared.copy();
        reopen();
      } else {
        CHECK(shop.store().last_commit() == last);
        CHECK_FALSE(done.error().remedy.empty());
      }
    }
  }
  for (const auto& [what, said] : table) {  // nothing is lost where a shop has one of each
    INFO(what);
    CHECK(std::ranges::count(said, "yes") > 0);
  }
  check_page("STATIONS.md", page_of(table));
}

TEST_CASE("What a computer is for is said by a manager, and holds at once and whatever the program asks") {
  TestShop shop;
  const auto told = [&](const std::string& login, Station station) {
    return shop.commit("mia", own(StationTold{login, station}));
  };
  CHECK(shop.store().station() == Station::whole);
  refused(shop.commit("ivo", own(StationTold{"bureau", Station::office})), "may not enter this");
  refused(told("tablet", Station::machine), "No computer would be left");
  refused(told("", Station::office), "login");
  const auto office = told("bureau", Station::office);
  REQUIRE(office);
  const auto said = told("tablet", Station::machine);
  REQUIRE(said);
  REQUIRE(told("sofa", Station::quiz));
  CHECK(shop.store().stations() == std::vector<StationTold>{{"bureau", Station::office},
                                                            {"sofa", Station::quiz},
                                                            {"tablet", Station::machine}});

  shop.reopen("tablet");
  CHECK(shop.store().station() == Station::machine);
  refused(shop.commit("mia", own(RoleGiven{"kim", Role::desk})), "the tablet at the machines");
  CHECK_FALSE(shop.store().permitted("mia", own(RoleGiven{"kim", Role::desk})));
  CHECK(shop.store().permitted("mia", own(Presence{"kim"})));
  refused(told("tablet", Station::whole), "the tablet at the machines");
  Command quiz = shop.command("kim", own(Waiting{"kim", "bandsaw"}));
  quiz.quiz_station = true;
  refused(shop.store().commit(quiz), "No quiz is taken at the tablet");

  shop.reopen("sofa");
  refused(shop.commit("mia", own(Presence{"kim"})), "quiz station");
  REQUIRE(shop.store().commit(quiz));

  shop.reopen("bureau");
  quiz.id = "in the office";
  refused(shop.store().commit(quiz), "No quiz is taken at the office");
  refused(told("bureau", Station::front), "No computer would be left");
  REQUIRE(shop.commit("mia", StrikeOutRecord{said->entries.front().id, "it stands at the desk now"}));
  shop.reopen("tablet");
  CHECK(shop.store().station() == Station::whole);
  refused(told("bureau", Station::quiz), "No computer would be left");
  refused(shop.commit("mia", StrikeOutRecord{office->entries.front().id, "sold"}),
          "No computer would be left");
}

TEST_CASE("The first manager comes in by nobody, and nobody else after them") {
  TestShop shop = TestShop::empty();
  CHECK_FALSE(shop.commit("", own(RoleGiven{"ana", Role::desk})));
  REQUIRE(shop.commit("", EnterPerson{with("ana", "Ana"), std::nullopt}));
  CHECK_FALSE(shop.commit("", fact(Document{"ana", "induction", {}})));
  CHECK_FALSE(shop.commit("", own(RoleGiven{"ana", Role::desk})));
  REQUIRE(shop.commit("", own(RoleGiven{"ana", Role::manager})));
  REQUIRE(shop.commit("", ChoosePin{"ana", "123456"}));
  CHECK_FALSE(shop.commit("", EnterPerson{with("bo", "Bo"), std::nullopt}));
  CHECK_FALSE(shop.commit("", ChoosePin{"ana", "654321"}));
  CHECK_FALSE(shop.commit("", own(RoleGiven{"ana", Role::manager})));
  CHECK(shop.store().sit_down("ana", "123456") == Role::manager);
  // The last manager stays one.
  CHECK_FALSE(shop.commit("ana", own(RoleGiven{"ana", Role::desk})));
  CHECK_FALSE(shop.commit("ana", BlankPerson{"ana"}));
}
