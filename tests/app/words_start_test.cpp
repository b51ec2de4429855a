// Whether somebody may start a machine, as people read it: what stands in the way, what lifts it, who can.
#include <QtTest>

#include "app/words/start_words.h"
#include "page_test.h"
#include "words_reader.h"

namespace words_start_test {

using namespace wm;
using namespace wm::app;

class WordsStartTest : public QObject {
  Q_OBJECT

  WordsShop shop_;
  db::LockOn lock_{"k", "b1", {}, "tom", "tom", {"k", "14", "padlock 3", "guard broken", "mara"}, {}};
  QStringList others_;

  QStringList told(const MayStart& may) {
    const AnswerReader reader = shop_.reader();
    return hindrance_sentences(
        may, {reader, [this](const RecordId& id) { return id == lock_.lockout ? &lock_ : nullptr; },
              [this] { return others_; }});
  }

 private slots:
  void initTestCase() { QLocale::setDefault(QLocale(QLocale::English, QLocale::UnitedStates)); }

  void nothing_in_the_way() {
    MayStart may;
    may.may = true;
    QCOMPARE(may_start_sentence(may, Rung::independent, {}, shop_.reader()),
             QString("Kim may start it now."));
    may.can_supervise = {"mara", "tom"};
    QCOMPARE(may_start_sentence(may, Rung::supervised, {}, shop_.reader()),
             QString("Here now who can supervise: Mara Devlin and Tom Ryde."));
    QCOMPARE(
        may_start_sentence(may, Rung::supervised, {"no dado", "with a jig"}, shop_.reader()),
        QString("Here now who can supervise: Mara Devlin and Tom Ryde. Restricted: no dado; with a jig."));
    may.may = false;
    QCOMPARE(may_start_sentence(may, Rung::supervised, {}, shop_.reader()), QString());
  }

  void out_of_service_says_since_when_by_whom_and_who_can_take_the_padlock_off() {
    shop_.add("k", shop_.start(2026, 11, 20), Lockout{"b1"});
    shop_.entries.back().entered_by = "tom";
    shop_.add("old", shop_.start(2025, 11, 20), Lockout{"b1"});
    MayStart may;
    may.because = {Hindrance::locked_out};
    may.lockouts = {"k", "old"};
    QCOMPARE(
        told(may),
        QStringList("The machine is out of service since 20 November, put by Tom Ryde. Tag 14, key with Mara "
                    "Devlin. Tom Ryde can take the padlock off; a manager can once it was tried to reach Tom "
                    "Ryde. The machine is out of service since 20 November 2025. A manager can take the "
                    "padlock off."));
    // Whose lock it is, not who entered it; and no key where no padlock was put on.
    lock_.whose = "mara";
    lock_.tag.padlock.clear();
    may.lockouts = {"k"};
    QCOMPARE(told(may),
             QStringList("The machine is out of service since 20 November, put by Mara Devlin. Tag 14. Mara "
                         "Devlin can take the padlock off; a manager can once it was tried to reach Mara "
                         "Devlin."));
  }

  void too_few_others_says_who_is_needed() {
    MayStart may;
    may.because = {Hindrance::barred, Hindrance::buddy, Hindrance::staffed};
    may.conditions = {Staffed{}, Buddy{1, Rung::independent}, Buddy{2, Rung::barred}};
    QCOMPARE(
        told(may),
        QStringList({"Kim may not use it yet.",
                     "Too few others are present: it may be used while one other qualified person is present "
                     "and 2 other people are present.",
                     "No staff are in: somebody else on duty has to come in first."}));
  }

  void nobody_to_supervise_says_who_could() {
    MayStart may;
    may.because = {Hindrance::no_supervisor};
    QCOMPARE(told(may),
             QStringList("Nobody is here and free who can supervise. Nobody else in the shop could, "
                         "either."));
    others_ = QStringList{"Mara Devlin"};
    QCOMPARE(told(may), QStringList("Nobody is here and free who can supervise. Mara Devlin could."));
    others_ = QStringList{"A", "B", "C", "D"};
    QCOMPARE(told(may),
             QStringList("Nobody is here and free who can supervise. A, B, C or somebody else could."));
  }
};

}  // namespace words_start_test

WM_PAGE_TEST(words_start_test, WordsStartTest)
#include "words_start_test.moc"
