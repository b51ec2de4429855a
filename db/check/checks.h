#pragma once
// What cannot have happened is refused: one check for each thing that is entered.
#include "db/check/case.h"
#include "db/command.h"
#include "db/diary/floor.h"

namespace wm::db {

/// Everything that must hold before this fact may be entered.
Expected<void> check_fact(const Case& c, const AnyFact& fact);

// The parts of check_fact, by subject.
Expected<void> check_names(const Case& c, const AnyFact& fact);
Expected<void> check_core_fact(const Case& c, const Fact& fact);
Expected<void> check_shop_fact(const Case& c, const ShopFact& fact);
Expected<void> check_session(const Case& c, const Supervised& session);
Expected<void> check_booking(const Case& c, const Booking& booking);
/// That a booking that was entered could still be made as it is.
Expected<void> check_stands(const Case& c, const RecordId& booking);
/// That a booking has its time free still, where a strike-out brings it back.
Expected<void> check_revived(const Case& c, const StrikeOut& strike_out);
/// The same of one that was held until it began, for whoever comes to it: nobody is at the machine either.
Expected<void> check_still_free(const Case& c, const RecordId& booking);
/// The same where somebody who did not come is said to have come after all.
Expected<void> check_attendance(const Case& c, const Attendance& attendance);
/// Hours and how the shop books: ranges, and what can be so.
Expected<void> check_diary(const ShopFact& fact);
Expected<void> check_revision(const Case& c, const std::string& item, int revision);
/// That the assessor may sign this check-out, on this machine where one is named.
Expected<void> check_assessor(const Case& c, const Checkout& checkout, const MachineId& machine);
/// That no rule asks for two who witness it, where one is named.
Expected<void> check_one_is_enough(const Case& c, const Checkout& checkout);
Expected<void> check_strike_out(const Case& c, const StrikeOut& strike_out);

Expected<void> check_new_person(const Case& c, const Person& person);
Expected<void> check_corrected_person(const Case& c, const Person& person);
Expected<void> check_blanking(const Case& c, const PersonId& person);
/// That a record has something that is blanked by itself.
Expected<void> check_blanking_record(const Memory& memory, const RecordId& record);
Expected<void> check_issued(const Case& c, const Issued& issued);
Expected<void> check_attempt_begun(const Case& c, const AttemptBegun& begun);
/// What an attempt comes to, marked by the bank that it was sat with; refuses what is not an answer to its
/// paper, and what has been handed in already.
Expected<Quiz> marked(const Case& c, const HandIn& action);
Expected<void> check_known_person(const Case& c, const PersonId& person, const char* where = "person");
/// `rulebook` with `recorded` filled in.
Expected<void> check_rulebook(const Case& c, const Rulebook& rulebook);
/// `paper`: the number of the paper that it stands on; empty for what is signed here.
Expected<void> check_signing(const Case& c, const SignCheckout& signing, const std::string& paper = {});
Expected<void> check_sheet_opened(const Case& c, const SheetOpened& opened);
Expected<void> check_line_marked(const Case& c, const LineMarked& marked);
Expected<void> check_sheet_put_by(const Case& c, const SheetPutBy& put_by);
Expected<void> check_restrictions(const std::vector<std::string>& restrictions);
/// That what is signed is what was marked, where it was marked line by line.
Expected<void> check_sheet_in_hand(const Case& c, const SignCheckout& signing);
/// That the marks are those of the run sheet that was issued for the check-out, and come to what is signed.
Expected<void> check_on_sheet(const Case& c, const SignCheckout& signing);
/// `sheet`: the run sheet that was marked, of which a paper that they signed must be; empty: not known.
Expected<void> check_countersign(const Case& c, const PersonId& person, const Countersign& by,
                                 const std::string& sheet, int revision);
Expected<void> check_countersign_later(const Case& c, const CountersignCheckout& action);
Expected<void> check_countersigned(const Case& c, const Countersigned& countersigned);
Expected<void> check_paper_sheet(const Case& c, const EnterPaperSheet& action);
/// The number of a blank sheet: printed here as that sheet, where it is known which it is, and entered once.
/// Empty: none.
Expected<void> check_form(const Case& c, const std::string& form, const std::string& sheet, int revision);
/// Of a second assessor, who watched what was checked out and has not seen it marked.
Expected<void> check_scoring(const Case& c, const ScoredApart& scored);
/// Of a sheet of so many lines.
Expected<void> check_measured(const std::vector<LineMeasured>& measured, std::size_t lines);
/// "'unit 1' (jointer-planer)", as people call it.
std::string unit_words(const Case& c, const MachineId& id);
/// "Kim Abara is at the machine 'unit 1' (bandsaw) since …", of whoever works or supervises there.
std::string at_machine_words(const Case& c, const PersonId& who, const AtMachine& at);
/// Whether they may start it as things are, and nobody is there or elsewhere already.
Expected<void> check_started(const Case& c, const Started& started);
Expected<void> check_left(const Case& c, const Left& left);
/// That nobody is where a start was, and they nowhere else, where a strike-out brings it back.
Expected<void> check_started_again(const Case& c, const StrikeOut& strike_out);
/// What was worked between the two; nothing where that was less than a minute: another unit was meant.
std::optional<Fact> worked(const Started& started, Instant since, Instant left);
/// Who has to be named, and that it can have happened there.
Expected<void> check_incident(const Case& c, const RecordIncident& action);
/// The record that tells it, beside those of who is named.
Happened told_of(const RecordIncident& action, std::vector<RecordId> incidents);
Expected<void> check_out_of_service(const Case& c, const PutOutOfService& action);
Expected<void> check_tag(const Case& c, const Tag& tag);
Expected<void> check_change(const Case& c, const RecordChange& action);
/// Who gave it, who had it, and how many there may be to one instructor.
Expected<void> check_group(const Case& c, const TeachGroup& group);
Expected<void> check_visit(const Case& c, const Visit& visit);
Expected<void> check_visit_end(const Case& c, const VisitEnd& end);
/// That a text says something; `what` is the sentence where it does not.
Expected<void> check_said(const std::string& text, const char* where, const std::string& what);

}  // namespace wm::db
