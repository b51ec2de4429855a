#pragma once
// What the program does with its words: open the Desk, answer a scenario file, back a shop up, put a backup
// back, look a shop's file through, or write out what it holds about one person.
namespace wm::app {

/// The exit status: 0, 2 where the words or a file are not as they must be.
int run(int argc, char** argv);

}  // namespace wm::app
