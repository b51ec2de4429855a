#pragma once
// Text as libraries of C take bytes.
#include <string_view>

namespace wm::ledger {

inline const unsigned char* raw(std::string_view bytes) {
  return reinterpret_cast<const unsigned char*>(bytes.data());
}

}  // namespace wm::ledger
