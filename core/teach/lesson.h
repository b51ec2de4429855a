#pragma once
// A lesson's page: Markdown (CommonMark), gone through part by part, with what it shows beside its words.
#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

namespace wm::teach {

/// A part begins at each heading of the second level; the first is what stands before those, its heading the
/// page's title.
struct LessonPart {
  std::string heading;
  std::string text;  // with its heading, as it stands in the page
  friend bool operator==(const LessonPart&, const LessonPart&) = default;
};
/// At least one where the page says anything. Headings inside of fenced code are none.
std::vector<LessonPart> parts_of(std::string_view markdown);

/// `picture`: inside of the page. `pdf`, `video`: files beside it, by their names' ends. `web`: an http or
/// https address. `other`: nothing that a lesson can show.
enum class ShownKind { picture, pdf, video, web, other };

struct Shown {
  ShownKind kind = ShownKind::other;
  std::string name;      // as the page has it
  std::size_t line = 1;  // of the page, from 1 on
  friend bool operator==(const Shown&, const Shown&) = default;
};
/// By the name alone.
ShownKind kind_of(std::string_view name);
/// What the page's links and pictures name, in its order; not what stands in code.
std::vector<Shown> shown_in(std::string_view markdown);

}  // namespace wm::teach
