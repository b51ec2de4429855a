#pragma once
// The language of the screens and papers: the system's, where a translation is there, and English otherwise.
#include <QCoreApplication>
#include <QLocale>

namespace wm::app {

/// Loads `witnessmark_LANGUAGE.qm` from `folder` for the first of the locale's languages that has one, and
/// Qt's own words to go with it. Whether one was found. Call it before any page is
/// made.
bool speak(QCoreApplication& app, const QLocale& locale, const QString& folder = ":/translations");

}  // namespace wm::app
