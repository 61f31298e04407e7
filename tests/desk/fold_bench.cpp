// SPDX-License-Identifier: Apache-2.0
// How long the largest day takes to fold: a million readings and five thousand sign-offs, from the
// bytes of their entries. Beside it bare JSON parsing of the same bodies, as a measure of the
// machine.
#include <benchmark/benchmark.h>

#include <deque>

#include "checklist/audit/drafts.h"
#include "checklist/day/signatures.h"
#include "checklist/desk/folded.h"
#include "checklist/record/json_text.h"
#include "reader/trainer/field.h"
#include "reader/trainer/sweep.h"
#include "templates/embedded.h"

namespace walkdown::desk {
namespace {

constexpr std::size_t kReadings = 1'000'000;
constexpr std::size_t kSigned = 5'000;

class LargestDay {
 public:
  LargestDay() : key_(record::SigningKey::make("Mara")) {
    const auto prepared = prepare(demo_show());
    add("open", {{"origin", "walkdown/bench/0"}, {"show", show::to_json(prepared.prepared->show)}});
    add("enrol", {{"name", "Mara"}, {"role", "lead"}, {"vkey", record::text(key_.verify_key())}});
    readings_of(*prepared.prepared);
    for (std::size_t i = 0; i < kReadings; ++i) {
      add("reading", readings_[i % readings_.size()]);
      if (i % (kReadings / kSigned) == 0) hold_and_lift(prepared.prepared->checklist);
    }
  }

  void fold(Folded& folded) const {
    for (const record::EntryView& entry : entries_) {
      if (folded.take(entry)) std::abort();
    }
  }
  [[nodiscard]] const std::deque<record::EntryView>& entries() const { return entries_; }

 private:
  static show::Show demo_show() {
    show::Show show;
    const auto put = [&](show::Role role, const char* name) {
      show.put({role, "file", std::string(templates::text(name).value())});
    };
    put(show::Role::plan, "demo/plan.csv");
    put(show::Role::igniters, "demo/igniters.toml");
    put(show::Role::modules, "demo/modules.toml");
    put(show::Role::checklist, "checklists/evening-show.toml");
    return show;
  }

  void readings_of(const Prepared& prepared) {
    trainer::Field field(prepared.planned.plan, prepared.planned.tester.model, 3);
    const auto parser = tester::LineParser::make(prepared.planned.tester);
    trainer::SweepForm form;
    for (const std::string& line : trainer::sweep(field, field.pins(), form)) {
      const auto parsed = parser->parse(line);
      readings_.push_back(audit::reading_body(std::get<tester::Reading>(parsed), line));
    }
  }

  void hold_and_lift(const day::Checklist& list) {
    add("hold", nlohmann::json::object());
    nlohmann::json body = {{"by", "Mara"}, {"role", "lead"}, {"reason", "it was nothing"}};
    const record::Head head{"walkdown/bench/0", entries_.size(), {}, at_ms_, up_ms_};
    body["signoff"] =
        record::make_sign_off(day::sign_off(list, "lift", body, head, at_ms_), key_).value();
    add("lift", body);
  }

  void add(std::string_view kind, const nlohmann::json& body) {
    texts_.push_back(body.dump());
    at_ms_ += 10;
    up_ms_ += 10;
    entries_.push_back({entries_.size(), at_ms_, up_ms_, kind, texts_.back()});
  }

  record::SigningKey key_;
  std::vector<nlohmann::json> readings_;
  std::deque<std::string> texts_;
  std::deque<record::EntryView> entries_;
  std::int64_t at_ms_ = 1'813'410'000'000;
  std::int64_t up_ms_ = 1'000;
};

const LargestDay& largest_day() {
  static const LargestDay day;
  return day;
}

void BareJson(benchmark::State& state) {
  const auto& entries = largest_day().entries();
  for ([[maybe_unused]] auto round : state) {
    for (const auto& entry : entries) {
      benchmark::DoNotOptimize(nlohmann::json::parse(entry.body));
    }
  }
}
BENCHMARK(BareJson)->Unit(benchmark::kMillisecond)->Iterations(3);

void FoldLargestDay(benchmark::State& state) {
  const LargestDay& day = largest_day();
  for ([[maybe_unused]] auto round : state) {
    Folded folded;
    day.fold(folded);
    if (folded.day().day().ignored_count != 0) std::abort();
    benchmark::DoNotOptimize(folded.counts());
  }
}
BENCHMARK(FoldLargestDay)->Unit(benchmark::kMillisecond)->Iterations(3);

void ResumeFromSnapshot(benchmark::State& state) {
  const LargestDay& day = largest_day();
  Folded whole;
  day.fold(whole);
  const std::string bytes = whole.save();
  for ([[maybe_unused]] auto round : state) {
    Folded folded;
    folded.take(day.entries().front());
    if (!folded.restore(bytes)) std::abort();
    benchmark::DoNotOptimize(folded.counts());
  }
  state.counters["MB"] = static_cast<double>(bytes.size()) / 1e6;
}
BENCHMARK(ResumeFromSnapshot)->Unit(benchmark::kMillisecond)->Iterations(3);

void FirstLookAtTheState(benchmark::State& state) {
  const LargestDay& day = largest_day();
  Folded whole;
  day.fold(whole);
  const std::string bytes = whole.save();
  for ([[maybe_unused]] auto round : state) {
    state.PauseTiming();
    Folded folded;
    folded.take(day.entries().front());
    if (!folded.restore(bytes)) std::abort();
    state.ResumeTiming();
    benchmark::DoNotOptimize(folded.day().at(folded.last()));
  }
}
BENCHMARK(FirstLookAtTheState)->Unit(benchmark::kMillisecond)->Iterations(3);

}  // namespace
}  // namespace walkdown::desk

BENCHMARK_MAIN();
