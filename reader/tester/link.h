// SPDX-License-Identifier: Apache-2.0
// The link to a tester that may be unplugged and plugged in again. It listens; it never writes.
//
// One thread calls next(); any thread, and a signal handler, may call stop(). After an unplugging
// the same device is looked for, by the name it was opened under and by its name in
// /dev/serial/by-id: another device that got the old name is not taken for it.
#pragma once

#include <chrono>
#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

#include "reader/result.h"
#include "reader/tester/descriptor.h"
#include "reader/tester/port.h"
#include "reader/tester/profile.h"

namespace walkdown::tester {

namespace event {
// `bytes` is valid until the next call of next(). `at` is when they were read.
struct Bytes {
  std::string_view bytes;
  std::chrono::steady_clock::time_point at;
};
struct Quiet {  // once per silence: the port is there, nothing comes
  std::chrono::milliseconds since{0};
};
struct Unplugged {};  // told once; the link looks for the device from now on
struct Back {};       // the same device is open again; its first line may lack its beginning
struct Trouble {      // it is back and cannot be opened; told once per reason, and tried again
  Error error;
};
struct TimedOut {};  // the time given to next() is over
struct Stopped {};   // stop() was called; every later next() says the same
}  // namespace event

using Event = std::variant<event::Bytes, event::Quiet, event::Unplugged, event::Back,
                           event::Trouble, event::TimedOut, event::Stopped>;

struct LinkOptions {
  std::chrono::milliseconds quiet_after{3000};
  std::chrono::milliseconds retry_every{200};
  std::string by_id = "/dev/serial/by-id";  // where the stable names are; tests hand in another
};

class Link {
 public:
  using Options = LinkOptions;

  // Errors as Port::open.
  [[nodiscard]] static Result<Link> open(const std::string& path, const PortSettings& settings,
                                         Options options = {});

  // The next thing that happens, or TimedOut. Without a timeout it waits for ever.
  [[nodiscard]] Event next(std::optional<std::chrono::milliseconds> timeout = std::nullopt);

  // Wakes next(), now and for good. Safe from any thread and from a signal handler.
  void stop() const;

  [[nodiscard]] bool plugged() const { return port_.has_value(); }
  // The name it is looked for under: the one in by-id where there is one.
  [[nodiscard]] const std::string& name() const { return stable_.empty() ? path_ : stable_; }

 private:
  using Clock = std::chrono::steady_clock;
  Link() = default;
  std::optional<Event> look(Clock::time_point until);
  std::optional<Event> listen();
  std::optional<Event> reopen();
  [[nodiscard]] Clock::time_point next_deadline() const;

  std::string path_;
  std::string stable_;  // empty where by-id has no name for it
  PortSettings settings_;
  Options options_;
  std::optional<Port> port_;
  Descriptor stop_;
  std::vector<char> buffer_;
  Clock::time_point last_bytes_;
  Clock::time_point next_try_;
  bool quiet_told_ = false;
  std::string trouble_told_;
};

}  // namespace walkdown::tester
