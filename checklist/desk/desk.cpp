// SPDX-License-Identifier: Apache-2.0
#include "checklist/desk/desk.h"

#include <fmt/format.h>

#include <algorithm>
#include <filesystem>
#include <mutex>
#include <utility>

#include "checklist/audit/claim.h"
#include "checklist/day/signatures.h"
#include "checklist/desk/bell.h"
#include "checklist/desk/hold_watch.h"
#include "checklist/desk/slept.h"
#include "checklist/desk/snapshot.h"
#include "checklist/record/line_source.h"
#include "checklist/record/merkle.h"
#include "checklist/record/signoff.h"

namespace walkdown::desk {
namespace {

// A sign-off may name a head ten minutes old at most (record/signoff.h); half of that leaves time.
constexpr std::int64_t kFreshHead_ms = record::kSignOffLifeMs / 2;
// Sleep under this is the difference of two looks at two clocks.
constexpr std::int64_t kSleep_ms = 2'000;
constexpr const char* kMoment = "moment";

bool read_with_plan(show::Role role) {
  return role != show::Role::site && role != show::Role::checklist && role != show::Role::distances;
}

Done same_show(const show::Show& recorded, const show::Show& given) {
  const show::Show now = audit::complete(given);
  for (std::uint8_t i = 0; i < show::kRoles; ++i) {
    const auto role = static_cast<show::Role>(i);
    const show::File* then = recorded.find(role);
    const show::File* file = now.find(role);
    const bool same =
        (then == nullptr) == (file == nullptr) && (then == nullptr || then->text == file->text);
    // Whoever names the plan names all that it is read with; the rest may be left to the record.
    if (same || (file == nullptr && !read_with_plan(role))) continue;
    return Error{Code::refused, "this record was opened with another file",
                 std::string(show::word(role)),
                 "name the files it was opened with, or a new record"};
  }
  return done();
}

Error mistakes(const std::vector<std::string>& errors) {
  std::string first = errors.front();
  if (!first.empty() && first.back() == '.') first.pop_back();
  return {Code::bad_input, "the show has mistakes",
          errors.size() == 1 ? first : fmt::format("{}, and {} more", first, errors.size() - 1),
          "mend them first"};
}

}  // namespace

class Desk::Core {
 public:
  Core(std::string path, const record::SigningKey& station, const record::Clock& clock,
       DeskOptions options)
      : path_(std::move(path)),
        station_(station),
        clock_(clock),
        snapshots_(options.snapshot),
        slept_ms_(std::move(options.slept_ms)) {
    if (!slept_ms_) slept_ms_ = system_slept_ms;
    writer_options_.wrap = std::move(options.wrap);
    writer_options_.sealed = [this](const record::EntryView& entry) { sealed(entry); };
  }

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

  void sealed(const record::EntryView& entry) {
    {
      const std::lock_guard lock(mutex_);
      if (auto why = folded_.take(entry); why && !disagrees_) disagrees_ = std::move(why);
    }
    bell_.written(entry.n);
  }

  [[nodiscard]] day::Now now() const { return {clock_.at_ms(), clock_.up_ms()}; }
  Result<std::uint64_t> act(std::string_view kind, const Make& make);
  Result<std::uint64_t> sign(const Signer& signer, std::string_view kind, const Make& make);
  Done look();

  // Reads what is folded, under the lock.
  template <typename Read>
  auto read(const Read& read) const {
    const std::lock_guard lock(mutex_);
    return read(folded_);
  }

  const std::string path_;
  const record::SigningKey station_;
  const record::Clock& clock_;
  const bool snapshots_;
  std::function<std::int64_t()> slept_ms_;
  record::WriterOptions writer_options_;
  std::mutex acting_;  // one act at a time; taken before mutex_

  mutable std::mutex mutex_;  // of what is folded
  Folded folded_;
  std::optional<std::string> disagrees_;
  std::uint64_t from_snapshot_ = 0;

  Bell bell_;
  std::optional<record::Writer> writer_;  // goes first: its thread uses all of the above
  std::optional<HoldWatch> hold_watch_;   // and its thread uses the writer

 private:
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

Done Desk::Core::create(const show::Show& show, const std::string& origin) {
  const auto outcome = prepare(show);
  if (!outcome.prepared) return mistakes(outcome.errors);
  auto writer = record::Writer::create(path_, {origin, show::to_json(outcome.prepared->show)},
                                       station_, clock_, writer_options_);
  if (!writer) return writer.error();
  writer_.emplace(std::move(writer).value());
  if (disagrees_) return Error{Code::bad_input, *disagrees_, path_, ""};
  const std::int64_t slept_ms = slept_ms_();
  if (slept_ms >= kSleep_ms) {
    // What it slept before the record is no matter of the day's; from here on it is.
    const Done kept = writer_->append_and_wait(record::Draft{kMoment, {{"slept_ms", slept_ms}}});
    if (!kept) return kept;
  }
  watch_holds();
  return done();
}

// A snapshot stands for the entries up to its own; they are verified like all others, and not
// folded again.
Done Desk::Core::resume(const std::optional<show::Show>& show) {
  std::optional<Snapshot> kept;
  Done same = done();
  record::WriterOptions options = writer_options_;
  options.verify.visitor = [&](const record::EntryView& entry) -> std::optional<std::string> {
    if (entry.n > 0) return kept && entry.n < kept->size ? std::nullopt : folded_.take(entry);
    // Not before the record is known to be nobody else's: whoever is turned away is told at once.
    kept = fitting_snapshot();
    auto why = folded_.take(entry);
    if (!why && show) same = same_show(folded_.prepared().show, *show);
    if (!same) return same.error().sentence();
    if (why || !kept || folded_.restore(kept->folded)) return why;
    return "The snapshot beside the record is of another show; remove it.";
  };
  auto writer = record::Writer::resume(path_, station_, clock_, std::move(options));
  if (!same) return same;
  if (!writer) return writer.error();
  writer_.emplace(std::move(writer).value());
  from_snapshot_ = kept ? kept->size : 0;
  if (const Done looked = look(); !looked) return looked;
  watch_holds();
  return done();
}

// A name or a reason that no record can hold must not cost the hold.
Done Desk::Core::enter_hold(const HoldCall& call) {
  const auto enter = [&](const std::string& by, const std::string& reason) {
    return act("hold", [&](const day::Fold& fold, day::Now at) {
      auto body = day::propose_hold(fold, at, by, reason);
      if (body && !call.request.empty()) (*body)["request"] = call.request;
      return body;
    });
  };
  auto entry = enter(call.by, call.reason);
  if (!entry && entry.error().code == Code::bad_input) entry = enter({}, {});
  return entry ? done() : Done(entry.error());
}

// One that is this station's, of entries that the record really begins with.
std::optional<Snapshot> Desk::Core::fitting_snapshot() const {
  if (!snapshots_) return std::nullopt;
  auto kept = load_snapshot(snapshot_path(path_), station_);
  if (!kept || kept->size == 0) return std::nullopt;
  record::Tree tree;
  const auto rest = record::read_lines(path_, {[&](std::string_view line) {
                                                 if (line.starts_with("{\"n\":"))
                                                   tree.add(record::leaf_hash(line));
                                                 return tree.size() < kept->size;
                                               },
                                               [] { return record::kLongestOpen; }, [] {}});
  if (!rest || tree.size() != kept->size || tree.root() != kept->root) return std::nullopt;
  return kept;
}

// Worth its time only where folding again would take some.
void Desk::Core::leave_snapshot() {
  constexpr std::uint64_t kWorthIt = 2'000;
  if (!snapshots_ || !writer_ || !writer_->flush()) return;
  const record::Head head = writer_->head();
  const std::lock_guard lock(mutex_);
  const std::uint64_t entries = folded_.counts().entries;
  if (disagrees_ || entries != head.size || entries < from_snapshot_ + kWorthIt) return;
  // A snapshot that cannot be written costs the next run two seconds and nothing else.
  [[maybe_unused]] const Done left = save_snapshot(
      snapshot_path(path_), {head.origin, head.size, head.root, folded_.save()}, station_);
}

Result<std::uint64_t> Desk::Core::write(std::string_view kind, Body body) {
  if (kind == audit::kRehook) {
    // The field must be able to read back what goes in for ever.
    if (const auto fine = audit::rehook_of(body); !fine) return fine.error();
  }
  const auto ticket = writer_->append({std::string(kind), std::move(body)});
  if (!ticket) return ticket.error();
  if (Done kept = writer_->wait(*ticket); !kept) return kept.error();
  const std::uint64_t n = ticket->end - 1;
  const std::lock_guard lock(mutex_);
  const auto& ignored = folded_.day().day().ignored;
  const auto found = std::find_if(ignored.rbegin(), ignored.rend(),
                                  [&](const day::Ignored& each) { return each.n == n; });
  if (found == ignored.rend()) return n;
  return Error{Code::refused, fmt::format("entry {} was written and not taken", n), found->why,
               "something else was written at the same moment; look again"};
}

Result<std::uint64_t> Desk::Core::act(std::string_view kind, const Make& make) {
  const std::lock_guard one(acting_);
  if (Done looked = look_locked(); !looked) return looked.error();
  auto body = read([&](const Folded& folded) { return make(folded.day(), now()); });
  if (!body) return body.error();
  return write(kind, std::move(body).value());
}

// A head that is too old, or of before a restart, cannot be named: then an entry makes a new one.
Done Desk::Core::fresh_head() {
  if (clock_.up_ms() - writer_->head().up_ms < kFreshHead_ms) return done();
  return writer_->append_and_wait(record::Draft{kMoment});
}

Result<Desk::Body> Desk::Core::signed_body(const Signer& signer, std::string_view kind,
                                           const Make& make) {
  const std::lock_guard lock(mutex_);
  const day::Now at = now();
  auto body = make(folded_.day(), at);
  if (!body) return body.error();
  if (body->value("by", "") != signer.name || body->value("role", "") != signer.role) {
    return Error{Code::usage, "the entry is not the signer's own", signer.name, ""};
  }
  const auto note = record::make_sign_off(
      day::sign_off(folded_.prepared().checklist, kind, *body, writer_->head(), at.at_ms),
      signer.key);
  if (!note) return note.error();
  (*body)["signoff"] = *note;
  return body;
}

Result<std::uint64_t> Desk::Core::sign(const Signer& signer, std::string_view kind,
                                       const Make& make) {
  const std::lock_guard one(acting_);
  if (Done looked = look_locked(); !looked) return looked.error();
  // The rule first: what would be refused must not even leave a moment behind.
  if (auto may = read([&](const Folded& folded) { return make(folded.day(), now()); }); !may) {
    return may.error();
  }
  if (Done fresh = fresh_head(); !fresh) return fresh.error();
  auto body = signed_body(signer, kind, make);
  if (!body) return body.error();
  return write(kind, std::move(body).value());
}

Done Desk::Core::look_locked() {
  const std::int64_t slept_ms = slept_ms_();
  const std::int64_t known_ms = read([](const Folded& folded) { return folded.slept_ms(); });
  if (slept_ms - known_ms >= kSleep_ms) {
    return writer_->append_and_wait(
        record::Draft{"suspended", {{"ms", slept_ms - known_ms}, {"slept_ms", slept_ms}}});
  }
  const day::Now last = read([](const Folded& folded) { return folded.last(); });
  const day::Now at = now();
  const std::int64_t step_ms = (at.at_ms - at.up_ms) - (last.at_ms - last.up_ms);
  if (std::abs(step_ms) <= day::Timeline::kPace_ms) return done();
  return writer_->append_and_wait(record::Draft{kMoment});  // the writer tells of the step itself
}

Done Desk::Core::look() {
  const std::lock_guard one(acting_);
  return look_locked();
}

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

std::optional<std::string> Desk::disagrees() const {
  const std::lock_guard lock(core_->mutex_);
  return core_->disagrees_;
}

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
