#pragma once
// An attempt that was handed in, put together again from the records: the paper as it was sat, what was
// answered, and what it was worth.
#include <QImage>
#include <QString>
#include <map>

#include "app/quiz/banks.h"
#include "core/teach/marking.h"
#include "core/teach/paper.h"

namespace wm::app {

struct SatAttempt {
  PersonId person;
  RecordId begun, sat;
  Instant from, to;  // begun, handed in
  IssuedBank bank;
  teach::Paper paper;
  teach::Attempt attempt;
  teach::Marking marking;
  std::vector<db::Help> helps;
};

/// The record of an attempt's answers, by itself, by where the attempt was begun or by what it came to; null
/// where there is none. Good until the next commit.
const db::Entry* handed_in(const Session& session, const RecordId& record);
/// `record` as above. Nothing for any other record, one
/// that was never handed in, and one whose answers have been erased.
std::optional<SatAttempt> sat_attempt(const Session& session, const RecordId& record);

/// How much of it is shown: afterwards one's own answers with the reasons; as it was sat, all choices in the
/// order in which they stood, and which were right.
enum class HowMuch { afterwards, as_sat };
/// As HTML. `language`: one of the bank's; `size`: of the type, in pixels. Pictures are named picture-0,
/// picture-1 …, and given to `pictures`.
QString attempt_html(const SatAttempt& sat, HowMuch shown, const std::string& language, int size,
                     std::map<QString, QImage>& pictures);
/// "interpreter, large type"; empty: none.
QString help_words(const std::vector<db::Help>& helps);
/// "English", "español": a language in itself.
QString language_name(const std::string& tag);
/// "9 of 10 right, 1 critical question missed".
QString marks_words(int correct, int total, int critical_missed);

/// A place in the picture of a question, marked; a null image where the picture can't be drawn.
QImage marked_picture(const QByteArray& picture, int size, const teach::Given& given);

}  // namespace wm::app
