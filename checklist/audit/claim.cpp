// SPDX-License-Identifier: Apache-2.0
#include "checklist/audit/claim.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <cmath>

namespace walkdown::audit {
namespace {

nlohmann::json finding_json(const match::Finding& finding) {
  nlohmann::json json = {{"kind", match::text(finding.kind)},
                         {"confidence_pct", match::stated_pct(finding.confidence)},
                         {"say", finding.say}};
  json["pins"] = nlohmann::json::array();
  for (const plan::PinId pin : finding.pins) json["pins"].push_back(plan::text(pin));
  if (finding.by != 0) json["by"] = finding.by;
  return json;
}

nlohmann::json verdict_counts(const match::Outcome& outcome) {
  std::array<std::uint64_t, match::kVerdicts> counts{};
  for (const auto& pin : outcome.pins) ++counts.at(static_cast<std::size_t>(pin.verdict));
  nlohmann::json json = nlohmann::json::object();
  for (std::size_t i = 0; i < counts.size(); ++i) {
    if (counts.at(i) > 0) json[std::string(text(static_cast<match::Verdict>(i)))] = counts.at(i);
  }
  return json;
}

nlohmann::json kind_counts(const match::Outcome& outcome) {
  std::array<std::uint64_t, match::kKinds> counts{};
  for (const auto& finding : outcome.findings) ++counts.at(static_cast<std::size_t>(finding.kind));
  nlohmann::json json = nlohmann::json::object();
  for (std::size_t i = 0; i < counts.size(); ++i) {
    if (counts.at(i) > 0) json[std::string(text(static_cast<match::Kind>(i)))] = counts.at(i);
  }
  return json;
}

// The part of a written finding that must be derived again.
nlohmann::json bare(nlohmann::json finding) {
  finding.erase("say");
  finding.erase("confidence_pct");
  return finding;
}

}  // namespace

nlohmann::json claim_body(const match::Outcome& outcome) {
  nlohmann::json body = {{"verdicts", verdict_counts(outcome)}, {"kinds", kind_counts(outcome)}};
  body["findings"] = nlohmann::json::array();
  const std::size_t written = std::min(kFindingsWritten, outcome.findings.size());
  for (std::size_t i = 0; i < written; ++i) {
    body["findings"].push_back(finding_json(outcome.findings[i]));
  }
  return body;
}

std::optional<std::string> check_claim(const nlohmann::json& body, const match::Outcome& derived) {
  const nlohmann::json again = claim_body(derived);
  for (const char* part : {"verdicts", "kinds"}) {
    if (!body.contains(part) || body[part] != again[part]) {
      return fmt::format("The claim's {} are {}, the readings before it say {}.", part,
                         body.contains(part) ? body[part].dump() : "missing", again[part].dump());
    }
  }
  if (!body.contains("findings") || body["findings"].size() != again["findings"].size()) {
    return "The claim does not list the findings that the readings before it say.";
  }
  for (std::size_t i = 0; i < again["findings"].size(); ++i) {
    if (bare(body["findings"][i]) != bare(again["findings"][i])) {
      return fmt::format("The claim's finding {} is not what the readings before it say.", i + 1);
    }
  }
  return std::nullopt;
}

}  // namespace walkdown::audit
