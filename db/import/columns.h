#pragma once
// What each kind of file has in its columns, and which column is which.
#include <map>
#include <string>
#include <string_view>
#include <vector>

#include "db/import/table.h"

namespace wm::db::import {

enum class FileKind { people, history, machines, hours, bookings };

/// A thing that a column can hold. `key` is how the program names it and the header that our own files use.
struct Field {
  std::string key;
  std::string meaning;                // a few words for the person who maps columns
  bool needed = false;                // a file without it cannot be taken in
  std::vector<std::string> known_as;  // other headers that shops give it
};

/// In the order in which a page should list them.
const std::vector<Field>& fields_of(FileKind kind);

/// From a field's key to a column of the table, counted from 0. What is not in it is not in the file.
using Mapping = std::map<std::string, int>;

/// By the header's words, whatever their case, spaces and punctuation. Each column is taken at most once.
Mapping guess_mapping(const Table& table, FileKind kind);

/// The needed fields that a mapping lacks, and columns that are not in the table.
std::vector<Problem> mistakes_in(const Mapping& mapping, const Table& table, FileKind kind);

}  // namespace wm::db::import
