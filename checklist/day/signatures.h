// SPDX-License-Identifier: Apache-2.0
// Between the day and the record's sign-offs.
#pragma once

#include <cstdint>
#include <nlohmann/json.hpp>
#include <string>
#include <string_view>

#include "checklist/day/checklist.h"
#include "checklist/day/outside.h"
#include "checklist/record/signoff.h"

namespace walkdown::day {

// Checks notes as the record does: form, signature, and that it is by the person enrolled. Where in
// the record a note may stand is the record's own matter (record/rules.h).
[[nodiscard]] CheckNote check_record_notes();

// What the person named in `body` signs for this entry; make_sign_off() turns it into the text that
// goes into the body as `signoff`.
[[nodiscard]] record::SignOff sign_off(const Checklist& checklist, std::string_view kind,
                                       const nlohmann::json& body, const record::Head& head,
                                       std::int64_t at_ms);

}  // namespace walkdown::day
