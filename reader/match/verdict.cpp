// SPDX-License-Identifier: Apache-2.0
#include "reader/match/verdict.h"

#include <algorithm>
#include <cmath>
#include <optional>
#include <utility>

#include "reader/match/band.h"

namespace walkdown::match {
namespace {

// Bands are the same for every pin of one spec: work them out once.
struct Limits {
  double low = 0;
  double high = 0;
  double lead_high = 0;  // the most that a shunt at the end of the lead would show
};

class Judge {
 public:
  Judge(const plan::Plan& plan, const tester::Model& tester, const Field& field,
        const Mixture& mixture, const State& state, std::span<const Sample> samples,
        const std::vector<bool>& stale, const FieldShift& shift)
      : plan_(plan),
        tester_(tester),
        field_(field),
        mixture_(mixture),
        state_(state),
        samples_(samples),
        stale_(stale),
        shift_(shift),
        limits_(mixture.table().specs.size()) {}

  Judged make() {
    Judged out;
    out.pins.reserve(field_.slots.size());
    out.slot.reserve(field_.slots.size());
    for (std::uint32_t i = 0; i < field_.slots.size(); ++i) {
      const Slot& slot = field_.slots[i];
      const bool stray = slot.spec == kNothing && slot.seen.numbers > 0;
      if (slot.planned == kNoPlan && !stray) continue;
      out.pins.push_back(pin(i));
      out.slot.push_back(i);
    }
    return out;
  }

 private:
  PinVerdict pin(std::uint32_t i) {
    const Slot& slot = field_.slots[i];
    PinVerdict verdict;
    verdict.pin = slot.pin;
    verdict.readings = slot.seen.count();
    verdict.overs = slot.seen.overs;
    values(slot.seen, verdict);
    if (slot.spec != kNothing) {
      const Limits& limits = limits_of(slot);
      verdict.low = limits.low;
      verdict.high = limits.high;
    }
    verdict.p_ok = sound(i);
    verdict.verdict = word(slot, verdict, i);
    return verdict;
  }

  void values(const Seen& seen, PinVerdict& verdict) {
    if (seen.numbers == 0) return;
    sorted_.clear();
    for (std::uint32_t k = 0; k < seen.count(); ++k) {
      const Sample& sample = samples_[field_.order[seen.first + k]];
      if (!sample.over) sorted_.push_back(judged(sample, tester_));
    }
    std::sort(sorted_.begin(), sorted_.end());
    const std::size_t n = sorted_.size();
    verdict.ohm = (sorted_[(n - 1) / 2] + sorted_[n / 2]) / 2;
    verdict.spread_ohm = sorted_.back() - sorted_.front();
  }

  // Sound, and what was planned: a load that came from elsewhere is not, unless it is the same.
  [[nodiscard]] double sound(std::uint32_t i) const {
    const Slot& slot = field_.slots[i];
    if (slot.seen.unread() || stale_[i]) return 0;
    if (state_.on[i] != slot.spec || shift_.doubt_all || nameless(slot)) return 0;
    if (slot.spec != kNothing && slot.planned != kNoPlan &&
        shift_.doubted_igniter == plan_.pins[slot.planned].load.igniter) {
      return 0;
    }
    return mixture_.sound(slot, slot.spec, state_.cost[i]);
  }

  // A load is planned, and nobody knows what it is: its igniter is not in the catalogue.
  [[nodiscard]] bool nameless(const Slot& slot) const {
    return slot.spec == kNothing && slot.planned != kNoPlan &&
           plan_.pins[slot.planned].load.count > 0;
  }

  Verdict word(const Slot& slot, const PinVerdict& verdict, std::uint32_t i) {
    if (slot.spec == kNothing && slot.seen.numbers > 0 && !nameless(slot)) return Verdict::stray;
    if (stale_[i]) return Verdict::stale;
    if (slot.seen.unread()) return Verdict::unread;
    if (nameless(slot)) return Verdict::doubtful;
    if (slot.spec == kNothing) return Verdict::fits;  // planned to be free, and over range
    if (mixture_.unsteady(slot)) return Verdict::unsteady;
    if (slot.seen.open()) return verdict.p_ok >= 0.5 ? Verdict::fits : Verdict::open;
    const Limits& limits = limits_of(slot);
    const double slack = 1e-9;
    if (*verdict.ohm > limits.high + slack) return Verdict::high;
    if (*verdict.ohm < limits.low - slack) {
      return *verdict.ohm <= limits.lead_high ? Verdict::shorted : Verdict::low;
    }
    return verdict.p_ok >= 0.5 ? Verdict::fits : Verdict::doubtful;
  }

  const Limits& limits_of(const Slot& slot) {
    std::optional<Limits>& held = limits_[slot.spec];
    if (!held) held = make_limits(plan_.pins[slot.planned].load);
    return *held;
  }

  [[nodiscard]] Limits make_limits(const plan::Load& load) const {
    const plan::Expected loop = plan::expected(load, plan_.catalogue);
    plan::Interval worst = shown_band(load, plan_.catalogue, tester_).worst;
    const double gain = 1 + std::abs(tester_.accuracy_pct) / 100;
    const double fixed = std::abs(tester_.accuracy_ohm) + 3 * std::abs(tester_.noise()) +
                         std::abs(tester_.resolution_ohm) / 2 + shift_.offset_ohm;
    const double more = shift_.lead_factor - 1;
    worst.lo += shift_.offset_ohm + more * loop.lead_ohm.lo;
    worst.hi += shift_.offset_ohm + more * loop.lead_ohm.hi;
    const double contact = plan_.catalogue.wiring.contact_ohm.hi;
    const double digit = std::max(1e-6, std::abs(tester_.resolution_ohm));
    return {std::floor(worst.lo / digit + 1e-6) * digit, std::ceil(worst.hi / digit - 1e-6) * digit,
            (shift_.lead_factor * loop.lead_ohm.hi + contact) * gain + fixed};
  }

  const plan::Plan& plan_;
  const tester::Model& tester_;
  const Field& field_;
  const Mixture& mixture_;
  const State& state_;
  std::span<const Sample> samples_;
  const std::vector<bool>& stale_;
  FieldShift shift_;
  std::vector<std::optional<Limits>> limits_;
  std::vector<double> sorted_;
};

}  // namespace

Judged judge(const plan::Plan& plan, const tester::Model& tester, const Field& field,
             const Mixture& mixture, const State& state, std::span<const Sample> samples,
             const std::vector<bool>& stale, const FieldShift& shift) {
  return Judge(plan, tester, field, mixture, state, samples, stale, shift).make();
}

}  // namespace walkdown::match
