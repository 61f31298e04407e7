// SPDX-License-Identifier: Apache-2.0
#include "reader/match/mixture.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace walkdown::match {
namespace {

constexpr double kBin = 0.05;
constexpr std::size_t kMostBins = 20000;
constexpr double kLeastLead = 1e-3;       // ohm: less is no lead
constexpr double kClearly = 10;           // times likelier than all faults together
constexpr double kLargest = 600;          // exponents beyond are cut: all that far is certain
constexpr std::size_t kMostRepeats = 16;  // of an intermittent, looked at one by one

double& at(std::array<double, kCauses>& w, Cause cause) {
  return w[static_cast<std::size_t>(cause)];
}

// Density of a log-uniform x with its edges blurred by a ramp: a value a digit below the least
// fault is still one.
double log_uniform(double x, double lo, double hi, double sigma) {
  const double inside = std::min((x - lo) / (4 * sigma) + 0.5, (hi - x) / (4 * sigma) + 0.5);
  if (inside <= 0) return 0;
  return std::min(inside, 1.0) / std::max(x, lo);
}

}  // namespace

Mixture::Mixture(const Field& field, SpecTable& table, const Shared& shared, const Priors& priors,
                 std::span<const Sample> samples, const tester::Model& tester)
    : field_(field),
      table_(table),
      shared_(shared),
      priors_(priors),
      samples_(samples),
      tester_(tester) {
  prepare_spreads();
  prepare_levels();
  prepare_anybody();
}

void Mixture::prepare_spreads() {
  per_spread_.assign(field_.slots.size(), 1.0);
  unsteady_.assign(field_.slots.size(), false);
  for (std::size_t i = 0; i < field_.slots.size(); ++i) {
    const Seen& seen = field_.slots[i].seen;
    unsteady_[i] = jumps(seen);
    if (seen.numbers < 2) continue;
    const double n = seen.numbers;
    const double ln = 0.5 * std::log(n) +
                      (n - 1) / 2 * std::log(2 * std::numbers::pi * shared_.noise) +
                      seen.squares / (2 * shared_.noise);
    per_spread_[i] = std::exp(std::clamp(ln, -kLargest, kLargest));
  }
}

void Mixture::prepare_levels() {
  const LoadRates& rate = priors_.load;
  for (std::size_t s = 1; s < table_.specs.size(); ++s) {
    Spec& spec = table_.specs[s];
    const LoadKind& kind = table_.kinds[spec.kind];
    spec.faults =
        rate.open + rate.poor_joint + rate.shorted + rate.leak + rate.intermittent + rate.repeated +
        rate.extra + (spec.lead_shown >= kLeastLead ? rate.wrong_lead : 0) +
        (kind.can_miss ? rate.missing : 0) + (kind.others.empty() ? 0 : rate.wrong_igniter);
    const double top = density(spec.sound, spec.sound.mean, shared_.noise);
    spec.level = -std::log((1 - spec.faults) * std::max(top, 1e-9));
    Weights w{};
    load_faults(w, spec, spec.sound.mean, shared_.noise);
    lead_faults(w, spec, spec.sound.mean, shared_.noise);
    for (const double part : w) spec.rivals += part;
    spec.rivals = 2 * spec.rivals + 0.004;
    spec.top = (1 - spec.faults) * top;
    spec.plateau = spec.sound.plateau(std::sqrt(shared_.noise + spec.sound.rest));
    spec.middle = std::max(spec.plateau, 1.2 * std::sqrt(spec.sound.variance())) + 0.1;
    spec.usual = spec.level + (spec.plateau > 0 ? 0.05 : 0.5);
  }
}

// Sound loads of the whole plan, each spread over its middle: where a number on a free pin may
// come from.
void Mixture::prepare_anybody() {
  std::vector<std::uint32_t> count(table_.specs.size(), 0);
  for (const Slot& slot : field_.slots) ++count[slot.spec];
  double highest = 1;
  for (std::size_t s = 1; s < count.size(); ++s) {
    if (count[s] > 0) highest = std::max(highest, table_.specs[s].sound.mean + 3);
  }
  const auto bins =
      static_cast<std::size_t>(std::min<double>(kMostBins, std::ceil((highest + 1) / kBin) + 1));
  anybody_.assign(bins + 1, 0.0);
  double all = 0;
  for (std::size_t s = 1; s < count.size(); ++s) {
    if (count[s] == 0) continue;
    const Shape& sound = table_.specs[s].sound;
    const double half = std::sqrt(3 * sound.variance()) + kBin;
    const auto bin = [&](double y) {
      return static_cast<std::size_t>(
          std::clamp((y + 1) / kBin, 0.0, static_cast<double>(bins - 1)));
    };
    const std::size_t from = bin(sound.mean - half);
    const std::size_t to = bin(sound.mean + half);
    const double each = count[s] / (static_cast<double>(to - from + 1) * kBin);
    anybody_[from] += each;
    anybody_[to + 1] -= each;
    all += count[s];
  }
  double running = 0;
  for (double& value : anybody_) {
    running += value;
    value = all > 0 ? std::max(0.0, running / all) : 0;
  }
}

double Mixture::anybody(double y) const {
  const double bin = (y + 1) / kBin;
  if (bin < 0 || bin >= static_cast<double>(anybody_.size())) return 0;
  return anybody_[static_cast<std::size_t>(bin)];
}

double Mixture::noise_of(const Seen& seen) const {
  const double own = shared_.noise - shared_.rounding;
  return own / std::max(1U, seen.numbers) + shared_.rounding;
}

bool Mixture::jumps(const Seen& seen) const {
  if (seen.numbers > 0 && seen.overs > 0) return true;
  if (seen.numbers < 2) return false;
  const double free = seen.numbers - 1;
  // Wilson and Hilferty's cube root of chi-square, beyond 4.5 standard deviations.
  const double ratio = seen.squares / (free * shared_.noise);
  const double spread = 2 / (9 * free);
  return std::cbrt(ratio) > 1 - spread + 4.5 * std::sqrt(spread) && ratio > 9 / free;
}

double Mixture::per_spread(const Slot& slot) const { return per_spread_[index(slot)]; }

// Likelihood that each reading repeats the line before, against that of the spread alone.
double Mixture::repeat_gain(const Slot& slot) const {
  if (!slot.seen.repeated) return 0;
  // Repeats without any spread are one coincidence seen again, not several: a quiet tester shows
  // the same digits every time, and equal neighbours then agree every time.
  if (slot.seen.squares < 1e-12) return 1 / shared_.digit;
  return per_spread(slot) *
         std::pow(shared_.digit, -static_cast<double>(std::min(slot.seen.numbers, 100U)));
}

// Readings of an intermittent: each on its own over range, or the sound loop and a loose contact.
double Mixture::wobble(const Slot& slot, const Shape& sound) const {
  const Seen& seen = slot.seen;
  const Sizes& size = priors_.size;
  double over = 1;
  for (std::uint32_t i = 0; i < std::min(seen.overs, 100U); ++i) over *= size.loose_open;
  if (seen.numbers == 0) return over;
  const double half = std::sqrt(3 * sound.variance());
  const double sigma = std::sqrt(shared_.noise);
  const int points = unsteady(slot) ? 9 : 3;
  const double each = (1 - size.loose_open) / std::log(size.loose_hi_ohm / size.loose_lo_ohm);
  double sum = 0;
  for (int p = 0; p < points; ++p) {
    const double base = sound.mean + half * (2 * (p + 0.5) / points - 1);
    double product = 1.0 / points;
    std::size_t used = 0;
    for (std::uint32_t i = 0; i < seen.count() && used < kMostRepeats && product > 0; ++i) {
      const Sample& sample = samples_[field_.order[seen.first + i]];
      if (sample.over) continue;
      ++used;
      product *= each * log_uniform(judged(sample, tester_) - base, size.loose_lo_ohm,
                                    size.loose_hi_ohm, sigma);
    }
    sum += product;
  }
  return std::min(sum * over * per_spread(slot), 1e280);
}

void Mixture::load_faults(Weights& w, const Spec& spec, double y, double noise) const {
  const LoadKind& kind = table_.kinds[spec.kind];
  const LoadRates& rate = priors_.load;
  Spec shown = spec;
  shown.lead_ohm = spec.lead_shown;
  const auto with = [&](const Shape& load) {
    const double off = shared_.shown(load.mean + spec.lead_shown + table_.contact_ohm.mid()) - y;
    // Far beyond the sum of all widths there is nothing: spare the integral.
    const double reach = (load.box[0] + load.box[1] + load.box[2] + spec.lead_box) / 2 + 0.1;
    if (std::abs(off) > reach + 6 * std::sqrt(load.rest + spec.shared_var + noise)) return 0.0;
    Shape whole = whole_shape(load, shown, table_.contact_ohm);
    whole.mean = shared_.shown(whole.mean);
    whole.rest += spec.shared_var;
    return density(whole, y, noise);
  };
  if (kind.can_miss) at(w, Cause::missing) = rate.missing * with(kind.missing);
  for (const Shape& more : kind.extra) {
    at(w, Cause::extra) += rate.extra * with(more) / static_cast<double>(kind.extra.size());
  }
  for (const LoadKind::Other& other : kind.others) {
    at(w, Cause::wrong_igniter) += rate.wrong_igniter * other.share * with(other.shape);
  }
  const Sizes& size = priors_.size;
  const double width = std::sqrt(12 * (spec.sound.variance() + noise));
  at(w, Cause::poor_joint) = rate.poor_joint * added_density(y, spec.sound.mean, width,
                                                             size.joint_lo_ohm, size.joint_hi_ohm);
  at(w, Cause::leak) =
      rate.leak * shunted_density(y, spec.sound.mean, width, size.leak_lo_ohm, size.leak_hi_ohm);
}

void Mixture::lead_faults(Weights& w, const Spec& spec, double y, double noise) const {
  const LoadKind& kind = table_.kinds[spec.kind];
  const LoadRates& rate = priors_.load;
  const Sizes& size = priors_.size;
  const double contact = table_.contact_ohm.hi - table_.contact_ohm.lo;
  const double fixed = shared_.shown(table_.contact_ohm.mid());
  Shape end;  // a shunt at the far end: lead and contacts
  end.mean = fixed + (1 + shared_.gain) * spec.lead_shown;
  end.rest = spec.shared_var;
  add_box(end, spec.lead_box);
  add_box(end, contact);
  Shape along = end;  // a short anywhere along the lead
  along.mean = fixed + (1 + shared_.gain) * spec.lead_shown / 2;
  along.box = {};
  add_box(along, spec.lead_shown);
  add_box(along, contact);
  if (y < end.mean + spec.lead_box + contact + 9 * std::sqrt(noise + end.rest)) {
    at(w, Cause::shorted) = rate.shorted * (size.short_far_end * density(end, y, noise) +
                                            (1 - size.short_far_end) * density(along, y, noise));
  }
  if (spec.lead_shown < kLeastLead) return;
  const double base = shared_.shown(kind.sound.mean + table_.contact_ohm.mid());
  const double rest = kind.sound.variance() + contact * contact / 12 + spec.shared_var +
                      spec.lead_box * spec.lead_box / 12 + noise;
  const double width = std::sqrt(12 * rest);
  const double lead = (1 + shared_.gain) * spec.lead_shown;
  at(w, Cause::wrong_lead) =
      rate.wrong_lead / 2 *
      (added_density(y, base, width, size.lead_short_lo * lead, size.lead_short_hi * lead) +
       added_density(y, base, width, size.lead_long_lo * lead, size.lead_long_hi * lead));
}

Mixture::Weights Mixture::numbers(const Slot& slot, const Spec& spec) const {
  Weights w{};
  const LoadRates& rate = priors_.load;
  const double y = slot.seen.mean;
  const double noise = noise_of(slot.seen);
  if (slot.seen.overs == 0) {
    load_faults(w, spec, y, noise);
    lead_faults(w, spec, y, noise);
    at(w, Cause::sound) = (1 - spec.faults) * density(spec.sound, y, noise);
  }
  at(w, Cause::intermittent) = rate.intermittent * wobble(slot, spec.sound);
  at(w, Cause::repeated) = rate.repeated * repeat_gain(slot);
  at(w, Cause::unknown) = priors_.floor_per_ohm;
  return w;
}

Mixture::Weights Mixture::overs(const Slot& slot, const Spec& spec) const {
  Weights w{};
  const LoadRates& rate = priors_.load;
  const double sigma = std::sqrt(spec.sound.variance() + shared_.noise);
  at(w, Cause::open) = rate.open;
  at(w, Cause::intermittent) = rate.intermittent * wobble(slot, spec.sound);
  at(w, Cause::sound) = normal_below((spec.sound.mean - shared_.range) / sigma);
  if (slot.seen.repeated) at(w, Cause::repeated) = rate.repeated;
  at(w, Cause::unknown) = priors_.floor_per_ohm;
  return w;
}

Mixture::Weights Mixture::bare(const Slot& slot) const {
  Weights w{};
  const LoadRates& rate = priors_.load;
  if (slot.seen.numbers == 0) {
    at(w, Cause::sound) = 1 - rate.unplanned;
    at(w, Cause::unplanned) = rate.unplanned * rate.open;
    return w;
  }
  const double own = slot.seen.overs == 0 ? anybody(slot.seen.mean) : 0;
  Shape any;
  any.mean = slot.seen.mean - 0.5;
  any.box[0] = 1;
  const double loose = rate.intermittent * wobble(slot, any) * std::max(1e-3, own);
  at(w, Cause::unplanned) = rate.unplanned * (own + loose);
  at(w, Cause::repeated) = rate.repeated * repeat_gain(slot);
  at(w, Cause::unknown) = priors_.floor_per_ohm;
  return w;
}

Mixture::Weights Mixture::weights(const Slot& slot, std::uint32_t spec) const {
  if (spec == kNothing) return bare(slot);
  const Spec& held = table_.specs[spec];
  return slot.seen.numbers == 0 ? overs(slot, held) : numbers(slot, held);
}

double Mixture::clearly_sound(const Slot& slot, const Spec& spec) const {
  const Seen& seen = slot.seen;
  if (seen.overs > 0 || seen.numbers == 0 || seen.repeated || unsteady(slot)) return 0;
  const double off = std::abs(seen.mean - spec.sound.mean);
  if (off > spec.middle) return 0;
  if (off < spec.plateau) return spec.top;
  const double here = (1 - spec.faults) * density(spec.sound, seen.mean, noise_of(seen));
  return here > kClearly * spec.rivals ? here : 0;
}

double Mixture::cost(const Slot& slot, std::uint32_t spec) const {
  const Seen& seen = slot.seen;
  if (seen.unread()) return 0;
  if (spec != kNothing) {
    const Spec& held = table_.specs[spec];
    if (std::abs(seen.mean - held.sound.mean) < held.plateau && seen.overs == 0 && !seen.repeated &&
        !unsteady(slot)) {
      return held.level;
    }
    const double here = clearly_sound(slot, held);
    if (here > 0) return -std::log(here);
  }
  double sum = 0;
  for (const double part : weights(slot, spec)) sum += part;
  return -std::log(std::clamp(sum, 1e-300, 1e300));
}

double Mixture::sound(const Slot& slot, std::uint32_t spec) const {
  if (spec != kNothing) {
    const Spec& held = table_.specs[spec];
    const double here = clearly_sound(slot, held);
    if (here > 0) return here / (here + held.rivals);
  }
  return posterior(slot, spec)[static_cast<std::size_t>(Cause::sound)];
}

Posterior Mixture::posterior(const Slot& slot, std::uint32_t spec) const {
  Posterior out{};
  if (slot.seen.unread()) {
    at(out, Cause::sound) = 1;
    return out;
  }
  out = weights(slot, spec);
  double sum = 0;
  for (const double part : out) sum += part;
  for (double& part : out) part /= std::max(sum, 1e-300);
  return out;
}

}  // namespace walkdown::match
