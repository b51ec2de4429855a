#include "app/people/person_paper.h"

#include <algorithm>
#include <set>

#include "app/hours/weekly.h"
#include "app/lists/answer_reader.h"
#include "app/lists/record_reader.h"
#include "app/print/paper_words.h"
#include "app/print/printed.h"
#include "app/print/text_paper.h"
#include "app/words/answer_parts.h"
#include "app/words/labels.h"
#include "app/words/standing_words.h"
#include "app/words/why_words.h"
#include "app/words/words.h"
#include "db/journal/subject.h"

namespace wm::app {
namespace {

struct PersonPaper {
  Q_DECLARE_TR_FUNCTIONS(wm::app::PersonPaper)
};

QString plain_words(const std::string& text) { return QString::fromStdString(text); }

/// The running text of one person's paper.
class Sheet {
 public:
  Sheet(Session& session, const PersonId& person)
      : session_(session), person_(session.joined(person)), records_(record_reader(session)) {
    // Asked once: a shop has many records, and each would ask again.
    for (const db::Person& one : session.people())
      if (session.joined(one.id) == person_) ids_.insert(one.id);
    note_known();
    records_.name_of = [name_of = records_.name_of, this](const PersonId& id) {
      return is_them(id) || known_.contains(id) ? name_of(id) : plain_words(id);
    };
  }

  QString html() {
    para(PersonPaper::tr("This is a copy for the person it is about. Hand it to nobody else."));
    details();
    standings();
    journal();
    return html_;
  }

 private:
  void para(const QString& text) { html_ += "<p>" + text.toHtmlEscaped() + "</p>"; }
  void heading(const QString& text) { html_ += "<h2>" + text.toHtmlEscaped() + "</h2>"; }
  void line(const QString& what, const QString& says) {
    if (!says.isEmpty()) html_ += "<p><b>" + what.toHtmlEscaped() + ":</b> " + says.toHtmlEscaped() + "</p>";
  }

  bool is_them(const PersonId& id) const { return ids_.contains(id); }

  /// Whoever assessed, taught or watched this person was in the room with them. Others stay numbers.
  void note_known() {
    for (const db::Entry& entry : session_.store().entries()) {
      if (const auto* done = db::as<Checkout>(entry.fact); done && is_them(done->person))
        known_.insert(done->assessor);
      if (const auto* worked = db::as<Supervised>(entry.fact); worked && is_them(worked->person))
        known_.insert(worked->supervisor);
      if (const auto* booked = db::as<db::Booking>(entry.fact); booked && is_them(booked->person))
        known_.insert({booked->assessor, booked->second});
      if (const auto* witnessed = db::as<db::Witnessed>(entry.fact)) {
        const db::Entry* signed_one = session_.entry(witnessed->checkout);
        const auto* done = signed_one ? db::as<Checkout>(signed_one->fact) : nullptr;
        if (done && is_them(done->person)) known_.insert(witnessed->assessor);
      }
    }
  }

  void details() {
    heading(PersonPaper::tr("Details"));
    for (const db::Person& person : session_.people()) {
      if (!is_them(person.id)) continue;
      if (person == db::nameless(person.id)) {
        para(PersonPaper::tr("The details were erased; the records stay, under the number %1.")
                 .arg(plain_words(person.id)));
        continue;
      }
      line(PersonPaper::tr("Name"), person_name(person));
      line(PersonPaper::tr("Called"), plain_words(person.nickname));
      line(PersonPaper::tr("Number"), plain_words(person.number));
      line(PersonPaper::tr("Card"), plain_words(person.card));
      line(PersonPaper::tr("Phone"), plain_words(person.phone));
      line(PersonPaper::tr("Email"), plain_words(person.email));
      line(PersonPaper::tr("In an emergency"), plain_words(person.emergency_contact));
    }
    for (const auto& [person, born] : session_.store().births())
      if (is_them(person))
        line(PersonPaper::tr("Born"), long_day(session_.zone().start(born), session_.zone()));
    line(PersonPaper::tr("At the desk as"), role_words(session_.role_of(person_)));
    for (const HoursLine& one : hours_of(session_, person_))
      line(PersonPaper::tr("Usually in"), PersonPaper::tr("%1 %2", "weekday, hours")
                                              .arg(weekday_words(one.hours.weekday), hours_words(one.hours)));
  }

  /// Each machine, with what it rests on.
  void standings() {
    heading(PersonPaper::tr("What may be used, and why"));
    Decider& decider = session_.decider();
    const AnswerReader reader = answer_reader(session_, person_);
    const Instant at = session_.at();
    const Restrictions left_open = restrictions(session_);
    for (const TargetName& target : decider.targets()) {
      const StandingAnswer answer = decider.standing(person_, target, at);
      QStringList said{standing_sentence(target, answer, conditions_of(decider.in_force(at), target),
                                         left_open.on(decider, person_, target, at), reader),
                       since_sentence(answer, reader), next_sentence(answer, reader)};
      said << why_sentences(target, answer, true, reader);
      said.removeAll(QString());
      html_ += "<p><b>" + target_label(target).toHtmlEscaped() + "</b><br>" + said.join(' ').toHtmlEscaped() +
               "</p>";
    }
  }

  void journal() {
    heading(PersonPaper::tr("Every record that names this person"));
    int entered = 0;
    for (const db::Entry& entry : session_.store().entries()) {
      if (session_.known() && entry.recorded > *session_.known()) continue;
      const auto people = people_in(entry, records_);
      if (std::ranges::any_of(people, [this](const PersonId& id) { return is_them(id); }))
        record(entry);
      else if (is_them(entry.entered_by))
        ++entered;
    }
    if (entered > 0) para(PersonPaper::tr("Records about others that this person entered: %1.").arg(entered));
  }

  void record(const db::Entry& entry) {
    const Zone& zone = session_.zone();
    QStringList quiet{PersonPaper::tr("Record %1, entered %2 by %3.")
                          .arg(QString::number(entry.order), short_day(entry.recorded, zone),
                               records_.entered_by(entry.entered_by))};
    if (entry.from_paper) quiet << PersonPaper::tr("From a paper.");
    if (!entry.second.empty())
      quiet << PersonPaper::tr("Vouched for by %1.").arg(records_.name_of(entry.second));
    if (session_.struck(entry))
      quiet << PersonPaper::tr("Struck out on %1.").arg(short_day(*entry.voided, zone));
    const PersonId about = db::subject_of(entry.fact).person;
    if (!entry.note.empty() && (about.empty() || is_them(about)))
      quiet << PersonPaper::tr("Note: %1").arg(plain_words(entry.note));
    html_ += QStringLiteral("<p><b>%1</b> %2<br><small>%3</small></p>")
                 .arg(PersonPaper::tr("%1, %2", "day, time")
                          .arg(short_day(entry.at, zone), clock_time(entry.at, zone))
                          .toHtmlEscaped(),
                      record_sentence(entry, records_).toHtmlEscaped(), quiet.join(' ').toHtmlEscaped());
  }

  Session& session_;
  PersonId person_;
  RecordReader records_;
  std::set<PersonId> ids_;    // the person's, with entries joined to it
  std::set<PersonId> known_;  // by name, beside the person
  QString html_;
};

PaperText text_of(const Session& session, const PersonId& person, PaperSize size) {
  const Instant known = session.known().value_or(session.now());
  const QString code = ledger_code(session);
  return {PersonPaper::tr("All that is held about %1").arg(person_paper_name(session, person)),
          plain_words(session.store().details().name),
          PersonPaper::tr("As known on %1, %2.")
              .arg(long_day(known, session.zone()), clock_time(known, session.zone())),
          code.isEmpty() ? code : PersonPaper::tr("Ledger %1", "a code of letters and figures").arg(code),
          size,
          false,
          true};
}

}  // namespace

QString person_paper_name(const Session& session, const PersonId& person) {
  const auto known = session.person(session.joined(person));
  const QString name = known ? person_name(*known) : QString();
  return name.isEmpty() ? plain_words(person) : name;
}

Expected<int> write_person_pdf(Session& session, const PersonId& person, const QString& path,
                               PaperSize size) {
  const PaperText text = text_of(session, person, size);
  const LaidText laid = lay_out_text(text, Sheet(session, person).html());
  const auto written = write_pdf(path, text, laid.pages, laid.draw);
  if (!written) return written;
  if (const auto noted =
          note_printed(session, text.title, laid.pages, paper_words(text, laid.pages, laid.draw));
      !noted)
    return tl::unexpected(noted.error());
  return written;
}

}  // namespace wm::app
