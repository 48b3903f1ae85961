// SPDX-License-Identifier: MIT
// One show, as typed. What is absent was not stated: unknown is not zero.
#pragma once

#include <map>
#include <optional>
#include <string>
#include <vector>

#include "model/kit.h"

namespace dunnage {

struct Contact {
  Text role, name, phone;
};
/// Something the site has: so many pieces, or so much by the measure; neither: as much as is wanted.
struct SiteHas {
  Text what;
  int count = 0;
  std::string from;
  Place place;
  Maybe<Length> length = {};  ///< of what is asked for by the metre
  Maybe<Volume> volume = {};  ///< of what is asked for by the litre
  bool enough() const { return count == 0 && !length && !volume; }
};

struct Site {
  std::string address, gate, emergency_address, hospital, radio_channel, curfew;
  std::vector<Text> permits;
  std::vector<Contact> contacts;
  std::vector<SiteHas> has;
  Maybe<Length> altitude;
  Maybe<std::string> ground;        ///< what feet and weights stand on, for sliding
  Maybe<Duration> clear;            ///< to bring everybody into shelter
  Maybe<std::string> shelter;       ///< enclosed buildings or metal vehicles
  Maybe<Length> extinguisher_walk;  ///< from the point farthest from one
  Place place;
};

struct ClockTime {
  std::string at;
  Text what;
  Place place;
};  ///< at: "14:30"

struct Forecast {
  Maybe<Speed> wind, gust;
  Maybe<Temperature> temperature;
  Maybe<double> humidity;   ///< per cent
  Maybe<double> rain;       ///< chance, per cent
  Maybe<Temperature> wbgt;  ///< a wet-bulb globe reading on site
  Maybe<Speed> storm;       ///< how fast storms move
  std::string issued_by, issued_at;
  Place place;
};

struct ShowPlace {
  Text code;
  std::string name;
  std::vector<Text> takes;
  Place place;
};

struct Team {
  Text name;
  std::vector<Text> homes, places, vehicles;  ///< all that are given must match
  Place place;
};

struct Want {
  Text what;
  int count = 1;
  Maybe<Length> length;
  std::string because;
  Place place;
};

/// Weights assigned to a structure in use. Legs: names, or "each"; or `at` from the middle of a base.
struct BallastLine {
  std::vector<Text> legs;  ///< empty with `each_leg`, or where `at` is given
  bool each_leg = false;
  std::optional<std::pair<Length, Length>> at;
  Text code;
  int count = 1;
  Place place;
};
struct Carried {
  Text code;
  int count = 1;
  Maybe<Length> at;
  Maybe<Area> area;
  Maybe<Mass> mass;
  Place place;
};
/// A banner or screen tied to a structure.
struct Hung {
  Text what;
  Maybe<Area> area;
  Maybe<Length> at;
  Maybe<Mass> mass;
  Place place;
};

enum class Under { not_stated, empty, half_full, full };  ///< what blocks the wind under a roof

struct Use {
  Text structure;
  Text as;               ///< its name at the show
  std::string at_place;  ///< a place's code
  Place at_place_typed;
  std::vector<Text> walls;
  Under under = Under::not_stated;
  Maybe<std::string> ground;
  std::vector<BallastLine> ballast;
  std::vector<BallastLine> stakes;  ///< legs and count; no code
  std::vector<Carried> carries;
  std::vector<Hung> hung;
  Maybe<Mass> cable;  ///< cable and fittings that hang on its head
  Place place;
};

struct Radio {
  Maybe<Frequency> frequency;
  int cells = 0;
  std::string cell;
};

struct Input {
  Sourced<int> channel;
  std::string performer;
  Text source;
  Maybe<std::string> pickup, stand;
  Maybe<bool> phantom;     ///< not typed: where its pickup needs it
  Maybe<std::string> pad;  ///< typed: "20 dB" or "yes"
  Maybe<Line> level;       ///< of the source
  Maybe<std::string> box;  ///< a stage box: "SB1" with socket 4
  std::optional<Sourced<int>> socket;
  Maybe<Length> cable;  ///< length to its box; absent: not asked
  std::string at_place, note;
  Place at_place_typed;
  std::optional<Radio> radio;
  Place place;
};

struct Mix {
  Text output;
  std::string who;
  Maybe<std::string> wedge, pack, speaker;
  Maybe<std::string> prop;  ///< what each is set up on
  int count = 1;
  Maybe<std::string> box;
  std::optional<Sourced<int>> socket;
  Maybe<Length> cable;
  std::string note;
  Place place;
};

struct Crossing {
  Maybe<std::string> floor;
  Maybe<Length> length;           ///< of the run over this floor
  Maybe<std::string> crossed_by;  ///< "feet" or "wheels"
  Maybe<Length> crossing;         ///< how much of it is crossed
  Maybe<Length> rise;             ///< how high the cable and its cover stand there
  Maybe<Mass> wheel;              ///< the heaviest load on one wheel that crosses
  Place place;
};
struct Run {
  std::string from, to;
  Text cable;
  Maybe<Length> length;
  std::vector<Crossing> over;
  int count = 1;
  Place place;
};

struct Supply {
  Text name;
  Text kind;  ///< "mains", "generator"
  Maybe<Voltage> voltage;
  Maybe<double> phases;
  Maybe<Power> power;
  Maybe<std::string> cable;  ///< the feeder from it to where the circuits begin
  Maybe<Conductor> conductor;
  Maybe<Length> length, distance;  ///< of the feeder; to the nearest tent, door or window
  Maybe<Length> fuel;              ///< from the nearest tent to where fuel is kept
  Place place;
};
/// starts: what one of them draws while it starts, where that is more.
struct CircuitLoad {
  Text code;
  int count = 1;
  Maybe<Power> draws, starts;
  Place place;
};
/// A further cable of a circuit, in the order of the current. carries: what still flows there; absent: all.
struct Segment {
  Maybe<std::string> cable;
  Maybe<Conductor> conductor;
  Maybe<Length> length;
  Maybe<Power> carries;
  Place place;
};
struct Circuit {
  Text name, supply;
  Maybe<Current> protection;
  Maybe<std::string> leg, cable;
  Maybe<Conductor> conductor;
  Maybe<Length> length;
  Maybe<double> power_factor;
  bool continuous = true;
  std::vector<CircuitLoad> feeds;
  std::vector<Segment> then;
  Place place;
};
struct Stop {
  std::string name;
  std::vector<Text> places;
};
/// Where a piece stands: its middle from the front end of the cargo space.
struct StandsAt {
  Text code;
  Length from_front;
  Place place;
};
/// over: over the load to the other side; else to the load, or back to its own side, which counts half.
struct Strap {
  int count = 1;
  Maybe<Mass> limit;
  bool over = false;
  Place place;
};
struct Load {
  Text vehicle;
  std::vector<Text> stops, takes;
  std::vector<StandsAt> stands;
  std::vector<Strap> straps;
  Maybe<Length> length;  ///< of the load, for the number of straps
  bool blocked = false;  ///< against a wall or other cargo in front
  Place place;
};
/// What somebody of the crew hears, and for how long.
struct Heard {
  Text who;
  Maybe<Sound> level;
  Maybe<Duration> time;
  Place place;
};
/// A change in level that people walk or roll over.
struct Passage {
  Text what;
  Maybe<Length> rise, ramp, width;
  Place place;
};

struct Override {
  Text code;
  std::string because;
  int count = 0;
  Place place;
};  ///< count 0: all

struct Show {
  std::string file;
  Text kit_folder;
  Text title;
  std::optional<Sourced<Date>> date;
  int travel_days = 0, preparation_days = 0;
  Maybe<std::string> setting;  ///< "indoor" or "outdoor"
  Maybe<std::string> floor;
  Maybe<bool> after_dark;
  Maybe<int> crew, volunteers, audience;
  Maybe<Duration> hours;
  Maybe<std::string> console;
  Maybe<Paper> fader_pitch;  ///< of a console that is not the kit's; goes before what the kit says
  Maybe<int> fader_bank;
  std::vector<Text> with;
  std::string input_order;         ///< "channel" (default) or "performer"
  Maybe<std::string> revision;     ///< a letter typed
  Maybe<std::string> stop_person;  ///< the role that may stop the show
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
  std::vector<Heard> heard;
  std::vector<Passage> ways;
  std::vector<Override> bring, leave;
  Place show_place;  ///< of [show]
};

}  // namespace dunnage
