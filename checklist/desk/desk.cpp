// SPDX-License-Identifier: Apache-2.0
#include "checklist/desk/desk.h"

#include <filesystem>
#include <mutex>
#include <utility>

#include "checklist/audit/claim.h"
#include "checklist/desk/desk_core.h"

namespace walkdown::desk {

Desk::Desk(std::unique_ptr<Core> core) : core_(std::move(core)) {}
Desk::Desk(Desk&&) noexcept = default;
Desk& Desk::operator=(Desk&&) noexcept = default;
Desk::~Desk() = default;

Result<Desk> Desk::open(const std::string& path, const std::optional<show::Show>& show,
                        const record::SigningKey& station, const record::Clock& clock,
                        DeskOptions options) {
  std::error_code ignored;
  const bool there = std::filesystem::exists(path, ignored);
  if (!there && !show) {
    return Error{Code::io, "there is no such record", path, "open a new one with its show"};
  }
  const std::string origin = options.origin;
  auto core = std::make_unique<Core>(path, station, clock, std::move(options));
  const Done opened = there ? core->resume(show) : core->create(*show, origin);
  if (!opened) return opened.error();
  return Desk(std::move(core));
}

day::State Desk::state() const {
  return core_->read([&](const Folded& folded) { return folded.day().at(core_->now()); });
}

day::Schedule Desk::schedule() const {
  return core_->read(
      [&](const Folded& folded) { return day::schedule(folded.day(), core_->now()); });
}

std::shared_ptr<const match::Outcome> Desk::outcome() const {
  return core_->read([](const Folded& folded) { return folded.outcome(); });
}

std::vector<match::Sample> Desk::samples() const {
  return core_->read([](const Folded& folded) { return folded.field().samples(); });
}

Counts Desk::counts() const {
  return core_->read([](const Folded& folded) { return folded.counts(); });
}

std::vector<Told> Desk::told(std::size_t most) const {
  return core_->read([&](const Folded& folded) { return folded.told(most); });
}

day::Now Desk::now() const { return core_->now(); }
record::Head Desk::head() const { return core_->writer_->head(); }
Done Desk::health() const { return core_->writer_->health(); }
const std::string& Desk::path() const { return core_->path_; }

std::uint64_t Desk::from_snapshot() const { return core_->from_snapshot_; }

std::optional<std::string> Desk::disagrees() const { return core_->disagrees(); }

const std::string& Desk::origin() const { return core_->folded_.origin(); }
const Prepared& Desk::prepared() const { return core_->folded_.prepared(); }

tester::LineParser Desk::parser() const {
  return core_->read([](const Folded& folded) { return folded.field().parser(); });
}

Result<std::uint64_t> Desk::act(std::string_view kind, const Make& make) {
  return core_->act(kind, make);
}

Result<std::uint64_t> Desk::act(std::string_view kind, Body body) {
  return core_->act(
      kind, [&](const day::Fold& fold, day::Now at) { return day::propose(fold, at, kind, body); });
}

Result<std::uint64_t> Desk::sign(const Signer& signer, std::string_view kind, const Make& make) {
  return core_->sign(signer, kind, make);
}

Result<std::uint64_t> Desk::sign(const Signer& signer, std::string_view kind, Body body) {
  body["by"] = signer.name;
  body["role"] = signer.role;
  return core_->sign(signer, kind, [&](const day::Fold& fold, day::Now at) {
    return day::propose(fold, at, kind, body);
  });
}

Result<std::shared_ptr<const match::Outcome>> Desk::claim() {
  const std::lock_guard one(core_->acting_);
  if (Done flushed = core_->writer_->flush(); !flushed) return flushed.error();
  auto seen = outcome();
  const Done written =
      core_->writer_->append_and_wait({std::string(audit::kClaim), audit::claim_body(*seen)});
  if (!written) return written.error();
  return seen;
}

Done Desk::close(const std::string& reason) {
  const std::lock_guard one(core_->acting_);
  Body body = Body::object();
  if (!reason.empty()) body["reason"] = reason;
  return core_->writer_->close(std::move(body));
}

Done Desk::look() { return core_->look(); }
record::Writer& Desk::writer() { return *core_->writer_; }

void Desk::listen(Listener listener) {
  if (!listener) return core_->bell_.listen({});
  core_->bell_.listen([listener = std::move(listener)](std::uint64_t first, std::uint64_t end) {
    listener({first, end});
  });
}

}  // namespace walkdown::desk
