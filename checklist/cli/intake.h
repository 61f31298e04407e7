// SPDX-License-Identifier: Apache-2.0
// Bytes of a tester in, entries of a record out: each line that arrives becomes one entry, also
// those that say nothing. One thread feeds it.
#pragma once

#include <deque>
#include <optional>
#include <string>
#include <string_view>
#include <utility>

#include "checklist/record/writer.h"
#include "reader/tester/framer.h"
#include "reader/tester/gaps.h"
#include "reader/tester/line.h"
#include "reader/tester/walk_mode.h"

namespace walkdown::cli {

class Intake {
 public:
  // `walk` for a meter that sends bare values. The writer outlives this.
  Intake(tester::LineParser parser, std::optional<tester::Walk> walk, record::Writer& writer);

  // Error: what the writer says; nothing after it is recorded.
  Done feed(std::string_view bytes);
  // The port went away; the rest of a begun line is lost, and is recorded as that.
  Done hang_up();

  [[nodiscard]] const std::optional<tester::Walk>& walk() const { return walk_; }
  // What the person says to the walk (walk_mode.h); nothing where there is none.
  void skip();
  void back();
  // The probe is on the pin and the meter reads above range: recorded with the meter's own line.
  void take_open();

 private:
  void take(const tester::Line& line);
  void take_reading(const tester::Reading& reading, std::string_view raw);
  void take_bare(const tester::BareValue& value, std::string_view raw);
  void watch(std::optional<std::uint64_t> seq);
  void append(std::string_view kind, nlohmann::json body);
  [[nodiscard]] std::string line_of(std::int64_t micro_ohm) const;

  tester::LineParser parser_;
  std::optional<tester::Walk> walk_;
  record::Writer* writer_;
  tester::Framer framer_{tester::Beginning::unknown};
  tester::ChecksumHabit habit_;
  tester::SeqWatch seq_;
  std::deque<std::pair<std::int64_t, std::string>> recent_;  // bare values and their lines
  Done health_ = done();
};

}  // namespace walkdown::cli
