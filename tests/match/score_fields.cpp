// SPDX-License-Identifier: Apache-2.0
// score-fields: prints how well the diagnosis does on simulated fields, beside plainer rules.
// Usage: score-fields [fields of each style, default 40] [first seed, default 1] [pins, default
// 480] [moves, default 6] [1 or 2: the simulator, default both]
#include <cmath>
#include <cstdio>
#include <cstdlib>
#include <string>

#include "reader/match/band.h"
#include "tests/match/many_fields.h"
#include "tests/match/score.h"

namespace {

using namespace walkdown;  // NOLINT: a program of one page
using simulated::Field;
using simulated::Flags;
using simulated::Ratio;
using simulated::Score;

// Flags every pin whose mean reading (or lack of one) is outside a band that may differ by pin.
template <typename Band>
Flags by_band(const Field& field, Band band) {
  std::map<plan::PinId, std::pair<double, int>> sums;
  Flags out;
  for (const plan::PlannedPin& pin : field.plan.pins) out[pin.id] = true;
  for (const match::Sample& sample : field.samples) {
    auto& [sum, n] = sums[sample.pin];
    if (sample.over)
      n = -1000;
    else
      sum += sample.ohm, ++n;
  }
  for (const auto& [pin, held] : sums) {
    const auto [sum, n] = held;
    const plan::PlannedPin* planned = field.plan.find(pin);
    if (planned == nullptr) {
      if (n > 0) out[pin] = true;
      continue;
    }
    if (n <= 0) continue;
    const plan::Interval limits = band(planned->load);
    out[pin] = sum / n < limits.lo || sum / n > limits.hi;
  }
  return out;
}

void line(const char* name, const Score& s) {
  const double flagged = s.wrong_flagged.hit + s.sound_flagged.hit;
  std::printf("  %-22s %8.3f %8.3f %10.2f %9.3f", name, s.wrong_flagged.value(),
              s.faulty_flagged.value(), 1000 * s.sound_flagged.value(),
              flagged > 0 ? s.wrong_flagged.hit / flagged : 1);
  if (s.moves_found.all > 0) {
    std::printf(" %9.3f %9.3f %9.3f %9.3f", s.moves_found.value(), s.moves_named.value(),
                s.moves_right.value(), s.first_right.value());
  }
  std::printf("\n");
}

void detail(const Score& s) {
  std::printf("  kind                 recall (of)       precision (of)\n");
  for (std::size_t k = 0; k < match::kKinds; ++k) {
    const auto kind = static_cast<match::Kind>(k);
    const auto r = s.recall.find(kind);
    const auto p = s.precision.find(kind);
    if (r == s.recall.end() && p == s.precision.end()) continue;
    const Ratio recall = r == s.recall.end() ? Ratio{} : r->second;
    const Ratio precision = p == s.precision.end() ? Ratio{} : p->second;
    std::printf("  %-18s %8.3f (%5.0f) %10.3f (%5.0f)\n", std::string(match::text(kind)).c_str(),
                recall.value(), recall.all, precision.value(), precision.all);
  }
  std::printf("  stated confidence -> right, all findings | findings that move loads\n");
  for (std::size_t i = 0; i < 10; ++i) {
    std::printf("   %.1f-%.1f  %6.3f (%5.0f) | %6.3f (%5.0f)\n", static_cast<double>(i) / 10,
                static_cast<double>(i + 1) / 10, s.calibration[i].value(), s.calibration[i].all,
                s.calibration_moves[i].value(), s.calibration_moves[i].all);
  }
}

void confusion(const Score& s) {
  std::printf("  told (rows: what it was)\n");
  for (const auto& [was, told] : s.confusion) {
    std::printf("   %-16s", std::string(match::text(was)).c_str());
    for (const auto& [kind, n] : told) {
      std::printf(" %s %d;", std::string(match::text(kind)).c_str(), n);
    }
    std::printf("\n");
  }
}

void style(const char* name, simulated::Setting setting, int fields, int by, bool full) {
  Score whole;
  Score pins_only;
  Score plain;
  Score interval;
  Score two_sigma;
  simulated::many_fields(setting, fields, by, [&](const Field& field, std::uint64_t) {
    const auto& catalogue = field.plan.catalogue;
    const match::Outcome outcome = match::diagnose(field.plan, field.tester, field.samples);
    count_flags(field, simulated::flags(outcome), whole);
    count_findings(field, outcome.findings, whole);
    match::Options alone;
    alone.structure = false;
    const match::Outcome bare = match::diagnose(field.plan, field.tester, field.samples, alone);
    count_flags(field, simulated::flags(bare), pins_only);
    count_flags(field,
                by_band(field,
                        [](const plan::Load&) {
                          return plan::Interval{1, 10};
                        }),
                plain);
    count_flags(field,
                by_band(field,
                        [&](const plan::Load& load) {
                          return match::shown_band(load, catalogue, field.tester).worst;
                        }),
                interval);
    count_flags(
        field,
        by_band(
            field,
            [&](const plan::Load& load) {
              const match::Band band = match::shown_band(load, catalogue, field.tester);
              return plan::Interval{band.mean_ohm - 2 * band.u_ohm, band.mean_ohm + 2 * band.u_ohm};
            }),
        two_sigma);
  });
  std::printf("%s, simulator %d: %d fields, %.0f sound pins, %.0f wrong, %.0f visible moves\n",
              name, by, fields, whole.sound_flagged.all, whole.wrong_flagged.all,
              whole.moves_found.all);
  std::printf("  %-22s %8s %8s %10s %9s %9s %9s %9s %9s\n", "", "wrong", "faulty", "alarms/1k",
              "flags ok", "found", "named", "precise", "1st kind");
  line("diagnosis", whole);
  line("verdicts alone", pins_only);
  line("interval arithmetic", interval);
  line("two sigma", two_sigma);
  line("1 to 10 ohm is good", plain);
  if (!full) return;
  detail(whole);
  confusion(whole);
}

}  // namespace

int main(int argc, char** argv) {
  const int fields = argc > 1 ? std::atoi(argv[1]) : 40;
  simulated::Setting setting;
  if (argc > 2) setting.seed = std::strtoull(argv[2], nullptr, 10);
  if (argc > 3) setting.pins = std::strtoull(argv[3], nullptr, 10);
  if (argc > 4) setting.move_scale = std::atof(argv[4]);
  if (argc > 4) setting.fault_scale = setting.move_scale > 3 ? 1.5 : 1;
  const int only = argc > 5 ? std::atoi(argv[5]) : 0;
  for (const int by : {1, 2}) {
    if (only != 0 && only != by) continue;
    for (const auto& [name, kind] : simulated::kStyles) {
      setting.style = kind;
      style(name, setting, fields, by, true);
    }
  }
  return 0;
}
