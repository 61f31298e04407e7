// SPDX-License-Identifier: Apache-2.0
// A whole invented day on the full evening checklist, acted out through the desk as a crew would:
//
//   auto day = DemoDay::begin(desk, clock, folder + "/crew", say);
//   day->morning();     // enrolled, briefed, the ground, the crew in the field with their tags
//   hung
//   ... the field is read, mended and read again, until it fits ...
//   day->evening();     // out of the field, proved, cleared, released by two
//   day->show();        // the key to the firing position, the show, the last cue
//   day->after(sweep);  // waiting time, the tester's sweep, the search, the key back
//
// Every act is what the rules let these people do, and stops the demo where one is refused.
#pragma once

#include <functional>
#include <string>

#include "checklist/cli/demo_clock.h"
#include "checklist/cli/demo_crew.h"
#include "checklist/desk/acts.h"
#include "checklist/desk/desk.h"

namespace walkdown::cli {

// 2027-06-19 15:00 at a place two hours ahead of UTC; the show is at 22:15 there. Invented.
inline constexpr std::int64_t kDemoStart_at_ms = 1'813'410'000'000;
inline constexpr std::int64_t kDemoOffset_min = 120;

class DemoDay {
 public:
  using Say = std::function<void(const std::string& line)>;
  // Reads the field once more after the show, into the same record; gives back how many pins
  // still read a load.
  using Sweep = std::function<Result<std::size_t>()>;

  // `desk` and `clock` outlive this; the record is on that clock and has the evening checklist.
  static Result<DemoDay> begin(desk::Desk& desk, DemoClock& clock, const std::string& crew_folder,
                               Say say);

  Done morning();
  Done evening();
  Done show();
  Done after(const Sweep& sweep);

 private:
  DemoDay(desk::Desk& desk, DemoClock& clock, DemoCrew crew, Say say);

  using Does = std::function<desk::Entry(desk::Desk&)>;
  // At hh:mm of the invented day, or right away where it is later already.
  Done at(int hour, int minute, const Does& does);
  Done act(const Does& does);
  Done answer(const desk::Signer& who, const char* item, const char* value);
  // The same, and somebody else looks and signs too.
  Done answer(const desk::Signer& who, const char* item, const char* value,
              const desk::Signer& second);
  Done all(const std::vector<std::function<Done()>>& steps);
  void clock_to(int hour, int minute);
  void heading(const char* text);

  Done enrol_and_brief();
  Done ground();
  Done into_the_field();
  Done test_current();
  Done out_of_the_field();
  Done custody();
  Done clear();
  Done release();
  Done search(std::size_t live);

  desk::Desk* desk_;
  DemoClock* clock_;
  DemoCrew crew_;
  Say say_;
};

}  // namespace walkdown::cli
