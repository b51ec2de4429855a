#include "app/checkouts/sheets.h"

#include <QDirIterator>
#include <QFile>

#include "core/sheet/sheet_text.h"

// Outside of any namespace, as Qt asks.
static void have_sheets() { Q_INIT_RESOURCE(sheets); }

namespace wm::app {
namespace {

struct Sheets {
  std::vector<Sheet> good;
  std::vector<Problem> broken;
};

Sheets read_all() {
  have_sheets();
  Sheets out;
  QDirIterator files(QStringLiteral(":/sheets"), {QStringLiteral("*.txt")}, QDir::Files);
  while (files.hasNext()) {
    QFile file(files.next());
    if (!file.open(QIODevice::ReadOnly)) continue;
    const QByteArray text = file.readAll();
    auto sheet = read_sheet({text.constData(), static_cast<std::size_t>(text.size())});
    if (sheet) {
      out.good.push_back(std::move(*sheet));
      continue;
    }
    for (Problem problem : sheet.error()) {
      problem.where = files.fileName().toStdString() + " " + problem.where;
      out.broken.push_back(std::move(problem));
    }
  }
  return out;
}

const Sheets& sheets() {
  static const Sheets all = read_all();
  return all;
}

}  // namespace

const std::vector<Sheet>& run_sheets() { return sheets().good; }
const std::vector<Problem>& broken_run_sheets() { return sheets().broken; }

}  // namespace wm::app
