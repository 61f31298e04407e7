// SPDX-License-Identifier: Apache-2.0
#include "checklist/cli/current_text.h"

#include <fmt/format.h>

#include <algorithm>
#include <utility>

#include "checklist/cli/match_json.h"

namespace walkdown::cli {
namespace {

using match::FiringCurrent;
using match::FiringWord;

void count(FiringCurrent&& loop, bool swept, Currents& out) {
  if (loop.word == FiringWord::cannot_be_told) {
    // The same reason on thousands of pins is one sentence.
    if (out.cannot_be_told++ == 0) out.say = std::move(loop.say);
    return;
  }
  if (loop.word == FiringWord::ok) {
    // A plan is no measurement: an open or unread loop is not one that gets its current.
    ++(swept && !loop.measured ? out.unmeasured : out.ok);
    return;
  }
  ++(loop.word == FiringWord::thin ? out.thin : out.starved);
  out.short_of.push_back(std::move(loop));
}

std::string sentence(const Currents& currents, const std::string& why) {
  const std::size_t all = currents.ok + currents.thin + currents.starved + currents.unmeasured +
                          currents.cannot_be_told;
  if (all == 0) return "No load is planned that a current could be judged for.";
  if (currents.cannot_be_told == all) return why;
  std::string say =
      fmt::format("Of {} loops, with the all-fire current and its factor: {}", all, currents.ok);
  const std::pair<std::size_t, const char*> rest[] = {
      {currents.thin, "with the current but not its factor"},
      {currents.starved, "without the current"},
      {currents.unmeasured, "not measured, and so not judged"},
      {currents.cannot_be_told, "without the figures to judge by"}};
  for (const auto& [n, what] : rest) {
    if (n > 0) say += fmt::format("; {}: {}", what, n);
  }
  return say + ".";
}

std::string loop_json(const FiringCurrent& loop) {
  return fmt::format(
      R"({{"pin":"{}","word":"{}","least_a":{:.4f},"margin":{:.4f},"loop_ohm":{:.4f},)"
      R"("measured":{},"say":{}}})",
      plan::text(loop.pin), match::text(loop.word), loop.least_a, loop.margin, loop.loop_ohm,
      loop.measured, json_string(loop.say));
}

}  // namespace

Currents currents_of(const plan::Plan& plan, const match::Outcome* outcome) {
  Currents out;
  if (!plan.catalogue.supply) {
    out.cannot_be_told = static_cast<std::size_t>(
        std::count_if(plan.pins.begin(), plan.pins.end(),
                      [](const plan::PlannedPin& pin) { return pin.load.count > 0; }));
    out.say = "The firing current cannot be judged: the igniter file has no [supply].";
    return out;
  }
  const auto loops =
      outcome == nullptr ? std::vector<match::MeasuredLoop>{} : match::measured_loops(*outcome);
  for (FiringCurrent& loop : match::firing_currents(plan, loops)) {
    count(std::move(loop), outcome != nullptr, out);
  }
  out.say = sentence(out, out.say);
  return out;
}

std::string currents_text(const Currents& currents, std::size_t most) {
  std::string out = currents.say + "\n";
  for (std::size_t i = 0; i < std::min(most, currents.short_of.size()); ++i) {
    const FiringCurrent& loop = currents.short_of[i];
    out += fmt::format("  {}: {}\n", match::text(loop.word), loop.say);
  }
  if (currents.short_of.size() > most) {
    out += fmt::format("  and {} more; --json lists all\n", currents.short_of.size() - most);
  }
  return out;
}

std::string currents_json(const Currents& currents) {
  std::string pins;
  for (const FiringCurrent& loop : currents.short_of) {
    pins += (pins.empty() ? "" : ",") + loop_json(loop);
  }
  return fmt::format(
      R"({{"say":{},"ok":{},"thin":{},"short":{},"unmeasured":{},"cannot_be_told":{},"pins":[{}]}})",
      json_string(currents.say), currents.ok, currents.thin, currents.starved, currents.unmeasured,
      currents.cannot_be_told, pins);
}

}  // namespace walkdown::cli
