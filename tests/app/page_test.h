#pragma once
// The tests of pages are one program, so that what they share is compiled once. Each file is a test of its
// own, in a namespace of its own by the file's name, and the program runs the one whose name it is given.
#include <QObject>
#include <memory>

namespace wm::app {

/// Makes it known under its file's name; once each, before main.
struct PageTest {
  using Make = std::unique_ptr<QObject> (*)();
  PageTest(const char* name, Make make);
};

}  // namespace wm::app

#define WM_PAGE_TEST(name, Class)                 \
  static const wm::app::PageTest name##_is_known( \
      #name, [] { return std::unique_ptr<QObject>(std::make_unique<name::Class>()); });
