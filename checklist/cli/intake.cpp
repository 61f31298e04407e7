// SPDX-License-Identifier: Apache-2.0
#include "checklist/cli/intake.h"

#include <algorithm>
#include <variant>

#include "checklist/audit/drafts.h"

namespace walkdown::cli {

Intake::Intake(tester::LineParser parser, std::optional<tester::Walk> walk, record::Writer& writer)
    : parser_(std::move(parser)), walk_(std::move(walk)), writer_(&writer) {}

Done Intake::feed(std::string_view bytes) {
  framer_.feed(bytes, [this](const tester::Line& line) { take(line); });
  return health_;
}

Done Intake::hang_up() {
  framer_.finish(tester::Ending::hang_up, [this](const tester::Line& line) { take(line); });
  seq_.forget();
  return health_;
}

void Intake::take(const tester::Line& line) {
  habit_.see(line.text);
  if (const auto damaged = habit_.judge(line.text)) {
    append(audit::kRejected, audit::rejected_body(line.text, damaged->why));
    return;
  }
  const tester::Parsed parsed = parser_.parse(line);
  if (const auto* reading = std::get_if<tester::Reading>(&parsed)) {
    take_reading(*reading, line.text);
  } else if (const auto* bare = std::get_if<tester::BareValue>(&parsed)) {
    take_bare(*bare, line.text);
  } else {
    append(audit::kRejected,
           audit::rejected_body(line.text, std::get<tester::Rejected>(parsed).why));
  }
}

void Intake::take_reading(const tester::Reading& reading, std::string_view raw) {
  watch(reading.seq);
  append(audit::kReading, audit::reading_body(reading, raw));
}

void Intake::take_bare(const tester::BareValue& value, std::string_view raw) {
  watch(value.seq);
  if (!walk_ || !walk_->current()) {
    append(audit::kRejected, audit::rejected_body(raw, "a bare value, and no pin is being walked"));
    return;
  }
  recent_.emplace_back(value.micro_ohm, raw);
  if (recent_.size() > tester::Walk::kSteadyValues) recent_.pop_front();
  const plan::PinId pin = *walk_->current();
  if (const auto reading = walk_->see(value)) {
    append(audit::kReading, audit::reading_body(*reading, line_of(reading->micro_ohm), true));
    recent_.clear();
  } else {
    nlohmann::json body = audit::rejected_body(raw, "not yet steady, or the probe was lifted");
    body["pin"] = plan::text(pin);
    append(audit::kProbed, std::move(body));
  }
}

void Intake::skip() {
  if (walk_) walk_->skip();
  recent_.clear();
}

void Intake::back() {
  if (walk_) walk_->back();
  recent_.clear();
}

void Intake::take_open() {
  if (!walk_ || recent_.empty()) return;
  const auto reading = walk_->take_open();
  if (!reading) return;
  append(audit::kReading, audit::reading_body(*reading, recent_.back().second, true));
  recent_.clear();
}

std::string Intake::line_of(std::int64_t micro_ohm) const {
  const auto found = std::find_if(recent_.begin(), recent_.end(),
                                  [&](const auto& value) { return value.first == micro_ohm; });
  return found == recent_.end() ? std::string() : found->second;
}

void Intake::watch(std::optional<std::uint64_t> seq) {
  if (!seq) return;
  const auto note = seq_.see(*seq);
  if (!note) return;
  static constexpr const char* kWords[] = {"gap", "repeat", "restart"};
  append(audit::kGap,
         {{"what", kWords[static_cast<std::size_t>(note->kind)]}, {"lines", note->count}});
}

void Intake::append(std::string_view kind, nlohmann::json body) {
  if (!health_) return;
  const auto ticket = writer_->append({std::string(kind), std::move(body)});
  if (!ticket) health_ = ticket.error();
}

}  // namespace walkdown::cli
