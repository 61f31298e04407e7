// SPDX-License-Identifier: Apache-2.0
// The field as a record tells it: a fold over entries, and the only place where a record's readings
// become samples for the diagnosis. The program that writes, the one that checks and every screen
// use this one, so they cannot come to different answers.
#pragma once

#include <cstdint>
#include <optional>
#include <set>
#include <string>
#include <string_view>
#include <vector>

#include "checklist/audit/drafts.h"
#include "checklist/audit/planned.h"
#include "checklist/record/line.h"
#include "reader/match/diagnose.h"
#include "reader/tester/line.h"

namespace walkdown::audit {

// Whether an entry of this kind can change a verdict: reading, rehook, in (FORMAT.md of day/).
[[nodiscard]] bool touches_field(std::string_view kind);

class Field {
 public:
  // Error: the profile's pattern does not compile.
  static Result<Field> make(Planned planned, bool layout_known);

  // From the body of entry 0. Errors: what its show lacks, in one sentence.
  static Result<Field> open(const nlohmann::json& opening_body);

  // Takes one entry, in the order of the record. A sentence where it does not hold: a body that is
  // not what its kind needs, a reading that its own raw line does not say, a claim that the
  // readings before it do not bear out. Kinds that do not touch the field are passed over.
  std::optional<std::string> take(const record::EntryView& entry);

  [[nodiscard]] match::Outcome diagnose() const;
  [[nodiscard]] const Planned& planned() const { return planned_; }
  [[nodiscard]] const tester::LineParser& parser() const { return parser_; }
  // Since each pin's last re-hook, in the order received.
  [[nodiscard]] const std::vector<match::Sample>& samples() const { return samples_; }
  // What a snapshot keeps, and back: false, with nothing changed, where the bytes are no such.
  [[nodiscard]] std::string save() const;
  [[nodiscard]] bool load(std::string_view bytes);
  [[nodiscard]] std::uint64_t readings() const { return readings_; }  // ever
  [[nodiscard]] std::uint64_t rejected() const { return rejected_; }

 private:
  Field(Planned planned, tester::LineParser parser, bool layout_known);
  std::optional<std::string> take_reading(std::string_view body);
  std::optional<std::string> take_rehook(const nlohmann::json& body);
  void take_entered(const nlohmann::json& body);

  Planned planned_;
  tester::LineParser parser_;
  bool layout_known_ = false;
  std::vector<match::Sample> samples_;
  std::set<plan::PinId> read_;   // ever, of the planned pins
  std::set<plan::PinId> stale_;  // re-hooked, or somebody went there; and not read since
  std::uint64_t readings_ = 0;
  std::uint64_t rejected_ = 0;
};

}  // namespace walkdown::audit
