// SPDX-License-Identifier: Apache-2.0
#include "checklist/cli/match_text.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <span>

#include "checklist/cli/pin_runs.h"

namespace walkdown::cli {
namespace {

std::string band(const match::PinVerdict& pin) {
  if (!pin.low || !pin.high) return "nothing planned";
  return fmt::format("planned {:.2f} to {:.2f} ohm", *pin.low, *pin.high);
}

std::string pin_line(const match::PinVerdict& pin) {
  const std::string value = pin.ohm         ? fmt::format("{:.2f} ohm", *pin.ohm)
                            : pin.overs > 0 ? std::string("over range")
                                            : std::string("-");
  return fmt::format("  {:<12} {:<9} {:>11}   {:<28} {} reading{}\n", plan::text(pin.pin),
                     match::text(pin.verdict), value, band(pin), pin.readings,
                     pin.readings == 1 ? "" : "s");
}

// The first of them is in the finding's sentence.
std::string alternatives(const match::Finding& finding) {
  if (finding.same.size() < 2) return "";
  return fmt::format("      and {} more that no reading tells from it; --json lists all\n",
                     finding.same.size() - 1);
}

}  // namespace

bool to_act_on(const match::Outcome& outcome) {
  return !outcome.findings.empty() ||
         std::any_of(outcome.pins.begin(), outcome.pins.end(), [](const match::PinVerdict& pin) {
           return pin.verdict != match::Verdict::fits;
         });
}

std::string verdict_counts(const match::Outcome& outcome) {
  std::array<std::size_t, match::kVerdicts> counts{};
  for (const auto& pin : outcome.pins) ++counts.at(static_cast<std::size_t>(pin.verdict));
  std::string out;
  for (std::size_t i = 0; i < counts.size(); ++i) {
    if (counts.at(i) == 0 && i != 0) continue;
    out += fmt::format("{}{} {}", out.empty() ? "" : ", ", counts.at(i),
                       match::text(static_cast<match::Verdict>(i)));
  }
  return out;
}

// Below it nobody would look at the tester: its last digit alone can make that much.
constexpr double kWorthSaying = 1.5;

std::string tester_text(const match::FieldFit& field) {
  if (field.jumps < kWorthSaying) return {};
  return fmt::format(
      "The tester jumps {:.1f} times as far as its profile says, which has been allowed for: small "
      "faults\nmay hide in it. Check its battery, leads and probes, and read the field again.\n",
      field.jumps);
}

std::string findings_text(const match::Outcome& outcome) {
  std::string out;
  std::size_t number = 0;
  for (const match::Finding& finding : outcome.findings) {
    out += fmt::format("  {:>2}  {}, {} %: {}\n", ++number, match::text(finding.kind),
                       match::stated_pct(finding.confidence), finding.say);
    if (!finding.pins.empty()) out += fmt::format("      {}\n", pin_runs(finding.pins));
    out += alternatives(finding);
  }
  return out;
}

std::string wrong_pins_text(const match::Outcome& outcome, std::size_t most) {
  std::string out;
  std::size_t seen = 0;
  for (const auto& pin : outcome.pins) {
    if (pin.verdict == match::Verdict::fits) continue;
    if (seen++ < most) out += pin_line(pin);
  }
  if (seen > most) out += fmt::format("  and {} more; --json lists all\n", seen - most);
  return out;
}

std::string rejected_text(std::span<const RejectedLine> rejected, std::size_t most) {
  std::string out;
  for (std::size_t i = 0; i < std::min(most, rejected.size()); ++i) {
    out += fmt::format("  line {}: {} ({})\n", rejected[i].line, json_string(rejected[i].text),
                       rejected[i].why);
  }
  if (rejected.size() > most) out += fmt::format("  and {} more\n", rejected.size() - most);
  return out;
}

std::string alike_text(const AlikeGroups& alike, std::size_t most) {
  std::string out;
  for (std::size_t i = 0; i < std::min(most, alike.size()); ++i) {
    out += fmt::format("  {:>3} pins: {}\n", alike[i].size(), pin_runs(alike[i]));
  }
  if (alike.size() > most)
    out += fmt::format("  and {} more groups; --json lists all\n", alike.size() - most);
  return out;
}

}  // namespace walkdown::cli
