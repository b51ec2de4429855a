#include "core/json/writing.h"

#include <nlohmann/json.hpp>

#include "core/json/writer.h"

namespace wm::json {

namespace {

std::string joined(const std::vector<std::string>& items, std::string_view comma) {
  std::string out;
  for (const auto& item : items) out.append(out.empty() ? "" : comma).append(item);
  return out;
}

std::string joined(const std::vector<Member>& members, std::string_view comma, std::string_view colon) {
  std::string out;
  for (const auto& [key, value] : members)
    out.append(out.empty() ? "" : comma).append(in_quotes(key)).append(colon).append(value);
  return out;
}

}  // namespace

std::string in_quotes(std::string_view text) { return nlohmann::json(text).dump(); }

std::string object(const std::vector<Member>& members) { return "{" + joined(members, ", ", ": ") + "}"; }
std::string list(const std::vector<std::string>& items) { return "[" + joined(items, ", ") + "]"; }
std::string compact(const std::vector<Member>& members) { return "{" + joined(members, ",", ":") + "}"; }
std::string compact(const std::vector<std::string>& items) { return "[" + joined(items, ",") + "]"; }

std::string written(Period period) {
  const auto unit = [&] {
    switch (period.unit) {
      case PeriodUnit::days:
        return "days";
      case PeriodUnit::months:
        return "months";
      case PeriodUnit::calendar_months:
        return "calendar_months";
    }
    return "";
  };
  return compact(std::vector<Member>{{unit(), std::to_string(period.count)}});
}

}  // namespace wm::json
