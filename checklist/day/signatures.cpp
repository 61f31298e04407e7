// SPDX-License-Identifier: Apache-2.0
#include "checklist/day/signatures.h"

#include <utility>

#include "checklist/day/body.h"
#include "checklist/day/statement.h"

namespace walkdown::day {
namespace {

std::vector<record::Person> with_keys(const std::vector<Enrolled>& people) {
  std::vector<record::Person> list;
  for (const Enrolled& each : people) {
    if (auto key = record::parse_vkey(each.vkey)) {
      list.push_back({std::move(key).value(), each.name, each.role});
    }
  }
  return list;
}

}  // namespace

CheckNote check_record_notes() {
  // The people change seldom and are asked for at every signature.
  return [known = std::vector<Enrolled>(), list = std::vector<record::Person>()](
             std::string_view note, const std::vector<Enrolled>& people) mutable -> Result<Signed> {
    if (known != people) {
      known = people;
      list = with_keys(people);
    }
    auto checked = record::check_sign_off(note, list);
    if (!checked) return checked.error();
    record::SignOff& said = checked->sign_off;
    return Signed{std::move(said.person), std::move(said.role), std::move(said.statement),
                  std::move(said.facts)};
  };
}

record::SignOff sign_off(const Checklist& checklist, std::string_view kind,
                         const nlohmann::json& body, const record::Head& head, std::int64_t at_ms) {
  Statement made = statement(checklist, kind, body);
  return {text_in(body, "by"),
          text_in(body, "role"),
          std::move(made.text),
          std::move(made.facts),
          at_ms,
          head};
}

}  // namespace walkdown::day
