// SPDX-License-Identifier: Apache-2.0
// One open record, everything folded from it, and the one way to act on it. The window, `walkdown
// day` and the demo are users of this and hold no state of the day of their own.
//
//   auto desk = Desk::open("today.record", show, station, clock);     // made, or gone on with
//   desk->listen([&](Written written) { refresh(); });                // from a thread of the desk
//   const day::State now = desk->state();
//   auto n = desk->act("hold", {{"by", "Jon Weir"}});                 // unsigned
//   auto m = desk->sign(mara, "lift", [&](const day::Fold& fold, day::Now at) {
//     return day::propose_lift(fold, at, mara.who(), "smoke has gone");
//   });                                                               // acts.h has them by name
//
// What is seen here is on the medium: an entry is folded once it is acknowledged, and before the
// call that wrote it returns. A hold that another program asks for (hold_box.h) is taken up at
// once, also between two calls. All functions may be called from any thread; those that write, or
// look at the clocks, wait for the medium (a millisecond or so, more on a slow card), and a
// person's key must be opened before (crew.h: about a second). None of them may be called from a
// listener but those that are const.
#pragma once

#include <cstdint>
#include <functional>
#include <memory>
#include <nlohmann/json.hpp>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "checklist/day/fold.h"
#include "checklist/day/propose.h"
#include "checklist/day/schedule.h"
#include "checklist/day/state.h"
#include "checklist/desk/folded.h"
#include "checklist/desk/prepared.h"
#include "checklist/record/clock.h"
#include "checklist/record/signing_key.h"
#include "checklist/record/writer.h"
#include "reader/match/outcome.h"
#include "reader/result.h"
#include "reader/tester/line.h"

namespace walkdown::desk {

// Somebody enrolled, with their key opened, in the role in which they act now.
struct Signer {
  record::SigningKey key;
  std::string name;  // as enrolled
  std::string role;

  [[nodiscard]] day::Who who() const { return {name, role}; }
};

// Entries first .. end - 1 have reached the medium.
struct Written {
  std::uint64_t first = 0;
  std::uint64_t end = 0;
};

struct DeskOptions {
  std::string origin;  // of a new record; empty: made up
  // How long the machine has slept since it was started. Empty: as the system says.
  std::function<std::int64_t()> slept_ms;
  bool snapshot = true;     // leave one beside the record, and begin from one (snapshot.h)
  record::DeviceWrap wrap;  // tests
};

class Desk {
 public:
  // The record at `path` continued, verified on the way; where there is no file, a new one with
  // this show. `station` signs the checkpoints; `clock` is not owned and outlives the desk.
  // Errors: as Writer's; bad_input: the show has mistakes (prepare() lists all of them), or there
  // is neither a record nor a show; refused: the record is of another show. busy: another program
  // is writing it.
  static Result<Desk> open(const std::string& path, const std::optional<show::Show>& show,
                           const record::SigningKey& station, const record::Clock& clock,
                           DeskOptions options = {});

  Desk(Desk&&) noexcept;
  Desk& operator=(Desk&&) noexcept;
  Desk(const Desk&) = delete;
  Desk& operator=(const Desk&) = delete;
  ~Desk();  // commits what is queued; the listener is not called afterwards

  // --- What stands. Each call is one moment; two calls may see two.
  [[nodiscard]] day::State state() const;
  [[nodiscard]] day::Schedule schedule() const;
  [[nodiscard]] std::shared_ptr<const match::Outcome> outcome() const;
  // What was read since each pin's last re-hook, in the order received.
  [[nodiscard]] std::vector<match::Sample> samples() const;
  [[nodiscard]] Counts counts() const;
  // The last entries in words, the newest last; at most Folded::kMostTold.
  [[nodiscard]] std::vector<Told> told(std::size_t most) const;
  [[nodiscard]] day::Now now() const;
  // The last acknowledged checkpoint; record::mark(head().root) is the mark.
  [[nodiscard]] record::Head head() const;
  // How many entries were not folded anew because a snapshot stood for them.
  [[nodiscard]] std::uint64_t from_snapshot() const;
  // An entry that was written and does not hold: a fault of this program, to be said loudly.
  [[nodiscard]] std::optional<std::string> disagrees() const;
  // The first error of the medium: nothing was acknowledged after it.
  [[nodiscard]] Done health() const;

  // --- What never changes while the record is open.
  [[nodiscard]] const std::string& path() const;
  [[nodiscard]] const std::string& origin() const;
  [[nodiscard]] const Prepared& prepared() const;
  [[nodiscard]] const day::Checklist& checklist() const { return prepared().checklist; }
  [[nodiscard]] tester::LineParser parser() const;

  // --- Acting.
  using Body = day::Body;
  // Makes a body for this moment: a propose_...() of propose.h, which asks the rule first.
  using Make = std::function<Result<Body>(const day::Fold&, day::Now)>;

  // Asks the rule, writes, waits. The entry's number. Errors: refused, with the rule, before
  // anything is written, or where another entry came between ("... was written and not taken"); as
  // Writer's.
  Result<std::uint64_t> act(std::string_view kind, const Make& make);
  Result<std::uint64_t> act(std::string_view kind, Body body);
  // The same, signed over the record's head of this moment. `by` and `role` of the body are the
  // signer's.
  Result<std::uint64_t> sign(const Signer& signer, std::string_view kind, const Make& make);
  Result<std::uint64_t> sign(const Signer& signer, std::string_view kind, Body body);

  // What the readings say now, written as a claim that anyone can derive again.
  Result<std::shared_ptr<const match::Outcome>> claim();
  // The last entry. `reason` may be empty. Afterwards nothing can be written.
  Done close(const std::string& reason = {});

  // Looks at the clocks and writes what they show: that the machine slept, that the wall clock
  // stepped. acting does so by itself; call it about once a second besides.
  Done look();

  // For what reads the tester (cli/intake.h): appends without a rule, many a second. It lives as
  // long as the desk.
  [[nodiscard]] record::Writer& writer();

  // Calls `listener` after entries were written, from a thread of the desk's own; several commits
  // may come as one call. One listener at a time; empty: none. Once this returns, the one before is
  // not called any more.
  using Listener = std::function<void(Written)>;
  void listen(Listener listener);

 private:
  class Core;
  explicit Desk(std::unique_ptr<Core> core);
  std::unique_ptr<Core> core_;
};

}  // namespace walkdown::desk
