#pragma once
// The sitting that this computer keeps: one file in the station's own folder, written after every answer, so
// that neither a power cut nor a killed program costs more than what was being typed.
#include <QLockFile>
#include <QString>
#include <memory>
#include <optional>

#include "app/quiz/sitting.h"

namespace wm::app {

/// One computer has one sitting at a time: one member, one screen.
class SittingFile {
 public:
  /// `folder` empty: nothing is kept, and nothing is in anybody's way.
  explicit SittingFile(const QString& folder);

  /// Takes it for this program, until it is let go, or the program ends however it may. Refuses while another
  /// program has it.
  Expected<void> take();
  void let_go() { lock_.reset(); }

  struct Found {
    std::optional<SittingState> state;
    /// The file was damaged: it has been put aside under another name, and this says so.
    std::optional<Problem> damaged;
  };
  Found read(Instant now) const;
  /// What can't be taken up again, put aside for whoever wants to look into it; where it lies now.
  QString put_aside(Instant now) const;
  /// Written beside, on the disk, and only then in its place: a power cut leaves this one or the one before.
  std::optional<Problem> write(const SittingState& state) const;
  /// The attempt is in the store now.
  void drop() const;

 private:
  QString path_;
  std::unique_ptr<QLockFile> lock_;
};

/// As the file has it.
QByteArray to_json(const SittingState& state);
/// Nothing where it is no such state.
std::optional<SittingState> sitting_state(const QByteArray& json);

}  // namespace wm::app
