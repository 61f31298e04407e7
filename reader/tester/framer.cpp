// SPDX-License-Identifier: Apache-2.0
#include "reader/tester/framer.h"

#include <algorithm>

namespace walkdown::tester {
namespace {

bool carries_nothing(std::string_view text) {
  return text.find_first_not_of(std::string_view(" \t\0", 3)) == std::string_view::npos;
}

}  // namespace

void Framer::feed(std::string_view bytes, const Sink& sink) {
  while (!bytes.empty()) {
    if (swallow_lf_ && bytes.front() == '\n') bytes.remove_prefix(1);
    swallow_lf_ = false;
    const std::size_t stop = bytes.find_first_of("\r\n");
    if (stop == std::string_view::npos) return keep(bytes);
    swallow_lf_ = bytes[stop] == '\r';
    end(bytes.substr(0, stop), Ending::terminated, sink);
    bytes.remove_prefix(stop + 1);
  }
}

void Framer::finish(Ending why, const Sink& sink) {
  if (!held_.empty() || overflowed_) end({}, why, sink);
  swallow_lf_ = false;
  beginning_ = why == Ending::hang_up ? Beginning::unknown : Beginning::whole;
}

void Framer::keep(std::string_view part) {
  const std::size_t room = kMaxLineBytes - held_.size();
  overflowed_ = overflowed_ || part.size() > room;
  held_.append(part.substr(0, room));
}

void Framer::end(std::string_view tail, Ending ending, const Sink& sink) {
  std::string_view text = tail;  // the common case: the whole line lies in the bytes just fed
  if (!held_.empty() || tail.size() > kMaxLineBytes) {
    keep(tail);
    text = held_;
  }
  const Line line{text, ++number_, overflowed_ ? Ending::too_long : ending, beginning_};
  beginning_ = Beginning::whole;
  if (!carries_nothing(text) || overflowed_) sink(line);
  held_.clear();
  overflowed_ = false;
}

}  // namespace walkdown::tester
