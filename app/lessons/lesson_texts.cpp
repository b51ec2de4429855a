// The page's second half: the text of a lesson, issued, gone through and attested.
#include <QFileDialog>
#include <QStackedWidget>
#include <algorithm>

#include "app/lessons/lesson_file.h"
#include "app/lessons/lesson_needs.h"
#include "app/lessons/lesson_reader.h"
#include "app/lessons/lessons_page.h"
#include "app/widgets/date_field.h"
#include "app/widgets/key_button.h"
#include "app/widgets/person_box.h"
#include "app/words/words.h"

namespace wm::app {
namespace {

Problem lesson_problem(const QString& where, const QString& what, const QString& remedy) {
  return {where.toStdString(), what.toStdString(), remedy.toStdString()};
}

std::string typed_in(const QLineEdit* field) { return field->text().simplified().toStdString(); }

}  // namespace

void LessonsPage::describe_text(const std::string& name, const Item& item) {
  if (const Rulebook* rulebook = session().decider().in_force(session().present())) {
    const QStringList needed = needed_for(*rulebook, name);
    if (!needed.isEmpty()) panel_->section(tr("Who needs it"));
    for (const QString& each : needed) panel_->paragraph(each);
  }
  const auto all = revisions_of(session(), db::Work::lesson, name);
  panel_->section(tr("Its text"));
  if (all.empty())
    return panel_->paragraph(tr("Not issued here: it is taught from elsewhere, and attested by staff."));
  const auto text = lesson_text(session(), name);
  const Publication* counts = now(item);
  if (text && counts && text->work->revision < counts->revision)
    panel_->paragraph(tr("Revision %1 counts, but its text is not issued: what can be read is revision %2.")
                          .arg(counts->revision)
                          .arg(text->work->revision));
  for (auto each = all.rbegin(); each != all.rend(); ++each)
    panel_->line(short_day(each->at, session().zone()),
                 each->work->changed.empty() ? tr("revision %1").arg(each->work->revision)
                                             : tr("revision %1: %2", "a number, what is new")
                                                   .arg(each->work->revision)
                                                   .arg(QString::fromStdString(each->work->changed)));
}

void LessonsPage::text_actions(const std::string& name) {
  const auto text = lesson_text(session(), name);
  if (text) {
    panel_->button(tr("Read it"), QKeySequence("Ctrl+R"), [this, name] { show_reader(name, {}); })
        ->setObjectName("read");
    if (session().role())
      panel_->button(tr("Go through it here"), QKeySequence("Ctrl+G"), [this, name] { choose_reader(name); })
          ->setObjectName("go_through");
  }
  if (session().role() && session().role() != db::Role::quiz_station)
    panel_->button(tr("Attest it for somebody"), QKeySequence("Ctrl+E"), [this, name] { attest(name); })
        ->setObjectName("attest");
  if (session().role() == db::Role::manager)
    panel_->button(tr("Issue its text"), QKeySequence("Ctrl+I"), [this, name] { issue(name); })
        ->setObjectName("issue");
}

void LessonsPage::issue(const std::string& name) {
  const int revision = next_revision(name);
  auto* form = new Form(tr("Issue revision %1 of %2").arg(revision).arg(item_label(name)), tr("Issue it"));
  QLineEdit* page = form->line(tr("The page: a Markdown file, its pictures beside it"), "page");
  auto* choose = new KeyButton(tr("Choose the file"), QKeySequence::Open);
  form->add(choose);
  connect(choose, &QPushButton::clicked, form, [this, page] {
    const QString path =
        QFileDialog::getOpenFileName(this, tr("The lesson's page"), {}, tr("Markdown (*.md)"));
    if (!path.isEmpty()) page->setText(path);
  });
  QLineEdit* news = form->line(tr("What is new in it"), "news");
  QComboBox* again = form->choice(
      tr("Who goes through it"), "again",
      {{"all", tr("everybody who needs it, again")}, {"new", tr("only who has not yet: mended words")}});
  auto* from = new DateField(tr("now"));
  from->setObjectName("from_day");
  from->set_today(session().zone().day(session().now()));
  form->add_field(tr("Counts from"), from);
  QLabel* effect = form->say({});
  effect->setObjectName("effect");
  const auto from_then = [this, from] {
    const auto day = from->typed();
    return day && session().zone().start(*day) > session().now() ? std::optional(session().zone().start(*day))
                                                                 : std::nullopt;
  };
  const auto show_effect = [this, effect, again, from_then, name, revision] {
    effect->setText(again->currentIndex() == 0
                        ? effect_words(name, revision, from_then().value_or(session().now()))
                        : tr("Nobody has to do it again. The text counts at once."));
  };
  connect(from, &QLineEdit::textChanged, form, show_effect);
  connect(again, &QComboBox::currentIndexChanged, form, show_effect);
  show_effect();
  run_form(form, tr("Revision %1 of %2 issued.").arg(revision).arg(item_label(name)),
           [this, name, revision, page, news, again, from, from_then]() -> Expected<db::Committed> {
             if (!from->is_good())
               return tl::unexpected(lesson_problem(tr("day"), tr("That is no day"),
                                                    tr("Type it as 2026-12-01, or leave it empty for now")));
             auto file = read_lesson_file(page->text().trimmed());
             if (!file) return tl::unexpected(file.error());
             return issue_and_publish({db::Work::lesson, name, revision, typed_in(news),
                                       std::move(file->text), std::move(file->enclosures)},
                                      again->currentIndex() == 0, from_then());
           });
}

/// The text is kept even where its publication is refused, which is then told.
Expected<db::Committed> LessonsPage::issue_and_publish(db::Issued issued, bool again,
                                                       std::optional<Instant> at) {
  const Publish publish{issued.name, issued.revision};
  const std::string news = issued.changed;
  auto done = session().commit(db::EnterShopFact{std::move(issued)});
  if (!done || !again) return done;
  auto published = session().commit(db::EnterFact{publish}, at, news);
  if (published) return published;
  emit tell_problem(published.error());
  return done;
}

/// Of the revision that counts now, whatever day the page shows.
Expected<db::Committed> LessonsPage::record(const PersonId& person, const std::string& name,
                                            const QString& note) {
  const Lesson lesson{person, name, published_revision(session(), name)};
  return session().commit(db::EnterFact{lesson}, std::nullopt, note.toStdString());
}

void LessonsPage::attest(const std::string& name) {
  auto* form =
      new Form(tr("%1: attest that somebody has been taught it").arg(item_label(name)), tr("Attest it"));
  auto* who = new PersonBox(session());
  who->setObjectName("attested");
  form->add_field(tr("Who was taught"), who);
  QLineEdit* how = form->line(tr("By whom, where"), "how");
  form->say(tr("It is recorded under your name, as taught and not as read here."));
  run_form(form, tr("Lesson attested."), [this, name, who, how]() -> Expected<db::Committed> {
    if (!who->person())
      return tl::unexpected(
          lesson_problem(tr("person"), tr("Nobody is chosen"), tr("Type a name or a number")));
    return record(*who->person(), name, how->text().simplified());
  });
}

/// At the quiz station whoever sits there; elsewhere whom staff choose.
void LessonsPage::choose_reader(const std::string& name) {
  if (session().role() == db::Role::quiz_station) return show_reader(name, session().seated()->id);
  auto* form = new Form(tr("Go through %1").arg(item_label(name)), tr("Begin"));
  auto* who = new PersonBox(session());
  who->setObjectName("reader");
  form->add_field(tr("Who goes through it"), who);
  form->say(tr("Stay with them: it is recorded under your name once every part was on the screen."));
  connect(form, &Form::saved, this, [this, form, who, name] {
    if (!who->person())
      return form->show_problem(
          lesson_problem(tr("person"), tr("Nobody is chosen"), tr("Type a name or a number")));
    const PersonId person = *who->person();
    panel_->close_form();
    show_reader(name, person);
  });
  panel_->show_form(form);
}

void LessonsPage::show_reader(const std::string& name, const PersonId& person) {
  const auto text = lesson_text(session(), name);
  if (!text) return;
  const int counts = published_revision(session(), name);
  if (!person.empty() && text->work->revision < counts)
    return emit tell_problem(
        lesson_problem(item_label(name), tr("Revision %1 counts, and its text is not issued").arg(counts),
                       tr("A manager issues it first, or staff attest what was taught from elsewhere")));
  reading_ = name;
  reading_for_ = person;
  QString under = tr("Revision %1, issued %2")
                      .arg(QString::number(text->work->revision), short_day(text->at, session().zone()));
  if (!person.empty())
    under += tr(", gone through by %1", "ends a phrase").arg(person_name(session().person(person)));
  views_->setCurrentIndex(1);
  reader_->show_lesson(*text->work, item_label(name), under, session().store().path());
}

void LessonsPage::leave_reader() {
  reading_for_.clear();
  views_->setCurrentIndex(0);
  put_cursor_back();
}

void LessonsPage::record_gone_through() {
  if (reading_for_.empty()) return;
  const PersonId person = reading_for_;
  reading_for_.clear();  // once
  const QString who = person_name(session().person(person));
  report(record(person, reading_, tr("Gone through part by part on the screen.")),
         tr("%1 has gone through %2.", "a person, a lesson").arg(who, item_label(reading_)));
}

}  // namespace wm::app
