// SPDX-License-Identifier: Apache-2.0
// Bodies of the day's entries, made and tried before anything is written:
//
//   auto body = propose_lift(fold, now, {"Ann", "lead"}, "rain has passed");
//   if (!body) say(body.error());          // the rule that refuses it, and what to do
//   sign(statement(fold.checklist(), "lift", *body)), put the note into (*body)["signoff"], write.
//
// What a body says of the state (who holds a key, what is confirmed) is filled in from the fold. A
// body is good for this moment: written after another entry it may be refused. Errors: refused,
// with the rule. FORMAT.md says what stands in each.
#pragma once

#include <cstdint>
#include <nlohmann/json.hpp>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "checklist/day/fold.h"
#include "reader/result.h"

namespace walkdown::day {

using Body = nlohmann::json;

// Who acts, in which of the roles they are enrolled in.
struct Who {
  std::string name;
  std::string role;
};

// Any body: the same one, if its kind's rule takes it now. Kinds without a rule are always taken.
Result<Body> propose(const Fold& fold, Now now, std::string_view kind, Body body);

Result<Body> propose_enrol(const Fold& fold, Now now, std::string name, std::string role,
                           std::string vkey);
// `utc_offset_min`: of the clock on the wall there, so that sentences say its times.
Result<Body> propose_show_time(const Fold& fold, Now now, const Who& who, std::int64_t show_at_ms,
                               std::int64_t utc_offset_min = 0);

// `asked_up_ms`: boot clock when the question came up.
struct Said {
  std::optional<std::string> value;   // choice, text, or a file's name
  std::optional<std::int64_t> milli;  // a number in thousandths of the item's unit
  std::string sha256;                 // of a file, 64 hex digits
};
Result<Body> propose_answer(const Fold& fold, Now now, const Who& who, std::string item,
                            const Said& said, std::int64_t asked_up_ms);
// Confirms entry n: an answer, a waiver, a release, a tag or a person told to be back by another.
Result<Body> propose_second(const Fold& fold, Now now, const Who& who, std::uint64_t n);
Result<Body> propose_pause(const Fold& fold, Now now, const Who& who, std::string stage);

struct WindValue {
  std::int64_t mean_mm_per_s = 0;
  std::int64_t gust_mm_per_s = 0;
  std::int64_t period_ms = 600'000;
};
// By hand, signed; without `who` by the instrument, unsigned.
Result<Body> propose_wind(const Fold& fold, Now now, const std::optional<Who>& who,
                          const WindValue& wind);
Result<Body> propose_thunder(const Fold& fold, Now now, std::optional<std::int64_t> flash_ms);

Result<Body> propose_in(const Fold& fold, Now now, std::string person,
                        std::vector<std::string> positions);
// Reason and a second person are asked for when somebody signs for another.
Result<Body> propose_out(const Fold& fold, Now now, const Who& who, std::string person,
                         std::string reason = {});
Result<Body> propose_tag_hang(const Fold& fold, Now now, std::string person);
Result<Body> propose_tag_back(const Fold& fold, Now now, const Who& who, std::string person,
                              std::string reason = {});

Result<Body> propose_key_offer(const Fold& fold, Now now, const Who& receiver, std::string key);
Result<Body> propose_key_give(const Fold& fold, Now now, const Who& giver, std::string key);
Result<Body> propose_key_put(const Fold& fold, Now now, const Who& who, std::string key,
                             std::string place);
Result<Body> propose_key_take(const Fold& fold, Now now, const Who& who, std::string key);

Result<Body> propose_hold(const Fold& fold, Now now, std::string by = {}, std::string reason = {});
// `of`: the last hold that the lead knew of when the reason was written; empty: all that are on.
Result<Body> propose_lift(const Fold& fold, Now now, const Who& who, std::string reason,
                          std::optional<std::uint64_t> of = std::nullopt);
Result<Body> propose_waive(const Fold& fold, Now now, const Who& who, std::string item,
                           std::string reason);
Result<Body> propose_waive_pin(const Fold& fold, Now now, const Who& who, std::string pin,
                               std::string reason);
Result<Body> propose_release(const Fold& fold, Now now, const Who& who);
Result<Body> propose_withdraw(const Fold& fold, Now now, std::string by, std::string reason);
Result<Body> propose_rehook(const Fold& fold, Now now, std::vector<std::string> pins,
                            std::vector<std::string> positions);

}  // namespace walkdown::day
