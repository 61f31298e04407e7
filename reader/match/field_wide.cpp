// SPDX-License-Identifier: Apache-2.0
#include "reader/match/field_wide.h"

#include <algorithm>
#include <cmath>
#include <utility>
#include <vector>

#include "reader/match/say.h"

namespace walkdown::match {
namespace {

constexpr std::size_t kMostWeighed = 2000;  // pins that a hypothesis is weighed on
constexpr double kOffsetRoom = 2;           // ohm: more is no test lead
constexpr double kNoLead = 1.5;             // of the accuracy, beyond it
constexpr std::size_t kLeastSilent = 8;     // pins, from which a silent field is one cause
constexpr double kNamed = 0.1;

struct Guess {
  Kind kind = Kind::unknown;  // unknown: nothing of the kind
  SpecTable table;
  Shared shared;
  FieldShift shift;
  std::uint16_t igniter = 0;
  double price = 0;  // nats, of its prior
  double cost = 0;   // nats, its price included
  double share = 0;
};

class Weigher {
 public:
  Weigher(const plan::Plan& plan, const tester::Model& tester, const Field& field, SpecTable table,
          std::span<const Sample> samples, const Priors& priors)
      : plan_(plan),
        tester_(tester),
        field_(field),
        table_(std::move(table)),
        samples_(samples),
        priors_(priors) {}

  FieldWide judge() {
    pick();
    guesses_.push_back(guess({}, Kind::unknown));
    if (suspicious(guesses_.front().shared)) {
      offset();
      wire();
      igniters();
      weigh();
    }
    Guess& best = *std::min_element(guesses_.begin(), guesses_.end(), cheaper);
    FieldWide out;
    if (best.kind != Kind::unknown) out.finding = told(best);
    out.table = std::move(best.table);
    out.shared = std::move(best.shared);
    out.shift = best.shift;
    out.price = best.price;
    if (silent()) {
      out.silent = true;
      out.finding = quiet();
    }
    return out;
  }

 private:
  static bool cheaper(const Guess& a, const Guess& b) { return a.cost < b.cost; }

  // Steady numbers on planned pins, evenly over the field.
  void pick() {
    std::vector<std::uint32_t> all;
    for (std::uint32_t i = 0; i < field_.slots.size(); ++i) {
      const Slot& slot = field_.slots[i];
      if (slot.spec != kNothing && slot.seen.numbers > 0 && slot.seen.overs == 0) all.push_back(i);
    }
    const std::size_t step = all.size() / kMostWeighed + 1;
    for (std::size_t i = 0; i < all.size(); i += step) weighed_.push_back(all[i]);
    read_ = all.size();
  }

  [[nodiscard]] Guess guess(const Allowance& allowance, Kind kind) const {
    Guess made;
    made.kind = kind;
    made.table = table_;
    made.shared = fit_shared(field_, made.table, plan_.catalogue, tester_, allowance);
    return made;
  }

  [[nodiscard]] bool suspicious(const Shared& shared) const {
    if (read_ < 4) return false;
    return shared.at_edge ||
           std::abs(shared.residual) > std::max(0.05, 1.5 / std::sqrt(static_cast<double>(read_)));
  }

  template <typename Value>
  [[nodiscard]] double median(Value value) const {
    std::vector<double> values;
    for (const std::uint32_t i : weighed_) {
      if (const std::optional<double> here = value(field_.slots[i])) values.push_back(*here);
    }
    if (values.empty()) return 0;
    const auto middle = values.begin() + static_cast<std::ptrdiff_t>(values.size() / 2);
    std::nth_element(values.begin(), middle, values.end());
    return *middle;
  }

  // Less the lead: what a reading is above (or below) the load and the contacts.
  [[nodiscard]] double beyond_load(const Slot& slot) const {
    const Spec& spec = table_.specs[slot.spec];
    return slot.seen.mean - table_.kinds[spec.kind].sound.mean - table_.contact_ohm.mid();
  }

  void offset() {
    const double off = median([&](const Slot& slot) -> std::optional<double> {
      return beyond_load(slot) - table_.specs[slot.spec].lead_ohm;
    });
    Allowance allowance;
    allowance.offset_mean = std::clamp(off, -kOffsetRoom, kOffsetRoom);
    allowance.offset_ohm = 0.3;
    Guess made = guess(allowance, Kind::tester_offset);
    const double size = std::abs(made.shared.offset) - std::abs(tester_.accuracy_ohm);
    // What a tester within its accuracy may have, the uncertainty of the estimate included, is no
    // finding: leads that were not zeroed add several times that.
    if (size <= kNoLead * std::abs(tester_.accuracy_ohm)) return;
    made.shift.offset_ohm = made.shared.offset;
    // Test leads add; only a null that was itself wrong takes away.
    const double unlikely = made.shared.offset < 0 ? 2 : 1;
    made.price = -std::log(priors_.field.offset) + unlikely * size / priors_.field.offset_scale_ohm;
    guesses_.push_back(std::move(made));
  }

  void wire() {
    const double factor = median([&](const Slot& slot) -> std::optional<double> {
      const double lead = table_.specs[slot.spec].lead_ohm;
      if (lead < 0.3) return std::nullopt;
      return beyond_load(slot) / lead;
    });
    if (factor < 0.1 || factor > 10 || std::abs(factor - 1) < 0.05) return;
    Guess made = guess({0, 0, factor}, Kind::wire_differs);
    made.shift.lead_factor = factor;
    made.price = -std::log(priors_.field.wire) + std::abs(std::log(factor));
    guesses_.push_back(std::move(made));
  }

  // One type instead of another, throughout.
  void igniters() {
    for (std::uint16_t t = 0; t < plan_.catalogue.igniters.size() && t < 16; ++t) {
      std::size_t others = 0;
      for (const LoadKind& kind : table_.kinds) {
        if (kind.load.igniter == t) others = std::max(others, kind.others.size());
      }
      for (std::size_t o = 0; o < std::min<std::size_t>(others, 8); ++o) instead(t, o, others);
    }
  }

  void instead(std::uint16_t igniter, std::size_t other, std::size_t others) {
    SpecTable changed = table_;
    for (LoadKind& kind : changed.kinds) {
      if (kind.load.igniter == igniter && other < kind.others.size()) {
        kind.sound = kind.others[other].shape;
      }
    }
    std::swap(changed, table_);
    Guess made = guess({}, Kind::wrong_igniter);
    std::swap(changed, table_);
    made.igniter = igniter;
    made.shift.doubted_igniter = igniter;
    made.price = -std::log(priors_.field.other_igniter / static_cast<double>(others));
    guesses_.push_back(std::move(made));
  }

  void weigh() {
    const double scale =
        static_cast<double>(read_) / static_cast<double>(std::max<std::size_t>(1, weighed_.size()));
    for (Guess& guess : guesses_) {
      const Mixture mixture(field_, guess.table, guess.shared, priors_, samples_, tester_);
      guess.cost = guess.price;
      for (const std::uint32_t i : weighed_) {
        guess.cost += scale * mixture.cost(field_.slots[i], field_.slots[i].spec);
      }
    }
    const double least = std::min_element(guesses_.begin(), guesses_.end(), cheaper)->cost;
    double sum = 0;
    for (Guess& guess : guesses_) sum += guess.share = std::exp(least - guess.cost);
    for (Guess& guess : guesses_) guess.share /= sum;
  }

  [[nodiscard]] std::vector<plan::PinId> pins(const Guess& guess) const {
    std::vector<plan::PinId> out;
    for (const plan::PlannedPin& pin : plan_.pins) {
      const bool of_type = pin.load.igniter == guess.igniter;
      if (guess.kind != Kind::wrong_igniter || of_type) out.push_back(pin.id);
    }
    return out;
  }

  Finding told(Guess& best) const {
    Finding finding;
    finding.kind = best.kind;
    finding.confidence = best.share;
    finding.pins = pins(best);
    finding.say = best.kind == Kind::wrong_igniter
                      ? "Compare the type on the igniters' labels with the plan: one type reads as "
                        "another on every pin; correct the plan or the igniters, then read again."
                      : sentence(best.kind, finding.pins, 0);
    for (std::size_t i = 0; i < samples_.size(); ++i) finding.readings.push_back(i);
    const Guess* second = nullptr;
    for (const Guess& guess : guesses_) {
      if (&guess == &best || guess.share <= kNamed) continue;
      if (second == nullptr || guess.share > second->share) second = &guess;
    }
    if (second != nullptr) {
      finding.runner_up = {second->kind, pins(*second), 0, second->share};
      finding.say = with_doubt(finding);
    }
    best.shift.doubt_all = best.share < kSure;
    return finding;
  }

  [[nodiscard]] bool silent() const {
    std::size_t open = 0;
    std::size_t read = 0;
    for (const Slot& slot : field_.slots) {
      if (slot.spec == kNothing || slot.seen.unread()) continue;
      ++read;
      open += slot.seen.open() ? 1 : 0;
    }
    return read >= kLeastSilent && 2 * open > read;
  }

  [[nodiscard]] Finding quiet() const {
    Finding finding;
    finding.confidence = 0.9;
    for (const Slot& slot : field_.slots) {
      if (slot.spec != kNothing && slot.seen.open()) finding.pins.push_back(slot.pin);
    }
    finding.say =
        "Check the tester's range, its leads and the common line, then read the field again: more "
        "than half of it is over range, which is one cause and not many.";
    return finding;
  }

  const plan::Plan& plan_;
  const tester::Model& tester_;
  const Field& field_;
  SpecTable table_;
  std::span<const Sample> samples_;
  const Priors& priors_;
  std::vector<std::uint32_t> weighed_;
  std::size_t read_ = 0;
  std::vector<Guess> guesses_;
};

}  // namespace

FieldWide judge_field(const plan::Plan& plan, const tester::Model& tester, const Field& field,
                      SpecTable table, std::span<const Sample> samples, const Priors& priors) {
  return Weigher(plan, tester, field, std::move(table), samples, priors).judge();
}

FieldWide nothing_wide(const plan::Plan& plan, const tester::Model& tester, const Field& field,
                       SpecTable table) {
  FieldWide out;
  out.table = std::move(table);
  out.shared = fit_shared(field, out.table, plan.catalogue, tester, {});
  return out;
}

}  // namespace walkdown::match
