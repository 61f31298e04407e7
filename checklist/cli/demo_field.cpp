// SPDX-License-Identifier: Apache-2.0
#include "checklist/cli/demo_field.h"

#include <fmt/format.h>

#include <chrono>
#include <utility>
#include <variant>

#include "checklist/cli/live_facts.h"
#include "checklist/cli/stop.h"

namespace walkdown::cli {
namespace {

using SteadyClock = std::chrono::steady_clock;
constexpr auto kLook = std::chrono::milliseconds(20);
constexpr auto kRefresh = std::chrono::milliseconds(250);
// Of the demo's clock: a tester that steps from pin to pin by itself. Common practice, no source.
constexpr std::int64_t kLine_ms = 700;
constexpr auto kPatience = std::chrono::seconds(10);  // without one line

}  // namespace

DemoField::DemoField(trainer::Field& field, FieldRecord& record, DemoClock& clock,
                     std::unique_ptr<trainer::TesterPty> tester, tester::Link link)
    : field_(&field),
      record_(&record),
      clock_(&clock),
      tester_(std::move(tester)),
      link_(std::move(link)),
      intake_(record.parser(), std::nullopt, record.writer()) {}

Result<DemoField> DemoField::open(trainer::Field& field, FieldRecord& record, DemoClock& clock,
                                  const tester::PortSettings& port, double lines_per_s) {
  auto tester = trainer::TesterPty::open(lines_per_s);
  if (!tester) return tester.error();
  auto link = tester::Link::open((*tester)->path(), port);
  if (!link) return link.error();
  return DemoField(field, record, clock, std::move(tester).value(), std::move(link).value());
}

Done DemoField::read(std::span<const plan::PinId> pins, unsigned times) {
  form_.times = times;
  auto lines = trainer::sweep(*field_, pins, form_);
  sent_ += lines.size();
  tester_->send(std::move(lines));
  if (const auto pumped = pump(); !pumped) return pumped;
  return record_->writer().flush();
}

// Line by line, each at its own time.
Done DemoField::feed(std::string_view bytes) {
  while (!bytes.empty()) {
    const std::size_t end = bytes.find('\n');
    const std::string_view line = bytes.substr(0, end == std::string_view::npos ? end : end + 1);
    if (end != std::string_view::npos) clock_->skip(kLine_ms);
    if (const Done fed = intake_.feed(line); !fed) return fed;
    bytes.remove_prefix(line.size());
  }
  return done();
}

Done DemoField::pump() {
  LiveView view(stdout);
  auto shown = SteadyClock::now();
  auto heard = shown;
  const auto arrived = [this] {
    const auto counts = record_->counts();
    return counts.readings + counts.rejected;
  };
  while (arrived() < sent_) {
    if (stop_asked()) return Error{Code::refused, "stopped", "", ""};
    const auto event = link_.next(kLook);
    const auto now = SteadyClock::now();
    if (const auto* bytes = std::get_if<tester::event::Bytes>(&event)) {
      heard = now;
      if (const auto fed = feed(bytes->bytes); !fed) return fed;
    }
    if (now - heard > kPatience) {
      return Error{Code::io, "the simulated tester fell silent", port(), "run the demo again"};
    }
    if (now - shown < kRefresh) continue;
    view.show(live_facts(*record_, "reading"));
    shown = now;
  }
  view.show(live_facts(*record_, "quiet"));
  return done();
}

}  // namespace walkdown::cli
