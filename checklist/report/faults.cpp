// SPDX-License-Identifier: Apache-2.0
#include "checklist/report/faults.h"

#include <fmt/format.h>

#include <algorithm>
#include <utility>

#include "checklist/day/body.h"

namespace walkdown::report {
namespace {

using day::text_in;
using day::whole_in;
using nlohmann::json;

std::vector<plan::PinId> pins_of(const json& finding) {
  std::vector<plan::PinId> pins;
  for (const std::string& text : day::texts_in(finding, "pins")) {
    if (const auto pin = plan::parse_pin(text)) pins.push_back(*pin);
  }
  return pins;
}

// The last reading of a pin that came before entry n.
const ReadAt* last_before(const Collector& collected, plan::PinId pin, std::uint64_t n) {
  const auto found = collected.readings().find(pin);
  if (found == collected.readings().end()) return nullptr;
  const auto behind =
      std::lower_bound(found->second.begin(), found->second.end(), n,
                       [](const ReadAt& read, std::uint64_t at) { return read.n < at; });
  return behind == found->second.begin() ? nullptr : &*(behind - 1);
}

std::string value(const ReadAt* read) {
  if (read == nullptr) return "not read";
  return read->ohm ? fmt::format("{:.2f} ohm", *read->ohm) : std::string("over range");
}

PinStory story(const Collector& collected, const Model& model, const Fault& fault,
               plan::PinId pin) {
  PinStory told;
  told.pin = pin;
  const ReadAt* before = last_before(collected, pin, fault.found_n);
  const std::uint64_t end = fault.mended_n.value_or(model.check.entries);
  const ReadAt* after = last_before(collected, pin, end);
  told.before = value(before);
  told.before_n = before == nullptr ? 0 : before->n;
  if (after != nullptr && after != before) {
    told.after = value(after);
    told.after_n = after->n;
  }
  const auto& pins = model.outcome.pins;
  const auto found = std::lower_bound(
      pins.begin(), pins.end(), pin,
      [](const match::PinVerdict& each, plan::PinId wanted) { return each.pin < wanted; });
  if (found != pins.end() && found->pin == pin) {
    told.low_ohm = found->low;
    told.high_ohm = found->high;
    told.verdict = match::text(found->verdict);
  }
  return told;
}

Fault begun(const json& finding, const ClaimAt& claim) {
  Fault fault;
  fault.kind = text_in(finding, "kind");
  fault.pins = pins_of(finding);
  fault.say = text_in(finding, "say");
  fault.confidence_pct = whole_in(finding, "confidence_pct").value_or(0);
  fault.found_n = claim.n;
  fault.found_at_ms = claim.at_ms;
  return fault;
}

bool same(const Fault& fault, const json& finding) {
  return fault.kind == text_in(finding, "kind") && fault.pins == pins_of(finding);
}

void take_claim(const ClaimAt& claim, std::vector<Fault>& faults) {
  const json none = json::array();
  const auto found = claim.body.find("findings");
  const json& findings = found != claim.body.end() && found->is_array() ? *found : none;
  for (Fault& fault : faults) {
    const bool still = std::any_of(findings.begin(), findings.end(),
                                   [&](const json& each) { return same(fault, each); });
    if (fault.mended_n || still) continue;
    fault.mended_n = claim.n;
    fault.mended_at_ms = claim.at_ms;
  }
  for (const json& each : findings) {
    const bool known = std::any_of(faults.begin(), faults.end(), [&](const Fault& fault) {
      return !fault.mended_n && same(fault, each);
    });
    if (!known) faults.push_back(begun(each, claim));
  }
}

Sweep sweep_of(const ClaimAt& claim) {
  Sweep sweep{claim.n, claim.at_ms, {}, 0};
  if (const auto counts = claim.body.find("verdicts"); counts != claim.body.end()) {
    for (const auto& [word, count] : counts->items()) {
      sweep.verdicts.emplace_back(word, count.is_number_integer() ? count.get<std::int64_t>() : 0);
    }
  }
  if (const auto kinds = claim.body.find("kinds"); kinds != claim.body.end()) {
    for (const auto& [word, count] : kinds->items()) {
      sweep.findings += count.is_number_integer() ? count.get<std::int64_t>() : 0;
    }
  }
  return sweep;
}

void add_rehooks(const Collector& collected, const plan::Plan& plan, Fault& fault) {
  for (const RehookAt& rehook : collected.rehooks()) {
    if (rehook.who.n < fault.found_n || (fault.mended_n && rehook.who.n > *fault.mended_n))
      continue;
    const bool touches = std::any_of(fault.pins.begin(), fault.pins.end(), [&](plan::PinId pin) {
      const plan::PlannedPin* planned = plan.find(pin);
      return rehook.what.covers(pin, planned == nullptr ? "" : planned->position);
    });
    if (touches) fault.rehooked.push_back(rehook.who);
  }
}

}  // namespace

void tell_faults(const Collector& collected, Model& model) {
  for (const ClaimAt& claim : collected.claims()) {
    model.sweeps.push_back(sweep_of(claim));
    take_claim(claim, model.faults);
  }
  for (Fault& fault : model.faults) {
    add_rehooks(collected, model.prepared.planned.plan, fault);
    const std::size_t told = std::min(kMostPins, fault.pins.size());
    for (std::size_t i = 0; i < told; ++i) {
      fault.readings.push_back(story(collected, model, fault, fault.pins[i]));
    }
  }
}

}  // namespace walkdown::report
