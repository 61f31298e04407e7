// SPDX-License-Identifier: Apache-2.0
// Appends to a record. One writer at a time; any number of threads may append to it.
//
//   auto writer = Writer::create("show.walkdown", {.show = show}, station_key, clock);
//   auto ticket = writer->append({"note", {{"text", "..."}}});   // stamped, queued
//   writer->wait(*ticket);                              // on the medium, signed
//
// Group commit: what is queued is taken after 4 ms, or as soon as 64 entries are, gets one
// checkpoint, and goes to the medium with one write and one fdatasync, by a thread of its own. Only
// then is it acknowledged. The next commit is sealed while the medium is busy with this one. The
// first error of the medium stays: nothing is acknowledged after it, by this writer.
#pragma once

#include <cstdint>
#include <functional>
#include <memory>
#include <nlohmann/json.hpp>
#include <string>
#include <vector>

#include "checklist/record/clock.h"
#include "checklist/record/device.h"
#include "checklist/record/head.h"
#include "checklist/record/signing_key.h"
#include "checklist/record/verify.h"
#include "reader/result.h"

namespace walkdown::record {

// An entry to be: the writer gives it its number and its times.
struct Draft {
  std::string kind;
  nlohmann::json body = nlohmann::json::object();
};

struct Opening {
  std::string origin;   // empty: make_origin(station name)
  nlohmann::json show;  // the show file's content
};

// Which entries an append made.
struct Ticket {
  std::uint64_t first = 0;  // n of the first
  std::uint64_t end = 0;    // n behind the last
};

struct WriterOptions {
  // Called in the writer's own thread for each entry, in order, once it is on the medium and before
  // wait() returns for it; also for those the writer adds itself. Must not call the writer.
  // For create() entry 0 comes before it returns, for resume() the entries that stand already do
  // not come: give `verify.visitor` for them.
  std::function<void(const EntryView&)> sealed;
  VerifyOptions verify;  // of resume()
  DeviceWrap wrap;       // tests
};

class Writer {
 public:
  // A new record whose entry 0 is on the medium when this returns. refused where there is a file.
  [[nodiscard]] static Result<Writer> create(const std::string& path, const Opening& opening,
                                             const SigningKey& station, const Clock& clock,
                                             WriterOptions options = {});

  // Goes on with a record: verifies it, keeps a torn tail aside, adds `resumed` (and `torn`, and
  // `clock-step` where the wall clock is not where it should be). `station` must be that of the
  // record, or enrolled in it with the role `station`.
  // busy: another writer; forged: it does not verify; refused: closed, or another station's.
  [[nodiscard]] static Result<Writer> resume(const std::string& path, const SigningKey& station,
                                             const Clock& clock, WriterOptions options = {});

  Writer(Writer&&) noexcept;
  Writer& operator=(Writer&&) noexcept;
  Writer(const Writer&) = delete;
  Writer& operator=(const Writer&) = delete;
  ~Writer();  // commits what is queued

  // Queues; several drafts stay together in one commit. Waits only while more than 32 MiB are
  // queued. bad_input: a body that a record cannot hold (nothing is queued then).
  [[nodiscard]] Result<Ticket> append(Draft draft);
  [[nodiscard]] Result<Ticket> append(const std::vector<Draft>& drafts);

  // Until all of the ticket's entries are on the medium.
  Done wait(Ticket ticket);
  Done append_and_wait(Draft draft);
  Done append_and_wait(const std::vector<Draft>& drafts);
  Done flush();  // all that was appended so far

  // The last checkpoint on the medium: what a sign-off of this moment names.
  [[nodiscard]] Head head() const;
  // The first error of the medium, if there was one.
  [[nodiscard]] Done health() const;

  // Adds `close` and waits for it; nothing can be appended afterwards.
  Done close(nlohmann::json body = nlohmann::json::object());

 private:
  class Core;
  explicit Writer(std::unique_ptr<Core> core);
  std::unique_ptr<Core> core_;
};

// "walkdown/<station name>/<16 random hex digits>": another for each record.
[[nodiscard]] std::string make_origin(const std::string& station_name);

}  // namespace walkdown::record
