// SPDX-License-Identifier: Apache-2.0
// The plan: the wiring table of a show, one row a pin, with the names already resolved against a
// catalogue. import.h reads one from CSV; nothing else makes one outside tests.
#pragma once

#include <cstddef>
#include <cstdint>
#include <map>
#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "reader/plan/catalogue.h"
#include "reader/plan/pin.h"

namespace walkdown::plan {

enum class Join : std::uint8_t { series, parallel };

inline constexpr std::uint16_t kNoWire = 0xFFFF;

// What hangs on a pin, electrically. count 0 is a pin that is planned to stay without a load.
// With count 1 the join is normalised to series: there is nothing to join.
struct Load {
  std::uint16_t igniter = 0;  // index into Catalogue::igniters
  std::uint16_t count = 1;    // 0..999
  Join join = Join::series;
  std::uint16_t wire = kNoWire;  // index into Catalogue::wires
  double lead_m = 0;             // one-way length in metres, 0..10000

  friend bool operator==(const Load&, const Load&) = default;
};

struct PlannedPin {
  PinId id;
  Load load;
  std::string cue;
  std::string position;  // empty where the plan names none
  std::string device;
  std::optional<double> calibre_mm;
  std::string note;
  std::size_t row = 0;  // 1-based row of the file, the header being row 1
  std::vector<std::pair<std::string, std::string>> more;  // unknown columns, kept as they were
};

// How many pins each rail has, also those without a load: needed to turn a rail round.
struct Layout {
  std::map<std::uint16_t, std::vector<std::uint16_t>> rails;  // module -> pins on rail 1, 2, ...

  // 0 where the module or rail does not exist.
  [[nodiscard]] std::uint16_t pins_on(std::uint16_t module, std::uint16_t rail) const;
};

struct Plan {
  std::vector<PlannedPin> pins;  // sorted by id, no id twice
  Catalogue catalogue;
  Layout layout;  // covers at least every planned pin

  // Null where nothing is planned. O(log n).
  [[nodiscard]] const PlannedPin* find(PinId id) const;
};

}  // namespace walkdown::plan
