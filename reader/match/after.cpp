// SPDX-License-Identifier: Apache-2.0
#include "reader/match/after.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <string_view>
#include <unordered_map>

#include "reader/plan/expected.h"

namespace walkdown::match {
namespace {

constexpr std::array<std::string_view, 7> kWords = {
    "did-not-fire", "some-left", "treat-as-live", "open", "open-series", "no-statement", "unread"};

// What remains live under each word; see the header.
constexpr double kUnfired = 0.92;
constexpr double kPartLeft = 0.9;
constexpr double kOpened = 0.0002;
constexpr double kResidue = 0.002;
constexpr double kFused = 0.01;
constexpr double kMisfires = 0.005;

struct Read {
  std::vector<double> numbers;
  unsigned overs = 0;

  [[nodiscard]] bool none() const { return numbers.empty() && overs == 0; }
  [[nodiscard]] std::optional<double> median() const {
    if (numbers.empty()) return std::nullopt;
    std::vector<double> sorted = numbers;
    std::sort(sorted.begin(), sorted.end());
    return (sorted[(sorted.size() - 1) / 2] + sorted[sorted.size() / 2]) / 2;
  }
};

using Sweep = std::unordered_map<plan::PinId, Read>;

Sweep sweep(std::span<const Sample> samples, const tester::Model& tester) {
  Sweep out;
  for (const Sample& sample : samples) {
    if (sample.over)
      ++out[sample.pin].overs;
    else if (std::isfinite(sample.ohm)) {
      out[sample.pin].numbers.push_back(sample.ohm - tester.zero_ohm);
    }
  }
  return out;
}

class Weigh {
 public:
  Weigh(const plan::Plan& plan, const tester::Model& tester) : plan_(plan), tester_(tester) {}

  [[nodiscard]] AfterPin pin(const plan::PlannedPin& planned, const Read& before,
                             const Read& after) const {
    AfterPin out;
    out.pin = planned.id;
    out.before_ohm = before.median();
    out.after_ohm = after.median();
    if (after.none())
      set(out, AfterWord::unread, 1);
    else if (after.numbers.empty())
      open(out, planned.load, before);
    else
      number(out, planned.load);
    out.say = say(out);
    return out;
  }

 private:
  static void set(AfterPin& out, AfterWord word, double p_live) {
    out.word = word;
    out.p_live = p_live;
  }

  // Reads over range. Only a pin that read its load before can have been opened by the show.
  void open(AfterPin& out, const plan::Load& load, const Read& before) const {
    const bool fitted = !before.numbers.empty() && before.overs == 0;
    if (!fitted) return set(out, AfterWord::no_statement, before.none() ? kMisfires : 0.5);
    if (load.count >= 2 && load.join == plan::Join::series) {
      return set(out, AfterWord::open_series, kMisfires * load.count);
    }
    set(out, AfterWord::open, kOpened);
  }

  void number(AfterPin& out, const plan::Load& load) const {
    const plan::Expected loop = plan::expected(load, plan_.catalogue);
    const double now = *out.after_ohm;
    const double before = out.before_ohm.value_or(loop.mean_ohm);
    // Without a sweep before the show the plan's own uncertainty stands in for it.
    const double unknown = out.before_ohm ? 0 : 2 * loop.u_ohm;
    const double tol = 3 * std::sqrt(2.0) * tester_.noise() +
                       plan_.catalogue.wiring.contact_ohm.hi + 0.02 * std::abs(before) + unknown;
    if (std::abs(now - before) <= tol) return set(out, AfterWord::did_not_fire, kUnfired);
    if (load.join == plan::Join::parallel && part_of_group(out, load, loop, now, before, tol))
      return;
    const double lead = loop.lead_ohm.hi + plan_.catalogue.wiring.contact_ohm.hi + tol;
    if (now <= lead) return set(out, AfterWord::treat_as_live, kFused);
    set(out, AfterWord::treat_as_live, now > before ? kResidue : 0.5);
  }

  // (R - lead) / (R0 - lead) near n / m: m of n igniters are left.
  static bool part_of_group(AfterPin& out, const plan::Load& load, const plan::Expected& loop,
                            double now, double before, double tol) {
    const double load_before = before - loop.lead_ohm.mid();
    if (load_before <= 0) return false;
    for (unsigned m = load.count - 1U; m >= 1; --m) {
      const double ratio = static_cast<double>(load.count) / m;
      const double expected = loop.lead_ohm.mid() + load_before * ratio;
      if (std::abs(now - expected) > tol * ratio) continue;
      set(out, AfterWord::some_left, kPartLeft);
      out.left = m;
      return true;
    }
    return false;
  }

  static std::string say(const AfterPin& p) {
    const std::string at =
        fmt::format("pin {} of rail {}, module {}", p.pin.pin, p.pin.rail, p.pin.module);
    switch (p.word) {
      case AfterWord::did_not_fire:
        return fmt::format("Possible misfire on {}: it reads its load as before.", at);
      case AfterWord::some_left:
        return fmt::format("Possible misfire on {}: about {} of its igniters still read.", at,
                           p.left);
      case AfterWord::treat_as_live:
        return fmt::format("Treat {} as live: it still reads, though not as before.", at);
      case AfterWord::open_series:
        return fmt::format(
            "Check each effect on {} by eye: its string is open, which says nothing "
            "of the single igniters.",
            at);
      case AfterWord::open:
        return fmt::format("Check the effect on {} by eye: an open circuit proves nothing.", at);
      case AfterWord::no_statement:
        return fmt::format("Check {} by eye: there is no reading from before to compare with.", at);
      default:
        return fmt::format("Treat {} as live and read it: it has no reading.", at);
    }
  }

  const plan::Plan& plan_;
  const tester::Model& tester_;
};

}  // namespace

std::string_view text(AfterWord word) { return kWords.at(static_cast<std::size_t>(word)); }

After after_show(const plan::Plan& plan, const tester::Model& tester,
                 std::span<const Sample> before, std::span<const Sample> after) {
  const Sweep was = sweep(before, tester);
  const Sweep is = sweep(after, tester);
  const Read none;
  const auto of = [&](const Sweep& held, plan::PinId pin) -> const Read& {
    const auto at = held.find(pin);
    return at == held.end() ? none : at->second;
  };
  const Weigh weigh(plan, tester);
  After out;
  for (const plan::PlannedPin& planned : plan.pins) {
    if (planned.load.count == 0) continue;
    out.pins.push_back(weigh.pin(planned, of(was, planned.id), of(is, planned.id)));
    if (out.pins.back().word != AfterWord::open) out.possible_misfires.push_back(planned.id);
  }
  return out;
}

}  // namespace walkdown::match
