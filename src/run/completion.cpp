// SPDX-License-Identifier: MIT
// Options come from the table; everything that is no option is a file, which each shell completes by itself.
#include <fmt/format.h>

#include "run/command_table.h"

namespace dunnage {

namespace {

std::string command_names(const std::vector<CommandWords>& commands) {
  std::string out;
  for (const CommandWords& one : commands) out += (out.empty() ? "" : " ") + one.name;
  return out;
}

std::string option_names(const CommandWords& command) {
  std::string out;
  for (const OptionWords& one : command.options) out += (out.empty() ? "" : " ") + one.name;
  return out;
}

/// Lists that `dunnage list` and `dunnage help` know, and other closed sets of words.
struct Closed {
  const char* command;
  const char* words;
};
constexpr Closed closed[] = {{"list", "docs stocks units rules layouts cases items kit-keys show-keys"},
                             {"help", "units conditions labels layouts safety import tally editor man"},
                             {"complete", "bash zsh fish"}};

std::string words_of(const std::string& command) {
  for (const Closed& one : closed)
    if (command == one.command) return one.words;
  return {};
}

std::string bash(const CommandTable& table) {
  std::string cases;
  for (const CommandWords& one : table.commands)
    cases += fmt::format("    {}) options=\"{}\"; words=\"{}\" ;;\n", one.name, option_names(one), words_of(one.name));
  return "# bash completion for dunnage\n"
         "_dunnage() {\n"
         "  local word=\"${COMP_WORDS[COMP_CWORD]}\" options=\"\" words=\"\"\n"
         "  if [ \"$COMP_CWORD\" -eq 1 ]; then\n"
         "    COMPREPLY=($(compgen -W \"" +
         command_names(table.commands) +
         " --help --version\" -- \"$word\"))\n"
         "    return\n"
         "  fi\n"
         "  case \"${COMP_WORDS[1]}\" in\n" +
         cases +
         "  esac\n"
         "  case \"$word\" in\n"
         "    -*) COMPREPLY=($(compgen -W \"$options --help\" -- \"$word\")) ;;\n"
         "    *) COMPREPLY=($(compgen -W \"$words\" -- \"$word\") $(compgen -f -- \"$word\")) ;;\n"
         "  esac\n"
         "}\n"
         "complete -o filenames -F _dunnage dunnage\n";
}

/// Text in single quotes of a shell; `also` are signs that a word list of zsh reads as its own.
std::string in_single(const std::string& text, const std::string& also = "") {
  std::string out = "'";
  for (const char c : text) {
    if (also.find(c) != std::string::npos) out += '\\';
    out += c == '\'' ? std::string("'\\''") : std::string(1, c);
  }
  return out + "'";
}

std::string zsh(const CommandTable& table) {
  std::string commands, cases;
  for (const CommandWords& one : table.commands) {
    commands += "    " + in_single(one.name + ":" + one.says) + "\n";
    cases += "    " + one.name + ")\n      _arguments -s";
    for (const OptionWords& option : one.options)
      cases += " \\\n        " + in_single(fmt::format("{}{}[{}]{}", option.repeats ? "*" : "", option.name,
                                                       option.says, option.takes_value ? ":value:_files" : ""),
                                           "");
    const std::string words = words_of(one.name);
    cases +=
        " \\\n        '*:argument:" + (words.empty() ? std::string("_files") : "(" + words + ")") + "'\n      ;;\n";
  }
  return "#compdef dunnage\n"
         "_dunnage() {\n"
         "  local -a commands\n  commands=(\n" +
         commands +
         "  )\n"
         "  if (( CURRENT == 2 )); then\n"
         "    _describe command commands\n"
         "    return\n"
         "  fi\n"
         "  local command=$words[2]\n"
         "  shift words\n"
         "  (( CURRENT-- ))\n"
         "  case $command in\n" +
         cases +
         "  esac\n"
         "}\n"
         "compdef _dunnage dunnage\n";
}

std::string fish(const CommandTable& table) {
  std::string out = "# fish completion for dunnage\n";
  for (const CommandWords& one : table.commands) {
    out += fmt::format("complete -c dunnage -n __fish_use_subcommand -f -a {} -d {}\n", one.name, in_single(one.says));
    for (const OptionWords& option : one.options)
      out += fmt::format("complete -c dunnage -n '__fish_seen_subcommand_from {}' -l {}{} -d {}\n", one.name,
                         option.name.substr(2), option.takes_value ? " -r" : "", in_single(option.says));
    const std::string words = words_of(one.name);
    if (!words.empty())
      out += fmt::format("complete -c dunnage -n '__fish_seen_subcommand_from {}' -f -a '{}'\n", one.name, words);
  }
  return out;
}

/// Signs that man(7) reads as its own.
std::string for_man(const std::string& text) {
  std::string out;
  for (const char c : text) {
    if (c == '\\')
      out += "\\e";
    else if (c == '-')
      out += "\\-";
    else if ((c == '.' || c == '\'') && (out.empty() || out.back() == '\n'))
      out += std::string("\\&") + c;
    else
      out += c;
  }
  return out;
}

}  // namespace

std::string completion(const CommandTable& table, const std::string& shell) {
  return shell == "bash" ? bash(table) : shell == "zsh" ? zsh(table) : fish(table);
}

std::string manual_page(const CommandTable& table, const std::string& version) {
  std::string out = ".TH DUNNAGE 1 \"\" \"dunnage " + version +
                    "\" \"User Commands\"\n.SH NAME\ndunnage \\- plan what a sound crew must bring, and print the "
                    "paper\n.SH SYNOPSIS\n";
  for (const CommandWords& one : table.commands) {
    out += ".B dunnage " + for_man(one.name) + "\n";
    for (const OptionWords& place : one.places)
      out += (place.needed ? ".I " : ".RI [ ") + for_man(place.name) + (place.needed ? "" : " ]") + "\n";
    if (!one.options.empty()) out += ".RI [ options ]\n";
    out += ".br\n";
  }
  out += ".SH DESCRIPTION\n" + for_man(table.about) + "\n.SH COMMANDS\n";
  for (const CommandWords& one : table.commands) {
    out += ".SS " + for_man(one.name) + "\n" + for_man(one.says) + ".\n";
    for (const auto* list : {&one.places, &one.options})
      for (const OptionWords& option : *list)
        out += ".TP\n" + std::string(list == &one.places ? ".I " : ".B ") + for_man(option.name) +
               (option.takes_value && list == &one.options ? " \\fIvalue\\fR" : "") + "\n" + for_man(option.says) +
               "\n";
  }
  return out + ".SH EXIT STATUS\n" + for_man(table.exits) +
         "\n.SH SEE ALSO\n.B dunnage help\nlists the topics that the program itself explains.\n";
}

}  // namespace dunnage
