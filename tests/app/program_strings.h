#pragma once
// Every sentence of the program, as Qt's own tool takes them out of app/.
#include <QFile>
#include <QProcess>
#include <QStandardPaths>
#include <QTemporaryDir>
#include <QXmlStreamReader>
#include <set>

namespace wm::app {

struct ProgramString {
  QString context, source, comment;
  bool plural = false;
  auto key() const { return std::tie(context, source, comment, plural); }
  friend bool operator<(const ProgramString& a, const ProgramString& b) { return a.key() < b.key(); }
  friend bool operator==(const ProgramString& a, const ProgramString& b) { return a.key() == b.key(); }
};

/// A tool of Debian's qt6-l10n-tools.
inline QString language_tool(const QString& name) {
  const QString there = QStandardPaths::findExecutable(name, {"/usr/lib/qt6/bin"});
  const QString found = there.isEmpty() ? QStandardPaths::findExecutable(name) : there;
  if (found.isEmpty()) qFatal("%s is missing: install qt6-l10n-tools", qPrintable(name));
  return found;
}

inline std::set<ProgramString> strings_in(const QString& ts) {
  QFile file(ts);
  if (!file.open(QFile::ReadOnly)) qFatal("%s cannot be read", qPrintable(ts));
  QXmlStreamReader xml(&file);
  std::set<ProgramString> all;
  ProgramString now;
  while (!xml.atEnd()) {
    const auto token = xml.readNext();
    if (token == QXmlStreamReader::EndElement && xml.name() == QLatin1String("message")) all.insert(now);
    if (token != QXmlStreamReader::StartElement) continue;
    if (xml.name() == QLatin1String("name")) now = {xml.readElementText(), {}, {}, false};
    if (xml.name() == QLatin1String("message"))
      now = {now.context, {}, {}, xml.attributes().value("numerus") == QLatin1String("yes")};
    if (xml.name() == QLatin1String("source")) now.source = xml.readElementText();
    if (xml.name() == QLatin1String("comment")) now.comment = xml.readElementText();
  }
  return all;
}

/// As translations/update reads them.
inline std::set<ProgramString> strings_of_the_program() {
  QTemporaryDir folder;
  const QString ts = folder.filePath("all.ts");
  QProcess lupdate;
  lupdate.setWorkingDirectory(QStringLiteral(WM_TESTS "/.."));
  lupdate.start(language_tool("lupdate"), {"app", "-I", ".", "-locations", "none", "-ts", ts});
  if (!lupdate.waitForFinished(60000)) qFatal("lupdate does not answer");
  return strings_in(ts);
}

}  // namespace wm::app
