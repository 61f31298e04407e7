// SPDX-License-Identifier: Apache-2.0
#include "gui/faults/fault_list.h"

#include <QCoreApplication>
#include <algorithm>
#include <map>
#include <set>
#include <string>
#include <utility>

#include "gui/look/sentences.h"
#include "gui/look/words.h"

namespace walkdown::gui {
namespace {

struct Faults {
  Q_DECLARE_TR_FUNCTIONS(Faults)
};

constexpr std::size_t kLastDone = 20;

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
    fault.kind = words(finding.kind, finding.by);
    fault.position = q(place_of(plan, finding.pins));
    fault.where = pins_words(finding.pins);
    fault.say = translated(finding.say);
    fault.confidence_pct = match::stated_pct(finding.confidence);
    if (finding.runner_up) {
      fault.runner_up = QString("%1 %2 %")
                            .arg(words(finding.runner_up->kind, finding.runner_up->by))
                            .arg(match::stated_pct(finding.runner_up->share));
    }
    fault.pins = finding.pins;
    fault.finding = i;
    out.push_back(std::move(fault));
  }
  const auto first = [](const Fault& fault) {
    return fault.pins.empty() ? plan::PinId{} : fault.pins.front();
  };
  std::stable_sort(out.begin(), out.end(),
                   [&](const Fault& a, const Fault& b) { return first(a) < first(b); });
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
    fault.say = fits ? translated(it->rehook.why) : Faults::tr("Read these pins again.");
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
  QString first = q(plan::text(pins.front()));
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

std::vector<std::string> positions_of(const std::vector<Fault>& faults) {
  std::vector<std::string> out;
  for (const Fault& fault : faults) {
    const std::string name = fault.position.toStdString();
    if (fault.step != Fault::Step::to_do || name.empty()) continue;
    if (std::find(out.begin(), out.end(), name) == out.end()) out.push_back(name);
  }
  return out;
}

std::vector<plan::PinId> touched_by(const plan::Plan& plan, const match::Finding& finding) {
  const bool modules = finding.kind == match::Kind::modules_exchanged;
  const bool rails = finding.kind == match::Kind::shifted ||
                     finding.kind == match::Kind::reversed ||
                     finding.kind == match::Kind::rails_exchanged;
  if (!modules && !rails) return finding.pins;
  std::set<std::pair<std::uint16_t, std::uint16_t>> touched;  // module, rail
  for (const plan::PinId pin : finding.pins) {
    const auto found = plan.layout.rails.find(pin.module);
    if (found == plan.layout.rails.end()) continue;
    const auto count = static_cast<std::uint16_t>(found->second.size());
    for (std::uint16_t rail = 1; rail <= count; ++rail) {
      if (modules || rail == pin.rail) touched.emplace(pin.module, rail);
    }
  }
  std::vector<plan::PinId> pins;
  for (const auto& [module, rail] : touched) {
    const std::uint16_t count = plan.layout.pins_on(module, rail);
    for (std::uint16_t pin = 1; pin <= count; ++pin) pins.push_back({module, rail, pin});
  }
  return pins;
}

int find_again(const std::vector<Fault>& faults, const std::vector<plan::PinId>& pins) {
  const auto same = std::find_if(faults.begin(), faults.end(),
                                 [&](const Fault& fault) { return fault.pins == pins; });
  if (same != faults.end()) return static_cast<int>(same - faults.begin());
  const auto shares = std::find_if(faults.begin(), faults.end(), [&](const Fault& fault) {
    return std::find_first_of(fault.pins.begin(), fault.pins.end(), pins.begin(), pins.end()) !=
           fault.pins.end();
  });
  return shares == faults.end() ? -1 : static_cast<int>(shares - faults.begin());
}

void put_in_order(std::vector<Fault>& faults, const std::vector<std::string>& positions) {
  std::map<QString, int> stops;
  for (const std::string& name : positions) {
    stops.emplace(q(name), static_cast<int>(stops.size()) + 1);
  }
  for (Fault& fault : faults) {
    const auto found = stops.find(fault.position);
    fault.stop = found == stops.end() ? 0 : found->second;
  }
  const auto turn = [&](const Fault& fault) {
    const int nowhere = fault.pins.empty() ? 0 : static_cast<int>(stops.size()) + 1;
    return std::make_pair(static_cast<int>(fault.step), fault.stop > 0 ? fault.stop : nowhere);
  };
  std::stable_sort(faults.begin(), faults.end(),
                   [&](const Fault& a, const Fault& b) { return turn(a) < turn(b); });
}

}  // namespace walkdown::gui
