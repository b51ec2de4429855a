// Wrong PINs: what they cost, whom, and for how long.
#include "db/pin.h"

#include <QFile>
#include <QTemporaryDir>
#include <catch2/catch.hpp>

#include "test_shop.h"

using namespace wm;
using namespace wm::db;

TEST_CASE("Wrong PINs slow their own station down, also after the program was started again") {
  TestShop shop;
  const QTemporaryDir station;
  StoreOptions options = cheap_pins();
  options.pin_wait = station.filePath("pin-wait").toStdString();
  const auto open = [&] {
    auto store = Store::open(shop.path(), shop.clock(), options);
    REQUIRE(store);
    return std::move(*store);
  };
  {
    Store store = open();
    for (int i = 0; i < 3; ++i) CHECK_FALSE(store.sit_down("ivo", "0000"));
    CHECK(store.sit_down("ivo", "2222").error().what == "Too many wrong PINs here.");
  }
  Store again = open();
  CHECK(again.sit_down("ivo", "2222").error().what == "Too many wrong PINs here.");
  CHECK(shop.store().sit_down("ivo", "2222"));  // another station: nobody is kept out by trying elsewhere
  shop.wait(5);
  CHECK(again.sit_down("ivo", "2222"));
  CHECK_FALSE(again.sit_down("ivo", "0000"));  // the right one began the count anew
  CHECK(again.sit_down("ivo", "2222"));
}

TEST_CASE("The wait doubles to a quarter of an hour, and ends where the clock was set back") {
  PinDelay delay;
  Instant now = evening;
  std::int64_t wait = 0;
  for (int wrong = 1; wrong <= 14; ++wrong) {
    delay.wrong(now);
    wait = 0;
    while (!delay.check(now + wait)) ++wait;
    CHECK(wait == (wrong < 3 ? 0 : std::min(900, 5 << (wrong - 3))));
    now = now + wait;
  }
  delay.wrong(now);
  CHECK_FALSE(delay.check(now));
  CHECK(delay.check(now + -1));
}

TEST_CASE("A damaged note of wrong PINs keeps nobody out") {
  const QTemporaryDir station;
  const std::string path = station.filePath("pin-wait").toStdString();
  for (const char* said : {"", "x", "99999999999999999999 1 2", "5 -9223372036854775808 9223372036854775807",
                           "7 0", "1 2 3 4"}) {
    QFile file(QString::fromStdString(path));
    REQUIRE(file.open(QIODevice::WriteOnly));
    file.write(said);
    file.close();
    PinDelay delay(path);
    INFO(said);
    CHECK(delay.check(evening));
    delay.wrong(evening);
    delay.right();
    CHECK(PinDelay(path).check(evening));
  }
}
