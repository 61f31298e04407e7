// SPDX-License-Identifier: Apache-2.0
#include "checklist/desk/desk_core.h"

#include <fmt/format.h>

#include <algorithm>
#include <utility>

#include "checklist/audit/claim.h"
#include "checklist/day/signatures.h"
#include "checklist/desk/slept.h"
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

Desk::Core::Core(std::string path, record::SigningKey station, const record::Clock& clock,
                 DeskOptions options)
    : path_(std::move(path)),
      station_(std::move(station)),
      clock_(clock),
      snapshots_(options.snapshot),
      slept_ms_(std::move(options.slept_ms)) {
  if (!slept_ms_) slept_ms_ = system_slept_ms;
  writer_options_.wrap = std::move(options.wrap);
  writer_options_.sealed = [this](const record::EntryView& entry) { sealed(entry); };
}

void Desk::Core::sealed(const record::EntryView& entry) {
  inbox_.put(entry);
  if (const std::unique_lock lock(mutex_, std::try_to_lock); lock) catch_up();
  bell_.written(entry.n);
}

void Desk::Core::catch_up() const {
  inbox_.take([this](const record::EntryView& entry) {
    if (auto why = folded_.take(entry); why && !disagrees_) disagrees_ = std::move(why);
  });
}

std::optional<std::string> Desk::Core::disagrees() const {
  const std::lock_guard lock(mutex_);
  catch_up();
  return disagrees_;
}

Done Desk::Core::create(const show::Show& show, const std::string& origin) {
  const auto outcome = prepare(show);
  if (!outcome.prepared) return mistakes(outcome.errors);
  auto writer = record::Writer::create(path_, {origin, show::to_json(outcome.prepared->show)},
                                       station_, clock_, writer_options_);
  if (!writer) return writer.error();
  writer_.emplace(std::move(writer).value());
  if (const auto why = disagrees()) return Error{Code::bad_input, *why, path_, ""};
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
  catch_up();
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
  catch_up();
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
  catch_up();
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

}  // namespace walkdown::desk
