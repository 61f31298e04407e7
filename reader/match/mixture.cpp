// SPDX-License-Identifier: Apache-2.0
#include "reader/match/mixture.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace walkdown::match {
namespace {

constexpr double kBin = 0.05;
constexpr std::size_t kMostBins = 20000;
constexpr double kClearly = 10;           // times likelier than all faults together
constexpr double kLargest = 600;          // exponents beyond are cut: all that far is certain
constexpr std::size_t kMostRepeats = 16;  // of an intermittent, looked at one by one

constexpr double kLeastLead = 1e-3;    // ohm: less is no lead
constexpr double kMostWeight = 1e280;  // what a sum of weights can hold
constexpr double kAnyJump = 0.1;       // per ohm: a reading that jumps for no known reason

// Density of a log-uniform x with its edges blurred by a ramp: a value a digit below the least
// fault is still one.
double log_uniform(double x, double lo, double hi, double sigma) {
  const double inside = std::min((x - lo) / (4 * sigma) + 0.5, (hi - x) / (4 * sigma) + 0.5);
  if (inside <= 0) return 0;
  return std::min(inside, 1.0) / std::max(x, lo);
}

// Squares over noise above which so many repeats jump: Wilson and Hilferty's cube root of
// chi-square, beyond 4.5 standard deviations, and never below 9.
double jump_limit(std::uint32_t numbers) {
  const double free = numbers - 1.0;
  const double spread = 2 / (9 * free);
  const double root = 1 - spread + 4.5 * std::sqrt(spread);
  return std::max(free * root * root * root, 9.0);
}

double power(double x, std::uint32_t n) {
  double product = 1;
  for (; n > 0; --n) product *= x;
  return product;
}

}  // namespace

Mixture::Mixture(const Field& field, SpecTable& table, const Shared& shared, const Priors& priors,
                 std::span<const Sample> samples, const tester::Model& tester)
    : field_(field),
      table_(table),
      shared_(shared),
      priors_(priors),
      ln_(priors_.size),
      samples_(samples),
      tester_(tester) {
  const Sizes& size = priors_.size;
  each_jump_ = (1 - size.loose_open) / std::log(size.loose_hi_ohm / size.loose_lo_ohm);
  for (std::uint32_t n = 1; n <= kModelled; ++n) least_spread_[n - 1] = least_spread(n);
  prepare_slots();
  prepare_levels();
  prepare_anybody();
}

void Mixture::prepare_slots() {
  const std::size_t n = field_.slots.size();
  plain_.assign(n, 0);
  unsteady_.assign(n, 0);
  shown_.assign(n, kOver);
  std::array<std::size_t, kModelled> pins{};  // with so many numbers, less one
  std::uint32_t numbers = 0;  // whose limit is known: repeats are as many on most pins
  double limit = 0;
  for (std::size_t i = 0; i < n; ++i) {
    const Seen& seen = field_.slots[i].seen;
    if (seen.numbers > 0) shown_[i] = static_cast<float>(seen.mean);
    bool jumps = seen.numbers > 0 && seen.overs > 0;
    if (seen.numbers >= 2 && !jumps) {
      if (seen.numbers != numbers) limit = jump_limit(numbers = seen.numbers) * shared_.noise;
      jumps = seen.squares > limit;
    }
    unsteady_[i] = jumps ? 1 : 0;
    plain_[i] = seen.numbers > 0 && seen.overs == 0 && !jumps && !seen.repeated ? 1 : 0;
    if (seen.numbers > 0 && seen.numbers <= kModelled) ++pins[seen.numbers - 1];
  }
  usual_ =
      1 + static_cast<std::uint32_t>(std::max_element(pins.begin(), pins.end()) - pins.begin());
}

void Mixture::prepare_levels() {
  const LoadRates& rate = priors_.load;
  reaches_.assign(table_.specs.size(), {});
  for (std::size_t s = 1; s < table_.specs.size(); ++s) {
    Spec& spec = table_.specs[s];
    const LoadKind& kind = table_.kinds[spec.kind];
    spec.faults =
        rate.open + rate.poor_joint + rate.shorted + rate.leak + rate.intermittent + rate.repeated +
        rate.extra + (spec.lead_shown >= kLeastLead ? rate.wrong_lead : 0) +
        (kind.can_miss ? rate.missing : 0) + (kind.others.empty() ? 0 : rate.wrong_igniter);
    const SpecModel& whole = model(usual_, static_cast<std::uint32_t>(s));
    spec.top = whole.sound(spec.sound.mean);
    spec.level = -std::log(std::max(spec.top, 1e-9));
    Weights w{};
    whole.faults(spec.sound.mean, w);
    for (const double part : w) spec.rivals += part;
    spec.rivals = 2 * spec.rivals + 0.004;
    spec.plateau = spec.sound.plateau(std::sqrt(shared_.noise + spec.sound.rest));
    spec.reach = (spec.sound.box[0] + spec.sound.box[1] + spec.sound.box[2]) / 2 +
                 4 * std::sqrt(spec.sound.rest + shared_.noise);
    reaches_[s] = {static_cast<float>(spec.sound.mean), static_cast<float>(spec.reach)};
    spec.middle = std::max(spec.plateau, 1.2 * std::sqrt(spec.sound.variance())) + 0.1;
    spec.usual = spec.level + (spec.plateau > 0 ? 0.05 : 0.5);
    least_usual_ = std::min(least_usual_, spec.level);
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

double Mixture::noise_of(std::uint32_t numbers) const {
  const double own = shared_.noise - shared_.rounding;
  return own / std::max(1U, numbers) + shared_.rounding;
}

const SpecModel& Mixture::model(std::uint32_t numbers, std::uint32_t spec) const {
  const std::size_t n = std::max(1U, numbers) - 1;
  const auto make = [&] {
    return std::make_unique<SpecModel>(table_, table_.specs[spec], shared_, priors_, ln_,
                                       noise_of(numbers));
  };
  if (n >= kModelled) return *(other_ = make());
  Models& models = models_[n];
  if (models.empty()) models.resize(table_.specs.size());
  if (!models[spec]) models[spec] = make();
  return *models[spec];
}

double Mixture::least_spread(std::uint32_t numbers) const {
  const double n = numbers;
  return 0.5 * std::log(n) + (n - 1) / 2 * std::log(2 * std::numbers::pi * shared_.noise);
}

double Mixture::per_spread(const Seen& seen) const {
  if (seen.numbers < 2) return 1;
  const double least =
      seen.numbers <= kModelled ? least_spread_[seen.numbers - 1] : least_spread(seen.numbers);
  const double ln = least + seen.squares / (2 * shared_.noise);
  return std::exp(std::clamp(ln, -kLargest, kLargest));
}

// What nobody thought of: one steady value, or each reading on its own. Without the second, a pin
// whose readings jump would say hundreds of nats against every load that it cannot have.
double Mixture::unknown(const Seen& seen) const {
  const std::uint32_t more = seen.numbers > 1 ? std::min(seen.numbers - 1, 100U) : 0;
  return priors_.floor_per_ohm *
         std::clamp(per_spread(seen) * power(kAnyJump, more), 1.0, kMostWeight);
}

// Likelihood that each reading repeats the line before, against that of the spread alone.
double Mixture::repeat_gain(const Slot& slot) const {
  if (!slot.seen.repeated) return 0;
  // Repeats without any spread are one coincidence seen again, not several: a quiet tester shows
  // the same digits every time, and equal neighbours then agree every time.
  if (slot.seen.squares < 1e-12) return 1 / shared_.digit;
  return std::min(kMostWeight, per_spread(slot.seen) *
                                   power(1 / shared_.digit, std::min(slot.seen.numbers, 100U)));
}

// Density of all numbers of an intermittent whose sound loop is `base`.
double Mixture::each_jump(const Seen& seen, double base) const {
  const Sizes& size = priors_.size;
  const double sigma = std::sqrt(shared_.noise);
  double product = 1;
  std::size_t used = 0;
  for (std::uint32_t i = 0; i < seen.count() && used < kMostRepeats && product > 0; ++i) {
    const Sample& sample = samples_[field_.order[seen.first + i]];
    if (sample.over) continue;
    ++used;
    product *= each_jump_ * log_uniform(judged(sample, tester_) - base, size.loose_lo_ohm,
                                        size.loose_hi_ohm, sigma);
  }
  return product;
}

// The same where the numbers agree: each is their mean.
double Mixture::steady_wobble(const Seen& seen, const Shape& sound) const {
  const Sizes& size = priors_.size;
  const double half = std::sqrt(3 * sound.variance());
  const double x = seen.mean - sound.mean;
  if (x + half < 0 || x - half > size.loose_hi_ohm + 1) return 0;
  const double sigma = std::sqrt(shared_.noise);
  double sum = 0;
  for (const double off : {-2 * half / 3, 0.0, 2 * half / 3}) {
    const double each =
        each_jump_ * log_uniform(x - off, size.loose_lo_ohm, size.loose_hi_ohm, sigma);
    sum += power(each, std::min<std::uint32_t>(seen.numbers, kMostRepeats)) / 3;
  }
  return sum > 0 ? sum * per_spread(seen) : 0;
}

// Readings of an intermittent: each on its own over range, or the sound loop and a loose contact.
double Mixture::wobble(const Slot& slot, const Shape& sound) const {
  const Seen& seen = slot.seen;
  const double over = power(priors_.size.loose_open, std::min(seen.overs, 100U));
  if (seen.numbers == 0) return over;
  if (plain(slot)) return steady_wobble(seen, sound);
  const double half = std::sqrt(3 * sound.variance());
  const int points = unsteady(slot) ? 9 : 3;
  double sum = 0;
  for (int p = 0; p < points; ++p) {
    sum += each_jump(seen, sound.mean + half * (2 * (p + 0.5) / points - 1)) / points;
  }
  return std::min(sum * over * per_spread(seen), kMostWeight);
}

double Mixture::least_jump(const Slot& slot) const {
  const Seen& seen = slot.seen;
  double lowest = 1e30;
  for (std::uint32_t i = 0; i < seen.count(); ++i) {
    const Sample& sample = samples_[field_.order[seen.first + i]];
    if (!sample.over) lowest = std::min(lowest, judged(sample, tester_));
  }
  // A loose contact adds little more often than much: the sound loop lies just below.
  Shape best;
  best.mean = lowest - 1.5 * priors_.size.loose_lo_ohm;
  return -std::log(std::max(priors_.load.intermittent * wobble(slot, best), 1e-300));
}

Weights Mixture::numbers(const Slot& slot, std::uint32_t spec) const {
  Weights w{};
  const LoadRates& rate = priors_.load;
  if (slot.seen.overs == 0) {
    const SpecModel& whole = model(slot.seen.numbers, spec);
    whole.faults(slot.seen.mean, w);
    at(w, Cause::sound) = whole.sound(slot.seen.mean);
  }
  at(w, Cause::intermittent) = rate.intermittent * wobble(slot, table_.specs[spec].sound);
  at(w, Cause::repeated) = rate.repeated * repeat_gain(slot);
  at(w, Cause::unknown) = unknown(slot.seen);
  return w;
}

Weights Mixture::overs(const Slot& slot, const Spec& spec) const {
  Weights w{};
  const LoadRates& rate = priors_.load;
  const double sigma = std::sqrt(spec.sound.variance() + shared_.noise);
  at(w, Cause::open) = rate.open;
  at(w, Cause::intermittent) = rate.intermittent * wobble(slot, spec.sound);
  at(w, Cause::sound) = normal_below((spec.sound.mean - shared_.range) / sigma);
  // An over after an over is what neighbours that are open send: no sign of a line sent twice.
  at(w, Cause::unknown) = priors_.floor_per_ohm;
  return w;
}

Weights Mixture::bare(const Slot& slot) const {
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
  at(w, Cause::unknown) = unknown(slot.seen);
  return w;
}

Weights Mixture::weights(const Slot& slot, std::uint32_t spec) const {
  if (spec == kNothing) return bare(slot);
  return slot.seen.numbers == 0 ? overs(slot, table_.specs[spec]) : numbers(slot, spec);
}

double Mixture::clearly_sound(const Slot& slot, std::uint32_t spec) const {
  if (!plain(slot)) return 0;
  const Spec& held = table_.specs[spec];
  const double off = std::abs(slot.seen.mean - held.sound.mean);
  if (off > held.middle) return 0;
  if (off < held.plateau) return held.top;
  const double here = model(slot.seen.numbers, spec).sound(slot.seen.mean);
  return here > kClearly * held.rivals ? here : 0;
}

double Mixture::cost(const Slot& slot, std::uint32_t spec) const {
  if (slot.seen.unread()) return 0;
  if (spec != kNothing && plain(slot)) {
    const Spec& held = table_.specs[spec];
    if (std::abs(slot.seen.mean - held.sound.mean) < held.plateau) return held.level;
    const double here = clearly_sound(slot, spec);
    if (here > 0) return -std::log(here);
  }
  double sum = 0;
  for (const double part : weights(slot, spec)) sum += part;
  return -std::log(std::clamp(sum, 1e-300, 1e300));
}

double Mixture::sound(const Slot& slot, std::uint32_t spec, double cost) const {
  if (spec != kNothing && plain(slot)) {
    // So large only where nothing but a sound load was weighed: clearly_sound().
    const Spec& held = table_.specs[spec];
    const double here = cost == held.level ? held.top : std::exp(-cost);
    const double rivals = held.rivals;
    if (here > (kClearly + 1) * rivals) return here / (here + rivals);
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
