#pragma once
// A limits card as fields of a form.
#include "app/lists/form.h"
#include "app/passes/cards.h"

namespace wm::app {

struct CardFields {
  QComboBox* kind;
  QLineEdit *depths, *shortest, *thinnest, *light, *scale_marks, *scale_error, *turn, *divisions, *narrowest,
      *changed;
};

/// Filled with what `card` says.
CardFields add_card_fields(Form& form, const std::optional<AnyCard>& card);
/// The first mistake is refused with the field's name. The shortest stock may be left out: such a card is
/// kept, and makes no plan. So may a jointer's narrowest: then it is as the thinnest.
Expected<AnyCard> read_card_fields(const CardFields& fields);

}  // namespace wm::app
