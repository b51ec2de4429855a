// Days and clock times as people read them, held against Qt's own zones and locales.
#include <QTimeZone>
#include <QtTest>

#include "app/words/days.h"

#include "page_test.h"

namespace words_days_test {

using namespace wm;
using namespace wm::app;

namespace {

// Zones of the IANA list that skip midnight, have it twice, are set back over it, or left out a whole day.
const char* const zones[] = {"UTC",
                             "America/Chicago",
                             "America/Sao_Paulo",
                             "America/Havana",
                             "America/Asuncion",
                             "America/St_Johns",
                             "America/Scoresbysund",
                             "Africa/Cairo",
                             "Asia/Beirut",
                             "Asia/Amman",
                             "Asia/Gaza",
                             "Asia/Tehran",
                             "Asia/Kathmandu",
                             "Australia/Lord_Howe",
                             "Antarctica/Troll",
                             "Europe/Lisbon",
                             "Pacific/Apia",
                             "Pacific/Kwajalein",
                             "Pacific/Kiritimati"};

constexpr std::int64_t day_seconds = 86400;

/// Qt's zone as pieces of one offset each, from 1992 to 2032.
class Judge {
 public:
  explicit Judge(const char* name) {
    const QTimeZone zone(name);
    const QDateTime first(QDate(1992, 1, 1), QTime(0, 0), Qt::UTC),
        last(QDate(2032, 1, 1), QTime(0, 0), Qt::UTC);
    std::int64_t from = first.toSecsSinceEpoch();
    int offset = zone.offsetFromUtc(first);
    for (const auto& change : zone.transitions(first, last)) {
      const std::int64_t at = change.atUtc.toSecsSinceEpoch();
      if (change.offsetFromUtc == offset || at <= from) continue;
      pieces_.push_back({from, at, offset});
      from = at;
      offset = change.offsetFromUtc;
    }
    pieces_.push_back({from, last.toSecsSinceEpoch(), offset});
  }

  /// The first instant whose date is d or later.
  std::int64_t start(std::int64_t d) const {
    for (const Piece& piece : pieces_)
      if (const auto t = std::max(piece.from, d * day_seconds - piece.offset); t < piece.to) return t;
    return pieces_.back().to;
  }
  /// The last day D with start(D + 1) <= until.
  std::int64_t last_whole_day(std::int64_t until) const {
    std::int64_t d = until / day_seconds - 4;
    while (start(d + 2) <= until) ++d;
    return d;
  }
  /// Worth asking about: around every change of the clocks, and around the days beside it.
  std::vector<std::int64_t> instants() const {
    std::vector<std::int64_t> found;
    for (const Piece& piece : pieces_) {
      if (piece.from == pieces_.front().from) continue;
      for (const std::int64_t near : {-7200, -3600, -1801, -61, -1, 0, 1, 59, 60, 61, 1800, 3599, 3600, 7200})
        found.push_back(piece.from + near);
      const std::int64_t d = piece.from / day_seconds;
      for (std::int64_t beside = d - 2; beside <= d + 2; ++beside)
        for (const int near : {-1, 0, 1}) found.push_back(start(beside) + near);
    }
    for (int n = 0; n < 40; ++n) {
      const std::int64_t d = 9000 + n * 331;
      for (const int near : {-1, 0, 1, 40000}) found.push_back(start(d) + near);
    }
    return found;
  }

 private:
  struct Piece {
    std::int64_t from, to;
    int offset;
  };
  std::vector<Piece> pieces_;
};

QDate qt_date(std::int64_t day) { return QDate(1970, 1, 1).addDays(day); }

}  // namespace

class WordsDaysTest : public QObject {
  Q_OBJECT
 private slots:
  void initTestCase() { QLocale::setDefault(QLocale(QLocale::English, QLocale::UnitedStates)); }

  void through_a_day_is_the_last_that_is_over_in_every_zone() {
    int asked = 0;
    for (const char* name : zones) {
      const Zone zone = Zone::named(name).value();
      const Judge judge(name);
      for (const std::int64_t t : judge.instants()) {
        const std::int64_t expected = judge.last_whole_day(t);
        QVERIFY2(last_whole_day(Instant{t}, zone).number == expected,
                 qPrintable(QString("%1 at %2").arg(name).arg(t)));
        const QDate date = qt_date(expected);
        for (const int year : {date.year(), date.year() - 1}) {
          // Asked in that year the year is left out, asked in another it is there.
          const Instant today = zone.start(day_of({year, 1, 1})) + 3600;
          if (zone.day(today) > Day{static_cast<std::int32_t>(expected)}) continue;
          const QString form = year == date.year() ? "d MMMM" : "d MMMM yyyy";
          QCOMPARE(wm::app::last_day(Instant{t}, zone, today), QLocale().toString(date, form));
        }
        ++asked;
      }
    }
    QVERIFY2(asked > 8000, qPrintable(QString::number(asked)));
  }

  // Samoa went from Thursday 29 December 2011 to Saturday the 31st (IANA tz database, "australasia").
  void a_day_that_never_was_is_over_when_it_would_have_begun() {
    const Zone apia = Zone::named("Pacific/Apia").value();
    const Instant saturday = apia.start(day_of({2011, 12, 31}));
    const Instant today = apia.start(day_of({2011, 12, 1}));
    QCOMPARE(wm::app::last_day(saturday, apia, today), QString("30 December"));
    QCOMPARE(wm::app::last_day(saturday + -1, apia, today), QString("28 December"));
  }

  // At one minute past midnight on 7 November 2010 Newfoundland's clocks went back to 23:01 (IANA tz
  // database, "northamerica"): the sixth was over once, and came again.
  void a_day_that_comes_again_is_over_the_first_time() {
    const Zone zone = Zone::named("America/St_Johns").value();
    const Instant today = zone.start(day_of({2010, 11, 1}));
    const Instant again = zone.start(day_of({2010, 11, 7})) + 600;
    QVERIFY(zone.day(again) == day_of({2010, 11, 6}));
    QCOMPARE(wm::app::last_day(again, zone, today), QString("6 November"));
  }

  void what_ends_within_today_says_when() {
    const Zone zone = Zone::named("America/Chicago").value();
    const Instant now = zone.instant({day_of({2026, 11, 25}), 17, 20, 0});
    QCOMPARE(wm::app::last_day(now + 3600, zone, now), QString("today, 6:20 PM"));
    QCOMPARE(short_last_day(now + 3600, zone, now), QString("today"));
    QCOMPARE(short_last_day(zone.start(day_of({2026, 11, 26})), zone, now), QString("25 Nov 2026"));
    QCOMPARE(wm::app::last_day(zone.start(day_of({2026, 11, 26})), zone, now), QString("25 November"));
    // What is over already has its day.
    QCOMPARE(wm::app::last_day(now + -3600, zone, now), QString("24 November"));
  }

  void a_moment_has_its_time_where_it_is_not_a_days_beginning() {
    const Zone zone = Zone::named("Africa/Cairo").value();
    // Egypt's clocks went from midnight to one on 28 April 2023 (IANA tz database, "africa").
    const Instant skipped = zone.start(day_of({2023, 4, 28})), now = skipped + -86400;
    QCOMPARE(zone.local(skipped).hour, 1);
    QCOMPARE(moment_words(skipped, zone, now), QString("28 April"));
    QCOMPARE(moment_words(skipped + 1800, zone, now), QString("28 April, 1:30 AM"));
    QCOMPARE(moment_words(now + 600, zone, now), QString("today, 12:10 AM"));
    QCOMPARE(moment_words(now, zone, now), QString("today"));
    QCOMPARE(moment_words(zone.start(day_of({2024, 1, 1})), zone, now), QString("1 January 2024"));
  }

  void the_year_is_left_out_on_the_shops_own_clock() {
    // New Year is long past on Kiritimati when it comes to Honolulu.
    const Instant t = Zone::utc().instant({day_of({2026, 12, 31}), 12, 0, 0});
    QCOMPARE(day_words(t, Zone::named("Pacific/Kiritimati").value(), t), QString("1 January"));
    QCOMPARE(day_words(t, Zone::named("Pacific/Honolulu").value(), t), QString("31 December"));
    const Zone east = Zone::named("Pacific/Kiritimati").value();
    QCOMPARE(day_words(t + -86400, east, t), QString("31 December 2026"));
  }

  void the_clock_is_the_locales_without_its_seconds() {
    const Zone utc = Zone::utc();
    const auto at = [&](int hour, int minute, int second) {
      return clock_time(utc.instant({day_of({2026, 11, 25}), hour, minute, second}), utc);
    };
    int halves = 0, whole = 0;
    const auto all =
        QLocale::matchingLocales(QLocale::AnyLanguage, QLocale::AnyScript, QLocale::AnyTerritory);
    for (const QLocale& locale : all) {
      QLocale::setDefault(locale);
      const auto shortly = [&](int h, int m, int s) {
        return locale.toString(QTime(h, m, s), QLocale::ShortFormat);
      };
      const bool has_seconds = shortly(17, 5, 0) != shortly(17, 5, 41);
      if (!has_seconds) QCOMPARE(at(17, 5, 0), shortly(17, 5, 0));
      QCOMPARE(at(17, 5, 0), at(17, 5, 41));
      QVERIFY2(at(17, 5, 0) != at(17, 6, 0) && at(17, 5, 0) != at(5, 5, 0) && at(17, 5, 0) != at(18, 5, 0),
               qPrintable(locale.name() + ": " + at(17, 5, 0)));
      (at(17, 5, 0).contains(locale.toString(17)) ? whole : halves) += 1;
    }
    QVERIFY2(halves > 50 && whole > 200, qPrintable(QString("%1, %2").arg(halves).arg(whole)));
    QLocale::setDefault(QLocale(QLocale::English, QLocale::UnitedKingdom));
    QCOMPARE(at(17, 5, 0), QString("17:05"));
    QLocale::setDefault(QLocale(QLocale::English, QLocale::UnitedStates));
    QCOMPARE(at(17, 5, 0), QString("5:05 PM"));
  }
};

}  // namespace words_days_test

WM_PAGE_TEST(words_days_test, WordsDaysTest)
#include "words_days_test.moc"
