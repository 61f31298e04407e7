// SPDX-License-Identifier: Apache-2.0
// A simulated field: its own physics and its own mistakes, sharing no code with the diagnosis, so
// that the two can disagree. Only the types of plan and sample are common.
#pragma once

#include <cstdint>
#include <map>
#include <random>
#include <vector>

#include "reader/match/sample.h"
#include "reader/match/words.h"
#include "reader/plan/plan.h"
#include "reader/tester/model.h"

namespace walkdown::simulated {

enum class Style { mixed, alike, blocks };

struct Setting {
  Style style = Style::mixed;
  std::size_t pins = 480;  // about so many, in whole modules
  int repeats = 2;
  double fault_scale = 1.5;   // 1: 4 to 5 % of loads are faulty
  double move_scale = 6;      // 1: as in a usual field
  bool ideal_mm2 = true;      // mm2 wire is exactly 1/58 ohm mm2/m; else anywhere in its class
  bool back_to_back = false;  // repeats of one pin follow each other; else the scan is repeated
  double offset_ohm = 0;      // leads not zeroed, on top of the tester's own error
  double wire_factor = 1;     // all wire of another gauge
  double noise_factor = 1;    // of a reading, against what the tester's profile says
  double lead_spread = 0.05;  // of a lead against the plan, either way; the plan says 5 %
  int most_by = 2;            // pins of a shift: half of those beyond one are two, and so on
  std::uint64_t seed = 1;
};

struct Fault {
  match::Kind kind = match::Kind::unknown;
  plan::PinId pin;  // where it shows
};

struct Moved {
  match::Kind kind = match::Kind::swapped;
  int by = 0;
  std::vector<plan::PinId> pins;              // as the finding should list them
  std::map<plan::PinId, plan::PinId> effect;  // pin -> pin whose load it has; {0,0,0}: none
  bool visible = false;                       // some pin reads another load
  bool wrapped = false;                       // a shift whose block closes on itself
};

struct Field {
  plan::Plan plan;
  tester::Model tester;
  std::vector<match::Sample> samples;
  std::vector<Fault> faults;
  std::vector<Moved> moves;
  std::map<plan::PinId, bool> wrong;  // pins that are not as planned: faulty, or another load
};

[[nodiscard]] Field simulate(const Setting& setting);

// Electrically the same load: what decides whether a mistake can show at all. Null: no load.
[[nodiscard]] bool same_load(const plan::Load* a, const plan::Load* b);

// Portable draws: the standard's distributions differ between libraries.
class Dice {
 public:
  explicit Dice(std::uint64_t seed) : bits_(seed) {}
  double uniform(double lo = 0, double hi = 1);
  double log_uniform(double lo, double hi);
  double normal(double sigma);
  bool chance(double p) { return uniform() < p; }
  std::size_t below(std::size_t n);

 private:
  std::mt19937_64 bits_;
};

// The parts, in order.
void wire_up(const Setting& setting, Dice& dice, plan::Plan& plan);
void make_mistakes(const Setting& setting, Dice& dice, Field& field);
// pin -> pin whose planned load hangs on it.
using Hung = std::map<plan::PinId, plan::PinId>;
[[nodiscard]] Hung hung(const Field& field);
void take_readings(const Setting& setting, Dice& dice, Field& field);

}  // namespace walkdown::simulated
