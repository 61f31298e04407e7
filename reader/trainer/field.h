// SPDX-License-Identifier: Apache-2.0
// A field that is not there: every load drawn within the plan's intervals, hung where the plan
// says, with whatever has been put wrong since. One tester reads it. For training, the demo and
// tests.
//
// The same plan, model and seed give the same field and the same readings, on any machine with the
// same standard library. Not for use by two threads at once.
#pragma once

#include <cstdint>
#include <map>
#include <optional>
#include <random>
#include <utility>
#include <vector>

#include "reader/plan/plan.h"
#include "reader/result.h"
#include "reader/tester/model.h"
#include "reader/tester/reading.h"
#include "reader/trainer/fault_kind.h"
#include "reader/trainer/hung.h"

namespace walkdown::trainer {

// A rail of a module.
struct RailId {
  std::uint16_t module = 0;
  std::uint16_t rail = 0;
  friend auto operator<=>(const RailId&, const RailId&) = default;
};

class Field {
 public:
  Field(const plan::Plan& plan, const tester::Model& model, std::uint64_t seed);

  // --- Where loads hang. Used to make mistakes, and by the crew to mend them. -------------------
  // Error (usage): no such pin, rail or module in the plan's layout.
  [[nodiscard]] Done swap_loads(plan::PinId a, plan::PinId b);  // either may be free
  // Moves what hangs on first..last by `by` pins along the rail. What it meets moves into the
  // places it leaves. What runs off the end of the rail hangs loose until rehook().
  [[nodiscard]] Done shift(RailId rail, std::uint16_t first, std::uint16_t last, int by);
  [[nodiscard]] Done reverse(RailId rail);
  // Pins that exist on both sides change places; the others stay.
  [[nodiscard]] Done exchange_rails(RailId a, RailId b);
  [[nodiscard]] Done exchange_modules(std::uint16_t a, std::uint16_t b);
  // Hangs the load that is planned for the pin on it; what hung there goes to where that was.
  [[nodiscard]] Done rehook(plan::PinId pin);

  // --- What is wrong with what hangs on a pin now ------------------------------------------------
  // `amount`: ohm for poor_joint and leak, a factor for wrong_lead; otherwise not used. `igniter`:
  // for wrong_igniter and stray, an index into the plan's igniters; by itself another than planned.
  // Error (usage): not a fault of one load, nothing hangs there (or something does, for stray), or
  // it cannot be made (no igniter to take away, no other igniter in the catalogue).
  [[nodiscard]] Done set_fault(plan::PinId pin, FaultKind kind, double amount = 0,
                               std::optional<std::uint16_t> igniter = std::nullopt);
  // Mends what hangs on the pin; a stray is taken away.
  [[nodiscard]] Done clear_fault(plan::PinId pin);

  // --- Of the whole field ------------------------------------------------------------------------
  void set_tester_offset(double ohm) { offset_fault_ohm_ = ohm; }  // its leads were not zeroed
  void set_lead_factor(double factor) { lead_factor_ = factor; }   // another wire than planned

  // One reading; empty where the layout has no such pin. Draws noise, so each differs.
  [[nodiscard]] std::optional<tester::Reading> read(plan::PinId pin);
  // Every pin of the layout, also the free ones, in order.
  [[nodiscard]] const std::vector<plan::PinId>& pins() const { return pins_; }
  // What hangs on the pin; null for a free one. Valid until the next change.
  [[nodiscard]] const Hung* hangs_on(plan::PinId pin) const;
  [[nodiscard]] const plan::Plan& plan() const { return plan_; }

 private:
  [[nodiscard]] bool exists(plan::PinId pin) const;
  [[nodiscard]] std::optional<Hung> take(plan::PinId pin);
  void hang(plan::PinId pin, std::optional<Hung> hung);
  [[nodiscard]] Done hang_stray(plan::PinId pin, std::optional<std::uint16_t> igniter);
  [[nodiscard]] std::optional<std::uint16_t> other_igniter(std::uint16_t than) const;
  [[nodiscard]] Done replace_legs(Hung& hung, FaultKind kind, std::optional<std::uint16_t> igniter);

  plan::Plan plan_;
  tester::Model model_;
  std::mt19937_64 random_;
  double warm_k_ = 0;
  double gain_ = 1;
  double offset_ohm_ = 0;
  double offset_fault_ohm_ = 0;
  double lead_factor_ = 1;
  std::vector<plan::PinId> pins_;
  std::map<plan::PinId, Hung> hung_;
  std::vector<Hung> loose_;
};

}  // namespace walkdown::trainer
