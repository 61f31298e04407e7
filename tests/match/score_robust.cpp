// SPDX-License-Identifier: Apache-2.0
// score-robust: the four rates where the field is not what the priors say: other rates of faults
// and mistakes, another noise, other leads, more or fewer readings, a tester that was not zeroed,
// wire of another gauge, longer shifts. No line may collapse.
// Usage: score-robust [fields of each, 100] [first seed, 1] [pins, 480]
#include <array>
#include <cstdio>
#include <cstdlib>
#include <functional>

#include "tests/match/many_fields.h"
#include "tests/match/score.h"

namespace {

using namespace walkdown;  // NOLINT: a program of one page
using simulated::Setting;

struct Change {
  const char* name;
  std::function<void(Setting&)> make;
};

const std::array<Change, 16> kChanges = {{
    {"as the priors say but for moves x 6", [](Setting&) {}},
    {"faults x 1/3", [](Setting& s) { s.fault_scale /= 3; }},
    {"faults x 3", [](Setting& s) { s.fault_scale *= 3; }},
    {"moves x 2", [](Setting& s) { s.move_scale = 2; }},
    {"moves x 18", [](Setting& s) { s.move_scale = 18; }},
    {"noise x 1/3", [](Setting& s) { s.noise_factor = 1.0 / 3; }},
    {"noise x 3", [](Setting& s) { s.noise_factor = 3; }},
    {"leads as planned", [](Setting& s) { s.lead_spread = 0; }},
    {"leads +- 8 %", [](Setting& s) { s.lead_spread = 0.08; }},
    {"one reading", [](Setting& s) { s.repeats = 1; }},
    {"five readings", [](Setting& s) { s.repeats = 5; }},
    {"not zeroed, + 0.3 ohm", [](Setting& s) { s.offset_ohm = 0.3; }},
    {"wire x 1.6", [](Setting& s) { s.wire_factor = 1.6; }},
    {"wire x 0.63", [](Setting& s) { s.wire_factor = 0.63; }},
    {"shifts by up to 8", [](Setting& s) { s.most_by = 8; }},
    {"usual field", [](Setting& s) { s.move_scale = s.fault_scale = 1; }},
}};

struct Sum {
  simulated::Score score;
  int field_wide = 0;
};

Sum sum_of(const Setting& setting, int fields, int simulator) {
  Sum sum;
  simulated::many_fields(setting, fields, simulator, [&](const simulated::Field& field, auto) {
    const match::Outcome outcome = match::diagnose(field.plan, field.tester, field.samples);
    count_flags(field, simulated::flags(outcome), sum.score);
    count_findings(field, outcome.findings, sum.score);
    const bool wide = !outcome.findings.empty() && !outcome.findings[0].pins.empty() &&
                      (outcome.findings[0].kind == match::Kind::tester_offset ||
                       outcome.findings[0].kind == match::Kind::wire_differs);
    sum.field_wide += wide ? 1 : 0;
  });
  return sum;
}

// Of the findings that are said with 0.9 or more, those that are right.
double sure(const simulated::Score& score) {
  return score.calibration[9].all > 0 ? score.calibration[9].value() : 1;
}

}  // namespace

int main(int argc, char** argv) {
  const int fields = argc > 1 ? std::atoi(argv[1]) : 100;
  Setting first;
  if (argc > 2) first.seed = std::strtoull(argv[2], nullptr, 10);
  if (argc > 3) first.pins = std::strtoull(argv[3], nullptr, 10);
  for (const int by : {1, 2}) {
    for (const auto& [style_name, style] : simulated::kStyles) {
      std::printf("%s, simulator %d, %d fields a line\n  %-36s %8s %9s %7s %8s %8s %10s\n",
                  style_name, by, fields, "", "flagged", "alarms/1k", "recall", "precise", ">= 0.9",
                  "field-wide");
      for (const Change& change : kChanges) {
        Setting setting = first;
        setting.style = style;
        change.make(setting);
        const auto [score, wide] = sum_of(setting, fields, by);
        std::printf("  %-36s %8.3f %9.2f %7.3f %8.3f %8.3f %10d\n", change.name,
                    score.wrong_flagged.value(), 1000 * score.sound_flagged.value(),
                    score.moves_found.value(), score.moves_right.value(), sure(score), wide);
      }
      std::fflush(stdout);
    }
  }
  return 0;
}
