#pragma once
// A small shop on a Thursday evening in late autumn, for tests of the Diary and of Check-outs.
#include <QTemporaryDir>
#include <QtTest>
#include <memory>

#include "app/page/page.h"
#include "app/theme/theme.h"
#include "core/sheet/sheet.h"
#include "core/time/text.h"

namespace evening {

using namespace wm;

inline Instant at(const char* text) { return parse_instant(text).value(); }

/// Half past four in Chicago.
inline const Instant now = at("2026-11-26T22:30:00Z");

inline db::Person person(const char* id, const char* given, const char* family, const char* number) {
  db::Person out;
  out.id = id;
  out.given = given;
  out.family = family;
  out.number = number;
  return out;
}

inline Requirement need_document(const char* name) { return {NeedDocument{name, {}, {}}}; }
inline Requirement need_checkout(const char* name) {
  NeedCheckout need;
  need.checkout = name;
  return {need};
}

inline MachineClass tier_three(const char* name, std::vector<std::string> modes) {
  MachineClass out;
  out.name = name;
  out.tier = 3;
  out.modes = std::move(modes);
  out.gates = {{std::string(name) + "-checkout", Rung::independent, need_checkout(name), {}}};
  return out;
}

inline Rulebook rulebook() {
  Rulebook book;
  book.effective_from = at("2026-02-01T18:00:00Z");
  book.recorded = book.effective_from;
  Tier tier;
  tier.tier = 3;
  tier.gates = {{"induction", Rung::supervised, need_document("induction"), {}}};
  tier.conditions = {Staffed{}};
  book.tiers = {tier};
  book.classes = {tier_three("jointer-planer", {"jointing", "planing"}), tier_three("shaper", {})};
  return book;
}

/// What had happened before that evening.
inline std::vector<db::Command> history() {
  std::vector<db::Command> commands;
  const auto add = [&](const char* when, db::Action action) {
    db::Command command;
    command.id = "past-" + std::to_string(commands.size() + 1);
    command.at = at(when);
    command.action = std::move(action);
    commands.push_back(std::move(command));
  };
  const char* begin = "2026-02-01T18:00:00Z";
  add(begin, db::EnterPerson{person("jonas", "Jonas", "Lindqvist", "0412"), {}});
  add(begin, db::EnterPerson{person("mara", "Mara", "Devlin", "0007"), {}});
  add(begin, db::EnterPerson{person("ines", "Inés", "Okafor", "0018"), {}});
  add(begin, db::EnterPerson{person("tola", "Tola", "Adeyemi", "0311"), {}});
  add(begin, db::EnterPerson{person("ren", "Ren", "Nakagawa", "0266"), {}});
  add(begin, db::PublishRulebook{rulebook()});
  add(begin, db::EnterShopFact{db::RoleGiven{"mara", db::Role::instructor}});
  add(begin, db::EnterShopFact{db::RoleGiven{"ines", db::Role::desk}});
  add(begin, db::EnterPerson{person("odile", "Odile", "Marchetti", "0001"), {}});
  add(begin, db::EnterShopFact{db::RoleGiven{"odile", db::Role::manager}});
  add(begin, db::ChoosePin{"odile", "8642"});
  add(begin, db::ChoosePin{"mara", "2468"});
  add(begin, db::ChoosePin{"ines", "1357"});
  add(begin, db::EnterShopFact{db::MachineAdded{"jp1", "jointer-planer", "unit 1"}});
  add(begin, db::EnterShopFact{db::MachineAdded{"jp2", "jointer-planer", "unit 2"}});
  add(begin, db::EnterShopFact{db::MachineAdded{"sh1", "shaper", "unit 1"}});
  add(begin, db::EnterFact{Appoint{"mara", Everything{}, true, day_of({2027, 12, 31})}});
  add(begin, db::EnterFact{Publish{"jointer-planer", 4}});
  for (const char* each : {"jonas", "tola"}) add(begin, db::EnterFact{Document{each, "induction", {}}});
  add(begin, db::EnterShopFact{db::Hours{"mara", 3, 17 * 60, 20 * 60}});
  add(begin, db::EnterShopFact{db::Hours{"mara", 4, 12 * 60, 14 * 60}});
  add("2026-11-03T18:00:00Z", db::EnterShopFact{db::Waiting{"ren", "shaper"}});
  add("2026-11-24T18:00:00Z", db::EnterShopFact{db::Waiting{"jonas", "jointer-planer/jointing"}});
  add("2026-11-24T18:00:00Z",
      db::EnterShopFact{db::Booking{"tola", "mara", "jp1", "jointer-planer/jointing",
                                    at("2026-11-26T23:00:00Z"), at("2026-11-27T00:00:00Z"),
                                    db::Purpose::check_out}});
  return commands;
}

class Shop {
 public:
  Shop() {
    db::StoreOptions quick;
    quick.pin_operations = 1;
    quick.pin_memory = 8192;
    auto made =
        db::Store::create((folder_.path() + "/shop.wm").toStdString(),
                          {"Cedar Street Workshop", "America/Chicago", 0}, [this] { return clock; }, quick);
    if (!made) qFatal("%s", made.error().what.c_str());
    const auto done = made->found(history());
    if (!done) qFatal("%s: %s", done.error().where.c_str(), done.error().what.c_str());
    session = std::make_unique<app::Session>(std::move(*made), folder_.path());
  }

  void sit_down(const char* id, const char* pin) {
    const auto role = session->sit_down(id, pin);
    if (!role) qFatal("%s", role.error().what.c_str());
  }

  void enter(db::Action action) {
    const auto done = session->commit(std::move(action));
    if (!done) qFatal("%s", done.error().what.c_str());
  }
  /// A manager enters it, and whoever sat there sits there again.
  bool manage(db::ShopFact fact) {
    const PersonId before = session->seated()->id;
    sit_down("odile", "8642");
    const bool done = session->commit(db::EnterShopFact{std::move(fact)}).has_value();
    sit_down(before.c_str(), before == "mara" ? "2468" : "1357");
    return done;
  }

  /// The shop's own facts of one kind that stand, in order.
  template <class T>
  std::vector<T> facts() const {
    std::vector<T> out;
    for (const db::Entry& entry : session->store().entries())
      if (const auto* fact = std::get_if<db::ShopFact>(&entry.fact); fact && !entry.voided)
        if (const auto* one = std::get_if<T>(fact)) out.push_back(*one);
    return out;
  }

  Instant clock = now;

 private:
  QTemporaryDir folder_;

 public:
  std::unique_ptr<app::Session> session;  // gone before its folder
};

inline const std::vector<Sheet>& sheets() {
  static const std::vector<Sheet> all{
      {"jointer-planer",
       4,
       "jointer-planer",
       "jointer-planer",
       "Jointer/planer, both modes",
       {{"before",
         {{"Close sleeves, no gloves, eyes and ears", "", true},
          {"Stance, stop within reach, isolation", "says what happens when power comes back", true}}},
        {"joint a face",
         {{"Reads grain and crown; crown up", "says why it must not rock", false},
          {"Depth from zero, at most 1/8 in", "", true},
          {"Guard covers all of the cutterhead not in use", "", true},
          {"Push blocks: no bare hand over the cutterhead", "", true}}},
        {"change over",
         {{"Isolated, cutterhead at rest, then the beds", "as the maker's manual says", true},
          {"Bed clamped up, hood turned, hose on", "", false}}},
        {"plane",
         {{"Stock at least 6 in long, no defects", "", true},
          {"Light pass to find the high spot", "", false}}}}}};
  return all;
}

/// As the window has it: drawn again on every change, heard by whoever reads the bar at the foot.
inline bool put_up(app::Page& page, app::Session& session, QStringList& told, QStringList& refused) {
  QObject::connect(&session, &app::Session::changed, &page, &app::Page::refresh);
  QObject::connect(&session, &app::Session::seated_changed, &page, &app::Page::refresh);
  QObject::connect(&page, &app::Page::tell, &page, [&told](const QString& sentence) { told << sentence; });
  QObject::connect(&page, &app::Page::tell_problem, &page, [&refused](const Problem& problem) {
    refused << QString::fromStdString(problem.what + " " + problem.remedy);
  });
  page.resize(1216, 740);
  page.show();
  page.refresh();
  page.activateWindow();
  return QTest::qWaitForWindowActive(&page);
}

/// Draws a whole window (which has a title) at two sizes, or a page as it is seen in windows of these, in
/// both shades, where WM_GRABS names a folder to put it in. The larger as on a screen that draws each point
/// with four.
inline void grab(QWidget& page, const char* name) {
  const QString folder = qEnvironmentVariable("WM_GRABS");
  if (folder.isEmpty()) return;
  const QSize before = page.size();
  const bool whole = page.isWindow() && !page.windowTitle().isEmpty();
  for (const auto& [size, scale] : {std::pair{whole ? QSize(1366, 768) : QSize(1216, 740), 1},
                                    {whole ? QSize(3840, 2160) : QSize(3690, 2130), 2}})
    for (app::Shade shade : {app::Shade::light, app::Shade::dark}) {
      app::apply_theme(*qApp, shade);
      page.resize(size / scale);
      // What is laid out anew asks for it once more where words break over lines.
      for (int times = 0; times < 3; ++times) QCoreApplication::processEvents();
      QImage image(size, QImage::Format_RGB32);
      image.setDevicePixelRatio(scale);
      page.render(&image);
      image.save(QStringLiteral("%1/%2-%3-%4.png")
                     .arg(folder, name, QString::number(size.width()),
                          shade == app::Shade::light ? "light" : "dark"));
    }
  app::apply_theme(*qApp, app::Shade::light);
  page.resize(before);
}

}  // namespace evening
