// page_tests NAME [what QtTest takes]: runs that test of pages; without a name, says which there are.
#include <QtTest>
#include <cstdio>
#include <map>
#include <string>

#include "page_test.h"

using namespace wm::app;

namespace {

std::map<std::string, PageTest::Make>& known() {
  static std::map<std::string, PageTest::Make> tests;
  return tests;
}

}  // namespace

PageTest::PageTest(const char* name, Make make) { known().emplace(name, make); }

int main(int argc, char** argv) {
  const auto found = argc < 2 ? known().end() : known().find(argv[1]);
  if (found == known().end()) {
    std::fprintf(stderr, "Say which test of pages is to run. There are:\n");
    for (const auto& [name, make] : known()) std::fprintf(stderr, "%s\n", name.c_str());
    return 2;
  }
  argv[1] = argv[0];
  argv++;
  argc--;
  QApplication app(argc, argv);
  const auto test = found->second();
  return QTest::qExec(test.get(), argc, argv);
}
