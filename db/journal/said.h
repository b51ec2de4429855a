#pragma once
// What a library's exception says, fit to be shown.
#include <QString>
#include <exception>
#include <string>

namespace wm::db {

/// In UTF-8: what it quotes may end in the middle of a letter.
inline std::string said(const std::exception& e) { return QString::fromUtf8(e.what()).toStdString(); }

}  // namespace wm::db
