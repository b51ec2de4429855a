#pragma once
// Parts put together into one phrase.
#include <QString>
#include <QStringList>

namespace wm::app {

/// "a", "a and b", "a, b and c".
QString and_list(QStringList parts);
/// "a", "a or b", "a, b or c".
QString or_list(QStringList parts);
/// With a capital first letter, as a sentence begins.
QString capital(QString text);

}  // namespace wm::app
