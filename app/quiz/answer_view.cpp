#include "app/quiz/answer_view.h"

#include "app/quiz/choice_rows.h"
#include "app/quiz/number_field.h"
#include "app/quiz/place_picker.h"

namespace wm::app {

AnswerView* answer_view(const AskedQuestion& asked, QWidget* parent) {
  if (std::holds_alternative<teach::ANumber>(asked.kind)) return new NumberField(asked, parent);
  if (std::holds_alternative<teach::APlace>(asked.kind)) return new PlacePicker(asked, parent);
  return new ChoiceRows(asked, parent);
}

}  // namespace wm::app
