#include "app/quiz/offered.h"

#include <QDir>
#include <QFile>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QSaveFile>

#include "app/quiz/tr.h"
#include "db/journal/subject.h"

namespace wm::app {
namespace {

QString offers_path(const Session& session) {
  return session.station().isEmpty() ? QString() : QDir(session.station()).filePath("offered-quizzes.json");
}

bool begun_since(const Session& session, const OfferedQuiz& offered) {
  for (const db::Entry* entry : session.store().of_kind("attempt_begun")) {
    const auto* begun = db::as<db::AttemptBegun>(entry->fact);
    if (entry->at >= offered.at && begun->bank == offered.quiz && begun->person == offered.person)
      return true;
  }
  return false;
}

}  // namespace

std::vector<OfferedQuiz> offered_quizzes(const Session& session) {
  QFile file(offers_path(session));
  if (file.fileName().isEmpty() || !file.open(QFile::ReadOnly)) return {};
  std::vector<OfferedQuiz> offers;
  for (const auto& each : QJsonDocument::fromJson(file.readAll()).array()) {
    const QJsonObject json = each.toObject();
    const OfferedQuiz offered{json.value("person").toString().toStdString(),
                              json.value("quiz").toString().toStdString(),
                              {static_cast<std::int64_t>(json.value("at").toDouble())}};
    const bool today = session.zone().day(offered.at) == session.zone().day(session.now());
    if (today && session.store().person(offered.person) && !begun_since(session, offered))
      offers.push_back(offered);
  }
  return offers;
}

std::optional<Problem> offer_later(const Session& session, const OfferedQuiz& offered) {
  const QString path = offers_path(session);
  if (path.isEmpty()) return std::nullopt;
  std::vector<OfferedQuiz> offers = offered_quizzes(session);
  std::erase_if(offers,
                [&](const OfferedQuiz& o) { return o.person == offered.person && o.quiz == offered.quiz; });
  offers.push_back(offered);
  QJsonArray all;
  for (const OfferedQuiz& each : offers)
    all.append(QJsonObject{{"person", QString::fromStdString(each.person)},
                           {"quiz", QString::fromStdString(each.quiz)},
                           {"at", static_cast<qint64>(each.at.seconds)}});
  QSaveFile file(path);
  if (file.open(QFile::WriteOnly) && file.write(QJsonDocument(all).toJson()) > 0 && file.commit())
    return std::nullopt;
  return Problem{path.toStdString(),
                 QuizWords::tr("The offer can't be kept: %1").arg(file.errorString()).toStdString(),
                 QuizWords::tr("Make room on the disk").toStdString()};
}

}  // namespace wm::app
