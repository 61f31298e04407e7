// SPDX-License-Identifier: Apache-2.0
// Everything that is folded from one record: the field, the day, and the last things written. Fed
// entry by entry, by the writer as they reach the medium or by the verifier as they hold; nothing
// else changes it. One thread at a time.
#pragma once

#include <cstdint>
#include <deque>
#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "checklist/audit/field.h"
#include "checklist/day/fold.h"
#include "checklist/day/schedule.h"
#include "checklist/desk/prepared.h"
#include "checklist/record/line.h"
#include "reader/match/outcome.h"

namespace walkdown::desk {

// One entry in words, for lists of what was written last. Readings are in it too.
struct Told {
  std::uint64_t n = 0;
  std::int64_t at_ms = 0;
  std::string kind;
  std::string say;  // tell.h
};

struct Counts {
  std::uint64_t entries = 0;
  std::uint64_t readings = 0;
  std::uint64_t rejected = 0;
  std::string last_reading;  // "M01/R1/P05 2.31 ohm"; empty before the first
};

class Folded {
 public:
  static constexpr std::size_t kMostTold = 500;

  Folded();
  Folded(const Folded&) = delete;
  Folded& operator=(const Folded&) = delete;
  Folded(Folded&&) = delete;
  Folded& operator=(Folded&&) = delete;
  ~Folded();

  // The next entry of the record; the first one is its opening. A sentence where it does not hold:
  // a show that cannot be read, or what audit::Field says.
  std::optional<std::string> take(const record::EntryView& entry);

  // What a snapshot keeps, and back: false, with nothing changed, where the bytes are not of this
  // show. Both once the opening was taken, restore() before anything else was.
  [[nodiscard]] std::string save() const;
  [[nodiscard]] bool restore(std::string_view bytes);

  // Whether the opening was taken. Precondition of everything below.
  [[nodiscard]] bool opened() const { return parts_ != nullptr; }
  [[nodiscard]] const Prepared& prepared() const;
  [[nodiscard]] const day::Fold& day() const;
  [[nodiscard]] const audit::Field& field() const;
  // What the readings say. Worked out anew only after something about the field was written.
  [[nodiscard]] std::shared_ptr<const match::Outcome> outcome() const;

  [[nodiscard]] const std::string& origin() const { return origin_; }
  [[nodiscard]] Counts counts() const;
  // The last entries in words, the newest last; at most kMostTold.
  [[nodiscard]] std::vector<Told> told(std::size_t most) const;
  // The clocks of the last entry.
  [[nodiscard]] day::Now last() const { return last_; }
  // How long the machine had slept since it was started, as far as the record tells.
  [[nodiscard]] std::int64_t slept_ms() const { return slept_ms_; }

 private:
  struct Parts;
  std::optional<std::string> open(const record::EntryView& entry);
  // An entry as its bytes: its tree is made only for who asks.
  struct Kept {
    std::uint64_t n = 0;
    std::int64_t at_ms = 0;
    std::int64_t up_ms = 0;
    std::string kind;
    std::string body;

    [[nodiscard]] record::Entry entry() const {
      return record::entry_of({n, at_ms, up_ms, kind, body});
    }
  };
  void remember(const record::EntryView& view);
  void watch_sleep(const record::EntryView& view);

  std::unique_ptr<Parts> parts_;
  std::string origin_;
  std::uint64_t entries_ = 0;  // also those that a snapshot stands for
  std::deque<Kept> recent_;
  std::optional<Kept> reading_;  // the last one, once it is no longer in recent_
  day::Now last_;
  std::int64_t slept_ms_ = 0;
};

}  // namespace walkdown::desk
