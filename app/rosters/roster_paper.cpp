#include "app/rosters/roster_paper.h"

#include <QCoreApplication>
#include <QLocale>

#include "app/print/paper_words.h"
#include "app/rosters/door_layout.h"
#include "app/rosters/roster_layout.h"
#include "app/rosters/wall_card.h"
#include "app/words/words.h"

namespace wm::app {
namespace {

struct Tr {
  Q_DECLARE_TR_FUNCTIONS(wm::app::Roster)
};

QString tiers_named(const RosterTable& table) {
  QStringList tiers;
  int last = -1;
  for (const RosterColumn& column : table.columns) {
    if (column.tier != last) tiers << Tr::tr("Tier %1").arg(column.tier);
    last = column.tier;
  }
  return QLocale().createSeparatedList(tiers);
}

/// "As known on …. Rulebook 7. Not after 1 December 2026.": what the list was made from, and when to take it
/// down.
QString foot_of(const RosterTable& table) {
  QStringList parts{Tr::tr("As known on %1, %2.")
                        .arg(long_day(table.known, table.zone), clock_time(table.known, table.zone))};
  parts << (table.rulebook ? Tr::tr("Rulebook %1.").arg(*table.rulebook) : Tr::tr("No rulebook in force."));
  if (table.first_fall) {
    const Day covered = std::max(table.zone.day(*table.first_fall) + -1, table.zone.day(table.at));
    parts << Tr::tr("Take down after %1.").arg(long_day(table.zone.start(covered), table.zone));
  }
  return parts.join(' ');
}

PaperText text_of(const RosterTable& table, RosterForm form, PaperSize size) {
  const QString tiers = tiers_named(table);
  const QString day = long_day(table.at, table.zone);
  return {Tr::tr("Who may use what"),
          tiers.isEmpty() ? Tr::tr("%1, on %2").arg(table.shop, day)
                          : Tr::tr("%1, %2, on %3", "shop, tiers, day").arg(table.shop, tiers, day),
          foot_of(table),
          table.ledger.isEmpty() ? QString()
                                 : Tr::tr("Ledger %1", "a code of letters and figures").arg(table.ledger),
          size,
          form == RosterForm::grid};
}

/// A roster ready to be drawn. Its table must outlive it.
struct Laid {
  PaperText text;
  int pages;
  DrawBody draw;
};

Laid lay_cards(const RosterTable& table, const PaperText& text) {
  const std::vector<WallCard> cards = lay_out_cards(table, text);
  std::vector<std::pair<std::size_t, int>> pages;  // of which card, and which of its pages
  for (std::size_t card = 0; card < cards.size(); ++card)
    for (int page = 0; page < cards[card].text.pages; ++page) pages.emplace_back(card, page);
  return {text, std::max(1, static_cast<int>(pages.size())),
          [cards, pages](QPainter& painter, const QRectF& body, int page) {
            if (pages.empty()) return;
            const auto [card, of_card] = pages[static_cast<std::size_t>(page)];
            draw_card(painter, body, cards[card], of_card);
          }};
}

Laid lay(const RosterTable& table, const RosterChoice& choice, PaperSize size) {
  const PaperText text = text_of(table, choice.form, size);
  if (choice.form == RosterForm::grid) {
    const RosterLayout layout = lay_out(table, choice.everybody, paper_body(text));
    return {text, static_cast<int>(layout.sheets.size()),
            [&table, layout](QPainter& painter, const QRectF& body, int page) {
              draw_sheet(painter, body, table, layout, layout.sheets[static_cast<std::size_t>(page)]);
            }};
  }
  if (choice.form == RosterForm::card) return lay_cards(table, text);
  const std::vector<DoorPage> pages =
      lay_out_door(table, choice.form == RosterForm::machine_a_page, paper_body(text));
  return {text, static_cast<int>(pages.size()),
          [&table, pages](QPainter& painter, const QRectF& body, int page) {
            draw_door(painter, body, table, pages[static_cast<std::size_t>(page)]);
          }};
}

}  // namespace

Expected<int> write_roster_pdf(const RosterTable& table, const RosterChoice& choice, const QString& path,
                               PaperSize size) {
  const Laid laid = lay(table, choice, size);
  return write_pdf(path, laid.text, laid.pages, laid.draw);
}

Expected<int> write_roster_pdf(Session& session, const RosterChoice& choice, const QString& path,
                               PaperSize size) {
  return write_roster_pdf(roster_table(session, choice), choice, path, size);
}

RosterWords roster_words(const RosterTable& table, const RosterChoice& choice, PaperSize size) {
  const Laid laid = lay(table, choice, size);
  return {laid.text.title + ", " + laid.text.subtitle, paper_words(laid.text, laid.pages, laid.draw),
          laid.pages};
}

bool print_roster(const RosterTable& table, const RosterChoice& choice, QPrinter& printer, PaperSize size) {
  const Laid laid = lay(table, choice, size);
  set_up(printer, laid.text);
  return paint_paper(printer, laid.text, laid.pages, laid.draw);
}

}  // namespace wm::app
