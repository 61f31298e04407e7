// SPDX-License-Identifier: Apache-2.0
// The inside of Writer: the queue, and a thread that puts it on the medium. Who appends a commit's
// worth seals it too, while the medium is busy with the commit before; what nobody sealed in time
// the thread seals. A thread of its own for sealing was one more to be woken at every commit, and
// on an idle machine waking three one after the other took as long as the medium did.
#pragma once

#include <atomic>
#include <chrono>
#include <condition_variable>
#include <mutex>
#include <optional>
#include <thread>

#include "checklist/record/rules.h"
#include "checklist/record/writer.h"

namespace walkdown::record {

// Drafts whose bodies are text already. The drafts must live on.
struct Ready {
  struct Part {
    std::string_view kind;
    std::size_t begin, size;  // of the body in `text`
  };
  std::string text;  // one after the other: a reading's own allocation would cost more than it
  std::vector<Part> parts;

  // bad_input: a body that a record cannot hold.
  Done add(const Draft& draft);
  [[nodiscard]] std::string_view body(const Part& part) const {
    return std::string_view(text).substr(part.begin, part.size);
  }
};

struct Stamp {
  std::int64_t at_ms = 0;
  std::int64_t up_ms = 0;
};

// Lines that go into one commit.
struct Batch {
  struct Part {
    std::size_t begin, size;  // of the line in `text`, without LF
    std::size_t body;         // where the body begins in the line
    EntryView view;           // its text parts are not used
    std::string kind;
  };
  std::string text;
  std::vector<Part> parts;

  void add(const EntryView& entry);
  // Back to the first so many parts.
  void cut(std::size_t keep);
  [[nodiscard]] std::string_view line(const Part& part) const {
    return std::string_view(text).substr(part.begin, part.size);
  }
  // Calls `sealed` for each, in order.
  void tell(const std::function<void(const EntryView&)>& sealed) const;
};

// Takes the batch's lines into the tree and writes the checkpoint over it behind them.
void seal(Batch& batch, Tree& tree, const std::string& origin, const SigningKey& station);

class Writer::Core {
 public:
  Core(std::unique_ptr<Device> device, SigningKey station, const Clock& clock,
       WriterOptions options, Rules rules, Tree tree, const Head& head);
  Core(const Core&) = delete;
  Core& operator=(const Core&) = delete;
  Core(Core&&) = delete;
  Core& operator=(Core&&) = delete;
  ~Core();

  // `own`: entries that only the writer may make (is_own_kind).
  Result<Ticket> append(const std::vector<Draft>& drafts, bool own = false);
  Done wait(std::uint64_t end, bool hurry);
  Done flush();
  [[nodiscard]] Head head() const;
  [[nodiscard]] Done health() const;

 private:
  // An entry to be queued.
  struct Item {
    std::string_view kind, body;
    Stamp now;
  };
  std::optional<Error> queue(const Ready& entries, Ticket& ticket);
  std::optional<Error> queue_all(const Ready& entries, Rules& rules);
  std::optional<Error> queue_one(const Item& entry, Rules& rules);
  std::optional<Error> queue_step(Stamp now, Rules& rules);
  [[nodiscard]] std::uint64_t next() const { return begin_ + pending_.parts.size(); }
  // A batch as it goes to the medium.
  struct Commitment {
    Batch batch;  // its text with the checkpoint
    Head head;
  };
  // These hold the lock when called and when they return, and let go of it meanwhile.
  Commitment seal_pending(std::unique_lock<std::mutex>& lock);
  void seal_ahead(std::unique_lock<std::mutex>& lock);
  std::optional<Commitment> next_commit(std::unique_lock<std::mutex>& lock);
  [[nodiscard]] bool due() const;
  void look_awake(std::uint64_t end) const;
  void run();
  void keep(const Commitment& commit);

  const std::unique_ptr<Device> device_;
  const SigningKey station_;
  const Clock& clock_;
  const WriterOptions options_;
  const std::string origin_;
  Tree tree_;  // of whoever is sealing

  mutable std::mutex mutex_;
  std::condition_variable work_, sealed_;
  Rules rules_;
  Heads heads_;
  Head head_;
  Batch pending_;
  std::uint64_t begin_ = 0;  // n of the first entry in pending_, or of the next
  std::chrono::steady_clock::time_point oldest_;
  std::atomic<std::uint64_t> kept_ = 0;  // entries on the medium, as in head_
  std::optional<Error> error_;
  bool hurry_ = false;
  bool stop_ = false;
  bool sealing_ = false;             // somebody is
  std::optional<Commitment> ahead_;  // sealed, the next for the medium
  std::thread thread_;
};

}  // namespace walkdown::record
