// SPDX-License-Identifier: Apache-2.0
// What hangs on each pin in ohms, what is wrong with it, and what the tester shows.
#include <algorithm>
#include <cmath>
#include <optional>

#include "tests/match/simulator.h"

namespace walkdown::simulated {
namespace {

using match::Kind;
using plan::PinId;

struct Circuit {
  std::optional<double> ohm;  // none: open
  bool loose = false;         // each reading on its own
  bool silent = false;        // never answers
  bool repeats_line = false;  // the tester sends the line before
};

class Bench {
 public:
  Bench(const Setting& setting, Dice& dice, Field& field)
      : setting_(setting), dice_(dice), field_(field) {
    tester().noise_ohm = 0.01;
    gain_ = 1 + dice.uniform(-1, 1) * tester().accuracy_pct / 100;
    offset_ = dice.uniform(-1, 1) * tester().accuracy_ohm + setting.offset_ohm;
    warm_ = 1 + 0.00393 * dice.uniform(-10, 10);
    for (const plan::Wire& wire : field.plan.catalogue.wires) {
      const double class_5 = dice.uniform(wire.ohm_per_km.lo, wire.ohm_per_km.hi);
      ohm_per_km_.push_back((setting.ideal_mm2 ? wire.ohm_per_km.lo : class_5) *
                            setting.wire_factor);
    }
  }

  void run() {
    const Hung loads = hung(field_);
    for (const auto& [module, sizes] : field_.plan.layout.rails) {
      for (std::uint16_t rail = 1; rail <= sizes.size(); ++rail) {
        for (std::uint16_t pin = 1; pin <= sizes[rail - 1U]; ++pin) {
          const PinId id{module, rail, pin};
          const auto load = loads.find(id);
          circuits_.push_back({id, load == loads.end()
                                       ? bare(id)
                                       : loaded(id, field_.plan.find(load->second)->load)});
        }
      }
    }
    scan();
  }

 private:
  tester::Model& tester() { return field_.tester; }

  double bridge(const plan::Load& load) {
    const plan::Interval range = field_.plan.catalogue.igniters[load.igniter].bridge_ohm;
    double series = 0;
    double conductance = 0;
    for (unsigned i = 0; i < load.count; ++i) {
      const double ohm = dice_.uniform(range.lo, range.hi);
      series += ohm;
      conductance += 1 / ohm;
    }
    return load.join == plan::Join::series ? series : 1 / conductance;
  }

  double lead(const plan::Load& load) {
    return 2 * load.lead_m * ohm_per_km_[load.wire] / 1000 * warm_ *
           dice_.uniform(1 - setting_.lead_spread, 1 + setting_.lead_spread);
  }

  Circuit bare(PinId id) {
    Circuit circuit;
    if (!dice_.chance(0.004 * setting_.fault_scale)) return circuit;
    const plan::Load& load = field_.plan.pins[dice_.below(field_.plan.pins.size())].load;
    circuit.ohm = bridge(load) + lead(load) + dice_.uniform(0, 0.1);
    note(Kind::stray, id);
    return circuit;
  }

  void note(Kind kind, PinId id) {
    field_.faults.push_back({kind, id});
    field_.wrong[id] = true;
  }

  Circuit loaded(PinId id, plan::Load load) {
    const double contact = dice_.uniform(0, 0.1);
    const std::optional<Kind> kind = fault(load);
    if (!kind) return {lead(load) + bridge(load) + contact, false, false, false};
    note(*kind, id);
    return faulty(*kind, load, contact);
  }

  // Draws at most one fault, each at its own rate.
  std::optional<Kind> fault(const plan::Load& load) {
    struct Rate {
      Kind kind;
      double rate;
    };
    const Rate rates[] = {{Kind::open, 0.010},
                          {Kind::poor_joint, 0.008},
                          {Kind::missing_igniter, load.count >= 2 ? 0.006 : 0},
                          {Kind::wrong_lead, 0.006},
                          {Kind::shorted, 0.003},
                          {Kind::leak, 0.003},
                          {Kind::intermittent, 0.003},
                          {Kind::wrong_igniter, 0.003},
                          {Kind::extra_igniter, 0.002},
                          {Kind::tester_offset, 0.002},  // stands for: no line at all
                          {Kind::unknown, 0.001}};       // the line before, once more
    double at = dice_.uniform() / setting_.fault_scale;
    for (const auto& [kind, rate] : rates) {
      if (at < rate) return kind;
      at -= rate;
    }
    return std::nullopt;
  }

  Circuit faulty(Kind kind, plan::Load load, double contact) {
    Circuit c;
    const double wire = lead(load);
    if (kind == Kind::missing_igniter) --load.count;
    if (kind == Kind::extra_igniter && load.count == 1 && dice_.chance(0.5)) {
      load.join = plan::Join::parallel;
    }
    if (kind == Kind::extra_igniter) ++load.count;
    if (kind == Kind::wrong_igniter) {
      load.igniter = static_cast<std::uint16_t>((load.igniter + 1 + dice_.below(2)) % 3);
    }
    const double sound = wire + bridge(load) + contact;
    c.ohm = sound;
    switch (kind) {
      case Kind::open:
        c.ohm.reset();
        break;
      case Kind::shorted:
        c.ohm = wire * (dice_.chance(0.7) ? 1 : dice_.uniform()) + contact;
        break;
      case Kind::poor_joint:
        c.ohm = sound + dice_.log_uniform(0.5, 20);
        break;
      case Kind::leak:
        c.ohm = 1 / (1 / sound + 1 / dice_.log_uniform(5, 500));
        break;
      case Kind::intermittent:
        c.loose = true;
        break;
      case Kind::wrong_lead: {
        const double by =
            dice_.chance(0.5) ? dice_.log_uniform(0.4, 0.85) : dice_.log_uniform(1.15, 2.5);
        c.ohm = sound + wire * (by - 1);
        break;
      }
      case Kind::tester_offset:
        c.silent = true;
        break;
      case Kind::unknown:
        c.repeats_line = true;
        break;
      default:
        break;
    }
    return c;
  }

  match::Sample shown(PinId id, std::optional<double> ohm) {
    if (!ohm) return {id, 0, true};
    const double raw =
        *ohm * gain_ + offset_ + dice_.normal(tester().noise() * setting_.noise_factor);
    if (raw > tester().range_ohm) return {id, 0, true};
    return {id, std::round(raw / 0.01) * 0.01, false};
  }

  void read(const PinId id, const Circuit& c) {
    if (c.silent) return;
    match::Sample sample = shown(id, c.ohm);
    if (c.loose) {
      sample = shown(
          id, dice_.chance(0.4) ? std::optional<double>() : *c.ohm + dice_.log_uniform(0.1, 5));
    }
    if (c.repeats_line && !field_.samples.empty()) {
      const auto other = std::find_if(field_.samples.rbegin(), field_.samples.rend(),
                                      [&](const match::Sample& s) { return s.pin != id; });
      if (other != field_.samples.rend()) {
        sample = *other;
        sample.pin = id;
      }
    }
    field_.samples.push_back(sample);
  }

  void scan() {
    const int rounds = setting_.back_to_back ? 1 : setting_.repeats;
    const int each = setting_.back_to_back ? setting_.repeats : 1;
    for (int round = 0; round < rounds; ++round) {
      for (const auto& [id, circuit] : circuits_) {
        for (int i = 0; i < each; ++i) read(id, circuit);
      }
    }
  }

  const Setting& setting_;
  Dice& dice_;
  Field& field_;
  double gain_ = 1, offset_ = 0, warm_ = 1;
  std::vector<double> ohm_per_km_;
  std::vector<std::pair<PinId, Circuit>> circuits_;
};

}  // namespace

void take_readings(const Setting& setting, Dice& dice, Field& field) {
  Bench(setting, dice, field).run();
}

}  // namespace walkdown::simulated
