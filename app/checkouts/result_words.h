#pragma once
// What the marks come to, and what a signature changed, as sentences.
#include <QString>
#include <map>

#include "app/checkouts/one_on_ones.h"

namespace wm::app {

QString outcome_words(Outcome outcome);
/// "3 lines are not marked. Line 5 must be shown again, unasked, before a pass."
QString result_words(const SheetResult& result);

/// Where somebody stands on each target of a class.
using Rungs = std::map<TargetName, Rung>;
Rungs rungs_on(Session& session, const PersonId& person, const TargetName& target);
/// What is so now on each target whose rung is another than before, or on `target` where none is.
QString changed_words(Session& session, const PersonId& person, const TargetName& target,
                      const Rungs& before);
/// After a check-out that was not passed: which lines to practise, by what was measured and marked, and how
/// many went well.
QString practise_words(const Sheet& sheet, const db::SheetMarks& marked, Outcome outcome);
/// "In hand since 3 November, marked last by Mara Devlin. Put by on 4 November: the edge was left."
QString in_hand_words(const Session& session, const db::OpenSheet& open);
/// "no dado; with the adapted jig" as its parts.
std::vector<std::string> restrictions_in(const QString& text);

}  // namespace wm::app
