#pragma once
// A column of blocks that is drawn anew: a heading (or none), and lines below it.
#include <QStringList>
#include <QVBoxLayout>

namespace wm::app {

void add_block(QVBoxLayout& column, const QString& title, const QStringList& lines);
/// What stood in it is no longer found by its name, and deleted later: what is taken away may be at work just
/// now.
void empty_column(QVBoxLayout& column);

}  // namespace wm::app
