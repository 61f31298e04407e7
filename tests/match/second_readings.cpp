// SPDX-License-Identifier: Apache-2.0
#include <array>
#include <cmath>
#include <optional>
#include <utility>

#include "tests/match/second_parts.h"

namespace walkdown::simulated {
namespace {

using match::Kind;
using plan::PinId;

struct Loop {
  std::optional<double> ohm;
  bool loose = false, silent = false, echo = false;
};

enum class Wrong {
  none,
  open,
  joint,
  missing,
  lead,
  shunt,
  leak,
  loose,
  type,
  extra,
  silent,
  echo
};

class Loops {
 public:
  Loops(const Setting& setting, Draw& draw, Field& field)
      : set_(setting), draw_(draw), field_(field) {
    gain_ = 1 + draw_.from(-1, 1) * field_.tester.accuracy_pct / 100;
    zero_ = draw_.from(-1, 1) * field_.tester.accuracy_ohm + set_.offset_ohm;
    const double warm = 1 + 0.00393 * draw_.from(-10, 10);
    for (const plan::Wire& wire : field_.plan.catalogue.wires) {
      per_m_.push_back(draw_.from(wire.ohm_per_km.lo, wire.ohm_per_km.hi) / 1000 * warm *
                       set_.wire_factor);
    }
  }

  void read(const std::vector<Row>& rows) {
    std::vector<std::pair<PinId, Loop>> loops;
    for (const Row& row : rows) {
      for (int i = 0; i < row.size(); ++i) {
        const PinId source = row.now[static_cast<std::size_t>(i)];
        loops.emplace_back(
            row.pin(i), source == PinId{} ? bare(row.pin(i)) : loaded(row.pin(i), load_of(source)));
      }
    }
    for (int round = 0; round < set_.repeats; ++round) {
      for (const auto& [pin, its] : loops) {
        if (!its.silent) take(pin, its);
      }
    }
  }

 private:
  const plan::Load& load_of(PinId pin) const { return field_.plan.find(pin)->load; }

  double bridges(const plan::Load& load) {
    const plan::Interval r = field_.plan.catalogue.igniters[load.igniter].bridge_ohm;
    double sum = 0;
    double siemens = 0;
    for (int i = 0; i < load.count; ++i) {
      const double ohm = draw_.from(r.lo, r.hi);
      sum += ohm;
      siemens += 1 / ohm;
    }
    return load.join == plan::Join::parallel ? 1 / siemens : sum;
  }

  double wire(const plan::Load& load) {
    return load.lead_m * 2 * per_m_[load.wire] *
           draw_.from(1 - set_.lead_spread, 1 + set_.lead_spread);
  }

  Loop bare(PinId pin) {
    if (!draw_.yes(0.004 * set_.fault_scale)) return {};
    note(Kind::stray, pin);
    const plan::Load any = draw_.one_of(field_.plan.pins).load;
    return {bridges(any) + wire(any) + draw_.from(0, 0.1)};
  }

  Kind note(Kind kind, PinId pin) {
    field_.faults.push_back({kind, pin});
    field_.wrong[pin] = true;
    return kind;
  }

  Wrong wrong(const plan::Load& load) {
    const std::array<std::pair<Wrong, double>, 11> rates = {
        {{Wrong::open, 0.010},
         {Wrong::joint, 0.008},
         {Wrong::missing, load.count > 1 ? 0.006 : 0},
         {Wrong::lead, 0.006},
         {Wrong::shunt, 0.003},
         {Wrong::leak, 0.003},
         {Wrong::loose, 0.003},
         {Wrong::type, 0.003},
         {Wrong::extra, 0.002},
         {Wrong::silent, 0.002},
         {Wrong::echo, 0.001}}};
    double left = draw_.unit() / set_.fault_scale;
    for (const auto& [what, rate] : rates) {
      if ((left -= rate) < 0) return what;
    }
    return Wrong::none;
  }

  Loop loaded(PinId pin, plan::Load load) {
    const double contact = draw_.from(0, 0.1);
    const Wrong what = wrong(load);
    if (what == Wrong::none) return {bridges(load) + wire(load) + contact};
    static constexpr std::array<Kind, 12> kKinds = {
        Kind::unknown,       Kind::open,          Kind::poor_joint,    Kind::missing_igniter,
        Kind::wrong_lead,    Kind::shorted,       Kind::leak,          Kind::intermittent,
        Kind::wrong_igniter, Kind::extra_igniter, Kind::tester_offset, Kind::unknown};
    note(kKinds[static_cast<std::size_t>(what)], pin);
    if (what == Wrong::missing) --load.count;
    if (what == Wrong::type) load.igniter = load.igniter == 0 ? 1 : 0;
    if (what == Wrong::extra) {
      if (load.count == 1 && draw_.yes(0.5)) load.join = plan::Join::parallel;
      ++load.count;
    }
    return broken(what, bridges(load), wire(load), contact);
  }

  Loop broken(Wrong what, double load, double lead, double contact) {
    const double good = load + lead + contact;
    switch (what) {
      case Wrong::open:
        return {};
      case Wrong::joint:
        return {good + draw_.log_from(0.5, 20)};
      case Wrong::lead:
        return {good +
                lead *
                    ((draw_.yes(0.5) ? draw_.log_from(0.4, 0.85) : draw_.log_from(1.15, 2.5)) - 1)};
      case Wrong::shunt:
        return {lead * (draw_.yes(0.7) ? 1 : draw_.unit()) + contact};
      case Wrong::leak: {
        const double path = draw_.log_from(5, 500);
        return {good * path / (good + path)};
      }
      default:
        return {good, what == Wrong::loose, what == Wrong::silent, what == Wrong::echo};
    }
  }

  match::Sample show(PinId pin, const Loop& loop) {
    if (!loop.ohm || (loop.loose && draw_.yes(0.4))) return {pin, 0, true};
    double ohm = *loop.ohm + (loop.loose ? draw_.log_from(0.1, 5) : 0);
    ohm = ohm * gain_ + zero_ + draw_.gauss(field_.tester.noise() * set_.noise_factor);
    if (ohm > field_.tester.range_ohm) return {pin, 0, true};
    return {pin, std::round(ohm * 100) / 100, false};
  }

  void take(PinId pin, const Loop& loop) {
    match::Sample sample = show(pin, loop);
    if (loop.echo && !field_.samples.empty()) sample = field_.samples.back();
    sample.pin = pin;
    field_.samples.push_back(sample);
  }

  const Setting& set_;
  Draw& draw_;
  Field& field_;
  double gain_ = 1, zero_ = 0;
  std::vector<double> per_m_;
};

}  // namespace

void read_rows(const Setting& setting, const std::vector<Row>& rows, Draw& draw, Field& field) {
  Loops(setting, draw, field).read(rows);
}

}  // namespace walkdown::simulated
