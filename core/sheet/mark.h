#pragma once
// What an assessor saw of one line of a run sheet.
namespace wm {

/// `shown_when_asked`: only after a word from the assessor.
enum class Mark { none, shown, shown_when_asked, not_shown };

}  // namespace wm
