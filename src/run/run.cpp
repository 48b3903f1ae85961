// SPDX-License-Identifier: MIT
#include "run/run.h"

#include "base/error.h"
#include "base/utf8.h"
#include "run/command_line.h"
#include "run/command_table.h"
#include "run/commands.h"
#include "run/on_screen.h"

namespace dunnage {

int run(const std::vector<std::string>& arguments, const std::filesystem::path& share, std::ostream& out,
        std::ostream& err, Watched watched) {
  ShownStream shown_out(out), shown_err(err);
  Desk desk{share, shown_out, watched.out ? shown_out : out, shown_err, watched.err ? &err : nullptr};
  struct {
    Desk& desk;
    int operator()(const PrintOptions& o) const { return print_packet(o, desk); }
    int operator()(const CheckOptions& o) const { return check_show(o, desk); }
    int operator()(const ClashOptions& o) const { return clash_shows(o, desk); }
    int operator()(const WhyOptions& o) const { return say_why(o, desk); }
    int operator()(const LabelOptions& o) const { return print_labels(o, desk); }
    int operator()(const ReckonOptions& o) const { return reckon_figure(o, desk); }
    int operator()(const ListOptions& o) const { return list_things(o, desk); }
    int operator()(const HelpOptions& o) const { return help_topic(o, desk); }
    int operator()(const BeginOptions& o) const { return begin_kit(o, desk); }
    int operator()(const ImportOptions& o) const { return import_table(o, desk); }
    int operator()(const TallyOptions& o) const { return tally_show(o, desk); }
    int operator()(const CompleteOptions& o) const {
      desk.out << completion(command_table(), o.shell);
      return 0;
    }
    int operator()(const SayOptions& o) const {
      desk.out << o.text;
      return 0;
    }
  } command{desk};
  try {
    for (const std::string& argument : arguments)
      if (utf8::first_fault(argument))
        throw UsageError("\"" + utf8::repaired(argument) +
                         "\" is not UTF-8; if it names a file, give the file another name");
    return std::visit(command, read_command_line(arguments));
  } catch (const UsageError& e) {
    desk.err << on_screen("error: {}\n", e.what());
    return 1;
  }
}

}  // namespace dunnage
