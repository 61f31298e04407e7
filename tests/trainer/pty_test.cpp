// SPDX-License-Identifier: Apache-2.0
// The simulated tester against the real link: what the demo and every training run do.
#include "reader/trainer/pty.h"

#include <gtest/gtest.h>

#include <filesystem>
#include <thread>

#include "reader/tester/framer.h"
#include "reader/tester/link.h"

namespace walkdown::trainer {
namespace {

using namespace std::chrono_literals;
using tester::Framer;
using tester::Line;
using tester::Link;
namespace event = tester::event;

std::unique_ptr<TesterPty> opened(double lines_per_s = 0) {
  auto pty = TesterPty::open(lines_per_s);
  EXPECT_TRUE(pty.ok()) << (pty.ok() ? "" : pty.error().sentence());
  return *std::move(pty);
}

class Listener {
 public:
  explicit Listener(const std::string& path) : link_(*Link::open(path, {}, {10s, 5ms, "/none"})) {}

  // Listens until n lines have come in all, or something else happens.
  bool until(std::size_t n) {
    while (lines.size() < n) {
      const tester::Event happened = link_.next(5s);
      const auto* bytes = std::get_if<event::Bytes>(&happened);
      if (bytes == nullptr) return false;
      framer_.feed(bytes->bytes, [&](const Line& line) { lines.emplace_back(line.text); });
    }
    return true;
  }
  template <typename T>
  bool next_is() {
    return std::holds_alternative<T>(link_.next(5s));
  }
  std::vector<std::string> lines;

 private:
  Link link_;
  Framer framer_;
};

std::vector<std::string> numbered(int n) {
  std::vector<std::string> lines;
  for (int i = 0; i < n; ++i) lines.push_back("line " + std::to_string(i));
  return lines;
}

// It makes up for what it overslept, and not for what it was not asked for.
TEST(TesterPty, IsNoFasterThanItsRateAfterAPause) {
  const auto pty = opened(500);
  Listener listener(pty->path());
  pty->send(numbered(1));
  ASSERT_TRUE(listener.until(1));
  std::this_thread::sleep_for(60ms);
  const auto begin = std::chrono::steady_clock::now();
  pty->send(numbered(101));
  ASSERT_TRUE(listener.until(102));
  EXPECT_GE(std::chrono::steady_clock::now() - begin, 195ms);
}

TEST(TesterPty, EveryLineArrivesInOrder) {
  const auto pty = opened();
  Listener listener(pty->path());
  pty->send(numbered(5000));
  ASSERT_TRUE(listener.until(5000));
  EXPECT_EQ(listener.lines, numbered(5000));
}

TEST(TesterPty, SpeaksBeforeAnyoneListens) {
  const auto pty = opened();
  pty->send({"early"});
  std::this_thread::sleep_for(20ms);
  Listener listener(pty->path());
  ASSERT_TRUE(listener.until(1));
  EXPECT_EQ(listener.lines[0], "early");
}

TEST(TesterPty, KnowsWhenItsReaderHasReadAll) {
  const auto pty = opened();
  EXPECT_TRUE(pty->wait_until_read(100ms));
  pty->send(numbered(10));
  EXPECT_FALSE(pty->wait_until_read(50ms));
  Listener listener(pty->path());
  ASSERT_TRUE(listener.until(10));
  EXPECT_TRUE(pty->wait_until_read(5s));
}

TEST(TesterPty, LosesNothingWhenItCloses) {
  auto pty = opened();
  Listener listener(pty->path());
  pty->send(numbered(2000));
  std::thread closing([&] { pty.reset(); });
  EXPECT_TRUE(listener.until(2000));
  closing.join();
  EXPECT_TRUE(listener.next_is<event::Unplugged>());
}

TEST(TesterPty, ComesBackUnderTheSameName) {
  const auto pty = opened();
  const std::string path = pty->path();
  Listener listener(path);
  pty->unplug();
  EXPECT_TRUE(listener.next_is<event::Unplugged>());
  EXPECT_FALSE(std::filesystem::exists(path));
  pty->send({"kept"});
  ASSERT_TRUE(pty->replug().ok());
  EXPECT_EQ(pty->path(), path);
  EXPECT_TRUE(listener.next_is<event::Back>());
  ASSERT_TRUE(listener.until(1));
  EXPECT_EQ(listener.lines[0], "kept");
}

TEST(TesterPty, KeepsItsRate) {
  const auto pty = opened(200);
  Listener listener(pty->path());
  const auto start = std::chrono::steady_clock::now();
  pty->send(numbered(21));
  ASSERT_TRUE(listener.until(21));
  // twenty gaps of 5 ms: it may be later on a busy machine, never earlier
  EXPECT_GE(std::chrono::steady_clock::now() - start, 95ms);
  pty->set_rate(0);
  pty->send(numbered(100));
  EXPECT_TRUE(listener.until(121));
}

TEST(TesterPty, LeavesNoFolderBehind) {
  std::filesystem::path folder;
  {
    const auto pty = opened();
    folder = std::filesystem::path(pty->path()).parent_path();
    EXPECT_TRUE(std::filesystem::exists(folder));
  }
  EXPECT_FALSE(std::filesystem::exists(folder));
}

}  // namespace
}  // namespace walkdown::trainer
