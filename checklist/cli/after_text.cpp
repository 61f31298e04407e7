// SPDX-License-Identifier: Apache-2.0
#include "checklist/cli/after_text.h"

#include <fmt/format.h>

#include <map>
#include <vector>

#include "checklist/cli/match_json.h"
#include "checklist/cli/pin_runs.h"

namespace walkdown::cli {
namespace {

constexpr std::size_t kMostLines = 200;

std::string value(const std::optional<double>& ohm) {
  return ohm ? fmt::format("{:.4f}", *ohm) : "null";
}

std::string shown(const std::optional<double>& ohm) {
  return ohm ? fmt::format("{:.2f} ohm", *ohm) : "-";
}

// A pin by itself is worth a line only where somebody has to go to it for its own reason.
bool has_own_line(match::AfterWord word) {
  return word == match::AfterWord::did_not_fire || word == match::AfterWord::some_left ||
         word == match::AfterWord::treat_as_live;
}

}  // namespace

std::string after_text(const match::After& after) {
  std::string lines;
  std::size_t own = 0;
  std::map<match::AfterWord, std::vector<plan::PinId>> others;
  std::map<match::AfterWord, std::string> words;
  for (const auto& pin : after.pins) {
    if (has_own_line(pin.word)) {
      if (++own > kMostLines) continue;
      lines +=
          fmt::format("  {:<12} {:<14} before {:>10}, now {:>10}   {}\n", plan::text(pin.pin),
                      match::text(pin.word), shown(pin.before_ohm), shown(pin.after_ohm), pin.say);
    } else {
      others[pin.word].push_back(pin.pin);
      words.emplace(pin.word, pin.say);
    }
  }
  std::string out = fmt::format(
      "{} pins planned, {} of them possible misfires: for the lead\n"
      "Keep to the waiting time of the place before anyone goes near. An open pin proves nothing: "
      "look for what is left there.\n",
      after.pins.size(), after.possible_misfires.size());
  if (!lines.empty()) out += "\nReads, so it may be live\n" + lines;
  if (own > kMostLines) out += fmt::format("  and {} more; --json lists all\n", own - kMostLines);
  for (const auto& [word, pins] : others) {
    out += fmt::format("\n{}, {} pins: {}\n  {}\n", match::text(word), pins.size(), words.at(word),
                       pin_runs(pins, 40));
  }
  return out;
}

std::string after_json(const match::After& after) {
  std::string pins;
  for (const auto& pin : after.pins) {
    pins += fmt::format(
        R"({}{{"pin":"{}","word":"{}","before_ohm":{},"after_ohm":{},"left":{},"say":{}}})",
        pins.empty() ? "" : ",", plan::text(pin.pin), match::text(pin.word), value(pin.before_ohm),
        value(pin.after_ohm), pin.left, json_string(pin.say));
  }
  std::string misfires;
  for (const auto pin : after.possible_misfires) {
    misfires += fmt::format("{}\"{}\"", misfires.empty() ? "" : ",", plan::text(pin));
  }
  return fmt::format("{{\"pins\":[{}],\"possible_misfires\":[{}]}}\n", pins, misfires);
}

}  // namespace walkdown::cli
