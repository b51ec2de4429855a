#include "app/cli/program.h"

#include <CLI/CLI.hpp>

#include "app/cli/answer_file.h"
#include "app/cli/backup_file.h"
#include "app/cli/export_file.h"
#include "app/cli/move_shop.h"
#include "app/cli/retention_file.h"
#include "app/cli/verify_file.h"
#include "app/cli/version.h"
#include "app/start/open_program.h"

namespace wm::app {

int run(int argc, char** argv) {
  CLI::App words{
      "Witnessmark decides who may use which machine of a workshop, why, and when re-checks fall due.\n"
      "Without a command it opens the Desk. It records permission; it does not make a machine safe."};
  words.set_version_flag("--version", version);
  OpenWith open;
  words.add_option("--store", open.store, "The shop's file; without it, the one in the user's data folder");
  words.add_flag("--demo", open.demo, "Open the demo shop, made where there is none yet");
  std::string station, station_store;
  CLI::Option* only =
      words.add_option("--station", station, "Show nothing but this station, over the whole screen")
          ->check(CLI::IsMember({"quiz"}));
  words.add_option("STORE", station_store, "With --station: the shop's file")
      ->needs(only)
      ->excludes("--store");
  std::string file;
  CLI::App* answer = words.add_subcommand("answer", "Answer a scenario file, one JSON object a line");
  answer->add_option("FILE", file, "The file; - for standard input")->required();
  std::string store, folder, backup;
  bool yes = false;
  CLI::App* backing = words.add_subcommand(
      "backup",
      "Copy a shop, from its file or its server, into a folder, check the copy, and thin out older ones");
  backing
      ->add_option("STORE", store,
                   "The shop: its file, or postgresql://login@server/database; the program may have it open")
      ->required();
  backing->add_option("DIR", folder, "The folder, best on another disk")->required();
  CLI::App* restoring = words.add_subcommand(
      "restore", "Say what would be lost by putting a backup back, and with --yes put it back");
  restoring->add_option("BACKUP", backup, "The backup")->required();
  restoring
      ->add_option("STORE", store,
                   "The shop's file, which nobody may have open; or postgresql://login@server/database, with "
                   "nothing in it")
      ->required();
  restoring->add_flag("--yes", yes, "Do it. The file that was there is kept beside");
  VerifyWords verify;
  CLI::App* verifying = words.add_subcommand(
      "verify", "Look a shop's file through: whether anything was altered, added, removed or cut off");
  verifying->add_option("STORE", verify.store, "The shop's file, or a backup of it")->required();
  verifying->add_option(
      "--against", verify.against,
      "A root from outside the file: as it stands on a paper, or a file with signed ones; can be repeated");
  verifying->add_flag("--all", verify.all, "Verify signatures too that lie under a root that holds");
  verifying->add_option("--record", verify.record, "Show that the record of this id is in the file's tree");
  ExportWords about;
  CLI::App* exporting =
      words.add_subcommand("export", "Write all that a shop's file holds about one person into a file");
  exporting->add_option("STORE", about.store, "The shop's file; the program may have it open")->required();
  exporting->add_option("--person", about.person, "The member's number, or the person's id")->required();
  exporting->add_option("--json", about.json, "The file to write, for another program");
  exporting->add_option("--pdf", about.pdf, "The file to write, to read and print");
  exporting->add_flag("--replace", about.replace, "Write over files of these names");
  CLI::App* retaining = words.add_subcommand(
      "retention", "Say whose details the rulebook no longer asks to keep; nothing is erased");
  retaining->add_option("STORE", store, "The shop's file; the program may have it open")->required();
  std::string from, to;
  CLI::App* moving = words.add_subcommand(
      "move", "Copy a whole shop into a file or onto a server, or back, and compare the two");
  moving->add_option("FROM", from, "The shop: its file, or postgresql://login@server/database")->required();
  moving->add_option("TO", to, "Where no shop is yet: a new file, or an empty database")->required();
  try {
    words.parse(argc, argv);
  } catch (const CLI::ParseError& error) {
    return words.exit(error) == 0 ? 0 : 2;
  }
  open.quiz_station = !station.empty();
  if (!station_store.empty()) open.store = station_store;
  if (answer->parsed()) return answer_file(file);
  if (backing->parsed()) return backup_file(store, folder);
  if (restoring->parsed()) return restore_file(backup, store, yes);
  if (verifying->parsed()) return verify_file(verify);
  if (exporting->parsed()) return export_file(about);
  if (retaining->parsed()) return retention_file(store);
  if (moving->parsed()) return move_shop(from, to);
  return open_program(argc, argv, open);
}

}  // namespace wm::app
