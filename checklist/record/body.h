// SPDX-License-Identifier: Apache-2.0
// The entries that every part knows, made and read. FORMAT.md lists their members. Other kinds come
// from the day; the record keeps any kind.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "checklist/record/signoff.h"
#include "checklist/record/writer.h"

namespace walkdown::record::body {

// One value of one pin. `pin` as plan::text() writes it; `micro_ohm` nothing: above the tester's
// range. `raw` is the line as received, without its line end, and may be any bytes.
struct Reading {
  std::string pin;
  std::optional<std::int64_t> micro_ohm;
  std::string raw;

  friend bool operator==(const Reading&, const Reading&) = default;
};
// {"pin":"M01/R1/P05","raw":"...","uohm":2310000}, {"over":true,"pin":...,"raw":...}; instead of
// `raw` there is `raw_b64` where the bytes are no printable UTF-8.
[[nodiscard]] Draft reading(const Reading& reading);
// Without building a tree: quick for a million of them. Nothing where the body is no such thing.
[[nodiscard]] std::optional<Reading> reading_of(std::string_view body);

// A line that is no reading: {"raw":...,"why":...}.
[[nodiscard]] Draft rejected(std::string_view raw, const std::string& why);

// From here on earlier readings of these pins do not count: {"by":...,"pins":[...]}.
[[nodiscard]] Draft rehook(const std::vector<std::string>& pins, const std::string& by);
// The same for a whole rail, or (rail 0) a module: {"by":...,"module":7,"rail":2}.
[[nodiscard]] Draft rehook_rail(int module, int rail, const std::string& by);

// What was claimed at this moment, to be derived again from the readings before it. `verdicts` maps
// verdict words to counts; `findings` is a list as the program printed it, without floating-point
// numbers: confidence in thousandths.
[[nodiscard]] Draft claim(const nlohmann::json& verdicts, const nlohmann::json& findings);

// A person, or (role `station`) another station, or (role `witness`) somebody who cosigns.
[[nodiscard]] Draft enrol(const Person& person);

// A sign-off that stands for itself; others are members `signoff` or `signoffs` of another kind's
// body. `note` is what make_sign_off() gave.
[[nodiscard]] Draft sign_off(const std::string& note);

}  // namespace walkdown::record::body
