#pragma once
// The first one-on-one that fits a person on a machine, as words and as what will be booked.
#include <QString>
#include <optional>

#include "app/desk/shop_now.h"

namespace wm::app {

struct BookingOffer {
  std::optional<db::Booking> booking;  // the first that fits
  std::optional<db::Booking> booked;   // one that stands already, still to come
  RecordId held;                       // that one, where it is only held
  QString sentence;                    // "First that fits: Thursday 26 Nov, 17:30, unit 2, Mara Devlin."
  QString button;                      // "Book Thursday 17:30"
};

BookingOffer booking_offer(Session& session, const ShopNow& shop, const PersonId& person,
                           const TargetName& target);

/// "Thursday 26 November, 17:30–18:30, jointer 2, with Mara Devlin"
QString booking_words(const Session& session, const ShopNow& shop, const db::Booking& booking);

}  // namespace wm::app
