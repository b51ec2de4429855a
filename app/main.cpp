#include "app/cli/program.h"

int main(int argc, char** argv) { return wm::app::run(argc, argv); }
