// SPDX-License-Identifier: Apache-2.0
#include "reader/match/test_current.h"

#include <fmt/format.h>

#include <vector>

namespace walkdown::match {
namespace {

std::vector<bool> used_igniters(const plan::Plan& plan) {
  std::vector<bool> used(plan.catalogue.igniters.size());
  for (const plan::PlannedPin& pin : plan.pins) {
    if (pin.load.count > 0) used.at(pin.load.igniter) = true;
  }
  return used;
}

void lower(TestCurrent& out, double limit_a, std::string rule) {
  if (limit_a >= out.limit_a) return;
  out.limit_a = limit_a;
  out.rule = std::move(rule);
}

// The first igniter whose sheet gives no no-fire current; empty where all do.
std::string apply_limits(TestCurrent& out, const plan::Plan& plan, double share) {
  std::string missing;
  const std::vector<bool> used = used_igniters(plan);
  for (std::size_t i = 0; i < used.size(); ++i) {
    if (!used[i]) continue;
    const plan::Igniter& igniter = plan.catalogue.igniters[i];
    if (igniter.test_max_a) {
      lower(out, *igniter.test_max_a, "the maker's test_max_a of " + igniter.name);
    }
    if (igniter.no_fire_a) {
      lower(out, share * *igniter.no_fire_a,
            fmt::format("{:.0f} % of the no-fire current of {}", share * 100, igniter.name));
    } else if (missing.empty()) {
      missing = igniter.name;
    }
  }
  return missing;
}

}  // namespace

TestCurrent judge_test_current(const plan::Plan& plan, const tester::Model& tester,
                               double no_fire_share) {
  TestCurrent out;
  out.rule = "50 mA, WAC 212-17-317(6)";
  const std::string missing = apply_limits(out, plan, no_fire_share);
  const std::string limit = fmt::format("{:.1f} mA ({})", out.limit_a * 1000, out.rule);
  if (!tester.test_current_a) {
    out.say =
        "The tester's current cannot be judged: its profile gives no test_current_a; look at "
        "the meter's and the igniters' data sheets before you connect it.";
  } else if (*tester.test_current_a > out.limit_a) {
    out.word = CurrentWord::above;
    out.say = fmt::format("The tester drives {:.1f} mA into a short, the limit is {}.",
                          *tester.test_current_a * 1000, limit);
  } else if (!missing.empty()) {
    out.say = fmt::format(
        "The tester's current cannot be judged: {} has no no_fire_a; type it in "
        "from the maker's data sheet before you connect the tester.",
        missing);
  } else {
    out.word = CurrentWord::within;
    out.say = fmt::format("The tester drives {:.1f} mA into a short, not above the limit of {}.",
                          *tester.test_current_a * 1000, limit);
  }
  return out;
}

Done may_read(const plan::Plan& plan, const tester::Model& tester, double no_fire_share) {
  const TestCurrent judged = judge_test_current(plan, tester, no_fire_share);
  if (judged.word != CurrentWord::above) return done();
  return Error{Code::refused, "reading with this tester is refused", judged.say,
               "use a tester that stays below it"};
}

}  // namespace walkdown::match
