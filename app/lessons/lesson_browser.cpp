#include "app/lessons/lesson_browser.h"

#include <QImage>
#include <QPointer>
#include <QScrollBar>
#include <QTextBlock>

#include "app/lists/issued.h"
#include "app/theme/theme.h"

namespace wm::app {
namespace {

constexpr int margin = 18;

int letters_of(int heading_level, int pixels) {
  return heading_level == 1 ? pixels * 3 / 2 : heading_level == 2 ? pixels * 5 / 4 : pixels;
}

/// Each piece of a block keeps what makes it bold or a link, and loses the size that Markdown gave it.
void set_letters(const QTextBlock& block, int pixels) {
  std::vector<QTextFragment> pieces;
  for (auto piece = block.begin(); !piece.atEnd(); ++piece) pieces.push_back(piece.fragment());
  for (const QTextFragment& piece : pieces) {
    QTextCursor cursor(block);
    cursor.setPosition(piece.position());
    cursor.setPosition(piece.position() + piece.length(), QTextCursor::KeepAnchor);
    QTextCharFormat format = piece.charFormat();
    format.clearProperty(QTextFormat::FontSizeAdjustment);
    format.setProperty(QTextFormat::FontPixelSize, pixels);
    if (format.isAnchor()) format.setForeground(wm::app::palette().full);
    cursor.setCharFormat(format);
  }
}

/// Markdown has no room between its blocks by itself.
void set_type(QTextDocument& document, int pixels) {
  for (QTextBlock block = document.begin(); block.isValid(); block = block.next()) {
    QTextBlockFormat format = block.blockFormat();
    const int level = format.headingLevel();
    format.setLineHeight(140, QTextBlockFormat::ProportionalHeight);
    format.setTopMargin(level > 0 ? pixels : 0);
    format.setBottomMargin(pixels * 0.5);
    QTextCursor(block).setBlockFormat(format);
    set_letters(block, letters_of(level, pixels));
  }
}

}  // namespace

LessonBrowser::LessonBrowser(QWidget* parent) : QTextBrowser(parent) {
  setObjectName("lesson_text");
  setAccessibleName(tr("Lesson"));
  setOpenLinks(false);
  setFrameShape(NoFrame);
}

void LessonBrowser::set_enclosures(const std::vector<db::Enclosure>& enclosures) {
  files_.clear();
  for (const db::Enclosure& each : enclosures) files_[QString::fromStdString(each.name)] = bytes_of(each);
}

void LessonBrowser::show_part(const QString& markdown, bool large) {
  markdown_ = markdown;
  large_ = large;
  draw();
  verticalScrollBar()->setValue(0);
}

void LessonBrowser::draw() {
  const int pixels = QFontInfo(type(TypeSize::body)).pixelSize() * (large_ ? 9 : 6) / 5;
  drawn_for_ = room_across();
  // A new one each time: in one that was filled before, a heading begins with an empty line.
  auto* fresh = new QTextDocument(this);
  fresh->setDocumentMargin(margin);
  fresh->setDefaultFont(type(TypeSize::body));
  // The one before goes with it where the view made it itself, and then it is no more to be asked.
  const QPointer<QTextDocument> before = document();
  setDocument(fresh);
  if (before && before->parent() == this) before->deleteLater();
  fresh->setMarkdown(markdown_, QTextDocument::MarkdownDialectCommonMark);
  set_type(*fresh, pixels);
}

bool LessonBrowser::at_end() const { return verticalScrollBar()->value() >= verticalScrollBar()->maximum(); }

/// No wider than the page.
QVariant LessonBrowser::loadResource(int type, const QUrl& name) {
  const auto found = files_.find(name.toString());
  if (type != QTextDocument::ImageResource || found == files_.end()) return {};
  QImage image = QImage::fromData(found->second);
  const int room = room_across() - 2 * margin;
  if (image.width() > room && room > 0) image = image.scaledToWidth(room, Qt::SmoothTransformation);
  return image;
}

/// Whether there is a scroll bar or not, so that pictures do not change with it.
int LessonBrowser::room_across() const { return width() - verticalScrollBar()->sizeHint().width(); }

void LessonBrowser::resizeEvent(QResizeEvent* event) {
  QTextBrowser::resizeEvent(event);
  if (room_across() == drawn_for_ || markdown_.isEmpty()) return;
  const int place = verticalScrollBar()->value();
  draw();  // pictures fit the new width
  verticalScrollBar()->setValue(place);
}

}  // namespace wm::app
