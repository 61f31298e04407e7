// SPDX-License-Identifier: Apache-2.0
// Entries that have reached the medium and are not folded yet. Any threads. Internal to this
// folder.
#pragma once

#include <functional>
#include <mutex>
#include <string>
#include <vector>

#include "checklist/record/line.h"

namespace walkdown::desk {

class Inbox {
 public:
  void put(const record::EntryView& entry);
  // Hands over what is there, in order. One thread at a time.
  void take(const std::function<void(const record::EntryView&)>& each);

 private:
  struct Kept {
    record::EntryView view;  // its text parts are not used
    std::size_t kind, body;  // bytes
  };
  // Its room is used again and again: a million readings come by here.
  struct Bag {
    std::string text;  // kind and body of each, one after the other
    std::vector<Kept> entries;
  };

  std::mutex mutex_;
  Bag in_;
  Bag out_;  // of whoever takes
};

}  // namespace walkdown::desk
