// SPDX-License-Identifier: Apache-2.0
#include <QTest>

#include "checklist/desk/acts.h"
#include "tests/gui/tour.h"

namespace walkdown::gui {
namespace {

using Change = std::function<void(Snapshot&)>;

// By hand, as the lead does it; once.
void measure(Window& window, Demo& demo) {
  desk::Desk& desk = window.session()->desk();
  if (!window.session()->now()->state.winds.empty()) return;
  auto key = crew_of(demo.places()).load("Mara Linde", kDemoPassphrase);
  if (!key) return;
  const desk::Signer lead{std::move(key).value(), "Mara Linde", "lead"};
  static_cast<void>(desk::hand_wind(desk, lead, {3100, 5200, 600'000}));
  static_cast<void>(desk::thunder(desk, 12'000));
  static_cast<void>(
      QTest::qWaitFor([&] { return !window.session()->now()->state.winds.empty(); }, 20'000));
}

Stop measured(Window& window, Demo& demo, const char* name, const Change& change) {
  return {QString::fromLatin1(name), [&window, &demo, change](const Look_at& look_at) {
            measure(window, demo);
            window.go(5);
            show_changed(window, change);
            look_at(window);
          }};
}

Change wind_is(std::size_t item, day::Standing standing, const char* why) {
  return [=](Snapshot& seen) {
    seen.state.items[item].standing = standing;
    seen.state.items[item].why = why;
  };
}

}  // namespace

std::vector<Stop> weather_states(Window& window, Demo& demo) {
  const std::size_t wind = window.session()->checklist().item("wind");
  const auto above = [wind](Snapshot& seen) {
    wind_is(wind, day::Standing::refused, "gusts of 13.4 m/s are above 11.1 m/s")(seen);
    seen.state.winds.back().mean_mm_per_s = 9800;
    seen.state.winds.back().gust_mm_per_s = 13'400;
  };
  return {measured(window, demo, "wind", [](Snapshot&) {}),
          measured(window, demo, "wind-above", above),
          measured(window, demo, "wind-expired",
                   wind_is(wind, day::Standing::expired, "was read more than 45 min ago"))};
}

}  // namespace walkdown::gui
