// SPDX-License-Identifier: Apache-2.0
#include "tests/gui/big_show.h"

#include <fmt/format.h>

#include <cmath>
#include <stdexcept>

#include "checklist/desk/prepared.h"
#include "templates/embedded.h"

namespace walkdown::gui {
namespace {

std::string plan_text(int positions, int modules) {
  std::string text = "cue,position,module,rail,pin,igniter,count,join,wire,lead_m\n";
  int cue = 0;
  for (int p = 0; p < positions; ++p) {
    for (int m = 0; m < modules; ++m) {
      for (int i = 0; i < 48; ++i) {
        text += fmt::format("{},Place {:02},{},{},{},bridge-1.6,{},series,AWG24,{}\n", ++cue, p + 1,
                            p * modules + m + 1, i / 16 + 1, i % 16 + 1, 1 + i % 3, 4 + i % 16);
      }
    }
  }
  return text;
}

std::string site_text(int positions) {
  std::string text = R"({"type":"FeatureCollection","features":[)";
  for (int p = 0; p < positions; ++p) {
    const double turn = 6.2832 * p / positions;
    text += fmt::format(
        R"({}{{"type":"Feature","properties":{{"role":"position","name":"Place {:02}"}},)"
        R"("geometry":{{"type":"Point","coordinates":[{:.6f},{:.6f}]}}}})",
        p == 0 ? "" : ",", p + 1, -35.2 + 0.004 * std::cos(turn), 44.6 + 0.002 * std::sin(turn));
  }
  return text + "]}";
}

constexpr const char* kIgniters =
    "[igniter.\"bridge-1.6\"]\nbridge_ohm = [1.45, 1.75]\nsource = \"made up\"\n";

}  // namespace

show::Show big_show(int positions, int modules) {
  show::Show show;
  show.put({show::Role::plan, "plan.csv", plan_text(positions, modules)});
  show.put({show::Role::site, "site.geojson", site_text(positions)});
  show.put({show::Role::igniters, "igniters.toml", kIgniters});
  show.put({show::Role::checklist, "checklist.toml",
            std::string(templates::text("checklists/evening-show.toml").value())});
  return show;
}

trainer::Field big_field(const show::Show& show, int one_in) {
  const auto prepared = desk::prepare(show);
  if (!prepared.prepared) throw std::runtime_error(prepared.errors.front());
  const auto& planned = prepared.prepared->planned;
  trainer::Field field(planned.plan, planned.tester.model, 11);
  int turn = 0;
  for (const plan::PinId pin : field.pins()) {
    if (++turn % one_in != 0) continue;
    if (const Done made = field.set_fault(pin, trainer::FaultKind::open); !made) {
      throw std::runtime_error(made.error().sentence());
    }
  }
  return field;
}

}  // namespace walkdown::gui
