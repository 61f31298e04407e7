// SPDX-License-Identifier: Apache-2.0
#include "reader/match/coverage_text.h"

#include <fmt/format.h>

#include <cmath>

namespace walkdown::match {
namespace {

// With a comma at every third digit: a million modules' pairs are hard to read otherwise.
std::string grouped(double count) {
  const std::string digits = fmt::format("{:.0f}", count);
  std::string out;
  for (std::size_t i = 0; i < digits.size(); ++i) {
    if (i > 0 && (digits.size() - i) % 3 == 0) out += ',';
    out += digits[i];
  }
  return out;
}

// Whole per cent that is never all or nothing unless it is: a sample of which all show is not all.
std::string share(double part, double whole, bool sampled, double (*to_whole)(double)) {
  constexpr double kRounding = 1e-9;  // 29 of 100 is 29 %, whatever 0.29 * 100 is
  if (whole <= 0) return "0 %";
  const double percent = 100 * part / whole;
  if (percent > 99 && (sampled || part < whole)) return "over 99 %";
  if (percent < 1 && part > 0) return "under 1 %";
  const double near = std::round(percent);
  return fmt::format("{:.0f} %", std::abs(near - percent) < kRounding ? near : to_whole(percent));
}

// What shows is rounded down, what cannot show up: never better than it is.
std::string shown(double part, double whole, bool sampled = false) {
  return share(part, whole, sampled, std::floor);
}
std::string hidden(double part, double whole, bool sampled) {
  return share(part, whole, sampled, std::ceil);
}

}  // namespace

std::vector<std::string> coverage_lines(const Coverage& coverage,
                                        const std::vector<std::vector<plan::PinId>>& alike) {
  std::vector<std::string> out;
  for (const KindCoverage& kind : coverage.kinds) {
    if (kind.possible == 0) continue;
    const auto all = static_cast<double>(kind.possible);
    const bool sampled = kind.weighed < kind.possible;
    std::string line =
        fmt::format("Of {} possible mistakes of the kind '{}' this test would show {}",
                    grouped(all), kind.what, shown(kind.shown, all, sampled));
    if (kind.invisible > 0)
      line += fmt::format("; {} no test can show", hidden(kind.invisible, all, sampled));
    if (sampled) line += fmt::format(" (from {} of them)", kind.weighed);
    out.push_back(line + ".");
  }
  std::size_t pins = 0;
  for (const auto& group : alike) pins += group.size();
  out.push_back(alike.empty()
                    ? std::string("No two loads are electrically alike.")
                    : fmt::format("{} group{} of pins, {} pins in all, look{} alike to any meter: "
                                  "check their tags by eye.",
                                  alike.size(), alike.size() == 1 ? "" : "s", pins,
                                  alike.size() == 1 ? "s" : ""));
  return out;
}

std::vector<std::string> load_lines(const Coverage& coverage, std::size_t most) {
  std::vector<std::string> out;
  for (const LoadCoverage& load : coverage.loads) {
    if (out.size() == most) break;
    std::string line =
        fmt::format("{} pin{} like {}: a joint shows from {:.2g} ohm on", load.pins,
                    load.pins == 1 ? "" : "s", plan::text(load.example), load.least_joint_ohm);
    line += load.largest_leak_ohm > 0
                ? fmt::format(", a leak up to {:.2g} ohm", load.largest_leak_ohm)
                : std::string(", no leak shows");
    if (load.missing_shown < 0.995) {
      line += fmt::format(", a missing igniter in {} of cases", shown(load.missing_shown, 1));
    }
    out.push_back(line + ".");
  }
  return out;
}

std::string fits_only(const Coverage& coverage) {
  double possible = 0;
  double seen = 0;
  bool sampled = false;
  for (const KindCoverage& kind : coverage.kinds) {
    if (kind.kind != Kind::swapped || kind.possible == 0) continue;
    possible = static_cast<double>(kind.possible);
    seen = kind.shown;
    sampled = kind.weighed < kind.possible;
    break;
  }
  return fmt::format(
      "'Fits' means that the resistance is what was planned, not that the right load is on the "
      "pin: "
      "of neighbours that changed places this test would show {}.",
      shown(seen, possible, sampled));
}

std::string runs(const std::vector<plan::PinId>& pins) {
  std::string out;
  for (std::size_t i = 0; i < pins.size();) {
    std::size_t end = i + 1;
    while (end < pins.size() && pins[end].module == pins[i].module &&
           pins[end].rail == pins[i].rail && pins[end].pin == pins[end - 1].pin + 1) {
      ++end;
    }
    if (!out.empty()) out += ", ";
    out += plan::text(pins[i]);
    if (end - i > 1) out += fmt::format("{} P{:02}", end - i == 2 ? "," : " to", pins[end - 1].pin);
    i = end;
  }
  return out;
}

}  // namespace walkdown::match
