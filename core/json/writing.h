#pragma once
// JSON as text: the two forms that the program writes.
#include <initializer_list>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace wm::json {

/// Text as a JSON string, in UTF-8, with only those characters escaped that must be (RFC 8785, 3.2.2.2).
std::string in_quotes(std::string_view text);

/// A field's key and its value, the value already written as JSON.
using Member = std::pair<std::string_view, std::string>;
/// `{"a": 1, "b": 2}`, in the order given: the form of answers.
std::string object(const std::vector<Member>& members);
/// `[1, 2]` of values already written.
std::string list(const std::vector<std::string>& items);
/// The same without spaces: the form of what is stored.
std::string compact(const std::vector<Member>& members);
std::string compact(const std::vector<std::string>& items);

}  // namespace wm::json
