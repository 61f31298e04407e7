// SPDX-License-Identifier: Apache-2.0
#include "reader/match/moves.h"

#include <algorithm>

#include "reader/match/say.h"

namespace walkdown::match {
namespace {

constexpr double kNamed = 0.1;        // share from which a runner-up is told
constexpr std::size_t kMostSame = 4;  // alternatives told at most

std::vector<plan::PinId> pins(const Field& field, const Event& event) {
  std::vector<plan::PinId> out;
  out.reserve(event.members.size());
  for (const std::uint32_t slot : event.members) out.push_back(field.slots[slot].pin);
  return out;
}

int rank(Kind kind) {
  switch (kind) {
    case Kind::modules_exchanged:
      return 0;
    case Kind::rails_exchanged:
      return 1;
    case Kind::reversed:
      return 2;
    case Kind::shifted:
      return 3;
    default:
      return 4;
  }
}

Finding told(const Field& field, const Explained& mistake) {
  Finding finding;
  finding.kind = mistake.event.kind;
  finding.by = mistake.event.by;
  finding.pins = pins(field, mistake.event);
  finding.confidence = mistake.confidence;
  finding.say = sentence(finding.kind, finding.pins, finding.by);
  for (const Effect& effect : mistake.event.effects) {
    const Seen& seen = field.slots[effect.slot].seen;
    const auto begin = field.order.begin() + seen.first;
    finding.readings.insert(finding.readings.end(), begin, begin + seen.count());
  }
  std::sort(finding.readings.begin(), finding.readings.end());
  if (!mistake.rivals.empty() && mistake.shares.front() > kNamed) {
    const Event& rival = mistake.rivals.front();
    finding.runner_up = RunnerUp{rival.kind, pins(field, rival), rival.by, mistake.shares.front()};
  }
  for (std::size_t i = 0; i < mistake.same.size() && i < kMostSame; ++i) {
    const Event& same = mistake.same[i];
    std::vector<plan::PinId> listed = pins(field, same);
    std::string look = deciding_look(same.kind, listed, same.by);
    finding.same.push_back({same.kind, std::move(listed), same.by, std::move(look)});
  }
  finding.say = with_doubt(finding);
  return finding;
}

}  // namespace

std::vector<Finding> moves(const Field& field, const Explanation& explanation) {
  std::vector<Finding> out;
  out.reserve(explanation.mistakes.size());
  for (const Explained& mistake : explanation.mistakes) out.push_back(told(field, mistake));
  std::stable_sort(out.begin(), out.end(), [](const Finding& a, const Finding& b) {
    return rank(a.kind) != rank(b.kind) ? rank(a.kind) < rank(b.kind) : a.pins < b.pins;
  });
  return out;
}

}  // namespace walkdown::match
