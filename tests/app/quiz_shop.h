#pragma once
// The small shop with a bank for its quiz "cutters": five questions, one of each kind, and a rule that asks
// to wait.
#include <QFile>
#include <QtTest>

#include "app/quiz/station.h"
#include "core/teach/bank_text.h"
#include "small_shop.h"

namespace wm::app {

/// To whatever has the cursor in that window, be it active or not.
inline void press_key(QWidget& window, Qt::Key key, Qt::KeyboardModifiers with = Qt::NoModifier) {
  QWidget* focus = window.focusWidget();
  QTest::keyClick(focus && focus->isVisible() ? focus : &window, key, with);
}
/// Says at a station who sits there.
inline void identify(QWidget& station, const QString& number) {
  QTest::keyClicks(station.focusWidget(), number);
  press_key(station, Qt::Key_Return);
}

inline const char* const cutters_bank = R"(bank: cutters
revision: 1
languages: en, es
pass: 80 %
time: 20 min
draw: 5 of cutters

question: stop-first
kind: one
topic: cutters
critical: yes
[en]
The power fails in a cut. What is first?
* Switch the machine off.
- Wait for the power with a hand on the board.
- Pull the board out.
> A machine that starts by itself surprises everybody.
[es]
Se va la luz en un corte. ¿Qué es lo primero?
* Apagar la máquina.
- Esperar la luz con una mano en la tabla.
- Sacar la tabla.
> Una máquina que arranca sola sorprende a cualquiera.

question: not-fed
kind: several
topic: cutters
[en]
What is not fed?
* A board with a nail in it.
* A board shorter than 6 in.
- A straight board of 24 in.
> Metal becomes a projectile, short boards are not held.
[es]
¿Qué no se mete?
* Una tabla con un clavo.
* Una tabla de menos de 6 in.
- Una tabla recta de 24 in.
> El metal sale disparado, las tablas cortas no se sujetan.

question: change-over
kind: order
topic: cutters
[en]
Put the steps in order.
1. Switch off and isolate.
2. Wait for the cutterhead to rest.
3. Lift the beds.
> Nothing is moved near a cutterhead that turns.
[es]
Pon los pasos en orden.
1. Apagar y aislar.
2. Esperar a que el portacuchillas pare.
3. Levantar las mesas.
> No se mueve nada cerca de un portacuchillas que gira.

question: depth
kind: number
topic: cutters
answer: 1/8 in
within: 0.2 mm
[en]
How deep is a pass at most?
> An eighth of an inch.
[es]
¿Cuánto quita una pasada como máximo?
> Un octavo de pulgada.

question: where-stop
kind: place
topic: cutters
picture: panel.svg
place: rectangle 400 400 600 600
[en]
Point at the stop.
> It is in the middle.
[es]
Señala el paro.
> Está en el centro.
)";

inline const char* const panel_picture =
    R"(<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 100 100"><rect width="100" height="100" fill="#eee"/>
<circle cx="50" cy="50" r="10" fill="#222"/></svg>)";

/// Where the bank is issued and the rule waits: 24 hours after an attempt that is not passed, and at most
/// three of those within 30 days.
inline void issue_cutters(SmallShop& shop) {
  const auto must = [](const auto& done) {
    if (!done) qFatal("%s", done.error().what.c_str());
  };
  Session& session = *shop.session;
  must(session.sit_down("rosa", "1111"));
  must(session.commit(
      db::EnterShopFact{db::Issued{db::Work::bank,
                                   "cutters",
                                   1,
                                   "",
                                   cutters_bank,
                                   {{"panel.svg", QByteArray(panel_picture).toBase64().toStdString()}}}}));
  Rulebook book = SmallShop::rulebook();
  book.version = 2;
  book.effective_from = shop.now;
  for (Gate& gate : book.tiers[2].gates)
    if (auto* quiz = std::get_if<NeedQuiz>(&gate.need.need)) quiz->retry = Retry{24, 3, 720};
  must(session.commit(db::PublishRulebook{book}));
  session.hand_over();
}

/// The right answer to the question shown, or (`wrong`) another, by keys alone.
inline void answer(QuizStation& station, bool wrong = false) {
  const Sitting& sitting = *station.run().sitting();
  const teach::Question& question = sitting.question();
  const auto row_of = [&](std::size_t choice) {
    const auto& order = sitting.asked().order;
    return static_cast<int>(std::find(order.begin(), order.end(), choice) - order.begin());
  };
  const auto digit = [&](std::size_t choice) {
    press_key(station, static_cast<Qt::Key>(Qt::Key_1 + row_of(choice)));
  };
  if (question.id == "stop-first") return digit(wrong ? 1 : 0);
  if (question.id == "not-fed") {
    digit(0);
    return wrong ? digit(2) : digit(1);
  }
  if (question.id == "depth") return QTest::keyClicks(station.focusWidget(), wrong ? "3 in" : "1/8\"");
  if (question.id == "where-stop") {
    press_key(station, Qt::Key_Right);  // the mark appears in the middle
    for (int i = 0; i < (wrong ? 20 : 3); ++i) press_key(station, Qt::Key_Down);
    return;
  }
  // Steps, one by one to their places, from the first: picked up, moved, put down.
  auto rows = sitting.asked().order;
  for (std::size_t place = 0; place < rows.size(); ++place) {
    const std::size_t want = wrong ? rows.size() - 1 - place : place;
    auto from = static_cast<std::size_t>(std::find(rows.begin(), rows.end(), want) - rows.begin());
    press_key(station, static_cast<Qt::Key>(Qt::Key_1 + static_cast<int>(from)));
    for (; from > place; --from) {
      press_key(station, Qt::Key_Up, Qt::ControlModifier);
      std::swap(rows[from], rows[from - 1]);
    }
  }
  // They may have stood like that: picked up and put down again, that is what was meant.
  if (std::holds_alternative<teach::Unanswered>(sitting.given()))
    for (int i = 0; i < 2; ++i) press_key(station, Qt::Key_Space);
}

/// All of them, and handed in.
inline void sit_whole(QuizStation& station, bool wrong = false) {
  const std::size_t size = station.run().sitting()->size();
  for (std::size_t i = 0; i < size; ++i) {
    answer(station, wrong);
    press_key(station, Qt::Key_Return);
  }
  press_key(station, Qt::Key_Return, Qt::ControlModifier);
}

}  // namespace wm::app
