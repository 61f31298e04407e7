// SPDX-License-Identifier: Apache-2.0
#include "checklist/record/parsed_lines.h"

#include <condition_variable>
#include <deque>
#include <memory>
#include <mutex>
#include <optional>
#include <thread>
#include <utility>
#include <vector>

#include "checklist/record/line_source.h"

namespace walkdown::record {

namespace {

constexpr std::size_t kBlock = std::size_t{1} << 18U;
constexpr std::size_t kMostBlocks = 4;

struct Block {
  struct Line {
    std::size_t begin, size;
    Result<LineView> parsed;  // views into `text`
  };
  std::string text;
  std::vector<Line> lines;
  bool too_long = false;                    // the line behind these
  std::optional<Result<std::string>> over;  // the file's end

  void add(std::string_view line) {
    lines.push_back({text.size(), line.size(), LineView{}});
    text += line;
  }
  [[nodiscard]] std::string_view view(const Line& line) const {
    return std::string_view(text).substr(line.begin, line.size);
  }
  void parse() {
    for (Line& line : lines) line.parsed = parse_line(view(line));
  }
};
using BlockPtr = std::unique_ptr<Block>;

// A short queue between the two threads.
class Blocks {
 public:
  // False where the taker has gone.
  bool put(BlockPtr block) {
    std::unique_lock lock(mutex_);
    changed_.wait(lock, [this] { return gone_ || blocks_.size() < kMostBlocks; });
    if (gone_) return false;
    blocks_.push_back(std::move(block));
    changed_.notify_all();
    return true;
  }
  BlockPtr take() {
    std::unique_lock lock(mutex_);
    changed_.wait(lock, [this] { return !blocks_.empty(); });
    BlockPtr block = std::move(blocks_.front());
    blocks_.pop_front();
    changed_.notify_all();
    return block;
  }
  void go() {
    const std::lock_guard lock(mutex_);
    gone_ = true;
    changed_.notify_all();
  }

 private:
  std::mutex mutex_;
  std::condition_variable changed_;
  std::deque<BlockPtr> blocks_;
  bool gone_ = false;
};

void produce(const std::string& path, Blocks& blocks) {
  auto block = std::make_unique<Block>();
  bool first = true;
  const auto hand_over = [&] {
    block->parse();
    const bool wanted = blocks.put(std::move(block));
    block = std::make_unique<Block>();
    block->text.reserve(kBlock + kBlock / 4);
    return wanted;
  };
  const auto take = [&](std::string_view line) {
    first = false;
    block->add(line);
    return block->text.size() < kBlock || hand_over();
  };
  auto rest = read_lines(path, {take, [&] { return first ? kLongestOpen : kLongestLine; },
                                [&] { block->too_long = true; }});
  block->over = std::move(rest);
  hand_over();
}

// False where the sink has enough.
bool give(const Block& block, const ParsedSink& sink) {
  for (const Block::Line& line : block.lines) {
    if (!sink.line(block.view(line), line.parsed)) return false;
  }
  if (block.too_long) sink.too_long();
  return !block.too_long;
}

}  // namespace

Result<std::string> read_parsed_lines(const std::string& path, const ParsedSink& sink) {
  Blocks blocks;
  std::thread producer([&] { produce(path, blocks); });
  Result<std::string> rest = std::string();
  while (true) {
    const BlockPtr block = blocks.take();
    if (!give(*block, sink)) break;
    if (!block->over) continue;
    rest = *block->over;
    break;
  }
  blocks.go();
  producer.join();
  return rest;
}

}  // namespace walkdown::record
