#pragma once
// Whether somebody may start a machine now: what stands in the way, what would lift it, and who can.
#include <QStringList>
#include <functional>

#include "app/words/reader.h"
#include "core/decide/answers.h"
#include "db/floor.h"

namespace wm::app {

struct StartReader {
  const AnswerReader& reader;
  /// A lock that is on, by its lockout; or null.
  std::function<const db::LockOn*(const RecordId&)> lock_of;
  /// Who could supervise if they came or had time, by name; asked only where nobody here can.
  std::function<QStringList()> could_supervise;
};

/// A sentence each, with what would lift it: "Nobody is here who can supervise. Mara Devlin or Tom Ryde
/// could."
QStringList hindrance_sentences(const MayStart& may, const StartReader& start);
/// Where nothing stands in the way: "Kim may start it now.", or who of those here can supervise; with what is
/// restricted.
QString may_start_sentence(const MayStart& may, Rung standing, const QStringList& restrictions,
                           const AnswerReader& reader);

}  // namespace wm::app
