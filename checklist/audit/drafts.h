// SPDX-License-Identifier: Apache-2.0
// The entries that the field writes, as they go into a record, and back: the only maker of these
// bodies. FORMAT.md of record/ lists their members. Quantities are whole micro-ohm: a body holds no
// floating-point number.
#pragma once

#include <nlohmann/json.hpp>
#include <optional>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

#include "reader/plan/pin.h"
#include "reader/result.h"
#include "reader/tester/reading.h"

namespace walkdown::audit {

inline constexpr std::string_view kReading = "reading";
inline constexpr std::string_view kRejected = "rejected";
inline constexpr std::string_view kProbed =
    "probed";                                    // a bare value that was not taken: raw, why, pin
inline constexpr std::string_view kGap = "gap";  // line numbers of the tester: what, lines
inline constexpr std::string_view kRehook = "rehook";
inline constexpr std::string_view kEntered = "in";  // somebody went into the field: day/FORMAT.md
inline constexpr std::string_view kClaim = "claim";

// {"pin":"M01/R1/P05","raw":"M01,R1,P05,2.31,ohm","uohm":2310000}, or "over":true for uohm. A raw
// line that is no printable UTF-8 stands as "raw_b64". `walked` is set where the pin came from the
// walk and not from the line.
[[nodiscard]] nlohmann::json reading_body(const tester::Reading& reading, std::string_view raw,
                                          bool walked = false);

// {"raw":"...","why":"..."}
[[nodiscard]] nlohmann::json rejected_body(std::string_view raw, std::string_view why);

// What was touched at the modules: readings of these pins no longer count. Any of pins, positions,
// and a module or a rail of it; where none is named, or none that the plan knows, all of the field.
// `by` is the person, `why` the finding or the reason, both may be empty.
struct Rehook {
  std::vector<plan::PinId> pins;
  std::vector<std::string> positions;
  std::uint16_t module = 0;  // 0: none
  std::uint16_t rail = 0;    // 0: the whole module
  std::string by;
  std::string why;

  // `position`: of the pin, empty where the plan names none.
  [[nodiscard]] bool covers(plan::PinId pin, std::string_view position = {}) const;
};
[[nodiscard]] nlohmann::json rehook_body(const Rehook& rehook);

struct RecordedReading {
  tester::Reading reading;
  std::string raw;  // the bytes as received
  bool walked = false;
};

// The same from the body's text, without building a tree: a record has a million of them. Nothing
// where the text is not as reading_body() is written; the tree then says why.
std::optional<RecordedReading> quick_reading_of(std::string_view text);

// Errors: bad_input, a sentence of what the body lacks.
Result<RecordedReading> reading_of(const nlohmann::json& body);
Result<Rehook> rehook_of(const nlohmann::json& body);

}  // namespace walkdown::audit
