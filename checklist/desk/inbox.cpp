// SPDX-License-Identifier: Apache-2.0
#include "checklist/desk/inbox.h"

#include <string_view>
#include <utility>

namespace walkdown::desk {
namespace {

constexpr std::size_t kWorthKeeping = std::size_t{1} << 20U;  // bytes; an opening may be far more

}  // namespace

void Inbox::put(const record::EntryView& entry) {
  const std::lock_guard lock(mutex_);
  in_.entries.push_back({entry, entry.kind.size(), entry.body.size()});
  in_.text += entry.kind;
  in_.text += entry.body;
}

void Inbox::take(const std::function<void(const record::EntryView&)>& each) {
  {
    const std::lock_guard lock(mutex_);
    std::swap(in_, out_);
  }
  std::string_view rest = out_.text;
  for (Kept& kept : out_.entries) {
    kept.view.kind = rest.substr(0, kept.kind);
    kept.view.body = rest.substr(kept.kind, kept.body);
    rest.remove_prefix(kept.kind + kept.body);
    each(kept.view);
  }
  out_.entries.clear();
  out_.text.clear();
  if (out_.text.capacity() > kWorthKeeping) out_ = {};
}

}  // namespace walkdown::desk
