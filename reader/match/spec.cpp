// SPDX-License-Identifier: Apache-2.0
#include "reader/match/spec.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstddef>
#include <cstring>
#include <unordered_map>

#include "reader/plan/expected.h"

namespace walkdown::match {
namespace {

using plan::Interval;

constexpr double kInUse = 4;  // a type that is on this show is likelier to be the wrong one

struct Hash {
  template <std::size_t n>
  std::size_t operator()(const std::array<std::int64_t, n>& key) const {
    std::uint64_t h = 0x9E3779B97F4A7C15U;
    for (const std::int64_t part : key) {
      h = (h ^ static_cast<std::uint64_t>(part)) * 0xBF58476D1CE4E5B9U;
      h ^= h >> 29U;
    }
    return h;
  }
};

// Steps of 0.1 %, with everything below a milliohm in one step.
std::int64_t step(double ohm) {
  return ohm < 1e-3 ? -1 : static_cast<std::int64_t>(std::llround(std::log(ohm) * 1000));
}

Interval leg(const plan::Igniter& igniter) {
  return {std::max(0.0, igniter.bridge_ohm.lo + igniter.fitted_lead_ohm.lo),
          std::max(0.0, igniter.bridge_ohm.hi + igniter.fitted_lead_ohm.hi)};
}

// Mean of n different legs in parallel, each uniform in `one`: second order in the spread of the
// conductances.
double parallel_mean(Interval one, unsigned n) {
  const double count = n;
  if (one.lo <= 0 || one.hi - one.lo < 1e-9) return one.mid() / count;
  const double g = std::log(one.hi / one.lo) / (one.hi - one.lo);
  const double spread = 1 / (one.lo * one.hi) - g * g;
  return (1 + spread / (count * g * g)) / (count * g);
}

double parallel_variance(Interval one, unsigned n) {
  const double count = n;
  if (one.lo <= 0 || one.hi - one.lo < 1e-9) return 0;
  const double g = std::log(one.hi / one.lo) / (one.hi - one.lo);
  const double spread = std::max(0.0, 1 / (one.lo * one.hi) - g * g);
  return count * spread / std::pow(count * g, 4);
}

bool alike(const Shape& a, const Shape& b) {
  const double scale = std::max({a.mean, b.mean, 1e-3});
  return std::abs(a.mean - b.mean) < 1e-3 * scale &&
         std::abs(std::sqrt(a.variance()) - std::sqrt(b.variance())) < 1e-3 * scale;
}

class Maker {
 public:
  explicit Maker(const plan::Plan& plan) : plan_(plan), in_use_(plan.catalogue.igniters.size()) {
    table_.contact_ohm = plan.catalogue.wiring.contact_ohm;
    table_.kinds.emplace_back();
    table_.specs.emplace_back();
    table_.of_pin.reserve(plan.pins.size());
    for (const plan::PlannedPin& pin : plan.pins) {
      if (pin.load.igniter < in_use_.size()) in_use_[pin.load.igniter] = true;
    }
  }

  SpecTable make() {
    for (const plan::PlannedPin& pin : plan_.pins) table_.of_pin.push_back(spec_of(pin.load));
    return std::move(table_);
  }

 private:
  std::uint32_t spec_of(const plan::Load& load) {
    if (load.count == 0 || !plan::known(load, plan_.catalogue)) return kNothing;
    const auto lead_bits = std::llround(load.lead_m * 1e6);
    const std::array<std::int64_t, 2> exact = {
        (std::int64_t{load.igniter} << 32) | (std::int64_t{load.count} << 16) | load.wire,
        lead_bits * 2 + (load.join == plan::Join::parallel ? 1 : 0)};
    const auto [at, fresh] = exact_.try_emplace(exact, 0U);
    if (fresh) at->second = by_ohms(load);
    return at->second;
  }

  // "AWG24" and a [wire] of the same ohms are one spec: compare ohms, not names.
  std::uint32_t by_ohms(const plan::Load& load) {
    Spec spec = lead(load);
    spec.kind = kind_of(load);
    const Interval one = leg(plan_.catalogue.igniters[load.igniter]);
    const bool wired = spec.wire != plan::kNoWire && spec.lead_ohm > 0;
    const Interval per_km = wired ? plan_.catalogue.wires[spec.wire].ohm_per_km : Interval{};
    const std::array<std::int64_t, 6> key = {
        step(one.lo),
        step(one.hi),
        (std::int64_t{load.count} << 1) |
            (load.count > 1 && load.join == plan::Join::parallel ? 1 : 0),
        step(spec.lead_ohm),
        step(per_km.lo),
        step(per_km.hi)};
    const auto [at, fresh] = ohms_.try_emplace(key, static_cast<std::uint32_t>(0));
    if (fresh) {
      at->second = static_cast<std::uint32_t>(table_.specs.size());
      table_.specs.push_back(spec);
    }
    return at->second;
  }

  Spec lead(const plan::Load& load) const {
    Spec spec;
    if (load.wire >= plan_.catalogue.wires.size() || load.lead_m <= 0) return spec;
    const plan::Wire& wire = plan_.catalogue.wires[load.wire];
    const plan::Wiring& wiring = plan_.catalogue.wiring;
    spec.wire = load.wire;
    spec.lead_ohm = 2 * load.lead_m * wire.ohm_per_km.mid() / 1000 *
                    (1 + wire.alpha_per_k * (wiring.temp_c - 20));
    spec.lead_ohm = std::max(0.0, spec.lead_ohm);
    spec.lead_box = 2 * spec.lead_ohm * std::abs(wiring.lead_tol_pct) / 100;
    return spec;
  }

  std::uint32_t kind_of(const plan::Load& load) {
    const std::array<std::int64_t, 1> key = {(std::int64_t{load.igniter} << 32) |
                                             (std::int64_t{load.count} << 1) |
                                             (load.join == plan::Join::parallel ? 1 : 0)};
    const auto [at, fresh] = kinds_.try_emplace(key, static_cast<std::uint32_t>(0));
    if (fresh) {
      at->second = static_cast<std::uint32_t>(table_.kinds.size());
      table_.kinds.push_back(make_kind(load));
    }
    return at->second;
  }

  LoadKind make_kind(const plan::Load& load) const {
    const plan::Igniter& igniter = plan_.catalogue.igniters[load.igniter];
    LoadKind kind;
    kind.load = load;
    kind.sound = load_shape(igniter, load.count, load.join);
    kind.can_miss = load.count >= 2;
    if (kind.can_miss) kind.missing = load_shape(igniter, load.count - 1U, load.join);
    kind.extra.push_back(load_shape(igniter, load.count + 1U, load.join));
    if (load.count == 1) kind.extra.push_back(load_shape(igniter, 2, plan::Join::parallel));
    double sum = 0;
    for (std::size_t i = 0; i < plan_.catalogue.igniters.size(); ++i) {
      const Shape other = load_shape(plan_.catalogue.igniters[i], load.count, load.join);
      if (i == load.igniter || alike(other, kind.sound)) continue;
      kind.others.push_back({other, in_use_[i] ? kInUse : 1.0});
      sum += kind.others.back().share;
    }
    for (LoadKind::Other& other : kind.others) other.share /= sum;
    return kind;
  }

  const plan::Plan& plan_;
  std::vector<bool> in_use_;
  SpecTable table_;
  std::unordered_map<std::array<std::int64_t, 2>, std::uint32_t, Hash> exact_;
  std::unordered_map<std::array<std::int64_t, 6>, std::uint32_t, Hash> ohms_;
  std::unordered_map<std::array<std::int64_t, 1>, std::uint32_t, Hash> kinds_;
};

}  // namespace

Shape load_shape(const plan::Igniter& igniter, unsigned count, plan::Join join) {
  Shape shape;
  if (count == 0) return shape;
  const Interval one = leg(igniter);
  const bool parallel = join == plan::Join::parallel && count > 1;
  shape.mean = parallel ? parallel_mean(one, count) : count * one.mid();
  if (parallel) {
    const double width = std::sqrt(12 * parallel_variance(one, count) / count);
    for (unsigned i = 0; i < std::min(count, 4U); ++i) add_box(shape, width);
    if (count > 4) shape.rest += (count - 4) * width * width / 12;
    return shape;
  }
  for (const Interval& part : {igniter.bridge_ohm, igniter.fitted_lead_ohm}) {
    const double width = std::max(0.0, part.hi - part.lo);
    for (unsigned i = 0; i < std::min(count, 4U); ++i) add_box(shape, width);
    if (count > 4) shape.rest += (count - 4) * width * width / 12;
  }
  return shape;
}

Shape whole_shape(const Shape& load, const Spec& spec, Interval contact_ohm) {
  Shape shape = load;
  shape.mean += spec.lead_ohm + contact_ohm.mid();
  add_box(shape, spec.lead_box);
  add_box(shape, std::max(0.0, contact_ohm.hi - contact_ohm.lo));
  return shape;
}

SpecTable make_specs(const plan::Plan& plan) { return Maker(plan).make(); }

}  // namespace walkdown::match
