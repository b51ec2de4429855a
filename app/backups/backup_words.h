#pragma once
// What is said of backups: at the desk, in lists, and of what putting one back would lose.
#include <QString>

#include "app/lists/record_reader.h"

namespace wm::app {

/// What the desk must be told; empty where all is well. A demo shop loses nothing: it is told nothing before
/// its backups have been set up.
QString backup_reminder(Session& session);
/// "shop-20261125-232000Z.backup, 3.2 MB"
QString backup_file_words(const db::BackupFile& file);
/// "each day", "each week", "only by hand"
QString backup_rhythm(int every_days);
/// What a commit that would be lost had entered, in the journal's sentences.
QString lost_words(const db::MissingCommit& commit, const db::Store& store, const RecordReader& reader);

}  // namespace wm::app
