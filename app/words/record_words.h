#pragma once
// What each record says, as a sentence for the journal; and whom and what it is about.
#include <QString>
#include <functional>
#include <optional>
#include <vector>

#include "core/time/zone.h"
#include "db/facts.h"

namespace wm::app {

/// What a sentence needs to know beside its record.
struct RecordReader {
  std::function<QString(const PersonId&)> name_of;
  std::function<QString(const MachineId&)> machine_of;
  std::function<const db::Entry*(const RecordId&)> record_of;
  Zone zone = Zone::utc();

  /// Who entered something: a name, or that it came with the import that made the shop.
  QString entered_by(const PersonId& id) const;
};

/// "Kim Aoki passed the check-out on the bandsaw; assessed by Mara Devlin." No birth date, no reason of a
/// pause.
QString record_sentence(const db::Entry& entry, const RecordReader& reader);
/// Free text of a record: what was written, or that it has been erased.
QString said_words(const std::string& text);
/// "another guard": what kind of change a machine had.
QString alteration_words(db::Alteration kind);
/// "was hurt", after a name.
QString part_words(Part part);
/// The sort of record in a word or two, as a filter lists it: "Check-out", "Booking".
QString record_kind(const db::Entry& entry);
/// "instructor", or "no role".
QString role_words(std::optional<db::Role> role);
/// Everybody that it names, through the record that it ends or adds to as well; not who entered it.
std::vector<PersonId> people_in(const db::Entry& entry, const RecordReader& reader);

}  // namespace wm::app
