// SPDX-License-Identifier: Apache-2.0
// A bare pseudo-terminal for tests: the master is the instrument, the path is its port. Left as the
// kernel makes it: cooked, with echo on.
#pragma once

#include <fcntl.h>
#include <gtest/gtest.h>
#include <poll.h>
#include <stdlib.h>

#include <array>
#include <string>
#include <string_view>

#include "reader/tester/descriptor.h"

namespace walkdown::tester {

class PtyPair {
 public:
  PtyPair() : master_(::posix_openpt(O_RDWR | O_NOCTTY | O_NONBLOCK | O_CLOEXEC)) {
    EXPECT_TRUE(static_cast<bool>(master_));
    EXPECT_EQ(::grantpt(master_.get()), 0);
    EXPECT_EQ(::unlockpt(master_.get()), 0);
    std::array<char, 64> name{};
    EXPECT_EQ(::ptsname_r(master_.get(), name.data(), name.size()), 0);
    path_ = name.data();
  }

  void say(std::string_view bytes) {
    EXPECT_EQ(::write(master_.get(), bytes.data(), bytes.size()),
              static_cast<ssize_t>(bytes.size()));
  }
  // What came back to the instrument within the time; it must be nothing.
  std::string heard(int wait_ms = 50) {
    std::string all;
    pollfd watched{master_.get(), POLLIN, 0};
    while (::poll(&watched, 1, wait_ms) > 0 && (watched.revents & POLLIN) != 0) {
      std::array<char, 256> bytes{};
      const ssize_t got = ::read(master_.get(), bytes.data(), bytes.size());
      if (got <= 0) break;
      all.append(bytes.data(), static_cast<std::size_t>(got));
    }
    return all;
  }
  void unplug() { master_.reset(); }
  [[nodiscard]] const std::string& path() const { return path_; }
  [[nodiscard]] int master() const { return master_.get(); }

 private:
  Descriptor master_;
  std::string path_;
};

}  // namespace walkdown::tester
