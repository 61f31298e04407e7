// SPDX-License-Identifier: Apache-2.0
#include "checklist/record/parsed_lines.h"

#include <array>
#include <condition_variable>
#include <mutex>
#include <thread>
#include <utility>

#include "checklist/record/line_block.h"

namespace walkdown::record {

namespace {

constexpr std::size_t kWorkers = 2;
constexpr std::size_t kBlocksEach = 3;

// One thread's blocks on their way: filled, taken in turn, and filled again.
class Lane {
 public:
  // Nothing where the taker has gone.
  LineBlock* empty() {
    std::unique_lock lock(mutex_);
    changed_.wait(lock, [this] { return gone_ || filled_ < kBlocksEach; });
    return gone_ ? nullptr : &blocks_[next_in_];
  }
  void put() {
    const std::lock_guard lock(mutex_);
    next_in_ = (next_in_ + 1) % kBlocksEach;
    ++filled_;
    changed_.notify_all();
  }
  LineBlock& take() {
    std::unique_lock lock(mutex_);
    changed_.wait(lock, [this] { return filled_ > 0; });
    return blocks_[next_out_];
  }
  void give_back() {
    blocks_[next_out_].clear();
    const std::lock_guard lock(mutex_);
    next_out_ = (next_out_ + 1) % kBlocksEach;
    --filled_;
    changed_.notify_all();
  }
  void go() {
    const std::lock_guard lock(mutex_);
    gone_ = true;
    changed_.notify_all();
  }

 private:
  std::mutex mutex_;
  std::condition_variable changed_;
  std::array<LineBlock, kBlocksEach> blocks_;
  std::size_t next_in_ = 0, next_out_ = 0, filled_ = 0;
  bool gone_ = false;
};

// Whose turn it is to read on: the file is read in order, whoever parses.
class Turns {
 public:
  Turns(const RecordFile& file, Bodies bodies) : file_(file), bodies_(bodies) {}

  // Fills blocks of `lane` in its turns until the file ends, or the taker has gone.
  void work(std::size_t mine, Lane& lane) {
    while (LineBlock* const block = lane.empty()) {
      if (!fill(mine, *block)) return;
      block->parse(bodies_);
      block->hash();
      lane.put();
    }
    stop();
  }

 private:
  bool fill(std::size_t mine, LineBlock& block) {
    std::unique_lock lock(mutex_);
    changed_.wait(lock, [&] { return over_ || turn_ == mine; });
    if (over_) return false;
    block.fill(file_, longest_, rest_);
    longest_ = kLongestLine;
    over_ = block.over() || block.too_long();
    turn_ = (turn_ + 1) % kWorkers;
    changed_.notify_all();
    return true;
  }
  void stop() {
    const std::lock_guard lock(mutex_);
    over_ = true;
    changed_.notify_all();
  }

  const RecordFile& file_;
  Bodies bodies_;
  std::mutex mutex_;
  std::condition_variable changed_;
  std::size_t turn_ = 0, longest_ = kLongestOpen;
  std::string rest_;
  bool over_ = false;
};

// False where the sink has enough.
bool give(const LineBlock& block, const ParsedSink& sink) {
  auto other = block.others().begin();
  const Hash* leaf = block.leaves().data();
  for (const LineBlock::Line& line : block.lines()) {
    const bool more = line.entry ? sink.entry(block.view(line), block.entry(line), *leaf++)
                                 : sink.other(block.view(line), *other++);
    if (!more) return false;
  }
  if (block.too_long()) sink.too_long();
  return !block.too_long();
}

Result<std::string> take_all(std::array<Lane, kWorkers>& lanes, const ParsedSink& sink) {
  for (std::size_t turn = 0;; turn = (turn + 1) % kWorkers) {
    const LineBlock& block = lanes[turn].take();
    if (!give(block, sink)) return std::string{};
    if (block.over()) return *block.over();
    lanes[turn].give_back();
  }
}

}  // namespace

Result<std::string> read_parsed_lines(const std::string& path, Bodies bodies,
                                      const ParsedSink& sink) {
  const auto file = RecordFile::open(path);
  if (!file) return file.error();
  Turns turns(*file, bodies);
  std::array<Lane, kWorkers> lanes;
  std::array<std::thread, kWorkers> workers;
  for (std::size_t i = 0; i < kWorkers; ++i) {
    workers[i] = std::thread([&turns, &lanes, i] { turns.work(i, lanes[i]); });
  }
  auto rest = take_all(lanes, sink);
  for (Lane& lane : lanes) lane.go();
  for (std::thread& worker : workers) worker.join();
  return rest;
}

}  // namespace walkdown::record
