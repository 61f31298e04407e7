// SPDX-License-Identifier: Apache-2.0
// What an answer says, and whether that lets its item hold. Internal to this folder.
#pragma once

#include <nlohmann/json.hpp>
#include <string>

#include "checklist/day/standing.h"
#include "reader/result.h"

namespace walkdown::day {

struct Value {
  std::string said;  // for people: "nobody", "3.2 l", "permit.pdf"
  bool good = false;
  std::string why;  // where it is not good
};

// confirm: `value`, one of the choices; `groups` besides, for the pins that read alike.
// number: `milli`. text: `value`. file: `value` its name and `sha256` 64 hex digits.
// Refused: a choice that is not offered, a word that says nothing.
[[nodiscard]] Result<Value> answer_value(const View& view, const Item& item,
                                         const nlohmann::json& body);

// "3.2 l": thousandths of a unit, without zeros at the end.
[[nodiscard]] std::string say_milli(std::int64_t milli, const std::string& unit);

}  // namespace walkdown::day
