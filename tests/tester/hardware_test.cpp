// SPDX-License-Identifier: Apache-2.0
// The path through libserialport, on a pseudo-terminal that seems to have modem lines. The library
// takes names below /dev alone and looks each up in /sys/class/tty; a name that climbs out of both
// leads it to the link that the test made.
#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <termios.h>
#include <unistd.h>

#include <array>
#include <filesystem>

#include "reader/tester/port.h"
#include "reader/tester/port_errors.h"
#include "tests/tester/modem_lines.h"
#include "tests/tester/pty_pair.h"

namespace walkdown::tester {
namespace {

namespace fs = std::filesystem;

class Hardware : public ::testing::Test {
 protected:
  Hardware() { fs::create_symlink(pty.path(), link); }
  void SetUp() override {
    if (!fs::exists("/sys/class/tty"))
      GTEST_SKIP() << "the library looks ports up in /sys: mount it";
  }
  ~Hardware() override { fs::remove(link); }
  [[nodiscard]] std::string path() const { return "/dev/../../.." + link.string(); }

  PtyPair pty;
  fs::path link = fs::path("/tmp") / ("walkdown_port_" + std::to_string(::getpid()));
  ModemLines modem_lines;
};

TEST_F(Hardware, ReadsThroughTheLibrary) {
  auto port = Port::open_hardware(path(), {19200, 8, Parity::none, 1});
  ASSERT_TRUE(port.ok()) << port.error().sentence();
  EXPECT_TRUE(port->by_libserialport());
  pty.say("M07,R2,P05,2.31,ohm\r\n\x11\x13");
  std::array<char, 64> bytes{};
  const Port::Got got = port->read(bytes);
  EXPECT_EQ(std::string_view(bytes.data(), got.bytes), "M07,R2,P05,2.31,ohm\r\n\x11\x13");
  EXPECT_EQ(port->read(bytes).state, Port::State::empty);
  EXPECT_EQ(pty.heard(), "");
  EXPECT_EQ(sending_requests(), 0);
}

TEST_F(Hardware, IsSilentReadOnlyAndWithoutFlowControl) {
  auto port = Port::open_hardware(path(), {19200, 8, Parity::none, 1});
  ASSERT_TRUE(port.ok()) << port.error().sentence();
  EXPECT_EQ(::write(port->fd(), "x", 1), -1);
  EXPECT_EQ(::fcntl(port->fd(), F_GETFL) & O_ACCMODE, O_RDONLY);
  EXPECT_NE(::fcntl(port->fd(), F_GETFD) & FD_CLOEXEC, 0);
  termios now{};
  ASSERT_EQ(::tcgetattr(port->fd(), &now), 0);
  EXPECT_EQ(now.c_iflag & (IXON | IXOFF | IXANY), 0U);
  EXPECT_EQ(now.c_cflag & (HUPCL | CRTSCTS), 0U);
  EXPECT_EQ(now.c_lflag & (ECHO | ICANON), 0U);
  EXPECT_EQ(::cfgetispeed(&now), static_cast<speed_t>(B19200));
}

TEST_F(Hardware, ASecondOpenerIsTold) {
  auto first = Port::open_hardware(path(), {});
  ASSERT_TRUE(first.ok()) << first.error().sentence();
  EXPECT_EQ(Port::open_hardware(path(), {}).error().code, Code::busy);
  EXPECT_EQ(Port::open(pty.path(), {}).error().code, Code::busy);
}

TEST_F(Hardware, TellsGoneFromEmpty) {
  auto port = Port::open_hardware(path(), {});
  ASSERT_TRUE(port.ok());
  pty.unplug();
  std::array<char, 16> bytes{};
  EXPECT_EQ(port->read(bytes).state, Port::State::gone);
}

TEST(PortErrors, NameTheGroupThatMay) {
  const std::string say = cannot_open("/dev/null", EACCES).sentence();
  EXPECT_THAT(say, ::testing::HasSubstr("belongs to the group root"));
  EXPECT_THAT(say, ::testing::HasSubstr("usermod -aG root"));
  EXPECT_THAT(cannot_open("/no/such", EACCES).sentence(), ::testing::HasSubstr("no permission"));
}

}  // namespace
}  // namespace walkdown::tester
