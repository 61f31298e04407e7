// SPDX-License-Identifier: Apache-2.0
#include "tests/match/score.h"

#include <algorithm>
#include <set>

namespace walkdown::simulated {
namespace {

using match::Finding;
using match::Kind;
using plan::PinId;

const plan::Load* load_at(const Field& field, PinId pin) {
  const plan::PlannedPin* planned = field.plan.find(pin);
  return planned == nullptr ? nullptr : &planned->load;
}

void put(const Field& field, Carried& out, PinId pin, const plan::Load* load) {
  if (!same_load(load, load_at(field, pin))) out[pin] = load;
}

// The block moves along as one, and its first pins are left bare.
void slide(const Field& field, const Finding& finding, Carried& out) {
  std::map<PinId, const plan::Load*> now;
  const PinId rail = finding.pins.front();
  const int size = field.plan.layout.pins_on(rail.module, rail.rail);
  for (const PinId pin : finding.pins) now.try_emplace(pin, nullptr);
  for (const PinId pin : finding.pins) {
    const int to = pin.pin + finding.by;
    if (to < 1 || to > size) continue;
    now[{pin.module, pin.rail, static_cast<std::uint16_t>(to)}] = load_at(field, pin);
  }
  for (const auto& [pin, load] : now) put(field, out, pin, load);
}

// The pins from the one to the other change places in a ring.
Carried ring(const Field& field, PinId from, PinId to, int by) {
  Carried out;
  const int n = to.pin - from.pin + 1;
  for (int i = 0; i < n; ++i) {
    PinId pin = from;
    PinId source = from;
    pin.pin = static_cast<std::uint16_t>(from.pin + i);
    source.pin = static_cast<std::uint16_t>(from.pin + ((i - by) % n + n) % n);
    put(field, out, pin, load_at(field, source));
  }
  return out;
}

void exchange(const Field& field, PinId a, PinId b, bool whole, Carried& out) {
  const auto pair = [&](std::uint16_t rail_a, std::uint16_t rail_b) {
    const int n = std::min(field.plan.layout.pins_on(a.module, rail_a),
                           field.plan.layout.pins_on(b.module, rail_b));
    for (std::uint16_t p = 1; p <= n; ++p) {
      put(field, out, {a.module, rail_a, p}, load_at(field, {b.module, rail_b, p}));
      put(field, out, {b.module, rail_b, p}, load_at(field, {a.module, rail_a, p}));
    }
  };
  if (!whole) return pair(a.rail, b.rail);
  const auto rails = field.plan.layout.rails.at(a.module).size();
  for (std::uint16_t r = 1; r <= rails; ++r) pair(r, r);
}

// A finding names the planned pins of a shifted block; whether its ends meet, and whether free pins
// at its ends belong to it, it does not say: every such reading of it is one that a crew may take.
std::vector<Carried> readings_of(const Field& field, const Finding& finding) {
  std::vector<Carried> out{carried(field, finding)};
  if (finding.kind != Kind::shifted) return out;
  PinId from = finding.pins.front();
  PinId to = finding.pins.back();
  const int size = field.plan.layout.pins_on(from.module, from.rail);
  while (from.pin > 1 && load_at(field, {from.module, from.rail,
                                         static_cast<std::uint16_t>(from.pin - 1)}) == nullptr) {
    --from.pin;
  }
  while (to.pin < size &&
         load_at(field, {to.module, to.rail, static_cast<std::uint16_t>(to.pin + 1)}) == nullptr) {
    ++to.pin;
  }
  for (PinId a = from; a.pin <= finding.pins.front().pin; ++a.pin) {
    for (PinId z = finding.pins.back(); z.pin <= to.pin; ++z.pin) {
      out.push_back(ring(field, a, z, finding.by));
    }
  }
  return out;
}

bool same(const Carried& a, const Carried& b) {
  if (a.size() != b.size()) return false;
  return std::equal(a.begin(), a.end(), b.begin(), [](const auto& x, const auto& y) {
    return x.first == y.first && same_load(x.second, y.second);
  });
}

Carried carried(const Field& field, const Moved& moved) {
  Carried out;
  for (const auto& [pin, source] : moved.effect) put(field, out, pin, load_at(field, source));
  return out;
}

// Most of the changed pins are the same ones, with the same loads.
double overlap(const Carried& a, const Carried& b) {
  double common = 0;
  for (const auto& [pin, load] : a) {
    const auto at = b.find(pin);
    if (at != b.end() && same_load(load, at->second)) common += 1;
  }
  const double all = static_cast<double>(a.size() + b.size()) - common;
  return all > 0 ? common / all : 0;
}

const Moved* truth_of(const Field& field, const Finding& finding) {
  const std::vector<Carried> told = readings_of(field, finding);
  const Moved* best = nullptr;
  for (const Moved& moved : field.moves) {
    if (!moved.visible) continue;
    const Carried was = carried(field, moved);
    const bool named = moved.kind == finding.kind && moved.by == finding.by;
    const bool right = std::any_of(told.begin(), told.end(), [&](const Carried& one) {
      return same(was, one) || (named && overlap(was, one) > 0.75);
    });
    if (right) best = &moved;
  }
  return best;
}

bool fault_is(const Field& field, PinId pin, Kind kind) {
  return std::any_of(field.faults.begin(), field.faults.end(),
                     [&](const Fault& f) { return f.pin == pin && f.kind == kind; });
}

void tally(std::array<Ratio, 10>& table, double confidence, bool right) {
  const auto bin = static_cast<std::size_t>(std::clamp(confidence * 10, 0.0, 9.0));
  table[bin].all += 1;
  table[bin].hit += right ? 1 : 0;
}

void count_one_pin(const Field& field, const Finding& finding, Score& score) {
  const PinId pin = finding.pins.front();
  const bool right = fault_is(field, pin, finding.kind);
  score.first_right.all += 1;
  score.first_right.hit += right ? 1 : 0;
  score.precision[finding.kind].all += 1;
  score.precision[finding.kind].hit += right ? 1 : 0;
  tally(score.calibration, finding.confidence, right);
  for (const Fault& fault : field.faults) {
    if (fault.pin == pin) ++score.confusion[fault.kind][finding.kind];
  }
}

}  // namespace

Carried carried(const Field& field, const Finding& finding) {
  Carried out;
  if (finding.pins.empty()) return out;
  const PinId a = finding.pins.front();
  const PinId z = finding.pins.back();
  if (finding.kind == Kind::swapped) {
    put(field, out, a, load_at(field, z));
    put(field, out, z, load_at(field, a));
  } else if (finding.kind == Kind::shifted) {
    slide(field, finding, out);
  } else if (finding.kind == Kind::reversed) {
    const int n = field.plan.layout.pins_on(a.module, a.rail);
    for (std::uint16_t p = 1; p <= n; ++p) {
      put(field, out, {a.module, a.rail, p},
          load_at(field, {a.module, a.rail, static_cast<std::uint16_t>(n + 1 - p)}));
    }
  } else {
    exchange(field, a, z, finding.kind == Kind::modules_exchanged, out);
  }
  return out;
}

Flags flags(const match::Outcome& outcome) {
  Flags out;
  for (const match::PinVerdict& pin : outcome.pins) {
    out[pin.pin] = pin.verdict != match::Verdict::fits;
  }
  return out;
}

void count_flags(const Field& field, const Flags& flagged, Score& score) {
  std::set<PinId> faulty;
  for (const Fault& fault : field.faults) faulty.insert(fault.pin);
  const auto count = [&](PinId pin, bool flag) {
    const double hit = flag ? 1 : 0;
    Ratio& ratio = field.wrong.contains(pin) ? score.wrong_flagged : score.sound_flagged;
    ratio.hit += hit;
    ratio.all += 1;
    if (!faulty.contains(pin)) return;
    score.faulty_flagged.hit += hit;
    score.faulty_flagged.all += 1;
  };
  for (const plan::PlannedPin& pin : field.plan.pins) {
    const auto at = flagged.find(pin.id);
    count(pin.id, at != flagged.end() && at->second);
  }
  for (const auto& [pin, wrong] : field.wrong) {
    if (wrong && field.plan.find(pin) == nullptr) count(pin, flagged.contains(pin));
  }
}

void count_findings(const Field& field, const std::vector<Finding>& findings, Score& score) {
  std::set<const Moved*> found;
  for (const Finding& finding : findings) {
    if (!match::moves_loads(finding.kind)) {
      if (finding.pins.size() == 1) count_one_pin(field, finding, score);
      continue;
    }
    const Moved* truth = truth_of(field, finding);
    score.moves_right.all += 1;
    score.moves_right.hit += truth != nullptr ? 1 : 0;
    score.precision[finding.kind].all += 1;
    score.precision[finding.kind].hit += truth != nullptr ? 1 : 0;
    tally(score.calibration, finding.confidence, truth != nullptr);
    tally(score.calibration_moves, finding.confidence, truth != nullptr);
    if (truth == nullptr) continue;
    if (found.insert(truth).second && truth->kind == finding.kind) score.moves_named.hit += 1;
  }
  for (const Moved& moved : field.moves) {
    if (!moved.visible) continue;
    const double hit = found.contains(&moved) ? 1 : 0;
    score.moves_found.all += 1;
    score.moves_found.hit += hit;
    score.moves_named.all += 1;
    score.recall[moved.kind].all += 1;
    score.recall[moved.kind].hit += hit;
  }
  for (const Fault& fault : field.faults) {
    score.recall[fault.kind].all += 1;
    for (const Finding& finding : findings) {
      if (finding.pins.size() == 1 && finding.pins[0] == fault.pin && finding.kind == fault.kind) {
        score.recall[fault.kind].hit += 1;
      }
    }
  }
}

}  // namespace walkdown::simulated
