// SPDX-License-Identifier: Apache-2.0
#include "reader/match/separation.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace walkdown::match {
namespace {

constexpr double kDisjoint = 12;  // nats: evidence of readings that cannot be the other's

// Even sequences, one a dimension: fractional parts of multiples of roots of x^5 = x + 1.
constexpr std::array<double, 4> kSteps = {0.8566748838545029, 0.733891856627126, 0.6287067210378087,
                                          0.5385972572236101};

double fraction(std::size_t k, std::size_t dimension) {
  const double x = 0.5 + static_cast<double>(k + 1) * kSteps.at(dimension);
  return x - std::floor(x);
}

// Inverse of the normal distribution, to three digits: enough to spread probes.
double normal_quantile(double p) {
  const double side = std::min(p, 1 - p);
  const double t = std::sqrt(-2 * std::log(std::max(side, 1e-12)));
  const double z = t - (2.30753 + 0.27061 * t) / (1 + t * (0.99229 + 0.04481 * t));
  return p < 0.5 ? -z : z;
}

double half_width(const Shape& shape, double noise) {
  return (shape.box[0] + shape.box[1] + shape.box[2]) / 2 + 5 * std::sqrt(shape.rest + noise);
}

}  // namespace

Separation::Separation(const plan::Plan& plan, const tester::Model& tester, const Priors& priors,
                       unsigned readings)
    : table_(make_specs(plan)), tester_(tester), readings_(std::clamp(readings, 1U, 8U)) {
  tester_.zero_ohm = 0;
  for (std::size_t i = 0; i < plan.pins.size(); ++i) {
    if (table_.of_pin[i] == kNothing) continue;
    const Spec& spec = table_.specs[table_.of_pin[i]];
    const double ohm =
        table_.kinds[spec.kind].sound.mean + spec.lead_ohm + table_.contact_ohm.mid();
    samples_.push_back({plan.pins[i].id, ohm, false});
  }
  field_ = make_field(plan, table_.of_pin, samples_, tester_, true);
  shared_ = fit_shared(field_, table_, plan.catalogue, tester_, {});
  for (Slot& slot : field_.slots) slot.seen.repeated = false;
  first_ = field_.slots.size();
  open_ = first_ + kProbes;
  for (std::size_t k = 0; k <= kProbes; ++k) {
    Slot slot;
    slot.seen.first = static_cast<std::uint32_t>(field_.order.size());
    slot.seen.numbers = k < kProbes ? readings_ : 0;
    slot.seen.overs = k < kProbes ? 0 : readings_;
    slot.seen.squares = shared_.noise * (readings_ - 1.0);
    for (unsigned r = 0; r < readings_; ++r) {
      field_.order.push_back(static_cast<std::uint32_t>(samples_.size()));
      samples_.push_back({{}, 0, k == kProbes});
    }
    field_.slots.push_back(slot);
  }
  mixture_ = std::make_unique<Mixture>(field_, table_, shared_, priors, samples_, tester_);
}

void Separation::put(std::size_t k, double ohm) {
  Slot& slot = field_.slots[first_ + k];
  slot.seen.mean = ohm;
  for (unsigned r = 0; r < readings_; ++r) samples_[field_.order[slot.seen.first + r]].ohm = ohm;
}

double Separation::draw(const Shape& shape, std::size_t k) const {
  double ohm = shape.mean;
  for (std::size_t i = 0; i < shape.box.size(); ++i) ohm += shape.box[i] * (fraction(k, i) - 0.5);
  const double noise = (shared_.noise - shared_.rounding) / readings_ + shared_.rounding;
  return ohm + std::sqrt(shape.rest + noise) * normal_quantile(fraction(k, 3));
}

const Apart& Separation::apart(std::uint32_t planned, std::uint32_t there) {
  const std::uint64_t key = (std::uint64_t{planned} << 32U) | there;
  const auto [at, fresh] = known_.try_emplace(key);
  if (fresh) at->second = weigh(planned, there);
  return at->second;
}

Apart Separation::weigh(std::uint32_t planned, std::uint32_t there) {
  if (planned == there) return {};
  if (there == kNothing) {
    const Slot& open = field_.slots[open_];
    return {mixture_->cost(open, planned) - mixture_->cost(open, kNothing), 0, 1};
  }
  const Shape sound = table_.specs[there].sound;
  if (planned != kNothing) {
    const Shape& other = table_.specs[planned].sound;
    const double apart = std::abs(sound.mean - other.mean);
    if (apart > half_width(sound, shared_.noise) + half_width(other, shared_.noise)) {
      return {kDisjoint, 4, 1};
    }
  }
  Apart out;
  double squares = 0;
  for (std::size_t k = 0; k < kProbes; ++k) {
    put(k, draw(sound, k));
    const double evidence = mixture_->cost(probe(k), planned) - mixture_->cost(probe(k), there);
    out.mean += evidence / kProbes;
    squares += evidence * evidence / kProbes;
    const bool flag = planned == kNothing || mixture_->sound(probe(k), planned) < 0.5;
    if (flag) out.flagged += 1.0 / kProbes;
  }
  out.variance = std::max(0.0, squares - out.mean * out.mean);
  return out;
}

double Separation::flagged_load(std::uint32_t spec, const Shape& load) {
  Spec shown = table_.specs[spec];
  shown.lead_ohm = shown.lead_shown;
  Shape whole = whole_shape(load, shown, table_.contact_ohm);
  whole.mean = shared_.shown(whole.mean);
  double sum = 0;
  for (std::size_t k = 0; k < kProbes; ++k) {
    put(k, draw(whole, k));
    if (mixture_->sound(probe(k), spec) < 0.5) sum += 1.0 / kProbes;
  }
  return sum;
}

}  // namespace walkdown::match
