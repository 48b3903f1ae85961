// SPDX-License-Identifier: MIT
// One show, as typed. What is absent was not stated: unknown is not zero.
#pragma once

#include <map>
#include <optional>
#include <string>
#include <vector>

#include "model/kit.h"

namespace dunnage {

struct Contact { Text role, name, phone; };
struct SiteHas { Text what; int count = 0; std::string from; Place place; };

struct Site {
  std::string address, gate, emergency_address, hospital, radio_channel, curfew;
  std::vector<Text> permits;
  std::vector<Contact> contacts;
  std::vector<SiteHas> has;
  Maybe<Length> altitude;
  Maybe<std::string> ground;        ///< what feet and weights stand on, for sliding
  Place place;
};

struct ClockTime { std::string at; Text what; Place place; };  ///< at: "14:30"

struct Forecast {
  Maybe<Speed> wind, gust;
  Maybe<Temperature> temperature;
  Maybe<double> humidity;           ///< per cent
  Maybe<double> rain;               ///< chance, per cent
  std::string issued_by, issued_at;
  Place place;
};

struct ShowPlace { Text code; std::string name; std::vector<Text> takes; Place place; };

struct Team {
  Text name;
  std::vector<Text> homes, places, vehicles;  ///< all that are given must match
  Place place;
};

struct Want { Text what; int count = 1; Maybe<Length> length; std::string because; Place place; };

/// Weights assigned to a structure in use. Legs: names, or "each"; or `at` from the middle of a base.
struct BallastLine {
  std::vector<Text> legs;           ///< empty with `each_leg`, or where `at` is given
  bool each_leg = false;
  std::optional<std::pair<Length, Length>> at;
  Text code;
  int count = 1;
  Place place;
};
struct Carried { Text code; int count = 1; Maybe<Length> at; Maybe<Area> area; Maybe<Mass> mass; Place place; };
/// A banner or screen tied to a structure.
struct Hung { Text what; Maybe<Area> area; Maybe<Length> at; Maybe<Mass> mass; Place place; };

enum class Under { not_stated, empty, half_full, full };  ///< what blocks the wind under a roof

struct Use {
  Text structure;
  Text as;                          ///< its name at the show
  std::string at_place;             ///< a place's code
  Place at_place_typed;
  std::vector<Text> walls;
  Under under = Under::not_stated;
  Maybe<std::string> ground;
  std::vector<BallastLine> ballast;
  std::vector<Carried> carries;
  std::vector<Hung> hung;
  Place place;
};

struct Radio { Maybe<Frequency> frequency; int cells = 0; std::string cell; };

struct Input {
  Sourced<int> channel;
  std::string performer;
  Text source;
  Maybe<std::string> pickup, stand;
  bool phantom = false;
  Maybe<std::string> pad;           ///< typed: "20 dB" or "yes"
  Maybe<Line> level;                ///< of the source
  Maybe<std::string> box;           ///< a stage box: "SB1" with socket 4
  std::optional<Sourced<int>> socket;
  Maybe<Length> cable;              ///< length to its box; absent: not asked
  std::string at_place, note;
  Place at_place_typed;
  std::optional<Radio> radio;
  Place place;
};

struct Mix {
  Text output;
  std::string who;
  Maybe<std::string> wedge, pack, speaker;
  int count = 1;
  Maybe<std::string> box;
  std::optional<Sourced<int>> socket;
  Maybe<Length> cable;
  std::string note;
  Place place;
};

struct Crossing {
  Maybe<std::string> floor;
  Maybe<Length> length;             ///< of the run over this floor
  Maybe<std::string> crossed_by;    ///< "feet" or "wheels"
  Maybe<Length> crossing;           ///< how much of it is crossed
  Place place;
};
struct Run { std::string from, to; Text cable; Maybe<Length> length; std::vector<Crossing> over; int count = 1; Place place; };

struct Supply {
  Text name;
  std::string kind;                 ///< "mains", "generator"
  Maybe<Voltage> voltage;
  Maybe<double> phases;
  Maybe<Power> power;
  Place place;
};
struct CircuitLoad { Text code; int count = 1; Maybe<Power> draws; Place place; };
struct Circuit {
  Text name, supply;
  Maybe<Current> protection;
  Maybe<std::string> leg, cable;
  Maybe<Length> length;
  bool continuous = true;
  std::vector<CircuitLoad> feeds;
  Place place;
};
struct Stop { std::string name; std::vector<Text> places; };
struct Load { Text vehicle; std::vector<Text> stops, takes; Place place; };

struct Override { Text code; std::string because; int count = 0; Place place; };  ///< count 0: all

struct Show {
  std::string file;
  Text kit_folder;
  Text title;
  std::optional<Sourced<Date>> date;
  int travel_days = 0, preparation_days = 0;
  Maybe<std::string> setting;       ///< "indoor" or "outdoor"
  Maybe<std::string> floor;
  Maybe<bool> after_dark;
  Maybe<int> crew, volunteers, audience;
  Maybe<Duration> hours;
  Maybe<std::string> console;
  std::vector<Text> with;
  std::string input_order;          ///< "channel" (default) or "performer"
  Maybe<std::string> revision;      ///< a letter typed
  Maybe<std::string> stop_person;   ///< the role that may stop the show
  Site site;
  std::vector<ClockTime> times;
  std::optional<Forecast> forecast;
  std::vector<ShowPlace> places;
  std::vector<Team> teams;
  std::vector<Want> wants;
  std::vector<Use> uses;
  std::vector<Input> inputs;
  std::vector<Mix> mixes;
  std::vector<Run> runs;
  std::vector<Supply> supplies;
  std::vector<Circuit> circuits;
  std::vector<Load> loads;
  std::vector<Override> bring, leave;
  Place show_place;                 ///< of [show]
};

}  // namespace dunnage
