// SPDX-License-Identifier: Apache-2.0
#include "reader/match/firing_current.h"

#include <fmt/format.h>

#include <algorithm>
#include <map>

#include "reader/plan/expected.h"

namespace walkdown::match {
namespace {

class Judge {
 public:
  Judge(const plan::Plan& plan, std::span<const MeasuredLoop> measured) : plan_(plan) {
    std::map<plan::PinId, double> loops;
    for (const MeasuredLoop& loop : measured) {
      if (loop.ohm > 0) loops[loop.pin] = loop.ohm;
    }
    for (const plan::PlannedPin& pin : plan.pins) {
      const auto at = loops.find(pin.id);
      const double planned = plan::expected(pin.load, plan.catalogue).ohm.hi;
      measured_.push_back(at != loops.end());
      loop_ohm_.push_back(at != loops.end() ? at->second : planned);
      if (pin.load.count > 0) per_ohm_[pin.cue] += 1 / std::max(loop_ohm_.back(), kLeastOhm);
    }
  }

  [[nodiscard]] std::vector<FiringCurrent> all() const {
    std::vector<FiringCurrent> out;
    for (std::size_t i = 0; i < plan_.pins.size(); ++i) {
      if (plan_.pins[i].load.count > 0) out.push_back(one(i));
    }
    return out;
  }

 private:
  static constexpr double kLeastOhm = 1e-3;

  [[nodiscard]] FiringCurrent one(std::size_t i) const {
    const plan::PlannedPin& pin = plan_.pins[i];
    FiringCurrent out;
    out.pin = pin.id;
    out.measured = measured_[i];
    out.loop_ohm = loop_ohm_[i];
    if (!plan::known(pin.load, plan_.catalogue)) {
      out.say = fmt::format(
          "The firing current of {} cannot be judged: its igniter or its wire is not in the "
          "igniter file; add it there and import the plan again.",
          plan::text(pin.id));
      return out;
    }
    const plan::Igniter& igniter = plan_.catalogue.igniters[pin.load.igniter];
    if (!plan_.catalogue.supply) {
      out.say = "The firing current cannot be judged: the igniter file has no [supply].";
      return out;
    }
    if (!igniter.all_fire_a) {
      out.say = fmt::format(
          "The firing current cannot be judged: no all_fire_a is given for {}; take it from the "
          "maker's sheet.",
          igniter.name);
      return out;
    }
    currents(pin, *igniter.all_fire_a, out);
    return out;
  }

  void currents(const plan::PlannedPin& pin, double all_fire_a, FiringCurrent& out) const {
    const plan::Supply& supply = *plan_.catalogue.supply;
    const double own = std::max(out.loop_ohm, kLeastOhm);
    const double others = std::max(0.0, per_ohm_.at(pin.cue) - 1 / own);
    const double share = least_share(pin.load);
    const double drop = 1 + supply.source_ohm * others;
    out.least_a = share * supply.volt.lo / (own * drop + supply.source_ohm);
    const double need_a = supply.margin * all_fire_a;
    out.margin = out.least_a / need_a;
    out.most_loop_ohm = (share * supply.volt.lo / need_a - supply.source_ohm) / drop;
    lead(pin.load, out);
    out.word = out.margin >= 1             ? FiringWord::ok
               : out.least_a >= all_fire_a ? FiringWord::thin
                                           : FiringWord::starved;
    out.say = sentence(pin, all_fire_a, out);
  }

  // Of the loop's current, what the leg of most ohms gets.
  [[nodiscard]] double least_share(const plan::Load& load) const {
    if (load.count < 2 || load.join == plan::Join::series) return 1;
    const plan::Igniter& igniter = plan_.catalogue.igniters[load.igniter];
    const double most = igniter.bridge_ohm.hi + igniter.fitted_lead_ohm.hi;
    const double least = std::max(kLeastOhm, igniter.bridge_ohm.lo + igniter.fitted_lead_ohm.lo);
    return (1 / most) / (1 / most + (load.count - 1) / least);
  }

  void lead(const plan::Load& load, FiringCurrent& out) const {
    const plan::Expected loop = plan::expected(load, plan_.catalogue);
    if (load.lead_m <= 0 || loop.lead_ohm.hi <= 0) return;
    const double per_m = loop.lead_ohm.hi / load.lead_m;
    const double rest = loop.ohm.hi - loop.lead_ohm.hi;
    out.most_lead_m = std::max(0.0, (out.most_loop_ohm - rest) / per_m);
  }

  [[nodiscard]] std::string sentence(const plan::PlannedPin& pin, double all_fire_a,
                                     const FiringCurrent& out) const {
    std::string say = fmt::format(
        "{}: {:.2f} A at least through each igniter, {:.2f} times its all-fire current of {:.2f} A",
        plan::text(pin.id), out.least_a, out.least_a / all_fire_a, all_fire_a);
    if (out.word != FiringWord::ok) {
      say += fmt::format("; the loop may have {:.1f} ohm, it has {:.1f}",
                         std::max(0.0, out.most_loop_ohm), out.loop_ohm);
    }
    if (pin.load.count > 1 && pin.load.join == plan::Join::series) {
      say +=
          "; in a series string the fastest bridge may part before the slowest has started: use "
          "the maker's series current";
    }
    return say + ".";
  }

  const plan::Plan& plan_;
  std::vector<bool> measured_;
  std::vector<double> loop_ohm_;
  std::map<std::string, double> per_ohm_;  // cue -> sum of 1/R of its loops
};

}  // namespace

std::string_view text(FiringWord word) {
  switch (word) {
    case FiringWord::ok:
      return "ok";
    case FiringWord::thin:
      return "thin";
    case FiringWord::starved:
      return "short";
    default:
      return "cannot-be-told";
  }
}

std::optional<MeasuredLoop> measured_loop(const PinVerdict& pin, const FieldFit& field) {
  const bool is_loop = pin.verdict == Verdict::fits || pin.verdict == Verdict::doubtful ||
                       pin.verdict == Verdict::low || pin.verdict == Verdict::high;
  if (!is_loop || !pin.ohm) return std::nullopt;
  return MeasuredLoop{pin.pin, (*pin.ohm - field.offset_ohm) / (1 + field.gain)};
}

std::vector<MeasuredLoop> measured_loops(const Outcome& outcome) {
  std::vector<MeasuredLoop> out;
  for (const PinVerdict& pin : outcome.pins) {
    if (const auto loop = measured_loop(pin, outcome.field)) out.push_back(*loop);
  }
  return out;
}

std::vector<FiringCurrent> firing_currents(const plan::Plan& plan,
                                           std::span<const MeasuredLoop> measured) {
  return Judge(plan, measured).all();
}

std::vector<plan::Problem> lint_supply(const plan::Plan& plan) {
  std::vector<plan::Problem> out;
  for (const FiringCurrent& loop : firing_currents(plan, {})) {
    if (loop.word != FiringWord::thin && loop.word != FiringWord::starved) continue;
    const plan::PlannedPin& pin = *plan.find(loop.pin);
    std::string remedy = loop.say;
    if (loop.most_lead_m) remedy += fmt::format(" A lead of {:.0f} m would do.", *loop.most_lead_m);
    out.push_back({pin.row, "lead_m", fmt::format("{:g}", pin.load.lead_m), std::move(remedy)});
  }
  return out;
}

}  // namespace walkdown::match
