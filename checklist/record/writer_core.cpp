// SPDX-License-Identifier: Apache-2.0
#include "checklist/record/writer_core.h"

#include <algorithm>
#include <utility>

#include "checklist/record/checkpoint.h"
#include "checklist/record/json_text.h"

namespace walkdown::record {

namespace {

constexpr auto kGather = std::chrono::milliseconds{4};
constexpr std::size_t kEnough = 64;                          // entries that are worth a commit
constexpr std::size_t kMostQueued = std::size_t{32} << 20U;  // bytes; then append() waits

// The rules change only by others than these, so nothing would have to be undone for them.
bool is_plain(const Ready& entry) {
  return (entry.kind == "reading" || entry.kind == "rejected") &&
         entry.body.size() < kLongestLine / 2;
}

// What the writer tells of itself, nobody else may.
bool is_own_kind(const std::string& kind) {
  return kind == "open" || kind == "resumed" || kind == "torn" || kind == "clock-step" ||
         kind == "close";
}

// `clock`: `same` where the boot clock goes on and the wall clock kept its pace with it, so that
// durations across the gap can be trusted; else `new`.
std::string resumed_body(const Times& times, Stamp now, const VerifyKey& station) {
  nlohmann::json body{{"clock", times.same_run(now.at_ms, now.up_ms) ? "same" : "new"},
                      {"station", text(station)}};
  if (now.at_ms < times.at_ms()) body["back_ms"] = times.at_ms() - now.at_ms;
  return body.dump();
}

}  // namespace

Result<Ready> ready(const Draft& draft) {
  Ready entry{draft.kind, {}};
  if (!is_kind(draft.kind) || !draft.body.is_object()) {
    return Error{Code::bad_input, "a record cannot keep this entry", draft.kind,
                 "its kind is of a-z, 0-9 and '-', its body an object"};
  }
  if (Done put = append_json(draft.body, entry.body); !put) return put.error();
  return entry;
}

void Batch::add(const EntryView& entry) {
  const std::size_t begin = text.size();
  append_entry_line(entry, text);
  const std::size_t size = text.size() - begin;
  parts.push_back({begin, size, size - 1 - entry.body.size(), entry, std::string(entry.kind)});
  text += '\n';
}

void Batch::tell(const std::function<void(const EntryView&)>& sealed) const {
  if (!sealed) return;
  for (const Part& part : parts) {
    EntryView view = part.view;
    view.kind = part.kind;
    view.body = line(part).substr(part.body, part.size - 1 - part.body);
    sealed(view);
  }
}

std::string sealed_text(const Batch& batch, Tree& tree, const std::string& origin,
                        const SigningKey& station) {
  std::vector<Hash> leaves;
  leaves.reserve(batch.parts.size());
  for (const Batch::Part& part : batch.parts) leaves.push_back(leaf_hash(batch.line(part)));
  tree.add(leaves);
  const std::string head = text(Checkpoint{origin, tree.size(), tree.root()});
  return batch.text + checkpoint_line(text(sign_note(head, station))) + '\n';
}

Writer::Core::Core(std::unique_ptr<Device> device, SigningKey station, const Clock& clock,
                   WriterOptions options, Rules rules, Tree tree, const Head& head)
    : device_(std::move(device)),
      station_(std::move(station)),
      clock_(clock),
      options_(std::move(options)),
      origin_(head.origin),
      tree_(std::move(tree)),
      rules_(std::move(rules)),
      head_(head),
      next_(tree_.size()) {
  heads_.push(head_);
  sealer_ = std::thread([this] { run(); });
  keeper_ = std::thread([this] { keep_all(); });
}

Writer::Core::~Core() {
  {
    const std::lock_guard lock(mutex_);
    stop_ = true;
  }
  work_.notify_all();
  sealer_.join();
  keeper_.join();
}

std::optional<Error> Writer::Core::queue_step(Stamp now, Rules& rules, Batch& batch) {
  const auto by = rules.times().step(now.at_ms, now.up_ms);
  if (!by) return std::nullopt;
  const std::string body = "{\"by_ms\":" + std::to_string(*by) + '}';
  const EntryView told{next_ + batch.parts.size(), now.at_ms, now.up_ms, "clock-step", body};
  if (auto why = rules.accept(told, heads_)) return Error{Code::refused, *why, "", ""};
  batch.add(told);
  return std::nullopt;
}

std::optional<Error> Writer::Core::queue_one(const Ready& entry, Stamp now, Rules& rules,
                                             Batch& batch) {
  const bool resumes = entry.kind == "resumed";
  if (resumes) {
    heads_.clear();  // as the verifier does: no sign-off reaches back over a restart
  } else if (auto error = queue_step(now, rules, batch)) {
    return error;
  }
  const std::string resumed =
      resumes ? resumed_body(rules.times(), now, station_.verify_key()) : std::string{};
  const EntryView view{next_ + batch.parts.size(), now.at_ms, now.up_ms, entry.kind,
                       resumes ? resumed : entry.body};
  if (auto why = rules.accept(view, heads_)) {
    return Error{Code::refused, "the record refuses the entry: " + *why, entry.kind, ""};
  }
  batch.add(view);
  if (batch.parts.back().size <= kLongestLine) return std::nullopt;
  return Error{Code::bad_input, "the entry is longer than a record allows", entry.kind, ""};
}

// Either all of them or none: what a refused entry changed in the rules must not stay.
std::optional<Error> Writer::Core::queue(const std::vector<Ready>& entries, Ticket& ticket) {
  const bool plain = std::all_of(entries.begin(), entries.end(), is_plain);
  Rules trial = plain ? Rules{} : rules_;
  Rules& rules = plain ? rules_ : trial;
  Batch batch;
  const Stamp now{clock_.at_ms(), clock_.up_ms()};
  for (const Ready& entry : entries) {
    if (auto error = queue_one(entry, now, rules, batch)) return error;
  }
  if (!plain) rules_ = std::move(trial);
  if (pending_.parts.empty()) oldest_ = std::chrono::steady_clock::now();
  const std::size_t shift = pending_.text.size();
  pending_.text += batch.text;
  for (Batch::Part& part : batch.parts) {
    part.begin += shift;
    pending_.parts.push_back(std::move(part));
  }
  ticket.end = next_ + batch.parts.size();
  ticket.first = ticket.end - entries.size();
  next_ = ticket.end;
  return std::nullopt;
}

Result<Ticket> Writer::Core::append(const std::vector<Draft>& drafts, bool own) {
  std::vector<Ready> entries;
  entries.reserve(drafts.size());
  for (const Draft& draft : drafts) {
    auto entry = ready(draft);
    if (!entry) return entry.error();
    if (!own && is_own_kind(draft.kind)) {
      return Error{Code::usage, "only the writer itself makes this entry", draft.kind, ""};
    }
    entries.push_back(std::move(*entry));
  }
  std::unique_lock lock(mutex_);
  sealed_.wait(lock, [this] { return error_ || pending_.text.size() < kMostQueued; });
  if (error_) return *error_;
  Ticket ticket{next_, next_};
  if (entries.empty()) return ticket;
  if (auto error = queue(entries, ticket)) return *error;
  lock.unlock();
  work_.notify_one();
  return ticket;
}

Done Writer::Core::wait(std::uint64_t end, bool hurry) {
  std::unique_lock lock(mutex_);
  if (hurry && head_.size < end) {
    hurry_ = true;
    work_.notify_one();
  }
  sealed_.wait(lock, [&] { return error_ || head_.size >= end; });
  if (head_.size >= end) return done();
  return *error_;
}

Done Writer::Core::flush() {
  std::uint64_t end = 0;
  {
    const std::lock_guard lock(mutex_);
    end = next_;
  }
  return wait(end, true);
}

Head Writer::Core::head() const {
  const std::lock_guard lock(mutex_);
  return head_;
}

Done Writer::Core::health() const {
  const std::lock_guard lock(mutex_);
  if (error_) return *error_;
  return done();
}

// Waits for a batch that is worth a commit. False at the end of the work.
bool Writer::Core::gather(std::unique_lock<std::mutex>& lock) {
  work_.wait(lock, [this] { return stop_ || !pending_.parts.empty(); });
  if (pending_.parts.empty()) return false;
  work_.wait_until(lock, oldest_ + kGather,
                   [this] { return stop_ || hurry_ || pending_.parts.size() >= kEnough; });
  hurry_ = false;
  return true;
}

// One commit at a time waits for the medium; what comes meanwhile is gathered into the next.
void Writer::Core::run() {
  std::unique_lock lock(mutex_);
  while (gather(lock)) {
    Batch batch = std::exchange(pending_, {});
    if (error_) continue;
    lock.unlock();
    Commitment commit = seal(std::move(batch));
    lock.lock();
    ready_to_keep_ = std::move(commit);
    ready_.notify_all();
    ready_.wait(lock, [this] { return !ready_to_keep_; });
  }
  all_sealed_ = true;
  ready_.notify_all();
}

Writer::Core::Commitment Writer::Core::seal(Batch batch) {
  Commitment commit;
  commit.bytes = sealed_text(batch, tree_, origin_, station_);
  const EntryView& last = batch.parts.back().view;
  commit.head = {origin_, tree_.size(), tree_.root(), last.at_ms, last.up_ms};
  commit.batch = std::move(batch);
  return commit;
}

void Writer::Core::keep_all() {
  std::unique_lock lock(mutex_);
  while (true) {
    ready_.wait(lock, [this] { return ready_to_keep_ || all_sealed_; });
    if (!ready_to_keep_) return;
    const Commitment commit = std::move(*ready_to_keep_);
    ready_to_keep_.reset();
    const bool failed_before = error_.has_value();
    lock.unlock();
    ready_.notify_all();
    if (!failed_before) keep(commit);
    lock.lock();
  }
}

void Writer::Core::keep(const Commitment& commit) {
  Done kept = write_all(*device_, commit.bytes);
  if (kept) kept = device_->sync();
  if (kept) commit.batch.tell(options_.sealed);
  {
    const std::lock_guard lock(mutex_);
    if (kept) {
      head_ = commit.head;
      heads_.push(head_);
    } else {
      error_ = kept.error();
    }
  }
  sealed_.notify_all();
}

}  // namespace walkdown::record
