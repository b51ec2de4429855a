#include "app/checkouts/drafts.h"

#include <QCoreApplication>
#include <QDir>
#include <QFile>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QSaveFile>

namespace wm::app {
namespace {

struct Tr {
  Q_DECLARE_TR_FUNCTIONS(Checkouts)
};

QString words(const std::string& text) { return QString::fromStdString(text); }

QJsonArray marks_json(const std::vector<Mark>& marks) {
  QJsonArray out;
  for (const Mark mark : marks) out.append(static_cast<int>(mark));
  return out;
}

/// Nothing where one of them is no mark.
std::optional<std::vector<Mark>> marks_of(const QJsonValue& value) {
  std::vector<Mark> out;
  for (const auto& each : value.toArray()) {
    const int mark = each.toInt(-1);
    if (mark < static_cast<int>(Mark::none) || mark > static_cast<int>(Mark::not_shown)) return std::nullopt;
    out.push_back(static_cast<Mark>(mark));
  }
  return out;
}

/// Only lines in which something was typed.
QJsonArray typed_json(const std::vector<TypedMeasure>& typed) {
  QJsonArray out;
  for (std::size_t i = 0; i < typed.size(); ++i)
    if (typed[i] != TypedMeasure())
      out.append(QJsonObject{{"line", static_cast<int>(i) + 1},
                             {"typed", typed[i].measure},
                             {"instrument", typed[i].instrument}});
  return out;
}

QJsonObject json_of(const Draft& draft) {
  QJsonObject out{{"person", words(draft.one.person)},
                  {"target", words(draft.one.target)},
                  {"machine", words(draft.one.machine)},
                  {"sheet", words(draft.sheet)},
                  {"sheet_revision", draft.sheet_revision},
                  {"marks", marks_json(draft.on_sheet.marks)},
                  {"again", marks_json(draft.on_sheet.again)},
                  {"restrictions", draft.restrictions},
                  {"note", draft.note},
                  {"marked_by", words(draft.marked_by)},
                  {"changed", static_cast<qint64>(draft.changed.seconds)}};
  out["measured"] = typed_json(draft.on_sheet.typed);
  if (draft.apart()) out["second"] = words(draft.second);
  out["known_restrictions"] = draft.known_restrictions;
  out["known_note"] = draft.known_note;
  out["opened"] = words(draft.opened);
  QJsonArray unsent;
  for (const int line : draft.unsent) unsent.append(line);
  out["unsent"] = unsent;
  if (draft.one.booking) out["booking"] = words(*draft.one.booking);
  if (draft.outcome) out["outcome"] = static_cast<int>(*draft.outcome);
  if (draft.assessor) out["assessor"] = words(*draft.assessor);
  if (draft.with) out["with"] = words(*draft.with);
  return out;
}

/// Of a sheet of so many lines; what is of no line of it is left out.
std::vector<TypedMeasure> typed_of(const QJsonValue& value, std::size_t lines) {
  std::vector<TypedMeasure> out(lines);
  for (const auto& each : value.toArray()) {
    const QJsonObject one = each.toObject();
    const int line = one.value("line").toInt();
    if (line >= 1 && static_cast<std::size_t>(line) <= lines)
      out[static_cast<std::size_t>(line) - 1] = {one.value("typed").toString(),
                                                 one.value("instrument").toString()};
  }
  return out;
}

std::optional<Draft> draft_of(const QJsonObject& json) {
  const auto text = [&json](const char* name) { return json.value(QLatin1String(name)).toString(); };
  Draft draft;
  draft.one.person = text("person").toStdString();
  draft.one.target = text("target").toStdString();
  draft.one.machine = text("machine").toStdString();
  if (json.contains("booking")) draft.one.booking = text("booking").toStdString();
  draft.sheet = text("sheet").toStdString();
  draft.sheet_revision = json.value("sheet_revision").toInt();
  const auto marks = marks_of(json.value("marks")), again = marks_of(json.value("again"));
  if (draft.one.person.empty() || draft.one.target.empty() || !marks || !again) return std::nullopt;
  draft.on_sheet = {*marks, *again, typed_of(json.value("measured"), marks->size())};
  draft.restrictions = text("restrictions");
  draft.note = text("note");
  draft.marked_by = text("marked_by").toStdString();
  draft.changed = {static_cast<std::int64_t>(json.value("changed").toDouble())};
  draft.second = text("second").toStdString();
  if (json.value("apart").toBool()) draft.second = draft.marked_by;  // as it was kept before
  draft.known_restrictions = text("known_restrictions");
  draft.known_note = text("known_note");
  draft.opened = text("opened").toStdString();
  // A draft of before marks went into the store has all of its own still to send.
  if (!json.contains("unsent"))
    for (std::size_t line = 1; line <= draft.on_sheet.marks.size(); ++line)
      draft.unsent.insert(static_cast<int>(line));
  for (const auto& each : json.value("unsent").toArray()) draft.unsent.insert(each.toInt());
  const int outcome = json.value("outcome").toInt(-1);
  if (outcome >= static_cast<int>(Outcome::passed) && outcome <= static_cast<int>(Outcome::stopped))
    draft.outcome = static_cast<Outcome>(outcome);
  if (json.contains("assessor")) draft.assessor = text("assessor").toStdString();
  if (json.contains("with")) draft.with = text("with").toStdString();
  return draft;
}

}  // namespace

Drafts::Drafts(const QString& folder)
    : path_(folder.isEmpty() ? QString() : QDir(folder).filePath("unsigned-check-outs.json")) {}

std::optional<Problem> Drafts::read(Instant now) {
  QFile file(path_);
  if (path_.isEmpty() || !file.exists()) return std::nullopt;
  QJsonParseError error;
  const QJsonDocument document =
      file.open(QFile::ReadOnly) ? QJsonDocument::fromJson(file.readAll(), &error) : QJsonDocument();
  file.close();
  if (!document.isArray()) {
    const QString aside = path_ + "." + QString::number(now.seconds) + ".unreadable";
    QFile::rename(path_, aside);
    return Problem{
        aside.toStdString(),
        Tr::tr("What was marked and not signed at this station could not be read").toStdString(),
        Tr::tr("Mark it again; the file was kept for whoever wants to look into it").toStdString()};
  }
  for (const auto& each : document.array()) {
    const QJsonObject one = each.toObject();
    if (const QString left = one.value("left_behind").toString(); !left.isEmpty()) leave_behind(left);
    if (const auto draft = draft_of(one)) all_[draft->key()] = *draft;
  }
  return std::nullopt;
}

Draft* Drafts::find(const std::string& key) {
  const auto found = all_.find(key);
  return found == all_.end() ? nullptr : &found->second;
}

void Drafts::drop(const std::string& key) { all_.erase(key); }

bool Drafts::too_old(const Draft& draft, Instant now) {
  return now.seconds - draft.changed.seconds > days_kept * std::int64_t{86400};
}

std::optional<Problem> Drafts::write() const {
  if (path_.isEmpty()) return std::nullopt;
  QJsonArray all;
  for (const auto& [key, draft] : all_) all.append(json_of(draft));
  for (const QString& each : left_behind_) all.append(QJsonObject{{"left_behind", each}});
  QSaveFile file(path_);
  const QByteArray text = QJsonDocument(all).toJson(QJsonDocument::Compact);
  if (file.open(QFile::WriteOnly) && file.write(text) == text.size() && file.commit()) return std::nullopt;
  return Problem{
      path_.toStdString(),
      Tr::tr("The marks are not kept if the program ends now: %1").arg(file.errorString()).toStdString(),
      Tr::tr("Sign before you leave, or make room on the disk").toStdString()};
}

}  // namespace wm::app
