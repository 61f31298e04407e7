// SPDX-License-Identifier: Apache-2.0
#include "gui/day/bars.h"

#include <QCoreApplication>
#include <algorithm>

#include "gui/look/words.h"

namespace walkdown::gui {
namespace {

struct Timeline {
  Q_DECLARE_TR_FUNCTIONS(Timeline)
};

constexpr std::int64_t kMargin_ms = 600'000;

QString say_of(const Bar& bar, const day::Slot& slot, std::int64_t now_ms) {
  if (bar.holds && !bar.until_ms) return Timeline::tr("holds until something breaks it");
  if (bar.holds) {
    const QString until = Timeline::tr("holds until %1 (%2)")
                              .arg(clock_words(*bar.until_ms), span_words(*bar.until_ms - now_ms));
    return bar.breaks_first ? Timeline::tr("ends first: %1").arg(until) : until;
  }
  if (bar.late) {
    return Timeline::tr("late: should have begun by %1").arg(clock_words(bar.latest_ms));
  }
  return Timeline::tr("begin by %1 (%2 left)")
      .arg(clock_words(bar.latest_ms), span_words(slot.slack_ms));
}

Bar bar_of(const day::Slot& slot, const day::ItemState& item, const day::Item& planned,
           std::int64_t now_ms) {
  Bar bar;
  bar.name = q(planned.question);
  bar.holds = item.standing == day::Standing::holds || item.standing == day::Standing::waived;
  bar.from_ms = now_ms;
  bar.until_ms = item.until_at_ms;
  bar.not_before_ms = slot.not_before_at_ms;
  bar.latest_ms = slot.latest_start_at_ms;
  bar.late = !bar.holds && slot.latest_start_at_ms < now_ms;
  return bar;
}

// Of those that hold, the one that ends first.
void mark_first(Bars& out) {
  Bar* first = nullptr;
  for (Bar& bar : out.bars) {
    if (!bar.holds || !bar.until_ms) continue;
    if (first == nullptr || *bar.until_ms < *first->until_ms) first = &bar;
  }
  if (first != nullptr) first->breaks_first = true;
}

void cover(Bars& out) {
  out.from_ms = out.now_ms - kMargin_ms;
  out.to_ms = std::max(out.end_ms, out.now_ms) + kMargin_ms;
  for (const Bar& bar : out.bars) out.from_ms = std::min(out.from_ms, bar.latest_ms - kMargin_ms);
  // What is long past does not squeeze what is to come.
  out.from_ms = std::max(out.from_ms, out.now_ms - (out.to_ms - out.now_ms) / 3 - kMargin_ms);
}

}  // namespace

Bars bars_of(const Snapshot& seen, const day::Checklist& list) {
  Bars out;
  if (!seen.schedule.show_at_ms) return out;
  out.now_ms = seen.now.at_ms;
  out.show_ms = *seen.schedule.show_at_ms;
  out.end_ms = out.show_ms + list.show_length_ms;
  std::vector<const day::Slot*> slots;
  for (const day::Slot& slot : seen.schedule.slots) {
    const std::size_t index = list.item(slot.id);
    if (index >= seen.state.items.size()) continue;
    out.bars.push_back(bar_of(slot, seen.state.items[index], list.items[index], out.now_ms));
    slots.push_back(&slot);
  }
  mark_first(out);
  for (std::size_t i = 0; i < out.bars.size(); ++i) {
    out.bars[i].say = say_of(out.bars[i], *slots[i], out.now_ms);
  }
  cover(out);
  return out;
}

}  // namespace walkdown::gui
