// SPDX-License-Identifier: Apache-2.0
#include "checklist/day/schedule.h"

#include <fmt/format.h>

#include <algorithm>

#include "checklist/day/duration.h"

namespace walkdown::day {
namespace {

class Planner {
 public:
  Planner(const Fold& fold, Now now, std::int64_t utc_offset_min)
      : fold_(fold), list_(fold.checklist()), now_(now), offset_min_(utc_offset_min) {}

  Schedule make();

 private:
  struct Job {
    std::size_t item = 0;
    std::int64_t takes_ms = 0;
    std::int64_t earliest_at_ms = 0;  // done then, if begun as soon as possible
    std::optional<std::int64_t> until_at_ms;
    Slot slot;
  };

  void collect();
  void look(std::size_t index, Judgement found);
  void backwards();
  void forwards();
  void mark_critical();
  [[nodiscard]] bool rests_on(const Job& later, const Job& earlier) const;
  [[nodiscard]] std::string trouble(const Job& job) const;
  [[nodiscard]] std::string again(const Job& job) const;
  [[nodiscard]] std::string clock(std::int64_t at_ms) const {
    return say_clock(at_ms, offset_min_);
  }
  void say(Schedule& made);

  const Fold& fold_;
  const Checklist& list_;
  Now now_;
  std::int64_t offset_min_;
  std::int64_t show_at_ms_ = 0;
  std::int64_t end_at_ms_ = 0;
  std::vector<Job> jobs_;
};

void Planner::look(std::size_t index, Judgement found) {
  const Item& item = list_.items[index];
  Job job;
  job.item = index;
  job.slot.id = item.id;
  job.takes_ms = item.kind == Kind::wait ? item.wait_ms : item.takes_ms;
  const auto& time = fold_.day().time;
  if (found.good() && found.until_aged_ms) job.until_at_ms = time.at_of_aged(*found.until_aged_ms);
  job.slot.done = found.good() && (!job.until_at_ms || *job.until_at_ms >= end_at_ms_);
  if (item.valid_for_ms) job.slot.not_before_at_ms = end_at_ms_ - *item.valid_for_ms;
  if (found.ready_sure_ms) {
    job.earliest_at_ms = time.at_of_sure(*found.ready_sure_ms);
    job.takes_ms = std::max<std::int64_t>(job.earliest_at_ms - now_.at_ms, 0);
  }
  jobs_.push_back(std::move(job));
}

void Planner::collect() {
  const View view = fold_.view();
  const Moment moment = fold_.day().time.moment(now_);
  for (std::size_t i = 0; i < list_.items.size(); ++i) {
    if (list_.stages[list_.items[i].stage].release) look(i, judge(view, i, moment));
  }
}

bool Planner::rests_on(const Job& later, const Job& earlier) const {
  const Item& item = list_.items[later.item];
  const std::size_t stage = list_.items[earlier.item].stage;
  if (item.stage > stage && !fold_.day().pauses[stage]) return true;
  return std::find(item.needs.begin(), item.needs.end(), earlier.item) != item.needs.end();
}

// needs and stages point to earlier items only, so the reverse order visits what rests first.
void Planner::backwards() {
  for (std::size_t i = jobs_.size(); i > 0; --i) {
    Job& job = jobs_[i - 1];
    std::int64_t latest = show_at_ms_;
    for (std::size_t later = i; later < jobs_.size(); ++later) {
      if (jobs_[later].slot.done || !rests_on(jobs_[later], job)) continue;
      latest = std::min(latest, jobs_[later].slot.latest_start_at_ms);
    }
    // A due time that can still be met binds; one that is gone would only hide what is possible.
    const auto& due_ms = list_.items[job.item].due_ms;
    if (due_ms && now_.at_ms + job.takes_ms <= show_at_ms_ + *due_ms) {
      const std::int64_t due = show_at_ms_ + *due_ms;
      const bool lasts = !job.slot.not_before_at_ms || *job.slot.not_before_at_ms <= due;
      if (lasts) latest = std::min(latest, due);
    }
    job.slot.latest_at_ms = latest;
    job.slot.latest_start_at_ms = latest - job.takes_ms;
    job.slot.slack_ms = job.slot.latest_start_at_ms - now_.at_ms;
  }
}

void Planner::forwards() {
  for (std::size_t i = 0; i < jobs_.size(); ++i) {
    Job& job = jobs_[i];
    if (job.slot.done) continue;
    std::int64_t begin = now_.at_ms;
    for (std::size_t earlier = 0; earlier < i; ++earlier) {
      if (jobs_[earlier].slot.done || !rests_on(job, jobs_[earlier])) continue;
      begin = std::max(begin, jobs_[earlier].earliest_at_ms);
    }
    job.earliest_at_ms = std::max(begin + job.takes_ms, job.earliest_at_ms);
  }
}

void Planner::mark_critical() {
  std::optional<std::int64_t> least;
  for (const Job& job : jobs_) {
    if (!job.slot.done) least = std::min(job.slot.slack_ms, least.value_or(job.slot.slack_ms));
  }
  for (Job& job : jobs_) job.slot.critical = !job.slot.done && job.slot.slack_ms == *least;
}

// Why a release that covers the show is not possible; empty where it is.
std::string Planner::trouble(const Job& job) const {
  const Slot& slot = job.slot;
  if (slot.done) return {};
  if (slot.not_before_at_ms && *slot.not_before_at_ms > slot.latest_at_ms) {
    return fmt::format(
        "{} lasts only {}: answered by {} it would not hold to the end of the show at {}", slot.id,
        say_duration(*list_.items[job.item].valid_for_ms), clock(slot.latest_at_ms),
        clock(end_at_ms_));
  }
  if (job.earliest_at_ms <= slot.latest_at_ms) return {};
  return fmt::format(
      "{} cannot be done before {}, and had to be by {}: move the show by {} or more", slot.id,
      clock(job.earliest_at_ms), clock(slot.latest_at_ms),
      say_duration(job.earliest_at_ms - slot.latest_at_ms + 59'999));
}

// An answer that stands now, and would not to the end.
std::string Planner::again(const Job& job) const {
  if (job.slot.done || !job.until_at_ms) return {};
  const bool before = *job.until_at_ms < show_at_ms_;
  const std::int64_t early_ms = (before ? show_at_ms_ : end_at_ms_) - *job.until_at_ms;
  return fmt::format("as planned, {} expires {} before {}: answer it again between {} and {}",
                     job.slot.id, say_duration(early_ms),
                     before ? "the show" : "the end of the show",
                     clock(std::max(job.slot.not_before_at_ms.value_or(now_.at_ms), now_.at_ms)),
                     clock(job.slot.latest_at_ms));
}

void Planner::say(Schedule& made) {
  made.feasible = true;
  std::string repeat;
  std::int64_t worst_ms = 0;
  const Job* next = nullptr;
  for (Job& job : jobs_) {
    std::string why = trouble(job);
    const std::int64_t short_ms =
        std::max(job.earliest_at_ms, job.slot.not_before_at_ms.value_or(0)) - job.slot.latest_at_ms;
    if (!why.empty() && (made.feasible || short_ms > worst_ms)) {
      made.feasible = false;
      made.say = why;
      worst_ms = short_ms;
    }
    job.slot.say = why.empty() ? again(job) : std::move(why);
    if (repeat.empty()) repeat = job.slot.say;
    const bool first = !job.slot.done && (next == nullptr || job.slot.latest_start_at_ms <
                                                                 next->slot.latest_start_at_ms);
    if (first) next = &job;
  }
  if (!made.feasible) return;
  if (!repeat.empty()) {
    made.say = repeat;
  } else if (next == nullptr) {
    made.say = fmt::format("every item holds to the end of the show at {}", clock(end_at_ms_));
  } else {
    made.say = fmt::format("a release for {} is possible: begin {} by {}", clock(show_at_ms_),
                           next->slot.id, clock(next->slot.latest_start_at_ms));
  }
}

Schedule Planner::make() {
  Schedule made;
  made.show_at_ms = fold_.day().show_at_ms;
  if (!made.show_at_ms) {
    made.say = "no show time is set";
    return made;
  }
  if (fold_.day().released_once && now_.at_ms >= *made.show_at_ms) {
    made.feasible = true;
    made.say = fmt::format("the show of {} was released; nothing has to begin before it any more",
                           clock(*made.show_at_ms));
    return made;
  }
  show_at_ms_ = *made.show_at_ms;
  end_at_ms_ = show_at_ms_ + list_.show_length_ms;
  collect();
  backwards();
  forwards();
  mark_critical();
  say(made);
  for (Job& job : jobs_) made.slots.push_back(std::move(job.slot));
  return made;
}

}  // namespace

Schedule schedule(const Fold& fold, Now now) {
  return Planner(fold, now, fold.day().utc_offset_min).make();
}

}  // namespace walkdown::day
