#include "app/works/work_drafts.h"

#include <QCryptographicHash>
#include <QDir>
#include <QFile>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>

#include "app/print/own_file.h"

namespace wm::app {
namespace {

QJsonObject draft_json(const WorkFile& draft) {
  QJsonArray pictures;
  for (const db::Enclosure& picture : draft.pictures)
    pictures.append(QJsonObject{{"name", QString::fromStdString(picture.name)},
                                {"base64", QString::fromStdString(picture.base64)}});
  return {{"text", QString::fromStdString(draft.text)}, {"pictures", pictures}};
}

/// Nothing where it is no draft.
std::optional<WorkFile> work_draft(const QJsonObject& json) {
  if (!json.value("text").isString()) return std::nullopt;
  WorkFile draft{json.value("text").toString().toStdString(), {}};
  for (const auto& each : json.value("pictures").toArray())
    draft.pictures.push_back({each.toObject().value("name").toString().toStdString(),
                              each.toObject().value("base64").toString().toStdString()});
  return draft;
}

}  // namespace

QString WorkDrafts::path(const QString& of) const {
  const QByteArray name = QCryptographicHash::hash(of.toUtf8(), QCryptographicHash::Sha256).toHex().left(32);
  return QDir(folder_).filePath(kind_ + "-" + QString::fromLatin1(name) + ".json");
}

std::optional<WorkFile> WorkDrafts::find(const QString& of) {
  const auto here = all_.find(of);
  if (here != all_.end()) return here->second;
  QFile file(path(of));
  if (folder_.isEmpty() || !file.open(QIODevice::ReadOnly)) return std::nullopt;
  auto draft = work_draft(QJsonDocument::fromJson(file.readAll()).object());
  if (draft) all_[of] = *draft;
  return draft;
}

std::optional<Problem> WorkDrafts::keep(const QString& of, const WorkFile& draft) {
  all_[of] = draft;
  if (folder_.isEmpty()) return std::nullopt;
  const QByteArray text = QJsonDocument(draft_json(draft)).toJson();
  const auto written = write_own_file(path(of), text.toStdString(), true);
  return written ? std::nullopt : std::optional(written.error());
}

void WorkDrafts::drop(const QString& of) {
  all_.erase(of);
  if (!folder_.isEmpty()) QFile::remove(path(of));
}

}  // namespace wm::app
