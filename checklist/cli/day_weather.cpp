// SPDX-License-Identifier: Apache-2.0
// day wind, thunder
#include "checklist/cli/clock_text.h"
#include "checklist/cli/day_parts.h"
#include "checklist/day/duration.h"
#include "checklist/weather/thunder.h"

namespace walkdown::cli {
namespace {

struct WeatherArguments {
  DayPaths day;
  std::string mean;
  std::string gust;
  std::string period = "10m";
  std::string flash;
};

Result<day::WindValue> wind_value(const WeatherArguments& arguments) {
  const auto mean = typed_milli(arguments.mean, "the mean wind");
  if (!mean) return mean.error();
  const auto gust = typed_milli(arguments.gust, "the gust");
  if (!gust) return gust.error();
  const auto period_ms = day::parse_duration(arguments.period);
  if (!period_ms) {
    return Error{Code::usage, "this is no averaging time", arguments.period, "write 10m or 2m"};
  }
  return day::WindValue{*mean, *gust, *period_ms};
}

Status wind(const WeatherArguments& arguments) {
  const auto value = wind_value(arguments);
  if (!value) return not_done(value.error());
  return run_signed(arguments.day, [&](desk::Desk& desk, const desk::Signer& signer) {
    return desk::hand_wind(desk, signer, *value);
  });
}

Status thunder(const WeatherArguments& arguments) {
  std::optional<std::int64_t> flash_ms;
  if (!arguments.flash.empty()) {
    const auto milli = typed_milli(arguments.flash, "the time from flash to bang");
    if (!milli) return not_done(milli.error());
    flash_ms = *milli;
  }
  return run_act(arguments.day, [&](desk::Desk& desk) { return desk::thunder(desk, flash_ms); });
}

}  // namespace

void add_day_weather(CLI::App& day, Run& chosen) {
  auto arguments = std::make_shared<WeatherArguments>();
  auto* winding = add_part(day, "wind", "Mean wind and gust at the field, in m/s",
                           "day wind --mean 4.2 --gust 7.1 --as \"Jon Weir\" --record today.record",
                           chosen, arguments, wind);
  winding->add_option("--mean", arguments->mean, "Mean over the period, m/s")->required();
  winding->add_option("--gust", arguments->gust, "Highest 3 s mean in it, m/s")->required();
  winding->add_option("--period", arguments->period, "Averaging time: 10m (default) or 2m");
  add_record(*winding, arguments->day);
  add_signing(*winding, arguments->day);
  auto* thundering =
      add_part(day, "thunder", "Thunder was heard: the wait begins anew",
               "day thunder --flash 12 --record today.record", chosen, arguments, thunder);
  thundering->add_option("--flash", arguments->flash,
                         "Seconds from flash to bang; left out: counts as near");
  add_record(*thundering, arguments->day);
}

}  // namespace walkdown::cli
