// SPDX-License-Identifier: Apache-2.0
#include "tests/check/whole_day.h"

#include "checklist/audit/claim.h"
#include "checklist/desk/witness.h"
#include "checklist/record/timestamp.h"
#include "tests/desk/evening.h"
#include "tests/record/authority.h"

namespace walkdown::check::test {
namespace {

using desk::test::Evening;
using desk::test::fine;

void time_stamp(desk::Desk& desk) {
  record::test::Authority authority;
  const std::string note = *desk::head_note(desk.path());
  const record::Bytes request = *record::time_stamp_request(note, 0x7123456789abcdef);
  fine(add_time_stamp(desk, note, request, authority.answer(request)));
}

std::string whole_day() {
  Evening evening;
  evening.enrol_all();
  fine(set_show_time(*evening.desk, evening.mara, evening.clock.at + 30 * desk::test::kMinute_ms));
  for (int i = 0; i < 5; ++i) evening.read(desk::test::fitting_line(i));
  evening.read("M02,R1,P02,OL,ohm");
  EXPECT_TRUE(evening.desk->claim().ok());
  fine(go_in(*evening.desk, "Edda", {"South"}));
  fine(rehook(*evening.desk, {{{2, 1, 2}}, {}, 0, 0, "Edda", "open"}));
  fine(come_out(*evening.desk, evening.edda, "Edda"));
  for (int i = 0; i < 6; ++i) evening.read(desk::test::fitting_line(i));
  EXPECT_TRUE(evening.desk->claim().ok());
  fine(close_pause(*evening.desk, evening.mara, "set"));
  fine(take_key(*evening.desk, evening.mara, "key"));
  fine(offer_key(*evening.desk, evening.jon, "key"));
  fine(give_key(*evening.desk, evening.mara, "key"));
  fine(offer_key(*evening.desk, evening.mara, "key"));
  fine(give_key(*evening.desk, evening.jon, "key"));
  fine(hold(*evening.desk, "Jon", "smoke"));
  fine(lift(*evening.desk, evening.mara, "smoke has gone"));
  const std::int64_t asked = evening.desk->now().up_ms;
  evening.clock.pass(3'000);
  const auto n = fine(answer(*evening.desk, evening.jon, "edge", {"nobody", {}, {}}, asked));
  fine(second(*evening.desk, evening.mara, n));
  evening.release();
  fine(note(*evening.desk, "the show began"));
  time_stamp(*evening.desk);
  evening.clock.pass(60'000);
  evening.read(desk::test::fitting_line(0));
  evening.read(desk::test::fitting_line(1));
  fine(note(*evening.desk, "the field is dark"));
  EXPECT_TRUE(evening.desk->close("over").ok());
  evening.desk.reset();
  return record::test::read_file(evening.path);
}

std::string waived_day() {
  Evening evening;
  evening.enrol_all();
  for (int i = 0; i < 5; ++i) evening.read(desk::test::fitting_line(i));
  evening.read("M02,R1,P02,OL,ohm");
  EXPECT_TRUE(evening.desk->claim().ok());
  fine(second(*evening.desk, evening.jon,
              fine(waive_pin(*evening.desk, evening.mara, "M02/R1/P02", "it is taken out"))));
  fine(close_pause(*evening.desk, evening.mara, "set"));
  fine(take_key(*evening.desk, evening.mara, "key"));
  const std::int64_t asked = evening.desk->now().up_ms;
  evening.clock.pass(3'000);
  const auto n = fine(answer(*evening.desk, evening.jon, "edge", {"nobody", {}, {}}, asked));
  fine(second(*evening.desk, evening.mara, n));
  evening.release();
  EXPECT_TRUE(evening.desk->close("over").ok());
  evening.desk.reset();
  return record::test::read_file(evening.path);
}

}  // namespace

const std::string& the_waived_day() {
  static const std::string day = waived_day();
  return day;
}

const std::string& the_day() {
  static const std::string day = whole_day();
  return day;
}

}  // namespace walkdown::check::test
