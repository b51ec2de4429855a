#pragma once
// A shop small enough to know by heart, for tests of pages: Wednesday 25 November 2026, 17:20 in Chicago.
//   Ines Okafor (desk, PIN 3333), Mara Devlin (instructor, 2222, in on Wednesdays and Thursdays), Rosa
//   Whitcombe (manager, 1111). Jonas Lindqvist has everything for the jointer but the check-out; Łucja Höfer
//   has nothing; Pim Abara is under 18.
#include <QTemporaryDir>
#include <cstdio>
#include <memory>

#include "app/session.h"
#include "core/time/text.h"
#include "db/journal/subject.h"

namespace wm::app {

struct SmallShop {
  static Instant at(const char* text) { return parse_instant(text).value(); }

  QTemporaryDir folder;
  Instant now = at("2026-11-25T23:20:00Z");
  std::unique_ptr<Session> session;

  SmallShop() {
    db::StoreOptions quick;
    quick.pin_operations = 1;
    quick.pin_memory = 8192;
    auto store = db::Store::create(
        folder.filePath("shop").toStdString(), {"Cedar Street Workshop", "America/Chicago", 0},
        [this] { return now; }, quick);
    if (!store) qFatal("%s", store.error().what.c_str());
    const auto done = store->found(history());
    if (!done) qFatal("%s: %s", done.error().where.c_str(), done.error().what.c_str());
    session = std::make_unique<Session>(std::move(*store), folder.path());
  }

  /// Every one of a kind that was entered, in order.
  template <class T>
  std::vector<T> facts() const {
    std::vector<T> out;
    for (const db::Entry& entry : session->store().entries())
      if (const T* fact = db::as<T>(entry.fact)) out.push_back(*fact);
    return out;
  }

  static Gate gate(const char* id, Rung guards, Requirement need) {
    return {id, guards, std::move(need), {}};
  }

  static Rulebook rulebook() {
    Rulebook book;
    book.version = 1;
    book.effective_from = book.recorded = at("2024-01-02T15:00:00Z");
    NeedDocument waiver;
    waiver.document = "waiver";
    waiver.valid = Period{PeriodUnit::months, 24};
    NeedLesson guards;
    guards.lesson = "guards";
    NeedQuiz quiz;
    quiz.quiz = "cutters";
    NeedCheckout bandsaw, jointing;
    bandsaw.checkout = "bandsaw";
    jointing.checkout = "jointing";
    Tier one, two, three;
    one.tier = 1;
    two.tier = 2;
    three.tier = 3;
    one.gates = {gate("1-waiver", Rung::supervised, {waiver})};
    two.gates = {gate("2-waiver", Rung::supervised, {waiver}), gate("2-guards", Rung::supervised, {guards})};
    three.gates = {gate("3-waiver", Rung::supervised, {waiver}), gate("3-guards", Rung::supervised, {guards}),
                   gate("quiz", Rung::independent, {quiz}),
                   gate("grown-up", Rung::independent, {NeedAge{18}})};
    three.conditions = {Staffed{}};
    MachineClass drill, saw, combi;
    drill.name = "drill press";
    saw.name = "bandsaw";
    saw.tier = 2;
    saw.gates = {gate("bandsaw", Rung::independent, {bandsaw})};
    combi.name = "jointer-planer";
    combi.tier = 3;
    combi.modes = {"jointing", "planing"};
    combi.gates = {gate("jointing", Rung::independent, {jointing})};
    book.tiers = {one, two, three};
    book.classes = {saw, drill, combi};
    return book;
  }

  static std::vector<db::Command> history() {
    std::vector<db::Command> all;
    const auto add = [&all](const char* when, db::Action action) {
      db::Command command;
      command.id = "past-" + std::to_string(all.size());
      command.at = at(when);
      command.action = std::move(action);
      all.push_back(std::move(command));
    };
    const char* first = "2024-01-02T15:00:00Z";
    const auto person = [&](const char* id, const char* number, const char* given, const char* family,
                            const char* card, Day born) {
      db::Person p;
      p.id = id;
      p.number = number;
      p.given = given;
      p.family = family;
      p.card = card;
      add(first, db::EnterPerson{p, born});
    };
    person("rosa", "0001", "Rosa", "Whitcombe", "", day_of({1970, 4, 4}));
    person("mara", "0007", "Mara", "Devlin", "", day_of({1975, 4, 4}));
    person("ines", "0020", "Ines", "Okafor", "", day_of({1990, 4, 4}));
    person("jonas", "0412", "Jonas", "Lindqvist", "0698935572", day_of({1988, 2, 29}));
    person("lucja", "0413", "Łucja", "Höfer", "", day_of({1992, 2, 2}));
    person("pim", "0414", "Pim", "Abara", "", day_of({2009, 3, 5}));
    add(first, db::PublishRulebook{rulebook()});
    for (const char* item : {"guards", "cutters", "bandsaw", "jointing"})
      add(first, db::EnterFact{Publish{item, 1}});
    add(first, db::EnterShopFact{db::MachineAdded{"d1", "drill press", "unit 1"}});
    add(first, db::EnterShopFact{db::MachineAdded{"b1", "bandsaw", "unit 1"}});
    add(first, db::EnterShopFact{db::MachineAdded{"j1", "jointer-planer", "unit 1"}});
    add(first, db::EnterShopFact{db::RoleGiven{"rosa", db::Role::manager}});
    add(first, db::EnterShopFact{db::RoleGiven{"mara", db::Role::instructor}});
    add(first, db::EnterShopFact{db::RoleGiven{"ines", db::Role::desk}});
    add(first, db::ChoosePin{"rosa", "1111"});
    add(first, db::ChoosePin{"mara", "2222"});
    add(first, db::ChoosePin{"ines", "3333"});
    add(first, db::EnterFact{Appoint{"mara", Everything{}, true, day_of({2029, 1, 1})}});
    for (int weekday : {2, 3}) add(first, db::EnterShopFact{db::Hours{"mara", weekday, 16 * 60, 20 * 60}});
    for (const char* who : {"jonas", "pim"}) {
      add("2026-03-02T15:00:00Z", db::EnterFact{Document{who, "waiver", {}}});
      add("2026-03-02T16:00:00Z", db::EnterFact{Lesson{who, "guards", 1}});
      add("2026-03-02T17:00:00Z", db::EnterFact{Quiz{who, "cutters", 1, 18, 20, 0}});
    }
    add("2026-11-20T17:00:00Z",
        db::EnterShopFact{db::Booking{"pim", "mara", "b1", "bandsaw", at("2026-11-25T23:30:00Z"),
                                      at("2026-11-26T00:30:00Z"), db::Purpose::check_out}});
    add("2026-11-25T22:00:00Z", db::EnterShopFact{db::Presence{"mara", true, true}});
    return all;
  }
};

}  // namespace wm::app
