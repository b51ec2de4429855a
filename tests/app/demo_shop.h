#pragma once
// The demo shop in a folder that goes away, with its manager sitting at the desk; `login`: as a server would
// know this computer.
#include <QDateTime>
#include <QTemporaryDir>
#include <cstdio>
#include <memory>

#include "app/session.h"
#include "app/words/words.h"
#include "db/demo.h"

namespace wm::app {

inline std::unique_ptr<Session> demo_session(bool seated = true, const std::string& login = {}) {
  static QTemporaryDir folder;
  static int number = 0;
  const auto now = [] { return Instant{QDateTime::currentSecsSinceEpoch()}; };
  db::StoreOptions options;
  options.login = login;
  auto store = db::make_demo(folder.filePath(QString("demo-%1").arg(++number)).toStdString(), now, options);
  if (!store) {
    std::fprintf(stderr, "%s\n", qPrintable(problem_sentence(store.error())));
    return nullptr;
  }
  auto session = std::make_unique<Session>(std::move(*store));
  if (!seated) return session;
  for (const db::Person& person : session->store().people())
    if (session->store().role_of(person.id) == db::Role::manager && !session->seated())
      if (const auto sat = session->sit_down(person.id, "2468"); !sat)
        std::fprintf(stderr, "%s\n", qPrintable(problem_sentence(sat.error())));
  return session;
}

}  // namespace wm::app
