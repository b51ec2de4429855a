#include "app/print/paper.h"

#include <QCoreApplication>
#include <QPdfWriter>
#include <QSaveFile>
#include <QSettings>
#include <algorithm>
#include <array>

#include "app/words/words.h"

namespace wm::app {
namespace {

struct Tr {
  Q_DECLARE_TR_FUNCTIONS(wm::app::Paper)
};

constexpr int units_per_inch = 720;
constexpr double margin_points = 36;
constexpr double head_height = 52 * paper_unit;
constexpr double foot_height = 46 * paper_unit;
const QColor ink(Qt::black);
const QColor quiet_ink(0x44, 0x44, 0x44);

QPageLayout page_layout(const PaperText& text) {
  return {QPageSize(text.size == PaperSize::letter ? QPageSize::Letter : QPageSize::A4),
          text.landscape ? QPageLayout::Landscape : QPageLayout::Portrait,
          QMarginsF(margin_points, margin_points, margin_points, margin_points), QPageLayout::Point};
}

void draw_head(QPainter& painter, const PaperText& text, double width) {
  painter.setPen(ink);
  painter.setFont(paper_font(18, true));
  painter.drawText(QRectF(0, 0, width, 24 * paper_unit), Qt::AlignLeft | Qt::AlignVCenter, text.title);
  painter.setFont(paper_font(10));
  painter.setPen(quiet_ink);
  painter.drawText(QRectF(0, 25 * paper_unit, width, 16 * paper_unit), Qt::AlignLeft | Qt::AlignVCenter,
                   text.subtitle);
}

void draw_foot(QPainter& painter, const PaperText& text, QSizeF paper, int page, int pages) {
  painter.setPen(ink);
  painter.setFont(paper_font(8));
  const double top = paper.height() - foot_height;
  const QRectF line(0, top + 6 * paper_unit, paper.width(), 12 * paper_unit);
  painter.drawText(line, Qt::AlignLeft | Qt::AlignVCenter, caution());
  painter.setPen(quiet_ink);
  const QString number = Tr::tr("Page %1 of %2").arg(page + 1).arg(pages);
  painter.drawText(line.translated(0, 13 * paper_unit), Qt::AlignLeft | Qt::AlignVCenter, text.foot);
  painter.drawText(line.translated(0, 13 * paper_unit), Qt::AlignRight | Qt::AlignVCenter, number);
  painter.drawText(line.translated(0, 25 * paper_unit), Qt::AlignLeft | Qt::AlignVCenter, text.ledger);
}

}  // namespace

PaperSize usual_paper(const QLocale& locale) {
  // CLDR's territories that print on US Letter (supplemental data, measurementData/paperSize); from memory.
  static constexpr std::array letter{QLocale::Belize,      QLocale::Canada,      QLocale::Chile,
                                     QLocale::Colombia,    QLocale::CostaRica,   QLocale::Guatemala,
                                     QLocale::Mexico,      QLocale::Panama,      QLocale::Nicaragua,
                                     QLocale::Philippines, QLocale::PuertoRico,  QLocale::Venezuela,
                                     QLocale::ElSalvador,  QLocale::UnitedStates};
  return std::ranges::find(letter, locale.territory()) == letter.end() ? PaperSize::a4 : PaperSize::letter;
}

PaperSize paper_size() {
  const QString set = QSettings().value("paper").toString();
  if (set == "letter") return PaperSize::letter;
  return set == "a4" ? PaperSize::a4 : usual_paper(QLocale());
}

void set_paper_size(std::optional<PaperSize> size) {
  if (size)
    QSettings().setValue("paper", *size == PaperSize::letter ? "letter" : "a4");
  else
    QSettings().remove("paper");
}

QFont paper_font(double points, bool heavy) {
  QFont font;
  font.setPixelSize(static_cast<int>(points * paper_unit));
  font.setWeight(heavy ? QFont::Bold : QFont::Normal);
  font.setHintingPreference(QFont::PreferNoHinting);
  // A trace of spacing keeps the shaper from joining letters into ligatures, which a PDF reader would take
  // out as one odd character: a name must be found by searching for it.
  font.setLetterSpacing(QFont::AbsoluteSpacing, 0.05);
  return font;
}

QSizeF printable(const PaperText& text) {
  return page_layout(text).paintRect(QPageLayout::Point).size() * paper_unit;
}

QRectF paper_body(const PaperText& text) {
  const QSizeF paper = printable(text);
  return {0, head_height, paper.width(), paper.height() - head_height - foot_height};
}

void set_up(QPagedPaintDevice& device, const PaperText& text) { device.setPageLayout(page_layout(text)); }

bool paint_paper(QPagedPaintDevice& device, const PaperText& text, int pages, const DrawBody& draw) {
  QPainter painter(&device);
  return painter.isActive() &&
         draw_paper(painter, device.logicalDpiX(), text, pages, draw, [&] { return device.newPage(); });
}

bool draw_paper(QPainter& painter, int dpi, const PaperText& text, int pages, const DrawBody& draw,
                const std::function<bool()>& new_page) {
  const double scale = static_cast<double>(dpi) / units_per_inch;
  painter.scale(scale, scale);
  const QSizeF paper = printable(text);
  for (int page = 0; page < pages; ++page) {
    if (page > 0 && !new_page()) return false;
    draw_head(painter, text, paper.width());
    painter.save();
    draw(painter, paper_body(text), page);
    painter.restore();
    draw_foot(painter, text, paper, page, pages);
  }
  return painter.end();
}

Expected<int> write_pdf(const QString& path, const PaperText& text, int pages, const DrawBody& draw) {
  const auto refused = [&path](const QString& why) {
    return tl::unexpected(Problem{path.toStdString(),
                                  Tr::tr("The PDF could not be written: %1.").arg(why).toStdString(),
                                  Tr::tr("Choose another folder or name.").toStdString()});
  };
  QSaveFile file(path);
  if (!file.open(QIODevice::WriteOnly)) return refused(file.errorString());
  if (text.personal && !file.setPermissions(QFileDevice::ReadOwner | QFileDevice::WriteOwner))
    return refused(file.errorString());
  {
    QPdfWriter writer(&file);
    writer.setTitle(text.title);
    writer.setCreator(QCoreApplication::applicationName());
    writer.setResolution(units_per_inch);
    set_up(writer, text);
    if (!paint_paper(writer, text, pages, draw)) return refused(file.errorString());
  }
  if (!file.commit()) return refused(file.errorString());
  return pages;
}

}  // namespace wm::app
