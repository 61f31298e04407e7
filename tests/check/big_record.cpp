// SPDX-License-Identifier: Apache-2.0
#include "tests/check/big_record.h"

#include <fmt/format.h>

#include <variant>
#include <vector>

#include "checklist/audit/claim.h"
#include "checklist/audit/field.h"
#include "tests/record/sample.h"

namespace walkdown::check::test {
namespace {

constexpr std::int64_t kAt_ms = 1'783'191'731'123;
constexpr int kPinsOfARail = 72;
constexpr const char* kOrigin = "bench/1";

show::Show big_show(int pins) {
  std::string plan = "cue,position,module,rail,pin,igniter,lead_m,wire\n";
  for (int i = 0; i < pins; ++i) {
    plan += fmt::format("{},P{},{},1,{},standard,{},AWG24\n", i + 1, i / 1000, i / kPinsOfARail + 1,
                        i % kPinsOfARail + 1, 2 + i % 40);
  }
  show::Show show;
  show.put({show::Role::plan, "plan.csv", std::move(plan)});
  return audit::complete(std::move(show));
}

// Near enough to 1.7 ohm and 0.168 ohm a metre to fit.
std::string line_of(int i) {
  return fmt::format("M{:02},R1,P{:02},{:.2f},ohm", i / kPinsOfARail + 1, i % kPinsOfARail + 1,
                     1.75 + 0.168 * (2 + i % 40));
}

class Maker {
 public:
  explicit Maker(int pins)
      : field_(audit::Field::open({{"show", show::to_json(big_show(pins))}}).value()) {
    add("open", {{"format", 1},
                 {"origin", kOrigin},
                 {"show", show::to_json(big_show(pins))},
                 {"station", record::text(record::test::station().verify_key())}});
  }
  void read(int pin) {
    const std::string line = line_of(pin);
    const auto parsed = field_.parser().parse(line);
    if (n_ % 100 == 1) commits_.emplace_back();
    add(audit::kReading, audit::reading_body(std::get<tester::Reading>(parsed), line));
  }
  void claim() {
    commits_.emplace_back();
    add(audit::kClaim, audit::claim_body(field_.diagnose()));
  }
  [[nodiscard]] std::string text() const {
    return record::test::resealed(commits_, kOrigin, record::test::station());
  }

 private:
  void add(std::string_view kind, const nlohmann::json& body) {
    std::string bytes = body.dump();
    const record::EntryView view{n_, kAt_ms + static_cast<std::int64_t>(n_),
                                 static_cast<std::int64_t>(n_), kind, bytes};
    if (n_ > 0) field_.take(view);
    std::string line;
    record::append_entry_line(view, line);
    commits_.back().push_back(std::move(line));
    ++n_;
  }

  audit::Field field_;
  std::vector<std::vector<std::string>> commits_{1};
  std::uint64_t n_ = 0;
};

}  // namespace

void write_big_record(const std::string& path, int pins, int readings) {
  Maker maker(pins);
  for (int i = 0; i < readings; ++i) maker.read(i % pins);
  maker.claim();
  record::test::write_file(path, maker.text());
}

}  // namespace walkdown::check::test
