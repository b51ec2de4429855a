#include "core/passes/lumber.h"

#include <span>

namespace wm {
namespace {

/// In 32nds of an inch.
struct Row {
  int nominal, dry, unseasoned;
};

constexpr Row thicknesses[] = {{12, 10, 11},  {16, 14, 15},    {20, 18, 19},   {24, 20, 22}, {32, 24, 25},
                               {40, 32, 33},  {48, 40, 41},    {64, 48, 50},   {80, 64, 66}, {96, 80, 82},
                               {112, 96, 98}, {128, 112, 114}, {144, 128, 130}};

constexpr Row widths[] = {{64, 48, 50},    {96, 80, 82},    {128, 112, 114}, {160, 144, 148}, {192, 176, 180},
                          {224, 208, 212}, {256, 232, 240}, {288, 264, 272}, {320, 296, 304}, {352, 328, 336},
                          {384, 360, 368}, {448, 424, 432}, {512, 488, 496}};

std::optional<Inches> in_table(std::span<const Row> rows, const Inches& nominal, Seasoning seasoning) {
  for (const Row& row : rows)
    if (inches(row.nominal, 32) == nominal)
      return inches(seasoning == Seasoning::dry ? row.dry : row.unseasoned, 32);
  return std::nullopt;
}

/// Timbers, whose nominal sizes are whole inches, are off by so much.
std::optional<Inches> timber(const Inches& nominal, Seasoning seasoning) {
  if (nominal < inches(5) || nominal.count.get_den() != 1) return std::nullopt;
  if (seasoning == Seasoning::unseasoned || nominal < inches(7)) return nominal - inches(1, 2);
  return nominal - (nominal < inches(16) ? inches(3, 4) : inches(1));
}

}  // namespace

std::optional<Inches> dressed_thickness(const Inches& nominal, Seasoning seasoning) {
  const auto found = in_table(thicknesses, nominal, seasoning);
  return found ? found : timber(nominal, seasoning);
}

std::optional<Inches> dressed_width(const Inches& nominal, Seasoning seasoning) {
  return in_table(widths, nominal, seasoning);
}

}  // namespace wm
