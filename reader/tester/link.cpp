// SPDX-License-Identifier: Apache-2.0
#include "reader/tester/link.h"

#include <poll.h>
#include <sys/eventfd.h>

#include <algorithm>
#include <array>
#include <cerrno>

#include "reader/tester/port_errors.h"
#include "reader/tester/ports.h"

namespace walkdown::tester {
namespace {

using std::chrono::milliseconds;

constexpr std::size_t kBufferBytes = 65536;
constexpr short kGone = POLLHUP | POLLERR | POLLNVAL;

int poll_ms(std::chrono::steady_clock::time_point until) {
  const auto left =
      std::chrono::ceil<milliseconds>(until - std::chrono::steady_clock::now()).count();
  return static_cast<int>(std::clamp<long>(left, 0, 3'600'000));
}

}  // namespace

Result<Link> Link::open(const std::string& path, const PortSettings& settings, Options options) {
  Result<Port> port = Port::open(path, settings);
  if (!port) return port.error();
  Link link;
  link.stop_ = Descriptor(::eventfd(0, EFD_CLOEXEC | EFD_NONBLOCK));
  if (!link.stop_) return cannot_open(path, errno);
  link.path_ = path;
  link.stable_ = stable_name(path, options.by_id);
  link.settings_ = settings;
  link.options_ = std::move(options);
  link.port_ = *std::move(port);
  link.buffer_.resize(kBufferBytes);
  link.last_bytes_ = Clock::now();
  return link;
}

void Link::stop() const { ::eventfd_write(stop_.get(), 1); }

Event Link::next(std::optional<milliseconds> timeout) {
  // A day is for ever here: the loop begins anew.
  const auto until = Clock::now() + timeout.value_or(std::chrono::hours(24));
  while (true) {
    if (auto happened = look(until)) return *std::move(happened);
    if (timeout && Clock::now() >= until) return event::TimedOut{};
  }
}

Link::Clock::time_point Link::next_deadline() const {
  if (!port_) return next_try_;
  return quiet_told_ ? Clock::time_point::max() : last_bytes_ + options_.quiet_after;
}

// Sleeps until something is there, or until the earlier of `until` and our own next deadline.
std::optional<Event> Link::look(Clock::time_point until) {
  std::array<pollfd, 2> watched{{{stop_.get(), POLLIN, 0}, {port_ ? port_->fd() : -1, POLLIN, 0}}};
  const int ready =
      ::poll(watched.data(), watched.size(), poll_ms(std::min(until, next_deadline())));
  if (ready > 0 && watched[0].revents != 0) return event::Stopped{};
  if (!port_) return Clock::now() >= next_try_ ? reopen() : std::nullopt;
  if (ready > 0 && watched[1].revents != 0) {
    // What was sent before the hang-up is read first, so long as the kernel still has it.
    if (auto bytes = listen()) return bytes;
    if ((watched[1].revents & kGone) == 0) return std::nullopt;
    port_.reset();
  }
  if (!port_) {
    next_try_ = Clock::now() + options_.retry_every;
    return event::Unplugged{};
  }
  const auto silent = Clock::now() - last_bytes_;
  if (quiet_told_ || silent < options_.quiet_after) return std::nullopt;
  quiet_told_ = true;
  return event::Quiet{std::chrono::duration_cast<milliseconds>(silent)};
}

// Bytes, or nothing; closes the port where it is gone.
std::optional<Event> Link::listen() {
  const Port::Got got = port_->read(buffer_);
  if (got.state == Port::State::bytes) {
    last_bytes_ = Clock::now();
    quiet_told_ = false;
    return event::Bytes{{buffer_.data(), got.bytes}, last_bytes_};
  }
  if (got.state == Port::State::gone) port_.reset();
  return std::nullopt;
}

std::optional<Event> Link::reopen() {
  next_try_ = Clock::now() + options_.retry_every;
  // Without its stable name it is not there, whatever stands under the old path now.
  Result<Port> port = Port::open(name(), settings_);
  if (!port) {
    const bool absent = ::access(name().c_str(), F_OK) != 0;
    if (absent || port.error().what == trouble_told_) return std::nullopt;
    trouble_told_ = port.error().what;
    return event::Trouble{port.error()};
  }
  port_ = *std::move(port);
  last_bytes_ = Clock::now();
  quiet_told_ = false;
  trouble_told_.clear();
  return event::Back{};
}

}  // namespace walkdown::tester
