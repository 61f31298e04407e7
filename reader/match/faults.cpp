// SPDX-License-Identifier: Apache-2.0
#include "reader/match/faults.h"

#include <algorithm>
#include <array>
#include <utility>

#include "reader/match/say.h"

namespace walkdown::match {
namespace {

constexpr double kNamed = 0.1;  // share from which a runner-up is told

constexpr std::array<std::pair<Cause, Kind>, 12> kKindOf = {{
    {Cause::open, Kind::open},
    {Cause::shorted, Kind::shorted},
    {Cause::missing, Kind::missing_igniter},
    {Cause::extra, Kind::extra_igniter},
    {Cause::poor_joint, Kind::poor_joint},
    {Cause::leak, Kind::leak},
    {Cause::intermittent, Kind::intermittent},
    {Cause::wrong_igniter, Kind::wrong_igniter},
    {Cause::wrong_lead, Kind::wrong_lead},
    {Cause::repeated, Kind::unknown},
    {Cause::unplanned, Kind::stray},
    {Cause::unknown, Kind::unknown},
}};

struct Share {
  Kind kind;
  double weight;
};

// The kinds by weight, `sound` left out: the pin is known not to fit.
std::vector<Share> ranked(const Posterior& posterior) {
  std::vector<Share> shares;
  shares.reserve(kKindOf.size());
  double sum = 0;
  for (const auto& [cause, kind] : kKindOf) {
    const double weight = posterior[static_cast<std::size_t>(cause)];
    if (weight <= 0) continue;
    sum += weight;
    const auto same = std::find_if(shares.begin(), shares.end(),
                                   [k = kind](const Share& s) { return s.kind == k; });
    if (same != shares.end())
      same->weight += weight;
    else
      shares.push_back({kind, weight});
  }
  for (Share& share : shares) share.weight /= sum;
  std::stable_sort(shares.begin(), shares.end(),
                   [](const Share& a, const Share& b) { return a.weight > b.weight; });
  return shares;
}

Finding about(const Field& field, const Slot& slot, const std::vector<Share>& shares) {
  Finding finding;
  finding.pins = {slot.pin};
  finding.kind = shares.empty() ? Kind::unknown : shares.front().kind;
  finding.confidence = shares.empty() ? 1 : shares.front().weight;
  finding.say = sentence(finding.kind, finding.pins, 0);
  const auto begin = field.order.begin() + slot.seen.first;
  finding.readings.assign(begin, begin + slot.seen.count());
  if (shares.size() > 1 && shares[1].weight > kNamed) {
    finding.runner_up = RunnerUp{shares[1].kind, finding.pins, 0, shares[1].weight};
  }
  finding.say = with_doubt(finding);
  return finding;
}

bool needs_finding(Verdict verdict) {
  return verdict != Verdict::fits && verdict != Verdict::unread && verdict != Verdict::stale;
}

}  // namespace

std::vector<Finding> faults(const Field& field, const Mixture& mixture, const State& state,
                            const Judged& judged, const std::vector<bool>& moved) {
  std::vector<Finding> out;
  for (std::size_t p = 0; p < judged.pins.size(); ++p) {
    if (!needs_finding(judged.pins[p].verdict)) continue;
    const std::uint32_t i = judged.slot[p];
    Posterior posterior = mixture.posterior(field.slots[i], state.on[i]);
    double& sound = posterior[static_cast<std::size_t>(Cause::sound)];
    // A load that was moved and is sound where it is now has been explained.
    if (moved[i] && sound >= 0.5) continue;
    // Doubted for what is wrong with the whole field, and for nothing of its own.
    if (judged.pins[p].verdict == Verdict::doubtful && sound >= 0.5) continue;
    sound = 0;
    // A load is planned there and the catalogue does not know it: a reading is no stray.
    const bool nameless =
        field.slots[i].spec == kNothing && judged.pins[p].verdict != Verdict::stray;
    if (nameless) posterior = {};
    out.push_back(about(field, field.slots[i], ranked(posterior)));
  }
  return out;
}

}  // namespace walkdown::match
