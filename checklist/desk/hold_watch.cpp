// SPDX-License-Identifier: Apache-2.0
#include "checklist/desk/hold_watch.h"

#include <chrono>
#include <utility>

namespace walkdown::desk {
namespace {

constexpr auto kLook = std::chrono::milliseconds(50);  // one lstat; nobody waits longer for a hold
constexpr auto kAgain = std::chrono::milliseconds(1'000);  // after one that could not be entered

}  // namespace

HoldWatch::HoldWatch(std::string record_path, Enter enter)
    : record_path_(std::move(record_path)), enter_(std::move(enter)) {
  // One that was entered by a program which died before it took the file away is not entered twice.
  if (const auto call = lying_hold_call(record_path_); call && !call->request.empty()) {
    const auto known = hold_entry(record_path_, call->request);
    if (known && *known && !take_hold_call_away(record_path_)) entered_ = call;
  }
  look();
  thread_ = std::thread([this] { run(); });
}

HoldWatch::~HoldWatch() {
  {
    const std::lock_guard lock(mutex_);
    stop_ = true;
  }
  wake_.notify_one();
  thread_.join();
}

void HoldWatch::run() {
  std::unique_lock lock(mutex_);
  while (!wake_.wait_for(lock, failed_ ? kAgain : kLook, [this] { return stop_; })) {
    lock.unlock();
    look();
    lock.lock();
  }
}

void HoldWatch::look() {
  const auto call = lying_hold_call(record_path_);
  if (!call) {
    entered_.reset();
  } else if (call != entered_) {
    take_up(*call);
  }
}

void HoldWatch::take_up(const HoldCall& call) {
  failed_ = !enter_(call).ok();
  if (failed_) return;
  // Another call may have been laid over this one meanwhile: its caller then lays it there again.
  if (!take_hold_call_away(record_path_)) entered_ = call;
}

}  // namespace walkdown::desk
