// SPDX-License-Identifier: Apache-2.0
#include "reader/match/say.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <cstdlib>
#include <string_view>

namespace walkdown::match {
namespace {

using plan::PinId;
using Pins = std::vector<PinId>;

std::string at(PinId pin) {
  return fmt::format("pin {} of rail {}, module {}", pin.pin, pin.rail, pin.module);
}

PinId first(const Pins& pins) { return pins.empty() ? PinId{} : pins.front(); }
PinId last(const Pins& pins) { return pins.empty() ? PinId{} : pins.back(); }

// The first pin that lies on another rail (or, `whole`, another module) than the first of all.
PinId other(const Pins& pins, bool whole) {
  for (const PinId pin : pins) {
    if (pin.module != pins.front().module) return pin;
    if (!whole && pin.rail != pins.front().rail) return pin;
  }
  return first(pins);
}

std::string_view one_pin(Kind kind) {
  switch (kind) {
    case Kind::open:
      return "Check the plug, the lead and the igniter on {}: the circuit is open; mend it, then "
             "read it again.";
    case Kind::shorted:
      return "Take the shunt off the lead on {}, or find where its two conductors touch; then "
             "read it again.";
    case Kind::missing_igniter:
      return "Count the igniters on {}: one fewer is connected than planned; add it, then read it "
             "again.";
    case Kind::extra_igniter:
      return "Count the igniters on {}: one more is connected than planned; take it off, then read "
             "it again.";
    case Kind::poor_joint:
      return "Make the splices and the plug on {} anew: a joint adds resistance; then read it "
             "again.";
    case Kind::leak:
      return "Dry and insulate the splices on {}: current leaks past the igniter; then read it "
             "again.";
    case Kind::intermittent:
      return "Re-seat the plug and tug each splice on {}: its readings jump; then read it several "
             "times.";
    case Kind::stray:
      return "See whose lead is on {}: nothing is planned there; move it to its own pin, then read "
             "both again.";
    case Kind::wrong_lead:
      return "Compare length and gauge of the lead on {} with the plan; change the one that is "
             "wrong, then read it again.";
    case Kind::wrong_igniter:
      return "Compare the type of igniter on {} with the plan; change it, then read it again.";
    default:
      return "Read {} again: its readings cannot be believed or explained; if they stay, trace its "
             "circuit by eye.";
  }
}

std::string_view one_thing(Kind kind) {
  switch (kind) {
    case Kind::open:
      return "an open circuit";
    case Kind::shorted:
      return "a short";
    case Kind::missing_igniter:
      return "one igniter too few";
    case Kind::extra_igniter:
      return "one igniter too many";
    case Kind::poor_joint:
      return "a poor joint";
    case Kind::leak:
      return "a leak";
    case Kind::intermittent:
      return "a loose contact";
    case Kind::stray:
      return "somebody else's lead";
    case Kind::wrong_lead:
      return "a lead of another length or gauge";
    case Kind::wrong_igniter:
      return "another type of igniter";
    case Kind::tester_offset:
      return "test leads that were not zeroed";
    case Kind::wire_differs:
      return "another wire throughout";
    default:
      return "something that no reading explains";
  }
}

std::string one_look(Kind kind, PinId pin) {
  switch (kind) {
    case Kind::shorted:
      return fmt::format("see whether the shunt of {} is still on", at(pin));
    case Kind::missing_igniter:
    case Kind::extra_igniter:
      return fmt::format("count the igniters on {}", at(pin));
    case Kind::poor_joint:
      return fmt::format("tug each splice on {} and read it again", at(pin));
    case Kind::leak:
      return fmt::format("see whether a splice on {} is wet", at(pin));
    case Kind::intermittent:
      return fmt::format("tug the plug and the splices on {} and read it again", at(pin));
    case Kind::wrong_lead:
      return fmt::format("compare the lead on {} with the plan", at(pin));
    case Kind::wrong_igniter:
      return fmt::format("read the label of the igniter on {}", at(pin));
    case Kind::tester_offset:
      return "touch the tester's probe tips together and read that";
    case Kind::wire_differs:
      return "read gauge and material on the reels";
    default:
      return fmt::format("unplug the lead on {} and look at it", at(pin));
  }
}

std::string shifted(const Pins& pins, int by) {
  const char* too = by > 0 ? "high" : "low";
  return fmt::format(
      "On module {}, rail {}, the leads planned for pins {} to {} sit {} pin{} too {}: move each "
      "back to its own pin, then read the rail again.",
      first(pins).module, first(pins).rail, first(pins).pin, last(pins).pin, std::abs(by),
      std::abs(by) == 1 ? "" : "s", too);
}

}  // namespace

std::string sentence(Kind kind, const Pins& pins, int by) {
  const PinId a = first(pins);
  switch (kind) {
    case Kind::swapped:
      return fmt::format("Exchange the leads on {} and {}; then read both again.", at(a),
                         at(last(pins)));
    case Kind::shifted:
      return shifted(pins, by);
    case Kind::reversed:
      return fmt::format("Unplug rail {} of module {} and turn it round; then read it again.",
                         a.rail, a.module);
    case Kind::rails_exchanged: {
      const PinId b = other(pins, false);
      return fmt::format(
          "Exchange the plugs of rail {} of module {} and rail {} of module {}; then read both "
          "again.",
          a.rail, a.module, b.rail, b.module);
    }
    case Kind::modules_exchanged:
      return fmt::format("Exchange modules {} and {} (or their addresses); then read both again.",
                         a.module, other(pins, true).module);
    case Kind::tester_offset:
      return "Touch the tester's probe tips together, zero it, and read the field again: every "
             "reading is off by the same ohms.";
    case Kind::wire_differs:
      return "Check gauge and material of the wire on the reels against the plan: all leads are "
             "off by one factor; correct the plan or the wire, then read again.";
    default:
      return fmt::format(fmt::runtime(one_pin(kind)), at(a));
  }
}

std::string deciding_look(Kind kind, const Pins& pins, int by) {
  const PinId a = first(pins);
  switch (kind) {
    case Kind::swapped:
      return fmt::format("read the tags of the leads on {} and {}", at(a), at(last(pins)));
    case Kind::shifted:
      return fmt::format(
          "pull the lead on {}: if its tag is that of the pin {} {}, the row is "
          "shifted",
          at(a), std::abs(by), by > 0 ? "below" : "above");
    case Kind::reversed:
      return fmt::format("see which way round rail {} of module {} is plugged", a.rail, a.module);
    case Kind::rails_exchanged:
      return fmt::format("read the tags on the plugs of rail {}, module {} and rail {}, module {}",
                         a.rail, a.module, other(pins, false).rail, other(pins, false).module);
    case Kind::modules_exchanged:
      return fmt::format("read the number plates and addresses of modules {} and {}", a.module,
                         other(pins, true).module);
    default:
      return one_look(kind, a);
  }
}

std::string as_thing(Kind kind, const Pins& pins, int by) {
  const PinId a = first(pins);
  switch (kind) {
    case Kind::swapped:
      return fmt::format("{} and {} exchanged", at(a), at(last(pins)));
    case Kind::shifted:
      return fmt::format("pins {} to {} of rail {}, module {} shifted by {:+d}", a.pin,
                         last(pins).pin, a.rail, a.module, by);
    case Kind::reversed:
      return fmt::format("rail {} of module {} turned round", a.rail, a.module);
    case Kind::rails_exchanged: {
      const PinId b = other(pins, false);
      return fmt::format("rail {} of module {} and rail {} of module {} exchanged", a.rail,
                         a.module, b.rail, b.module);
    }
    case Kind::modules_exchanged:
      return fmt::format("modules {} and {} exchanged", a.module, other(pins, true).module);
    default:
      return std::string(one_thing(kind));
  }
}

std::string with_doubt(const Finding& finding) {
  std::string say = finding.say;
  const auto add = [&](const std::string& doubt) {
    if (!say.empty() && say.back() == '.') say.pop_back();
    say += doubt;
  };
  if (!finding.same.empty()) {
    const Alternative& same = finding.same.front();
    add(fmt::format("; no reading tells this from {}: to decide, {}.",
                    as_thing(same.kind, same.pins, same.by), same.look));
  }
  if (finding.runner_up) {
    const RunnerUp& other = *finding.runner_up;
    add(fmt::format("; or it is, at {} %, {}: to decide, {}.", stated_pct(other.share),
                    as_thing(other.kind, other.pins, other.by),
                    deciding_look(other.kind, other.pins, other.by)));
  }
  return say;
}

int stated_pct(double confidence) {
  return std::clamp(static_cast<int>(std::lround(confidence * 100)), 1, 99);
}

}  // namespace walkdown::match
