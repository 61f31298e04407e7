// SPDX-License-Identifier: Apache-2.0
// What stands behind the names in a plan: igniters and wire, and how the wiring was done.
// Read from TOML (FORMAT.md beside this file); see igniter_file.h.
#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace walkdown::plan {

// A closed interval, lo <= hi, in the unit of the name it is held under.
struct Interval {
  double lo = 0;
  double hi = 0;

  [[nodiscard]] double mid() const { return (lo + hi) / 2; }
  [[nodiscard]] double half() const { return (hi - lo) / 2; }
  friend bool operator==(const Interval&, const Interval&) = default;
};

// Currents are empty unless the maker's sheet was typed in: they are never assumed.
struct Igniter {
  std::string name;
  Interval bridge_ohm;
  std::string source;                // where the figures come from
  std::optional<double> all_fire_a;  // least current that fires every one
  std::optional<double> no_fire_a;   // largest current that fires none
  std::optional<double> test_max_a;  // largest test current the maker allows
  Interval fitted_lead_ohm;          // the leads fitted to one igniter, both conductors; 0 if none
};

// One conductor. Copper unless alpha says otherwise.
struct Wire {
  std::string name;              // as in the plan: "AWG24", "0.5mm2", or a [wire.NAME]
  Interval ohm_per_km;           // of one conductor at 20 degC, length as planned
  double alpha_per_k = 0.00393;  // IEC 60028 for annealed copper
  std::string source;
};

struct Wiring {
  double lead_tol_pct = 5;          // length and gauge of one lead against the plan, +- per cent
  Interval contact_ohm{0.0, 0.10};  // both contacts of one pin together
  double temp_c = 20;               // of the wire
  double temp_tol_k = 10;           // half-range of that temperature, the same for the field
};

// What the igniters are fired from.
struct Supply {
  Interval volt;          // at the source, under load; its least decides
  double source_ohm = 0;  // of the source and its cable to the module, both conductors
  double margin = 1.5;    // all-fire current is multiplied by this: common practice, no source
  std::string source;     // where the figures come from
};

// Most igniters, and most wires, of one catalogue: a Load holds their index in 16 bits.
inline constexpr std::size_t kMaxNames = 65'000;

struct Catalogue {
  std::vector<Igniter> igniters;
  std::vector<Wire> wires;  // named ones from the file, and each size that a plan uses
  Wiring wiring;
  std::optional<Supply> supply;  // empty: the firing current cannot be judged

  // Index by name, npos where there is none. Linear: for hot paths keep the index.
  static constexpr std::size_t npos = static_cast<std::size_t>(-1);
  [[nodiscard]] std::size_t igniter(std::string_view name) const;
  [[nodiscard]] std::size_t wire(std::string_view name) const;
};

}  // namespace walkdown::plan
