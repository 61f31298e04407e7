// SPDX-License-Identifier: Apache-2.0
// The field as the diagnosis walks it: every pin that is planned, laid out or read is a slot, the
// slots of a rail lie side by side, and each holds a summary of its readings.
#pragma once

#include <cstddef>
#include <cstdint>
#include <optional>
#include <span>
#include <vector>

#include "reader/match/sample.h"
#include "reader/plan/plan.h"
#include "reader/tester/model.h"

namespace walkdown::match {

// What was read of one slot.
struct Seen {
  double mean = 0;          // of the numbers, zero taken off
  double squares = 0;       // sum of squared deviations from it
  std::uint32_t first = 0;  // into Field::order
  std::uint32_t numbers = 0;
  std::uint32_t overs = 0;
  bool repeated = false;  // every reading equals the line of another pin before it

  [[nodiscard]] std::uint32_t count() const { return numbers + overs; }
  [[nodiscard]] bool unread() const { return numbers + overs == 0; }
  [[nodiscard]] bool open() const { return numbers == 0 && overs > 0; }
};

struct Slot {
  plan::PinId pin;
  std::uint16_t laid_out = 0;  // 1 where the layout has this pin
  std::uint32_t planned = 0;   // index into plan.pins, kNoPlan where the plan does not name it
  std::uint32_t spec = 0;      // kNothing where no load is planned
  Seen seen;
};

inline constexpr std::uint32_t kNoPlan = 0xFFFFFFFF;

struct Rail {
  std::uint16_t module = 0;
  std::uint16_t number = 0;
  std::uint32_t first = 0;  // slot
  std::uint32_t size = 0;
  std::uint32_t length = 0;  // of its leading slots, slot i is pin i + 1: what can be turned or
                             // shifted. 0 for a rail too sparse to be real
};

struct Module {
  std::uint16_t number = 0;
  std::uint32_t first = 0;  // rail
  std::uint32_t rails = 0;
  std::uint32_t first_slot = 0;
  std::uint32_t slots = 0;
};

struct Field {
  std::vector<Slot> slots;  // sorted by pin
  std::vector<Rail> rails;  // sorted by module and number
  std::vector<Module> modules;
  std::vector<std::uint32_t> rail_of;    // slot -> rail
  std::vector<std::uint32_t> module_of;  // rail -> module
  std::vector<std::uint32_t> order;      // sample indices, slot by slot, in the order received
  std::size_t left_out = 0;

  [[nodiscard]] std::optional<std::uint32_t> find(plan::PinId pin) const;

 private:
  friend class FieldMaker;
  std::vector<std::uint32_t> by_number_;  // module number -> index + 1, 0 where there is none
};

// `spec_of_pin` is SpecTable::of_pin. A rail too sparse to be real (a lone pin 9999) is not dense:
// memory stays in proportion to pins planned, laid out within reason, or read.
[[nodiscard]] Field make_field(const plan::Plan& plan, std::span<const std::uint32_t> spec_of_pin,
                               std::span<const Sample> samples, const tester::Model& tester,
                               bool layout_known);

// A sample's value with the tester's zero taken off.
[[nodiscard]] inline double judged(const Sample& sample, const tester::Model& tester) {
  return sample.ohm - tester.zero_ohm;
}

}  // namespace walkdown::match
