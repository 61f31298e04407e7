// SPDX-License-Identifier: Apache-2.0
#include "reader/tester/link.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <unistd.h>

#include <filesystem>
#include <future>
#include <optional>
#include <thread>

#include "tests/tester/pty_pair.h"

namespace walkdown::tester {
namespace {

namespace fs = std::filesystem;
using namespace std::chrono_literals;

// A name that leads to one pseudo-terminal after the other, as by-id does.
class LinkTest : public ::testing::Test {
 protected:
  LinkTest() {
    fs::remove_all(folder);
    fs::create_directories(folder / "by-id");
    plug();
  }
  ~LinkTest() override { fs::remove_all(folder); }
  void plug() {
    pty.emplace();
    fs::create_symlink(pty->path(), name);
  }
  void unplug() {
    fs::remove(name);
    pty->unplug();
  }
  Link open(std::chrono::milliseconds quiet = 10s) {
    auto link = Link::open(name.string(), {}, {quiet, 5ms, (folder / "by-id").string()});
    EXPECT_TRUE(link.ok()) << (link.ok() ? "" : link.error().sentence());
    return *std::move(link);
  }

  fs::path folder = fs::path(::testing::TempDir()) / ("link_" + std::to_string(::getpid()));
  fs::path name = folder / "tester";
  std::optional<PtyPair> pty;
};

template <typename T>
bool is(const Event& event) {
  return std::holds_alternative<T>(event);
}

std::string bytes(const Event& event) {
  const auto* got = std::get_if<event::Bytes>(&event);
  return got != nullptr ? std::string(got->bytes) : "(no bytes)";
}

TEST_F(LinkTest, YieldsBytes) {
  Link link = open();
  pty->say("abc\n");
  EXPECT_EQ(bytes(link.next(5s)), "abc\n");
  EXPECT_TRUE(is<event::TimedOut>(link.next(1ms)));
}

TEST_F(LinkTest, TellsASilenceOnce) {
  Link link = open(20ms);
  const Event quiet = link.next(5s);
  ASSERT_TRUE(is<event::Quiet>(quiet));
  EXPECT_GE(std::get<event::Quiet>(quiet).since, 20ms);
  EXPECT_TRUE(is<event::TimedOut>(link.next(60ms)));
  pty->say("x");
  EXPECT_EQ(bytes(link.next(5s)), "x");
  EXPECT_TRUE(is<event::Quiet>(link.next(5s)));
}

TEST_F(LinkTest, TellsUnpluggedFromSilentAndComesBack) {
  Link link = open();
  unplug();
  EXPECT_TRUE(is<event::Unplugged>(link.next(5s)));
  EXPECT_FALSE(link.plugged());
  EXPECT_TRUE(is<event::TimedOut>(link.next(30ms)));
  plug();
  EXPECT_TRUE(is<event::Back>(link.next(5s)));
  EXPECT_TRUE(link.plugged());
  pty->say("again\n");
  EXPECT_EQ(bytes(link.next(5s)), "again\n");
  EXPECT_EQ(pty->heard(), "");
}

TEST_F(LinkTest, ComesBackTenTimes) {
  Link link = open();
  for (int i = 0; i < 10; ++i) {
    unplug();
    ASSERT_TRUE(is<event::Unplugged>(link.next(5s))) << i;
    plug();
    ASSERT_TRUE(is<event::Back>(link.next(5s))) << i;
  }
}

TEST_F(LinkTest, DoesNotTakeAnotherDeviceForTheSame) {
  const fs::path stable = folder / "by-id" / "the-tester";
  fs::create_symlink(pty->path(), stable);
  Link link = open();
  EXPECT_EQ(link.name(), stable.string());
  fs::remove(stable);
  unplug();
  EXPECT_TRUE(is<event::Unplugged>(link.next(5s)));
  plug();  // the old name is back, and leads to something else
  EXPECT_TRUE(is<event::TimedOut>(link.next(50ms)));
  fs::create_symlink(pty->path(), stable);
  EXPECT_TRUE(is<event::Back>(link.next(5s)));
}

TEST_F(LinkTest, TellsOnceWhyItCannotComeBack) {
  Link link = open();
  unplug();
  EXPECT_TRUE(is<event::Unplugged>(link.next(5s)));
  fs::create_symlink("/dev/null", name);
  const Event trouble = link.next(5s);
  ASSERT_TRUE(is<event::Trouble>(trouble));
  EXPECT_THAT(std::get<event::Trouble>(trouble).error.sentence(),
              ::testing::HasSubstr("not a serial port"));
  EXPECT_TRUE(is<event::TimedOut>(link.next(50ms)));
}

TEST_F(LinkTest, StopsFromAnotherThread) {
  Link link = open();
  auto waiting = std::async(std::launch::async, [&] { return is<event::Stopped>(link.next()); });
  std::this_thread::sleep_for(20ms);
  link.stop();
  ASSERT_EQ(waiting.wait_for(5s), std::future_status::ready);
  EXPECT_TRUE(waiting.get());
  EXPECT_TRUE(is<event::Stopped>(link.next(5s)));
}

TEST_F(LinkTest, StopsWhileUnplugged) {
  Link link = open();
  unplug();
  EXPECT_TRUE(is<event::Unplugged>(link.next(5s)));
  std::thread other([&] { link.stop(); });
  EXPECT_TRUE(is<event::Stopped>(link.next(5s)));
  other.join();
}

TEST_F(LinkTest, LosesNothingOfAFastStream) {
  Link link = open();
  constexpr int kLines = 20'000;
  std::thread tester([&] {
    const int master = pty->master();
    std::string all;
    for (int i = 0; i < kLines; ++i) all += std::to_string(i) + "\n";
    std::string_view left = all;
    while (!left.empty()) {
      const ssize_t sent = ::write(master, left.data(), left.size());
      if (sent > 0) left.remove_prefix(static_cast<std::size_t>(sent));
      if (sent < 0) std::this_thread::sleep_for(100us);
    }
  });
  std::string got;
  std::string expected;
  for (int i = 0; i < kLines; ++i) expected += std::to_string(i) + "\n";
  while (got.size() < expected.size()) {
    const Event event = link.next(10s);
    ASSERT_TRUE(is<event::Bytes>(event));
    got += bytes(event);
  }
  tester.join();
  EXPECT_EQ(got, expected);
}

TEST_F(LinkTest, CannotOpenWhatIsNotThere) {
  EXPECT_FALSE(Link::open((folder / "none").string(), {}).ok());
}

}  // namespace
}  // namespace walkdown::tester
