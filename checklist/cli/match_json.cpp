// SPDX-License-Identifier: Apache-2.0
// Written by hand and not through a tree: at 24,000 pins the tree costs more than the diagnosis.
#include "checklist/cli/match_json.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <iterator>
#include <nlohmann/json.hpp>

namespace walkdown::cli {
namespace {

using Out = std::back_insert_iterator<fmt::memory_buffer>;

// Four decimals are a hundredth of what a tester shows; JSON has no infinity.
void number(Out out, std::optional<double> value) {
  if (!value || !std::isfinite(*value)) {
    fmt::format_to(out, "null");
  } else {
    fmt::format_to(out, "{}", std::round(*value * 1e4) / 1e4);
  }
}

void pin_list(Out out, std::span<const plan::PinId> pins) {
  const char* comma = "";
  fmt::format_to(out, "[");
  for (const plan::PinId pin : pins) {
    fmt::format_to(out, "{}\"{}\"", comma, plan::text(pin));
    comma = ",";
  }
  fmt::format_to(out, "]");
}

void pin_object(Out out, const match::PinVerdict& pin) {
  fmt::format_to(out, R"({{"pin":"{}","verdict":"{}","ohm":)", plan::text(pin.pin),
                 match::text(pin.verdict));
  number(out, pin.ohm);
  fmt::format_to(out, R"(,"low":)");
  number(out, pin.low);
  fmt::format_to(out, R"(,"high":)");
  number(out, pin.high);
  fmt::format_to(out, R"(,"readings":{}}})", pin.readings);
}

void explanation(Out out, match::Kind kind, std::span<const plan::PinId> pins, int by) {
  fmt::format_to(out, R"({{"kind":"{}","pins":)", match::text(kind));
  pin_list(out, pins);
  if (kind == match::Kind::shifted) fmt::format_to(out, R"(,"by":{})", by);
}

// Certainty is never stated: no reading shows that much.
double stated(double confidence) { return std::min(0.9999, std::round(confidence * 1e4) / 1e4); }

void finding_object(Out out, const match::Finding& finding) {
  explanation(out, finding.kind, finding.pins, finding.by);
  fmt::format_to(out, R"(,"confidence":{},"say":{})", stated(finding.confidence),
                 json_string(finding.say));
  if (finding.runner_up) {
    fmt::format_to(out, R"(,"runner_up":)");
    explanation(out, finding.runner_up->kind, finding.runner_up->pins, finding.runner_up->by);
    fmt::format_to(out, R"(,"share":{}}})", std::round(finding.runner_up->share * 1e4) / 1e4);
  }
  const char* before = R"(,"same":[)";
  for (const match::Alternative& same : finding.same) {
    fmt::format_to(out, "{}", before);
    explanation(out, same.kind, same.pins, same.by);
    fmt::format_to(out, R"(,"look":{}}})", json_string(same.look));
    before = ",";
  }
  fmt::format_to(out, "{}}}", finding.same.empty() ? "" : "]");
}

void rejected_object(Out out, const RejectedLine& line) {
  fmt::format_to(out, R"({{"line":{},"text":{},"why":{}}})", line.line, json_string(line.text),
                 json_string(line.why));
}

template <typename Items, typename Write>
void list(Out out, const char* name, const Items& items, Write write) {
  fmt::format_to(out, R"("{}":[)", name);
  bool first = true;
  for (const auto& item : items) {
    if (!first) fmt::format_to(out, ",");
    first = false;
    write(out, item);
  }
  fmt::format_to(out, "]");
}

}  // namespace

std::string json_string(std::string_view text) {
  return nlohmann::json(text).dump(-1, ' ', false, nlohmann::json::error_handler_t::replace);
}

std::string json_list(std::span<const std::string> texts) {
  std::string out;
  for (const auto& text : texts) out += (out.empty() ? "" : ",") + json_string(text);
  return "[" + out + "]";
}

std::string match_json(const match::Outcome& outcome, const AlikeGroups& alike,
                       std::span<const RejectedLine> rejected, std::string_view more) {
  fmt::memory_buffer buffer;
  const Out out(buffer);
  fmt::format_to(out, "{{");
  list(out, "pins", outcome.pins, pin_object);
  fmt::format_to(out, ",");
  list(out, "findings", outcome.findings, finding_object);
  fmt::format_to(out, ",");
  list(out, "alike", alike, pin_list);
  fmt::format_to(out, ",");
  list(out, "rejected", rejected, rejected_object);
  fmt::format_to(out, "{}}}\n", more);
  return fmt::to_string(buffer);
}

}  // namespace walkdown::cli
