// SPDX-License-Identifier: Apache-2.0
// Takes up what lies in the hold box (hold_box.h) for as long as a record is open, in a thread of
// its own. Internal to this folder.
#pragma once

#include <condition_variable>
#include <functional>
#include <mutex>
#include <optional>
#include <string>
#include <thread>

#include "checklist/desk/hold_box.h"

namespace walkdown::desk {

class HoldWatch {
 public:
  // Enters one as a hold, and waits for the medium.
  using Enter = std::function<Done(const HoldCall& call)>;

  // What lies there from before is taken up before this returns, unless it is in the record by now.
  HoldWatch(std::string record_path, Enter enter);
  HoldWatch(const HoldWatch&) = delete;
  HoldWatch& operator=(const HoldWatch&) = delete;
  HoldWatch(HoldWatch&&) = delete;
  HoldWatch& operator=(HoldWatch&&) = delete;
  ~HoldWatch();

 private:
  void run();
  void look();
  void take_up(const HoldCall& call);

  const std::string record_path_;
  const Enter enter_;
  std::optional<HoldCall> entered_;  // whose file could not be taken away
  bool failed_ = false;              // the last one could not be entered
  std::mutex mutex_;
  std::condition_variable wake_;
  bool stop_ = false;
  std::thread thread_;
};

}  // namespace walkdown::desk
