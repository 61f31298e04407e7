// SPDX-License-Identifier: Apache-2.0
// What an entry must be to stand where it stands: the rules beyond spelling and hashes. The
// verifier asks them of each sealed entry, the writer of each entry before it takes it, so that no
// record of ours can fail them.
#pragma once

#include <cstdint>
#include <deque>
#include <optional>
#include <set>
#include <string>
#include <utility>
#include <vector>

#include "checklist/record/head.h"
#include "checklist/record/line.h"
#include "checklist/record/signoff.h"
#include "checklist/record/stamped.h"

namespace walkdown::record {

// What entry 0 says of its record.
struct OpenFacts {
  std::string origin;
  VerifyKey station;
};
[[nodiscard]] Result<OpenFacts> open_facts(const EntryView& entry);

// What an `enrol` entry says. bad_input where it lacks a key, a name or a role.
[[nodiscard]] Result<Person> person_of(const nlohmann::json& enrolment);

// A time-stamp that holds where it stands. Whose it is, its reader has to know.
struct StampAt {
  std::uint64_t n = 0;  // of its entry
  std::int64_t entry_at_ms = 0;
  std::uint64_t entries = 0;               // of the checkpoint that was stamped
  std::optional<std::int64_t> head_at_ms;  // of that checkpoint's last entry, where still known
  TimeStamp stamp;
  Bytes response;
};

// The last kHeadsKept heads of this run of the program.
class Heads {
 public:
  void push(const Head& head);
  void clear() { heads_.clear(); }
  [[nodiscard]] const Head* find(std::uint64_t size) const;
  [[nodiscard]] std::uint64_t oldest() const { return heads_.empty() ? 0 : heads_.front().size; }

 private:
  std::deque<Head> heads_;  // rising sizes
};

class Rules {
 public:
  // `deep`: sign-offs, cosignatures and time-stamps as well.
  explicit Rules(bool deep = true) : deep_(deep) {}

  // Takes the entry. A sentence where it does not hold; the object is then of no further use.
  [[nodiscard]] std::optional<std::string> accept(const EntryView& entry, const Heads& heads);

  [[nodiscard]] const std::string& origin() const { return origin_; }
  [[nodiscard]] const std::vector<VerifyKey>& stations() const { return stations_; }
  [[nodiscard]] const std::vector<Person>& people() const { return people_; }
  [[nodiscard]] const std::vector<StampAt>& stamps() const { return stamps_; }
  [[nodiscard]] const Times& times() const { return times_; }
  [[nodiscard]] bool closed() const { return closed_; }

 private:
  using Why = std::optional<std::string>;
  Why open(const EntryView& entry);
  Why enrol(const nlohmann::json& body);
  Why sign_offs(const EntryView& entry, const nlohmann::json& body, const Heads& heads);
  Why sign_off(const EntryView& entry, const std::string& note, const Heads& heads);
  [[nodiscard]] Why cosignature(const nlohmann::json& body, const Heads& heads) const;
  Why time_stamp(const EntryView& entry, const nlohmann::json& body, const Heads& heads);

  bool deep_;
  bool closed_ = false;
  std::string origin_;
  std::vector<VerifyKey> stations_;
  std::vector<Person> people_;
  std::vector<StampAt> stamps_;
  Times times_;
  std::set<std::pair<std::uint64_t, Hash>> used_;  // sign-offs of the heads still kept
};

}  // namespace walkdown::record
