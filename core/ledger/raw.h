#pragma once
// Text as libsodium takes it.
#include <string_view>

namespace wm::ledger {

inline const unsigned char* raw(std::string_view bytes) {
  return reinterpret_cast<const unsigned char*>(bytes.data());
}

}  // namespace wm::ledger
