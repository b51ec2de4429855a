#pragma once
// `witnessmark answer FILE`: no window, no store.
#include <string>

namespace wm::app {

/// Prints an answer a line on standard output and returns 0; or prints every mistake as "POINTER: what.
/// remedy", one a line, on standard error, nothing on standard output, and returns 2.
int answer_file(const std::string& file);

}  // namespace wm::app
