#include "app/sheets/own_sheets.h"

#include <QDirIterator>
#include <QFile>
#include <algorithm>

#include "core/sheet/sheet_text.h"

// A static library's resources are found only once they have been asked for by name, outside any namespace.
static void have_own_sheets() { Q_INIT_RESOURCE(sheets); }

namespace wm::app {
namespace {

struct OwnSheets {
  std::vector<OwnSheet> good;
  std::vector<Problem> broken;
};

OwnSheets read_own_sheets() {
  have_own_sheets();
  OwnSheets out;
  QDirIterator files(QStringLiteral(":/sheets"), {QStringLiteral("*.txt")}, QDir::Files);
  while (files.hasNext()) {
    QFile file(files.next());
    if (!file.open(QIODevice::ReadOnly)) continue;
    const std::string text = file.readAll().toStdString();
    auto sheet = read_sheet(text);
    if (sheet) {
      out.good.push_back({text, std::move(*sheet)});
      continue;
    }
    for (Problem problem : sheet.error()) {
      problem.where = files.fileName().toStdString() + " " + problem.where;
      out.broken.push_back(std::move(problem));
    }
  }
  std::ranges::sort(out.good, [](const OwnSheet& a, const OwnSheet& b) {
    return a.sheet.name != b.sheet.name ? a.sheet.name < b.sheet.name : a.sheet.revision > b.sheet.revision;
  });
  return out;
}

const OwnSheets& read_once() {
  static const OwnSheets all = read_own_sheets();
  return all;
}

}  // namespace

const std::vector<OwnSheet>& own_sheets() { return read_once().good; }
const std::vector<Problem>& broken_own_sheets() { return read_once().broken; }

}  // namespace wm::app
