// SPDX-License-Identifier: Apache-2.0
#include "reader/tester/port.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <termios.h>

#include <array>
#include <fstream>
#include <string>

#include "tests/tester/modem_lines.h"
#include "tests/tester/pty_pair.h"

namespace walkdown::tester {
namespace {

using ::testing::HasSubstr;

std::string take(Port& port) {
  std::array<char, 4096> bytes{};
  pollfd watched{port.fd(), POLLIN, 0};
  ::poll(&watched, 1, 1000);
  const Port::Got got = port.read(bytes);
  return {bytes.data(), got.bytes};
}

// The kernel's own word on how a descriptor is open: proc(5), fdinfo, octal flags.
unsigned long open_flags(int fd) {
  std::ifstream info("/proc/self/fdinfo/" + std::to_string(fd));
  std::string word;
  while (info >> word) {
    if (word == "flags:" && info >> word) return std::stoul(word, nullptr, 8);
  }
  return O_RDWR;
}

TEST(PortTest, ReadsWhatTheTesterSends) {
  PtyPair pty;
  auto port = Port::open(pty.path(), {});
  ASSERT_TRUE(port.ok()) << port.error().sentence();
  pty.say("M07,R2,P05,2.31,ohm\r\n");
  EXPECT_EQ(take(*port), "M07,R2,P05,2.31,ohm\r\n");
  std::array<char, 16> bytes{};
  EXPECT_EQ(port->read(bytes).state, Port::State::empty);
  EXPECT_FALSE(port->by_libserialport());
}

TEST(PortTest, IsOpenForReadingAlone) {
  PtyPair pty;
  auto port = Port::open(pty.path(), {});
  ASSERT_TRUE(port.ok());
  const unsigned long flags = open_flags(port->fd());
  EXPECT_EQ(flags & O_ACCMODE, static_cast<unsigned long>(O_RDONLY));
  EXPECT_NE(flags & O_CLOEXEC, 0U);
  EXPECT_EQ(::write(port->fd(), "x", 1), -1);
}

TEST(PortTest, NotOneByteReachesTheTester) {
  PtyPair pty;
  {
    auto port = Port::open(pty.path(), {});
    ASSERT_TRUE(port.ok());
    pty.say("M07,R2,P05,2.31,ohm\r\n\x03\x04\x11\x13\x1A");
    EXPECT_EQ(take(*port), "M07,R2,P05,2.31,ohm\r\n\x03\x04\x11\x13\x1A");
    EXPECT_EQ(pty.heard(), "");
  }
  EXPECT_EQ(sending_requests(), 0);
}

TEST(PortTest, TheEchoThatIsTestedForIsReal) {
  PtyPair pty;  // left cooked: what the test above would see without raw mode
  const Descriptor cooked(::open(pty.path().c_str(), O_RDONLY | O_NOCTTY | O_CLOEXEC));
  pty.say("x\n");
  EXPECT_NE(pty.heard(), "");
}

TEST(PortTest, LosesNoByteToFlowControl) {
  PtyPair pty;
  auto port = Port::open(pty.path(), {});
  ASSERT_TRUE(port.ok());
  std::string every;
  for (int byte = 0; byte < 256; ++byte) every += static_cast<char>(byte);
  pty.say(every);
  EXPECT_EQ(take(*port), every);
}

TEST(PortTest, SetsTheTerminalAsItSays) {
  PtyPair pty;
  auto port = Port::open(pty.path(), {115200, 8, Parity::none, 1});
  ASSERT_TRUE(port.ok());
  termios now{};
  ASSERT_EQ(::tcgetattr(port->fd(), &now), 0);
  EXPECT_EQ(now.c_lflag & (ECHO | ECHONL | ICANON | ISIG | IEXTEN), 0U);
  EXPECT_EQ(now.c_iflag & (IXON | IXOFF | IXANY | ICRNL | INLCR), 0U);
  EXPECT_EQ(now.c_cflag & (HUPCL | CRTSCTS), 0U);
  EXPECT_EQ(::cfgetispeed(&now), static_cast<speed_t>(B115200));
  EXPECT_EQ(now.c_cc[VMIN], 1);
}

TEST(PortTest, ASecondOpenerIsTold) {
  PtyPair pty;
  auto first = Port::open(pty.path(), {});
  ASSERT_TRUE(first.ok());
  const auto second = Port::open(pty.path(), {});
  ASSERT_FALSE(second.ok());
  EXPECT_EQ(second.error().code, Code::busy);
  EXPECT_THAT(second.error().sentence(), HasSubstr("in use by another program"));
}

TEST(PortTest, IsFreeAgainWhenClosed) {
  PtyPair pty;
  { ASSERT_TRUE(Port::open(pty.path(), {}).ok()); }
  EXPECT_TRUE(Port::open(pty.path(), {}).ok());
}

TEST(PortTest, TellsGoneFromEmpty) {
  PtyPair pty;
  auto port = Port::open(pty.path(), {});
  ASSERT_TRUE(port.ok());
  std::array<char, 16> bytes{};
  EXPECT_EQ(port->read(bytes).state, Port::State::empty);
  pty.unplug();
  EXPECT_EQ(port->read(bytes).state, Port::State::gone);
}

TEST(PortTest, SaysWhatIsWrongWithAPath) {
  EXPECT_THAT(Port::open("/dev/no-such-port", {}).error().sentence(), HasSubstr("is not there"));
  EXPECT_THAT(Port::open("/dev/null", {}).error().sentence(), HasSubstr("not a serial port"));
  EXPECT_THAT(Port::open("/etc/hostname", {}).error().sentence(), HasSubstr("not a serial port"));
  EXPECT_THAT(Port::open("/", {}).error().sentence(), HasSubstr("not a serial port"));
}

TEST(PortTest, SaysWhatTheDriverDoesNotTake) {
  PtyPair pty;  // a pseudo-terminal keeps eight bits whatever it is told
  const auto port = Port::open(pty.path(), {9600, 7, Parity::even, 1});
  ASSERT_FALSE(port.ok());
  EXPECT_THAT(port.error().sentence(), HasSubstr("9600 baud 7E1"));
}

}  // namespace
}  // namespace walkdown::tester
