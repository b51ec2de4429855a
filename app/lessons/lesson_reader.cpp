#include "app/lessons/lesson_reader.h"

#include <QBuffer>
#include <QDesktopServices>
#include <QFileInfo>
#include <QHBoxLayout>
#include <QPdfDocument>
#include <QPdfView>
#include <QScrollBar>
#include <QUrl>
#include <QVBoxLayout>
#include <algorithm>

#include "app/lessons/lesson_file.h"
#include "app/lists/issued.h"
#include "app/theme/theme.h"
#include "app/widgets/key_button.h"
#include "app/widgets/role_label.h"

namespace wm::app {

LessonReader::LessonReader(QWidget* parent) : QWidget(parent) {
  auto* down = new QVBoxLayout(this);
  down->setContentsMargins(18, 14, 18, 12);
  down->setSpacing(8);
  title_ = role_label("large");
  title_->setObjectName("lesson_title");
  under_ = role_label("quiet");
  under_->setObjectName("lesson_under");
  down->addWidget(title_);
  down->addWidget(under_);
  auto* across = new QHBoxLayout;
  across->setSpacing(16);
  across->addWidget(make_parts(), 2);
  across->addWidget(make_page(), 7);
  down->addLayout(across, 1);
  down->addWidget(make_buttons());
}

QWidget* LessonReader::make_parts() {
  list_ = new QListWidget;
  list_->setObjectName("lesson_parts");
  list_->setAccessibleName(tr("Parts of the lesson"));
  list_->setMinimumWidth(200);
  list_->setMaximumWidth(340);
  list_->setWordWrap(true);
  connect(list_, &QListWidget::currentRowChanged, this, [this](int row) {
    if (row >= 0 && row != part_) go_to(row);
  });
  return list_;
}

QWidget* LessonReader::make_page() {
  auto* box = new QWidget;
  box->setMaximumWidth(1000);  // a line that is read easily
  auto* down = new QVBoxLayout(box);
  down->setContentsMargins(0, 0, 0, 0);
  text_ = new LessonBrowser;
  pdf_ = new QPdfDocument(this);
  pdf_view_ = new QPdfView;
  pdf_view_->setObjectName("lesson_pdf");
  pdf_view_->setDocument(pdf_);
  pdf_view_->setPageMode(QPdfView::PageMode::MultiPage);
  pdf_view_->setZoomMode(QPdfView::ZoomMode::FitToWidth);
  pages_ = new QStackedWidget;
  pages_->addWidget(text_);
  pages_->addWidget(pdf_view_);
  files_ = new QHBoxLayout;
  files_->setContentsMargins(0, 0, 0, 0);
  down->addWidget(pages_, 1);
  down->addLayout(files_);
  connect(text_, &QTextBrowser::anchorClicked, this, [this](const QUrl& url) { open_link(url.toString()); });
  connect(text_->verticalScrollBar(), &QScrollBar::valueChanged, this, &LessonReader::note_read);
  connect(text_->verticalScrollBar(), &QScrollBar::rangeChanged, this, &LessonReader::note_read);
  return box;
}

QWidget* LessonReader::make_buttons() {
  auto* box = new QWidget;
  auto* across = new QHBoxLayout(box);
  across->setContentsMargins(0, 0, 0, 0);
  across->setSpacing(10);
  auto* back = new KeyButton(tr("Leave it"), QKeySequence("Esc"));
  back->setObjectName("lesson_leave");
  size_ = new KeyButton(tr("Large type"), QKeySequence::ZoomIn);
  size_->setObjectName("lesson_size");
  on_ = new KeyButton(tr("Go on"), QKeySequence("Ctrl+Return"), true);
  on_->setObjectName("lesson_on");
  across->addWidget(back);
  across->addWidget(size_);
  across->addStretch(1);
  across->addWidget(on_);
  connect(back, &QPushButton::clicked, this, &LessonReader::leave);
  connect(on_, &QPushButton::clicked, this, &LessonReader::go_on);
  connect(size_, &QPushButton::clicked, this, [this] {
    large_ = !large_;
    go_to(part_);
  });
  return box;
}

void LessonReader::show_lesson(const db::Issued& lesson, const QString& title, const QString& under,
                               const std::string& store_path) {
  parts_ = teach::parts_of(lesson.text);
  read_.assign(parts_.size(), false);
  enclosures_ = lesson.enclosures;
  store_path_ = store_path;
  told_ = false;
  title_->setText(title);
  under_->setText(under);
  text_->set_enclosures(lesson.enclosures);
  const QSignalBlocker quiet(list_);
  list_->clear();
  for (const teach::LessonPart& part : parts_) list_->addItem(QString::fromStdString(part.heading));
  go_to(0);
  text_->setFocus();
}

bool LessonReader::gone_through() const {
  return !read_.empty() && std::ranges::all_of(read_, [](bool each) { return each; });
}

void LessonReader::go_to(int part) {
  if (parts_.empty()) return;
  part_ = std::clamp(part, 0, static_cast<int>(parts_.size()) - 1);
  const std::string& markdown = parts_[static_cast<std::size_t>(part_)].text;
  pages_->setCurrentWidget(text_);
  text_->show_part(QString::fromStdString(markdown), large_);
  show_files(markdown);
  const QSignalBlocker quiet(list_);
  list_->setCurrentRow(part_);
  note_read();
}

/// A part is read once its end was on the screen; what is not shown to anybody was not.
void LessonReader::note_read() {
  const auto at = static_cast<std::size_t>(part_);
  if (at < read_.size() && text_->isVisible() && text_->at_end()) read_[at] = true;
  show_state();
  emit moved();
  if (told_ || !gone_through()) return;
  told_ = true;
  emit read_through();
}

void LessonReader::show_state() {
  for (std::size_t i = 0; i < parts_.size(); ++i) {
    const QString heading = QString::fromStdString(parts_[i].heading);
    QListWidgetItem* item = list_->item(static_cast<int>(i));
    item->setSizeHint({0, row_height()});
    item->setText(read_[i] ? QStringLiteral("✓  ") + heading : QStringLiteral("     ") + heading);
    item->setData(Qt::AccessibleTextRole, read_[i] ? tr("%1, read", "a part").arg(heading) : heading);
  }
  size_->say(large_ ? tr("Usual type") : tr("Large type"));
  on_->setEnabled(!gone_through());
}

/// What is short enough to be seen whole has been, once it is on the screen.
void LessonReader::showEvent(QShowEvent* event) {
  QWidget::showEvent(event);
  QMetaObject::invokeMethod(this, &LessonReader::note_read, Qt::QueuedConnection);
}

/// One screen on, or to the next part that was not read to its end.
void LessonReader::go_on() {
  if (pages_->currentWidget() == pdf_view_) return go_to(part_);
  QScrollBar* bar = text_->verticalScrollBar();
  if (!text_->at_end()) return bar->setValue(bar->value() + bar->pageStep() * 9 / 10);
  const int count = static_cast<int>(parts_.size());
  for (int step = 1; step <= count; ++step)
    if (const int next = (part_ + step) % count; !read_[static_cast<std::size_t>(next)]) return go_to(next);
}

void LessonReader::show_files(const std::string& markdown) {
  while (QLayoutItem* item = files_->takeAt(0)) {
    delete item->widget();
    delete item;
  }
  for (const teach::Shown& shown : teach::shown_in(markdown)) {
    if (shown.kind == teach::ShownKind::picture) continue;
    const QString name = QString::fromStdString(shown.name);
    const bool video = shown.kind == teach::ShownKind::video;
    auto* button = new KeyButton(video ? tr("Watch %1").arg(name) : tr("Open %1").arg(name), {});
    button->setObjectName("lesson_file");
    connect(button, &QPushButton::clicked, this, [this, name] { open_link(name); });
    files_->addWidget(button);
  }
  files_->addStretch(1);
}

void LessonReader::open_link(const QString& name) {
  switch (teach::kind_of(name.toStdString())) {
    case teach::ShownKind::pdf:
      return open_pdf(name);
    case teach::ShownKind::video:
      return open_video(name);
    case teach::ShownKind::web:
      if (!QDesktopServices::openUrl(QUrl(name)))
        emit tell_problem({name.toStdString(), tr("This computer opens no web pages").toStdString(),
                           tr("Open %1 on another one").arg(name).toStdString()});
      return;
    case teach::ShownKind::picture:
    case teach::ShownKind::other:
      return;
  }
}

void LessonReader::open_pdf(const QString& name) {
  const auto found = std::ranges::find(enclosures_, name.toStdString(), &db::Enclosure::name);
  auto* bytes = new QBuffer(pdf_);
  if (found != enclosures_.end()) bytes->setData(bytes_of(*found));
  bytes->open(QBuffer::ReadOnly);
  pdf_->close();
  pdf_->load(bytes);
  if (pdf_->status() != QPdfDocument::Status::Ready)
    return emit tell_problem({name.toStdString(),
                              tr("%1 cannot be shown: it is no whole PDF").arg(name).toStdString(),
                              tr("Ask a manager to issue the lesson again with it").toStdString()});
  pages_->setCurrentWidget(pdf_view_);
  pdf_view_->setFocus();
}

/// By the computer's own player: what it can play depends on what is installed there.
void LessonReader::open_video(const QString& name) {
  const QString path = video_path(store_path_, name);
  if (!QFileInfo::exists(path))
    return emit tell_problem({name.toStdString(),
                              tr("The video %1 is not on this computer").arg(name).toStdString(),
                              tr("Put it at %1").arg(path).toStdString()});
  if (!QDesktopServices::openUrl(QUrl::fromLocalFile(path)))
    emit tell_problem({name.toStdString(), tr("This computer has no player for %1").arg(name).toStdString(),
                       tr("Watch it on another one: the file is %1").arg(path).toStdString()});
}

void LessonReader::leave() {
  if (pages_->currentWidget() == pdf_view_) return go_to(part_);
  emit left();
}

}  // namespace wm::app
