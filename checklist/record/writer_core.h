// SPDX-License-Identifier: Apache-2.0
// The inside of Writer: the queue, a thread that seals what is queued, and one that puts it on the
// medium. So the next commit is hashed and signed while the medium is busy with the one before.
#pragma once

#include <chrono>
#include <condition_variable>
#include <mutex>
#include <optional>
#include <thread>

#include "checklist/record/rules.h"
#include "checklist/record/writer.h"

namespace walkdown::record {

// A draft whose body is text already.
struct Ready {
  std::string kind;
  std::string body;
};
[[nodiscard]] Result<Ready> ready(const Draft& draft);

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
  [[nodiscard]] std::string_view line(const Part& part) const {
    return std::string_view(text).substr(part.begin, part.size);
  }
  // Calls `sealed` for each, in order.
  void tell(const std::function<void(const EntryView&)>& sealed) const;
};

// The batch's lines, and the checkpoint over the tree that now has them.
[[nodiscard]] std::string sealed_text(const Batch& batch, Tree& tree, const std::string& origin,
                                      const SigningKey& station);

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
  std::optional<Error> queue(const std::vector<Ready>& entries, Ticket& ticket);
  std::optional<Error> queue_one(const Ready& entry, Stamp now, Rules& rules, Batch& batch);
  std::optional<Error> queue_step(Stamp now, Rules& rules, Batch& batch);
  void run();
  // A batch as it goes to the medium.
  struct Commitment {
    Batch batch;
    std::string bytes;
    Head head;
  };
  bool gather(std::unique_lock<std::mutex>& lock);
  [[nodiscard]] Commitment seal(Batch batch);
  void keep_all();
  void keep(const Commitment& commit);

  const std::unique_ptr<Device> device_;
  const SigningKey station_;
  const Clock& clock_;
  const WriterOptions options_;
  const std::string origin_;
  Tree tree_;  // of the sealing thread

  mutable std::mutex mutex_;
  std::condition_variable work_, ready_, sealed_;
  Rules rules_;
  Heads heads_;
  Head head_;
  Batch pending_;
  std::uint64_t next_ = 0;  // n of the next entry
  std::chrono::steady_clock::time_point oldest_;
  std::optional<Error> error_;
  bool hurry_ = false;
  bool stop_ = false;
  std::optional<Commitment> ready_to_keep_;
  bool all_sealed_ = false;  // nothing more comes to keep
  std::thread sealer_, keeper_;
};

}  // namespace walkdown::record
