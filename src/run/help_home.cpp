// SPDX-License-Identifier: MIT
#include "run/help_home.h"

#include "read/case_rows.h"
#include "run/command_table.h"
#include "run/load_show.h"
#include "run/version.h"
#include "write/csv_out.h"

namespace dunnage {

int help_import(Desk& desk) {
  desk.out
      << "dunnage import FILE.csv --kit DIR writes a new file into the kit, one [[case]] a row. Save the spreadsheet "
         "as CSV: comma,\n"
         "semicolon or tab; UTF-8, UTF-16 or Windows-1252; decimal point or comma. Head each column as the kit calls "
         "it (code, name,\n"
         "form, home, size, weighed, holds ...: `dunnage list kit-keys`) or in plain words: Weight (lb), Shelf, "
         "Contents, Qty.\n"
         "  --column \"Box no=code\"   says what a column means    --unit weighed=lb   says the unit of bare numbers\n"
         "  --as items               rows are items, not cases   --dry-run           shows the file and writes "
         "nothing\n"
         "What is not read stands in the new file as a comment, and is told with its line; every guess is told. A file "
         "that\n"
         "stands is never touched. `dunnage list cases KIT --csv` goes the other way; items go first, then cases.\n\n"
         "dunnage import FILE.csv --kit DIR --weights takes a column of codes and one of masses, and writes them as "
         "`weighed`\n"
         "into the kit as it stands: no other byte changes.\n";
  return 0;
}

int help_tally(Desk& desk) {
  desk.out << "dunnage tally SHOW --out FILE --loaded FILE --back FILE holds lists of scans against what the show "
              "sends. A list is text:\n"
              "the codes, one a line, or the whole text of each QR code, as a phone or a scanner gives it, with or "
              "without times.\n"
              "Words after a code (\"FOH-1 wheel broken\") are its note. Name each list after who or what it is: "
              "ana.txt, van.txt.\n"
              "What is missing is missing from the last of the stages named. A code with a slip is told with the "
              "nearest one and is\n"
              "not counted: mend the list. Ends with 2 while anything is missing. --sheet FILE.pdf writes the return "
              "sheet, filled in.\n";
  return 0;
}

int help_editor(Desk& desk) {
  desk.out
      << "An editor that knows TOML and JSON Schema completes the keys of a kit and a show, and marks mistakes while "
         "you type:\n"
         "  dunnage list kit-keys --json > kit.schema.json\n"
         "  dunnage list show-keys --json > show.schema.json\n"
         "and as the first line of each file: #:schema ./kit.schema.json (where your editor reads that directive).\n"
         "The schema is made from the reader itself. Units and codes are judged by `dunnage check` alone.\n"
         "Installed from a package, both stand in share/dunnage/schema.\n\n"
         "dunnage complete bash, zsh or fish prints the completion of that shell.\n";
  return 0;
}

int help_man(Desk& desk) {
  desk.out << manual_page(command_table(), version);
  return 0;
}

int list_as_csv(const ListOptions& options, const std::string& section, Desk& desk) {
  Loaded loaded(desk.share);
  if (!load_kit(options.kit, loaded, desk.err)) return 1;
  Sources sources;
  Diagnostics unheard;
  desk.data << csv_text(section_rows(texts_of(loaded.sources), section, sources, unheard));
  return 0;
}

}  // namespace dunnage
