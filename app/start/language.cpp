#include "app/start/language.h"

#include <QLibraryInfo>
#include <QTranslator>

namespace wm::app {

bool speak(QCoreApplication& app, const QLocale& locale, const QString& folder) {
  auto* own = new QTranslator(&app);
  if (!own->load(locale, "witnessmark", "_", folder)) {
    delete own;
    return false;
  }
  // Buttons of the system's dialogs in the same language; where they are not there, they stay English.
  auto* qt = new QTranslator(&app);
  if (qt->load(QLocale(own->language()), "qtbase", "_", QLibraryInfo::path(QLibraryInfo::TranslationsPath)))
    QCoreApplication::installTranslator(qt);
  QCoreApplication::installTranslator(own);
  return true;
}

}  // namespace wm::app
