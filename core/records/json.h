#pragma once
// One record as the JSON object that scenario files and the store use.
#include <string>
#include <string_view>
#include <vector>

#include "core/problem.h"
#include "core/records/record.h"

namespace wm {

/// The record as one line of JSON, keys in alphabetical order, no spaces: the same record always gives the
/// same bytes (RFC 8785 for the subset used here: text, whole numbers, true).
std::string to_json(const Record& record);
/// The same in the form of answers: fields in the order in which they are told.
std::string to_answer(const Record& record);
/// Reads one record strictly, by its own form alone: whether what it names exists is for the caller to check.
tl::expected<Record, std::vector<Problem>> read_record(std::string_view json);

}  // namespace wm
