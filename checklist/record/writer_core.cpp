// SPDX-License-Identifier: Apache-2.0
#include "checklist/record/writer_core.h"

#include <algorithm>
#include <utility>

#include "checklist/record/checkpoint.h"
#include "checklist/record/json_text.h"
#include "checklist/record/sha256_many.h"

namespace walkdown::record {

namespace {

constexpr auto kGather = std::chrono::milliseconds{4};
constexpr auto kQuickMedium = std::chrono::microseconds{200};
constexpr std::size_t kEnough = 64;                          // entries that are worth a commit
constexpr std::size_t kMostQueued = std::size_t{32} << 20U;  // bytes; then append() waits

// The rules change only by others than these, so nothing would have to be undone for them.
bool is_plain(const Ready::Part& entry) {
  return is_plain_kind(entry.kind) && entry.size < kLongestLine / 2;
}

// What the writer tells of itself, nobody else may.
bool is_own_kind(std::string_view kind) {
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

Done Ready::add(const Draft& draft) {
  if (!is_kind(draft.kind) || !draft.body.is_object()) {
    return Error{Code::bad_input, "a record cannot keep this entry", draft.kind,
                 "its kind is of a-z, 0-9 and '-', its body an object"};
  }
  const std::size_t begin = text.size();
  if (Done put = append_json(draft.body, text); !put) return put.error();
  parts.push_back({draft.kind, begin, text.size() - begin});
  return done();
}

void Batch::add(const EntryView& entry) {
  const std::size_t begin = text.size();
  append_entry_line(entry, text);
  const std::size_t size = text.size() - begin;
  parts.push_back({begin, size, size - 1 - entry.body.size(), entry, std::string(entry.kind)});
  text += '\n';
}

void Batch::cut(std::size_t keep) {
  if (keep >= parts.size()) return;
  text.resize(parts[keep].begin);
  parts.resize(keep);
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

void seal(Batch& batch, Tree& tree, const std::string& origin, const SigningKey& station) {
  const auto size_of = [](const Batch::Part& part) { return padded_size(part.size + 1); };
  std::size_t size = 0;
  for (const Batch::Part& part : batch.parts) size += size_of(part);
  std::string messages(size, '\0');
  std::vector<Padded> padded;
  padded.reserve(batch.parts.size());
  char* at = messages.data();
  for (const Batch::Part& part : batch.parts) {
    *at = kLeafPrefix;
    batch.line(part).copy(at + 1, part.size);
    pad(at, part.size + 1);
    padded.push_back({at, part.size + 1});
    at += size_of(part);
  }
  std::vector<Hash> leaves(padded.size());
  sha256_many(padded, leaves);
  tree.add(leaves);
  const std::string head = text(Checkpoint{origin, tree.size(), tree.root()});
  batch.text += checkpoint_line(text(sign_note(head, station)));
  batch.text += '\n';
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
      begin_(tree_.size()) {
  heads_.push(head_);
  thread_ = std::thread([this] { run(); });
}

Writer::Core::~Core() {
  {
    const std::lock_guard lock(mutex_);
    stop_ = true;
  }
  work_.notify_all();
  thread_.join();
}

std::optional<Error> Writer::Core::queue_step(Stamp now, Rules& rules) {
  const auto by = rules.times().step(now.at_ms, now.up_ms);
  if (!by) return std::nullopt;
  const std::string body = "{\"by_ms\":" + std::to_string(*by) + '}';
  const EntryView told{next(), now.at_ms, now.up_ms, "clock-step", body};
  if (auto why = rules.accept(told, heads_)) return Error{Code::refused, *why, "", ""};
  pending_.add(told);
  return std::nullopt;
}

std::optional<Error> Writer::Core::queue_one(const Item& entry, Rules& rules) {
  const bool resumes = entry.kind == "resumed";
  if (resumes) {
    heads_.clear();  // as the verifier does: no sign-off reaches back over a restart
  } else if (auto error = queue_step(entry.now, rules)) {
    return error;
  }
  const std::string resumed =
      resumes ? resumed_body(rules.times(), entry.now, station_.verify_key()) : std::string{};
  const EntryView view{next(), entry.now.at_ms, entry.now.up_ms, entry.kind,
                       resumes ? resumed : entry.body};
  if (auto why = rules.accept(view, heads_)) {
    return Error{Code::refused, "the record refuses the entry: " + *why, std::string(entry.kind),
                 ""};
  }
  pending_.add(view);
  if (pending_.parts.back().size <= kLongestLine) return std::nullopt;
  return Error{Code::bad_input, "the entry is longer than a record allows", std::string(entry.kind),
               ""};
}

std::optional<Error> Writer::Core::queue_all(const Ready& entries, Rules& rules) {
  const Stamp now{clock_.at_ms(), clock_.up_ms()};
  for (const Ready::Part& entry : entries.parts) {
    if (auto error = queue_one({entry.kind, entries.body(entry), now}, rules)) return error;
  }
  return std::nullopt;
}

// Either all of them or none: what a refused entry changed in the rules must not stay.
std::optional<Error> Writer::Core::queue(const Ready& entries, Ticket& ticket) {
  const bool plain = std::all_of(entries.parts.begin(), entries.parts.end(), is_plain);
  Rules trial = plain ? Rules{} : rules_;
  const std::size_t before = pending_.parts.size();
  if (auto error = queue_all(entries, plain ? rules_ : trial)) {
    pending_.cut(before);
    return error;
  }
  if (!plain) rules_ = std::move(trial);
  if (before == 0) oldest_ = std::chrono::steady_clock::now();
  ticket = {next() - entries.parts.size(), next()};
  return std::nullopt;
}

Result<Ticket> Writer::Core::append(const std::vector<Draft>& drafts, bool own) {
  Ready entries;
  entries.parts.reserve(drafts.size());
  for (const Draft& draft : drafts) {
    if (!own && is_own_kind(draft.kind)) {
      return Error{Code::usage, "only the writer itself makes this entry", draft.kind, ""};
    }
    if (Done added = entries.add(draft); !added) return added.error();
  }
  std::unique_lock lock(mutex_);
  sealed_.wait(lock, [this] { return error_ || pending_.text.size() < kMostQueued; });
  if (error_) return *error_;
  Ticket ticket{next(), next()};
  if (drafts.empty()) return ticket;
  if (auto error = queue(entries, ticket)) return *error;
  seal_ahead(lock);
  lock.unlock();
  work_.notify_one();
  return ticket;
}

// Looks again for as long as a quick medium takes for a commit: to be woken takes as long as that.
void Writer::Core::look_awake(std::uint64_t end) const {
  const auto until = std::chrono::steady_clock::now() + kQuickMedium;
  while (kept_.load(std::memory_order_acquire) < end && std::chrono::steady_clock::now() < until) {
    std::this_thread::yield();
  }
}

Done Writer::Core::wait(std::uint64_t end, bool hurry) {
  std::unique_lock lock(mutex_);
  if (hurry && head_.size < end) {
    hurry_ = true;
    work_.notify_one();
  }
  lock.unlock();
  look_awake(end);
  lock.lock();
  sealed_.wait(lock, [&] { return error_ || head_.size >= end; });
  if (head_.size >= end) return done();
  return *error_;
}

Done Writer::Core::flush() {
  std::uint64_t end = 0;
  {
    const std::lock_guard lock(mutex_);
    end = next();
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

Writer::Core::Commitment Writer::Core::seal_pending(std::unique_lock<std::mutex>& lock) {
  sealing_ = true;
  begin_ = next();
  Commitment commit{std::exchange(pending_, {}), {}};
  lock.unlock();
  seal(commit.batch, tree_, origin_, station_);
  const EntryView& last = commit.batch.parts.back().view;
  commit.head = {origin_, tree_.size(), tree_.root(), last.at_ms, last.up_ms};
  lock.lock();
  sealing_ = false;
  return commit;
}

// One commit is sealed ahead of the medium; what comes then is gathered into the next. Sealing more
// of them, of a hundred entries each, took longer than fewer and larger ones do.
void Writer::Core::seal_ahead(std::unique_lock<std::mutex>& lock) {
  if (sealing_ || ahead_ || pending_.parts.size() < kEnough) return;
  ahead_ = seal_pending(lock);
}

// Whether what is queued should go to the medium now.
bool Writer::Core::due() const {
  return stop_ || hurry_ || pending_.parts.size() >= kEnough ||
         std::chrono::steady_clock::now() >= oldest_ + kGather;
}

// Nothing at the end of the work.
std::optional<Writer::Core::Commitment> Writer::Core::next_commit(
    std::unique_lock<std::mutex>& lock) {
  while (true) {
    if (ahead_) return std::exchange(ahead_, std::nullopt);
    if (sealing_ || (pending_.parts.empty() && !stop_)) {
      work_.wait(lock);
    } else if (pending_.parts.empty()) {
      return std::nullopt;
    } else if (!due()) {
      work_.wait_until(lock, oldest_ + kGather);
    } else {
      hurry_ = false;
      return seal_pending(lock);
    }
  }
}

void Writer::Core::run() {
  std::unique_lock lock(mutex_);
  while (const auto commit = next_commit(lock)) {
    if (error_) continue;
    lock.unlock();
    keep(*commit);
    lock.lock();
  }
}

void Writer::Core::keep(const Commitment& commit) {
  Done kept = write_all(*device_, commit.batch.text);
  if (kept) kept = device_->sync();
  if (kept) commit.batch.tell(options_.sealed);
  {
    const std::lock_guard lock(mutex_);
    if (kept) {
      head_ = commit.head;
      heads_.push(head_);
      kept_.store(head_.size, std::memory_order_release);
    } else {
      error_ = kept.error();
    }
  }
  sealed_.notify_all();
}

}  // namespace walkdown::record
