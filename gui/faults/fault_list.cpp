// SPDX-License-Identifier: Apache-2.0
#include "gui/faults/fault_list.h"

#include <QCoreApplication>
#include <algorithm>
#include <map>
#include <set>
#include <string>
#include <tuple>

#include "gui/look/words.h"

namespace walkdown::gui {
namespace {

struct Faults {
  Q_DECLARE_TR_FUNCTIONS(Faults)
};

constexpr std::size_t kLastDone = 20;

using Places = std::map<std::string, std::size_t>;  // position -> its turn

Places places_of(const plan::Plan& plan) {
  Places places;
  for (const auto& pin : plan.pins) places.try_emplace(pin.position, places.size());
  return places;
}

std::string place_of(const plan::Plan& plan, const std::vector<plan::PinId>& pins) {
  for (const plan::PinId pin : pins) {
    if (const auto* planned = plan.find(pin)) return planned->position;
  }
  return {};
}

std::vector<Fault> found(const plan::Plan& plan, const match::Outcome& outcome) {
  std::vector<Fault> out;
  for (std::size_t i = 0; i < outcome.findings.size(); ++i) {
    const match::Finding& finding = outcome.findings[i];
    Fault fault;
    fault.kind = words(finding.kind);
    fault.position = q(place_of(plan, finding.pins));
    fault.where = pins_words(finding.pins);
    fault.say = q(finding.say);
    fault.confidence_pct = match::stated_pct(finding.confidence);
    if (finding.runner_up) {
      fault.runner_up = QString("%1 %2 %")
                            .arg(words(finding.runner_up->kind))
                            .arg(match::stated_pct(finding.runner_up->share));
    }
    fault.pins = finding.pins;
    fault.finding = i;
    out.push_back(std::move(fault));
  }
  const Places places = places_of(plan);
  const auto turn = [&](const Fault& fault) {
    const auto place = places.find(fault.position.toStdString());
    return std::make_tuple(place == places.end() ? 0 : place->second + 1,
                           fault.pins.empty() ? plan::PinId{} : fault.pins.front());
  };
  std::stable_sort(out.begin(), out.end(),
                   [&](const Fault& a, const Fault& b) { return turn(a) < turn(b); });
  return out;
}

// Each re-hook with named pins: done once they all fit again.
std::vector<Fault> rehooked(const plan::Plan& plan, const match::Outcome& outcome,
                            const std::vector<RehookRow>& rehooks) {
  std::map<plan::PinId, match::Verdict> verdicts;
  for (const auto& pin : outcome.pins) verdicts[pin.pin] = pin.verdict;
  std::set<plan::PinId> told;  // a later re-hook of the same pins tells of them
  std::vector<Fault> waiting, done;
  for (auto it = rehooks.rbegin(); it != rehooks.rend(); ++it) {
    const auto& pins = it->rehook.pins;
    if (it->entered || pins.empty() || !told.insert(pins.front()).second) continue;
    bool fits = true, unread = false;
    for (const plan::PinId pin : pins) {
      if (plan.find(pin) == nullptr) continue;
      const auto found = verdicts.find(pin);
      const auto verdict = found == verdicts.end() ? match::Verdict::unread : found->second;
      fits = fits && verdict == match::Verdict::fits;
      unread = unread || verdict == match::Verdict::stale || verdict == match::Verdict::unread;
    }
    if (!fits && !unread) continue;  // read again and wrong: it stands among the findings
    Fault fault;
    fault.step = fits ? Fault::Step::done : Fault::Step::to_read;
    fault.kind = fits ? Faults::tr("fits now") : Faults::tr("re-hooked");
    fault.position = q(place_of(plan, pins));
    fault.where = pins_words(pins);
    fault.say = fits ? q(it->rehook.why) : Faults::tr("Read these pins again.");
    fault.pins = pins;
    (fits ? done : waiting).push_back(std::move(fault));
  }
  done.resize(std::min(done.size(), kLastDone));
  waiting.insert(waiting.end(), done.begin(), done.end());
  return waiting;
}

}  // namespace

QString pins_words(const std::vector<plan::PinId>& pins) {
  if (pins.empty()) return Faults::tr("the whole field");
  const QString first = q(plan::text(pins.front()));
  if (pins.size() == 1) return first;
  const plan::PinId a = pins.front();
  const plan::PinId b = pins.back();
  if (a.module == b.module && a.rail == b.rail &&
      b.pin - a.pin + 1 == static_cast<int>(pins.size())) {
    return Faults::tr("%1 to P%2").arg(first).arg(b.pin, 2, 10, QChar('0'));
  }
  if (pins.size() == 2) return Faults::tr("%1 and %2").arg(first, q(plan::text(b)));
  return Faults::tr("%1 and %n more", nullptr, static_cast<int>(pins.size()) - 1).arg(first);
}

std::vector<Fault> faults_of(const plan::Plan& plan, const match::Outcome& outcome,
                             const std::vector<RehookRow>& rehooks) {
  std::vector<Fault> out = found(plan, outcome);
  for (Fault& fault : rehooked(plan, outcome, rehooks)) out.push_back(std::move(fault));
  return out;
}

}  // namespace walkdown::gui
