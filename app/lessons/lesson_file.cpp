#include "app/lessons/lesson_file.h"

#include <QCoreApplication>
#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QStringDecoder>
#include <algorithm>

#include "core/teach/lesson.h"

namespace wm::app {
namespace {

struct LessonFiles {
  Q_DECLARE_TR_FUNCTIONS(LessonFiles)
};

/// A page is words; what it shows is kept with the records for good, and read with them each time.
constexpr qint64 most_text = qint64{256} << 10, most_enclosed = qint64{4} << 20;

Problem problem(const QString& where, const QString& what, const QString& remedy) {
  return {where.toStdString(), what.toStdString(), remedy.toStdString()};
}

Expected<QByteArray> read_file(const QString& path, qint64 most, const QString& where) {
  QFile file(path);
  if (!file.open(QFile::ReadOnly))
    return tl::unexpected(
        problem(where, LessonFiles::tr("The file %1 cannot be read: %2").arg(path, file.errorString()),
                LessonFiles::tr("Put it beside the page, or take it out of the page")));
  if (file.size() > most)
    return tl::unexpected(
        problem(where,
                LessonFiles::tr("The file %1 is too big: %2 KB, and %3 KB at most are kept")
                    .arg(path, QString::number(file.size() >> 10), QString::number(most >> 10)),
                LessonFiles::tr("Make it smaller, or put it on a web page and link to that")));
  return file.readAll();
}

Problem nothing_to_show(const QString& where, const QString& name) {
  return problem(
      where, LessonFiles::tr("No lesson shows this: %1").arg(name),
      LessonFiles::tr("Name a picture (png, jpg, svg), a PDF or a video that lies beside the page, or "
                      "a web address with https"));
}

/// Nothing for what stays outside.
Expected<std::optional<db::Enclosure>> enclosure_of(const teach::Shown& shown, const QDir& folder) {
  using teach::ShownKind;
  const QString name = QString::fromStdString(shown.name);
  const QString where = LessonFiles::tr("line %1").arg(shown.line);
  const ShownKind by_name = teach::kind_of(shown.name);
  const bool picture = shown.kind == ShownKind::picture;
  if (picture != (by_name == ShownKind::picture) || by_name == ShownKind::other)
    return tl::unexpected(nothing_to_show(where, name));
  if (by_name == ShownKind::web || by_name == ShownKind::video) return std::nullopt;
  const auto bytes = read_file(folder.filePath(name), most_enclosed, where);
  if (!bytes) return tl::unexpected(bytes.error());
  return db::Enclosure{shown.name, bytes->toBase64().toStdString()};
}

}  // namespace

Expected<LessonFile> read_lesson_file(const QString& path) {
  const auto bytes = read_file(path, most_text, path);
  if (!bytes) return tl::unexpected(bytes.error());
  QStringDecoder utf8(QStringDecoder::Utf8);
  const QString text = utf8(*bytes);
  if (utf8.hasError())
    return tl::unexpected(
        problem(path, LessonFiles::tr("The page is not UTF-8 text"), LessonFiles::tr("Save it as UTF-8")));
  LessonFile out{text.toStdString(), {}};
  if (teach::parts_of(out.text).empty())
    return tl::unexpected(
        problem(path, LessonFiles::tr("The page is empty"), LessonFiles::tr("Write it first")));
  for (const teach::Shown& shown : teach::shown_in(out.text)) {
    auto enclosure = enclosure_of(shown, QFileInfo(path).dir());
    if (!enclosure) return tl::unexpected(enclosure.error());
    const bool there =
        std::ranges::any_of(out.enclosures, [&](const db::Enclosure& one) { return one.name == shown.name; });
    if (*enclosure && !there) out.enclosures.push_back(std::move(**enclosure));
  }
  return out;
}

QString video_path(const std::string& store_path, const QString& name) {
  return QFileInfo(QString::fromStdString(store_path)).dir().filePath("lessons/" + name);
}

}  // namespace wm::app
