// SPDX-License-Identifier: Apache-2.0
// The inside of Desk: the writer, what is folded from what it wrote, and their locks. Internal to
// this folder.
#pragma once

#include <mutex>
#include <optional>
#include <string>

#include "checklist/desk/bell.h"
#include "checklist/desk/desk.h"
#include "checklist/desk/folded.h"
#include "checklist/desk/hold_watch.h"
#include "checklist/desk/inbox.h"
#include "checklist/desk/snapshot.h"

namespace walkdown::desk {

class Desk::Core {
 public:
  Core(std::string path, record::SigningKey station, const record::Clock& clock,
       DeskOptions options);
  Core(const Core&) = delete;
  Core& operator=(const Core&) = delete;
  Core(Core&&) = delete;
  Core& operator=(Core&&) = delete;
  ~Core() {
    hold_watch_.reset();
    leave_snapshot();
  }

  Done create(const show::Show& show, const std::string& origin);
  Done resume(const std::optional<show::Show>& show);

  // From the writer's thread, which must not wait for whoever diagnoses the field meanwhile: who
  // has the lock folds what came before they look.
  void sealed(const record::EntryView& entry);

  [[nodiscard]] day::Now now() const { return {clock_.at_ms(), clock_.up_ms()}; }
  Result<std::uint64_t> act(std::string_view kind, const Make& make);
  Result<std::uint64_t> sign(const Signer& signer, std::string_view kind, const Make& make);
  Done look();

  // Reads what is folded, under the lock.
  template <typename Read>
  auto read(const Read& read) const {
    const std::lock_guard lock(mutex_);
    catch_up();
    return read(folded_);
  }
  [[nodiscard]] std::optional<std::string> disagrees() const;

  const std::string path_;
  const record::SigningKey station_;
  const record::Clock& clock_;
  const bool snapshots_;
  std::function<std::int64_t()> slept_ms_;
  record::WriterOptions writer_options_;
  std::mutex acting_;  // one act at a time; taken before mutex_

  mutable std::mutex mutex_;  // of what is folded; taken before the inbox's
  mutable Folded folded_;
  mutable std::optional<std::string> disagrees_;
  mutable Inbox inbox_;
  std::uint64_t from_snapshot_ = 0;

  Bell bell_;
  std::optional<record::Writer> writer_;  // goes first: its thread uses all of the above
  std::optional<HoldWatch> hold_watch_;   // and its thread uses the writer

 private:
  void catch_up() const;  // with the lock
  // From here on a hold called by another program is taken up.
  void watch_holds() {
    hold_watch_.emplace(path_, [this](const HoldCall& call) { return enter_hold(call); });
  }
  Done enter_hold(const HoldCall& call);
  [[nodiscard]] std::optional<Snapshot> fitting_snapshot() const;
  void leave_snapshot();
  Done look_locked();
  Done fresh_head();
  Result<Body> signed_body(const Signer& signer, std::string_view kind, const Make& make);
  Result<std::uint64_t> write(std::string_view kind, Body body);
};

}  // namespace walkdown::desk
