// A sitting's state as JSON: the attempt as core/teach writes it, and around it what no record needs.
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <cmath>

#include "app/quiz/sitting_file.h"

namespace wm::app {
namespace {

/// A number of more than 53 bits would not come back as it was; seconds have far fewer.
std::optional<std::int64_t> whole_seconds(const QJsonValue& value) {
  constexpr double most = 1e12;
  const double number = value.toDouble(-1);
  if (!value.isDouble() || number < 0 || number > most || number != std::floor(number)) return std::nullopt;
  return static_cast<std::int64_t>(number);
}

std::optional<std::vector<bool>> flags(const QJsonValue& value) {
  if (!value.isArray()) return std::nullopt;
  std::vector<bool> out;
  for (const auto& each : value.toArray()) {
    if (!each.isBool()) return std::nullopt;
    out.push_back(each.toBool());
  }
  return out;
}

}  // namespace

QByteArray to_json(const SittingState& state) {
  QJsonArray later;
  for (const bool flag : state.later) later.append(flag);
  return QJsonDocument(
             QJsonObject{
                 {"begun", QString::fromStdString(state.begun)},
                 {"person", QString::fromStdString(state.person)},
                 {"attempt",
                  QJsonDocument::fromJson(QByteArray::fromStdString(teach::to_json(state.attempt))).object()},
                 {"beside", QString::fromStdString(state.beside)},
                 {"large", state.large},
                 {"later", later},
                 {"at", static_cast<qint64>(state.at)},
                 {"gone", static_cast<qint64>(state.gone)},
                 {"wall", static_cast<qint64>(state.last.wall.seconds)},
                 {"boot", state.last.boot},
                 {"since_boot", static_cast<qint64>(state.last.since_boot)}})
      .toJson(QJsonDocument::Compact);
}

std::optional<SittingState> sitting_state(const QByteArray& json) {
  const QJsonObject object = QJsonDocument::fromJson(json).object();
  const auto text = [&](const char* name) {
    return object.value(QLatin1String(name)).toString().toStdString();
  };
  const auto attempt = teach::read_attempt(
      QJsonDocument(object.value("attempt").toObject()).toJson(QJsonDocument::Compact).toStdString());
  const auto later = flags(object.value("later"));
  const auto at = whole_seconds(object.value("at")), gone = whole_seconds(object.value("gone")),
             wall = whole_seconds(object.value("wall")),
             since_boot = whole_seconds(object.value("since_boot"));
  if (!attempt || !later || !at || !gone || !wall || !since_boot || text("begun").empty() ||
      text("person").empty() || !object.value("large").isBool())
    return std::nullopt;
  return SittingState{text("begun"),
                      text("person"),
                      *attempt,
                      text("beside"),
                      object.value("large").toBool(),
                      *later,
                      static_cast<std::size_t>(*at),
                      *gone,
                      {{*wall}, object.value("boot").toString(), *since_boot}};
}

}  // namespace wm::app
