#include "app/cli/export_file.h"

#include <QDateTime>
#include <iostream>

#include "app/cli/application.h"
#include "app/cli/refusal.h"
#include "app/people/person_paper.h"
#include "app/print/own_file.h"
#include "db/export/person_export.h"

namespace wm::app {
namespace {

Expected<void> write_json(const db::Store& store, const PersonId& person, const ExportWords& words) {
  return db::export_person(store, person).and_then([&](const std::string& json) {
    return write_own_file(QString::fromStdString(words.json), json, words.replace);
  });
}

/// The paper's making is noted in the store, as of every paper.
Expected<void> write_pdf(db::Store store, const PersonId& person, const ExportWords& words) {
  const QString path = QString::fromStdString(words.pdf);
  if (auto free = check_name_free(path, words.replace); !free) return free;
  Session session(std::move(store));
  return write_person_pdf(session, person, path, paper_size()).map([](int) {});
}

Expected<void> exported(const ExportWords& words) {
  if (words.json.empty() && words.pdf.empty())
    return tl::make_unexpected(Problem{"export", "No file to write is named", "Give --json, --pdf or both"});
  auto store = db::Store::open(words.store, [] { return Instant{QDateTime::currentSecsSinceEpoch()}; });
  if (!store) return tl::make_unexpected(store.error());
  const auto id = db::find_person(*store, words.person);
  if (!id) return tl::make_unexpected(id.error());
  if (!words.json.empty())
    if (auto done = write_json(*store, *id, words); !done) return done;
  return words.pdf.empty() ? Expected<void>{} : write_pdf(std::move(*store), *id, words);
}

}  // namespace

int export_file(const ExportWords& words) {
  const DrawingApplication application;
  const auto done = exported(words);
  if (!done) return refuse(done.error());
  for (const std::string& file : {words.json, words.pdf})
    if (!file.empty())
      std::cout << file << ": all that the shop holds about this person. Hand it to nobody else.\n";
  return 0;
}

}  // namespace wm::app
