// SPDX-License-Identifier: Apache-2.0
// What a report needs of a record, gathered entry by entry. Internal to this folder.
#pragma once

#include <map>
#include <nlohmann/json.hpp>

#include "checklist/check/derive.h"
#include "checklist/report/model.h"
#include "reader/match/sample.h"

namespace walkdown::report {

struct ReadAt {
  std::uint64_t n = 0;
  std::int64_t at_ms = 0;
  std::optional<double> ohm;  // nothing: over range
};

struct ClaimAt {
  std::uint64_t n = 0;
  std::int64_t at_ms = 0;
  nlohmann::json body;
};

struct RehookAt {
  Rehooked who;
  audit::Rehook what;
};

class Collector {
 public:
  // A sentence where the entry does not hold.
  std::optional<std::string> take(const record::EntryView& view);
  // After the last entry: everything that was gathered, but for what rests on the whole of it.
  [[nodiscard]] Model finish();

  [[nodiscard]] const desk::Folded& folded() const { return deriver_.folded(); }
  [[nodiscard]] const check::Deriver& deriver() const { return deriver_; }
  [[nodiscard]] const std::map<plan::PinId, std::vector<ReadAt>>& readings() const {
    return readings_;
  }
  [[nodiscard]] const std::vector<ClaimAt>& claims() const { return claims_; }
  [[nodiscard]] const std::vector<RehookAt>& rehooks() const { return rehooks_; }
  // Samples since the first release stood, in order; and those before it that counted then.
  [[nodiscard]] const std::vector<match::Sample>& after() const { return after_; }
  [[nodiscard]] const std::vector<match::Sample>& before() const { return before_; }

 private:
  void take_reading(const record::EntryView& view);
  void take_entry(const record::Entry& entry);
  void sort_line(const record::Entry& entry, Line line);
  void sign_offs(const record::Entry& entry);
  void watch_release(const record::Entry& entry);
  void watch_items(const record::Entry& entry);
  void watch_keys(const record::Entry& entry);
  void watch_field(const record::Entry& entry);
  void waiver(const record::Entry& entry);
  void extend(std::size_t item, std::int64_t at_ms, const day::Judgement& found);

  check::Deriver deriver_;
  Model model_;
  std::map<plan::PinId, std::vector<ReadAt>> readings_;
  std::vector<ClaimAt> claims_;
  std::vector<RehookAt> rehooks_;
  std::vector<match::Sample> after_, before_;
  std::vector<std::optional<std::int64_t>> until_ms_;  // an item each, while it holds
  day::ReleaseWord release_word_ = day::ReleaseWord::none;
  bool released_ = false;
};

// All items as they are at the last entry.
[[nodiscard]] std::vector<ItemAt> items_now(const desk::Folded& folded, bool of_the_release_only);

}  // namespace walkdown::report
