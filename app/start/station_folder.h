#pragma once
// Where this computer keeps what is its own of a shop: apart from the shop's file, and no record.
#include <QString>
#include <string>

namespace wm::app {

/// The folder for the shop of that file, made where there is none yet.
QString station_folder(const std::string& store);

}  // namespace wm::app
