// SPDX-License-Identifier: Apache-2.0
#include "checklist/day/continuity.h"

#include <fmt/format.h>

#include <algorithm>

#include "checklist/record/sha256.h"

namespace walkdown::day {
namespace {

constexpr std::string_view kFits = "fits";
constexpr std::string_view kUnread = "unread";
constexpr std::size_t kMostNamed = 3;

bool waived(const Day& day, const std::string& pin, const std::string& verdict,
            std::uint64_t undone_n) {
  const auto found = day.pin_waivers.find(pin);
  return found != day.pin_waivers.end() && !found->second.claim.second.empty() &&
         found->second.verdict == verdict && found->second.undone_n == undone_n;
}

void count(const Day& day, const PlannedPin& pin, const PinLog& log, const std::string& verdict,
           std::optional<std::int64_t> valid_for_ms, std::int64_t aged_ms, Continuity& sum) {
  const auto fails = [&](std::string_view how) {
    sum.failure += pin.pin;
    sum.failure += ' ';
    sum.failure += how;
    sum.failure += '\n';
  };
  if (waived(day, pin.pin, verdict, log.undone_n)) {
    ++sum.waived;
  } else if (verdict == kUnread) {
    ++sum.unread;
    fails(kUnread);
  } else if (verdict != kFits) {
    sum.bad.push_back(pin.pin + " " + verdict);
    fails(verdict);
  } else if (valid_for_ms && aged_ms >= log.read_aged_ms + *valid_for_ms) {
    ++sum.stale;
    fails("stale");
  } else {
    ++sum.fit;
    if (!valid_for_ms) return;
    const std::int64_t until = log.read_aged_ms + *valid_for_ms;
    sum.until_aged_ms = std::min(until, sum.until_aged_ms.value_or(until));
  }
}

const char* are(std::int64_t count) { return count == 1 ? "is" : "are"; }

std::string sentence(const Continuity& sum) {
  if (sum.planned == 0) return "no pin is planned, so there is nothing that could fit";
  if (sum.holds) {
    return sum.waived == 0 ? fmt::format("all {} planned pins fit", sum.planned)
                           : fmt::format("{} of {} planned pins fit, {} {} waived by name", sum.fit,
                                         sum.planned, sum.waived, are(sum.waived));
  }
  std::string text = fmt::format("of {} planned pins", sum.planned);
  if (sum.unread > 0) text += fmt::format(" {} {} unread,", sum.unread, are(sum.unread));
  if (sum.stale > 0) {
    text += fmt::format(" {} {} read too long ago,", sum.stale, sum.stale == 1 ? "was" : "were");
  }
  if (!sum.bad.empty()) {
    text += fmt::format(" {} {} not fit (", sum.bad.size(), sum.bad.size() == 1 ? "does" : "do");
    for (std::size_t i = 0; i < std::min(sum.bad.size(), kMostNamed); ++i) {
      text += (i == 0 ? "" : ", ") + sum.bad[i];
    }
    text += sum.bad.size() > kMostNamed ? ", ...)," : "),";
  }
  text.pop_back();
  return text;
}

}  // namespace

PinBook::PinBook(const Outside& outside) {
  for (std::size_t i = 0; i < outside.pins.size(); ++i) index_.emplace(outside.pins[i].pin, i);
}

std::size_t PinBook::find(const std::string& pin) const {
  const auto found = index_.find(pin);
  return found == index_.end() ? npos : found->second;
}

void PinBook::know(const Outside& outside) {
  if (facts_known_) return;
  verdicts_.assign(outside.pins.size(), std::string(kUnread));
  strays_.clear();
  const auto facts = outside.source == nullptr ? std::vector<PinFacts>() : outside.source->facts();
  for (const PinFacts& each : facts) {
    const std::size_t index = find(each.pin);
    if (index != npos) {
      verdicts_[index] = each.verdict;
    } else if (each.verdict != kUnread && each.verdict != kFits) {
      strays_.push_back(each.pin + " " + each.verdict);
    }
  }
  facts_known_ = true;
}

std::string PinBook::verdict(const Outside& outside, const Day& day, std::size_t index) {
  know(outside);
  const PinLog& log = day.pins[index];
  return log.read_n > log.undone_n ? verdicts_[index] : std::string(kUnread);
}

const Continuity& PinBook::continuity(const Outside& outside, const Day& day,
                                      std::optional<std::int64_t> valid_for_ms,
                                      std::int64_t aged_ms) {
  const std::int64_t name = valid_for_ms.value_or(-1);
  const auto found = worked_out_.find(name);
  if (found != worked_out_.end() &&
      (!found->second.until_aged_ms || aged_ms < *found->second.until_aged_ms)) {
    return found->second;
  }
  know(outside);
  Continuity sum;
  sum.planned = static_cast<std::int64_t>(outside.pins.size());
  for (std::size_t i = 0; i < outside.pins.size(); ++i) {
    count(day, outside.pins[i], day.pins[i], verdict(outside, day, i), valid_for_ms, aged_ms, sum);
  }
  sum.bad.insert(sum.bad.end(), strays_.begin(), strays_.end());
  for (const std::string& stray : strays_) sum.failure += stray + '\n';
  if (!sum.failure.empty()) sum.failure = record::hex(record::sha256(sum.failure));
  sum.holds = sum.planned > 0 && sum.unread == 0 && sum.stale == 0 && sum.bad.empty();
  sum.why = sentence(sum);
  return worked_out_[name] = std::move(sum);
}

}  // namespace walkdown::day
