// SPDX-License-Identifier: Apache-2.0
#include "checklist/cli/day_status.h"

#include <fmt/format.h>

#include <array>

#include "checklist/day/duration.h"

namespace walkdown::cli {
namespace {

struct Headline {
  std::string_view word;
  std::string_view say;
};
constexpr std::array<Headline, 5> kHeadlines = {{{"hold", "HOLD"},
                                                 {"released", "RELEASED"},
                                                 {"ready", "READY: every item holds, not released"},
                                                 {"after", "AFTER THE SHOW"},
                                                 {"checking", "CHECKING"}}};

std::string_view headline(const std::string& word) {
  for (const Headline& each : kHeadlines) {
    if (each.word == word) return each.say;
  }
  return word;
}

std::string join(const std::vector<std::string>& names, const char* none) {
  std::string text;
  for (const auto& name : names) text += (text.empty() ? "" : ", ") + name;
  return text.empty() ? none : text;
}

class Page {
 public:
  Page(const day::Checklist& list, const day::State& state) : list_(list), state_(state) {}

  std::string make(const std::vector<desk::Told>& told) {
    top();
    ground();
    for (std::size_t i = 0; i < list_.stages.size(); ++i) stage(i);
    waiting();
    last(told);
    return std::move(text_);
  }

 private:
  [[nodiscard]] std::string clock(std::int64_t at_ms) const {
    return day::say_clock(at_ms, state_.utc_offset_min);
  }
  void line(const std::string& text) { text_ += text + '\n'; }

  void top() {
    line(fmt::format("{}  {}", clock(state_.at_ms), headline(state_.word)));
    for (const day::HoldLog& hold : state_.holds) {
      line(fmt::format("  hold by {}{}", hold.by.empty() ? "somebody" : hold.by,
                       hold.reason.empty() ? "" : ": " + hold.reason));
    }
    if (state_.show_at_ms) {
      const std::int64_t in_ms = *state_.show_at_ms - state_.at_ms;
      line(fmt::format("  show at {} ({} {})", clock(*state_.show_at_ms),
                       in_ms >= 0 ? "in" : "ago by", day::say_duration(in_ms)));
    }
    if (state_.release.word != day::ReleaseWord::none) {
      line(fmt::format("  release: {}{}", state_.release.why,
                       state_.release.until_at_ms ? ", until " + clock(*state_.release.until_at_ms)
                                                  : std::string()));
    }
  }

  void ground() {
    line(fmt::format("  in the field: {}", join(state_.in_field, "nobody")));
    line(fmt::format("  tags out: {}", join(state_.tags, "none")));
    for (const auto& key : state_.keys) {
      line(
          fmt::format("  {}: {}{}", key.name, key.holder,
                      key.offered_to.empty() ? "" : " (" + key.offered_to + " has signed for it)"));
    }
  }

  void stage(std::size_t index) {
    const auto& shown = state_.stages[index];
    const day::Stage& stage = list_.stages[index];
    line(fmt::format("\n{}{}", stage.title,
                     shown.locked   ? " (not begun)"
                     : shown.paused ? fmt::format(" (closed by {})", shown.paused_by)
                                    : std::string()));
    for (std::size_t i = stage.first; i < stage.first + stage.count; ++i) item(state_.items[i]);
  }

  void item(const day::ItemState& item) {
    std::string more;
    if (item.until_at_ms) more += ", until " + clock(*item.until_at_ms);
    if (!item.by.empty()) more += ", " + item.by;
    if (!item.second.empty()) more += " and " + item.second;
    if (item.fast) more += ", answered without a look at the question";
    line(fmt::format("  {:<8} {:<22} {}{}", word(item.standing), item.id, item.why, more));
  }

  void waiting() {
    if (state_.waiting.empty()) return;
    line("\nWaits for a second signature");
    for (const auto& each : state_.waiting) {
      line(fmt::format("  entry {}: {}, signed by {}", each.n, each.what, each.by));
    }
  }

  void last(const std::vector<desk::Told>& told) {
    if (!told.empty()) line("\nLast entries");
    for (const auto& each : told) {
      line(fmt::format("  {} {:>6}  {}", clock(each.at_ms), each.n, each.say));
    }
    if (state_.ignored_count > 0) {
      line(fmt::format("\n{} entries broke a rule and changed nothing; the last: {}",
                       state_.ignored_count, state_.ignored.back().why));
    }
  }

  const day::Checklist& list_;
  const day::State& state_;
  std::string text_;
};

std::string slot_text(const day::Slot& slot, std::int64_t offset_min) {
  if (slot.done) return fmt::format("  {:<22} done\n", slot.id);
  std::string text = fmt::format(
      "  {:<22} begin by {}, answered by {}{}{}\n", slot.id,
      day::say_clock(slot.latest_start_at_ms, offset_min),
      day::say_clock(slot.latest_at_ms, offset_min),
      slot.not_before_at_ms ? ", not before " + day::say_clock(*slot.not_before_at_ms, offset_min)
                            : std::string(),
      slot.slack_ms >= 0 ? fmt::format(" ({} left{})", day::say_duration(slot.slack_ms),
                                       slot.critical ? ", the tightest" : "")
                         : fmt::format(" (late by {})", day::say_duration(slot.slack_ms)));
  if (!slot.say.empty()) text += "      " + slot.say + '\n';
  return text;
}

}  // namespace

std::string status_text(const day::Checklist& checklist, const day::State& state,
                        const std::vector<desk::Told>& told) {
  return Page(checklist, state).make(told);
}

std::string schedule_text(const day::Schedule& schedule, std::int64_t utc_offset_min) {
  std::string text = schedule.say + '\n';
  for (const auto& slot : schedule.slots) text += slot_text(slot, utc_offset_min);
  return text;
}

}  // namespace walkdown::cli
