// Every page of the demo shop, drawn at the two sizes and in the two shades that the program must look right
// in.
#include <QApplication>
#include <QDateTime>
#include <QDir>
#include <QFileInfo>
#include <QLineEdit>
#include <QTemporaryDir>
#include <QTest>
#include <cstdio>

#include "app/frame/main_window.h"
#include "app/frame/pages.h"
#include "app/theme/theme.h"
#include "app/words/words.h"
#include "demo_shop.h"

using namespace wm;
using namespace wm::app;

namespace {

struct Size {
  const char* name;
  QSize points;
  qreal scale;
};
const Size sizes[] = {{"1366x768", {1366, 768}, 1}, {"3840x2160", {1920, 1080}, 2}};

/// Something to look at: how to get there from a fresh Desk.
struct View {
  QString name;
  std::function<void(MainWindow&)> go;
};

Place place(const QString& page) {
  Place to;
  to.page = page;
  return to;
}

void type_name(MainWindow& window, const QString& name, bool enter) {
  window.go(place("desk"));
  auto* search = window.findChild<QLineEdit*>("desk_search");
  search->clear();
  QTest::keyClicks(search, name);
  if (enter) QTest::keyClick(search, Qt::Key_Return);
}

std::vector<View> views() {
  std::vector<View> all = {
      {"desk-tonight",
       [](MainWindow& w) {
         type_name(w, {}, false);
         w.go(place("desk"));
       }},
      {"desk-matches", [](MainWindow& w) { type_name(w, "jo", false); }},
      {"desk-person", [](MainWindow& w) { type_name(w, "jonas li", true); }},
      {"desk-paper",
       [](MainWindow& w) {
         type_name(w, "jonas li", true);
         QTest::keyClick(w.findChild<QWidget*>("strips"), Qt::Key_R, Qt::ControlModifier);
       }},
      {"emergency", [](MainWindow& w) { w.go(place("emergency")); }},
      {"seat", [](MainWindow& w) { w.go(place("seat")); }},
  };
  for (const PageEntry& entry : pages())
    if (QString id = entry.id; id != "desk") all.push_back({id, [id](MainWindow& w) { w.go(place(id)); }});
  return all;
}

void draw(MainWindow& window, const Size& size, const QString& path) {
  window.resize(size.points);
  QTest::qWait(60);
  QImage image(size.points * size.scale, QImage::Format_RGB32);
  image.setDevicePixelRatio(size.scale);
  window.render(&image);
  image.save(path);
}

}  // namespace

int main(int argc, char** argv) {
  QApplication app(argc, argv);
  const QStringList words = QApplication::arguments();
  if (words.size() < 2) {
    std::fputs("usage: look DIR [PAGE]\n", stderr);
    return 2;
  }
  const QDir folder(words[1]);
  folder.mkpath(".");
  auto session = demo_session();
  if (!session) return 1;
  for (const Shade shade : {Shade::light, Shade::dark}) {
    apply_theme(app, shade);
    MainWindow window(*session);
    window.show();
    for (const View& view : views()) {
      if (words.size() > 2 && !view.name.startsWith(words[2])) continue;
      view.go(window);
      for (const Size& size : sizes)
        draw(
            window, size,
            folder.filePath(
                QString("%1-%2-%3.png").arg(view.name, size.name, shade == Shade::light ? "light" : "dark")));
    }
  }
  return 0;
}
