#include "core/sheet/choose.h"

#include <algorithm>

namespace wm {
namespace {

void collect(const Requirement& requirement, std::vector<std::string>& names) {
  const auto parts = [&](const std::vector<Requirement>& of) {
    for (const Requirement& part : of) collect(part, names);
  };
  if (const auto* checkout = std::get_if<NeedCheckout>(&requirement.need)) {
    if (std::find(names.begin(), names.end(), checkout->checkout) == names.end())
      names.push_back(checkout->checkout);
  } else if (const auto* all = std::get_if<NeedAllOf>(&requirement.need)) {
    parts(all->of);
  } else if (const auto* any = std::get_if<NeedAnyOf>(&requirement.need)) {
    parts(any->of);
  } else if (const auto* some = std::get_if<NeedSomeOf>(&requirement.need)) {
    parts(some->of);
  }
}

}  // namespace

std::vector<std::string> checkouts_asked(const Rulebook& rulebook, std::string_view target) {
  std::vector<std::string> names;
  for (const Gate* gate : gates_of(rulebook, target)) collect(gate->need, names);
  return names;
}

const Sheet* sheet_for(std::span<const Sheet* const> sheets, const Rulebook& rulebook,
                       std::string_view target) {
  for (const std::string& name : checkouts_asked(rulebook, target)) {
    const Sheet* best = nullptr;
    for (const Sheet* sheet : sheets)
      if (sheet->checkout == name && sheet->machine_class == class_of(target) &&
          (best == nullptr || sheet->revision > best->revision))
        best = sheet;
    if (best != nullptr) return best;
  }
  return nullptr;
}

}  // namespace wm
