// SPDX-License-Identifier: Apache-2.0
#include "tests/desk/evening.h"

#include "checklist/audit/drafts.h"

namespace walkdown::desk::test {
namespace {

constexpr const char* kPlan =
    "cue,position,module,rail,pin,igniter,lead_m,wire,calibre_mm\n"
    "1,North,1,1,1,standard,2,AWG24,50\n"
    "2,North,1,1,2,standard,10,AWG24,50\n"
    "3,North,1,1,3,standard,20,AWG24,50\n"
    "4,South,1,1,4,standard,30,AWG24,50\n"
    "5,South,2,1,1,standard,40,AWG24,50\n"
    "6,South,2,1,2,standard,50,AWG24,50\n";

constexpr const char* kChecklist = R"(
name = "small"
source = "a test"
show_length = "5m"
release_second = ["safety"]
[[key]]
name = "key"
starts = "box"
firing = "desk"
[[stage]]
id = "set"
title = "Set"
[[stage.item]]
id = "distances"
question = "Where do the edges lie?"
kind = "zone"
[[stage.item]]
id = "loop"
question = "Do all pins fit?"
kind = "continuity"
valid_for = "2h"
source = "a test"
[[stage]]
id = "clear"
title = "Clear"
[[stage.item]]
id = "field"
question = "Who is out there?"
kind = "headcount"
[[stage.item]]
id = "edge"
question = "What is inside the line?"
kind = "confirm"
by = ["safety"]
second = ["lead"]
choices = ["nobody", "a person"]
good = ["nobody"]
valid_for = "20m"
source = "a test"
needs = ["field"]
broken_by = ["entered", "hold", "clock", "show-time", "suspend", "restart"]
[[stage.item]]
id = "key"
question = "Who has the key?"
kind = "custody"
key = "key"
places = ["role:lead", "desk"]
)";

constexpr const char* kSite = R"({"type":"FeatureCollection","features":[
{"type":"Feature","properties":{"role":"position","name":"North"},
 "geometry":{"type":"Point","coordinates":[-35.2,44.601]}},
{"type":"Feature","properties":{"role":"position","name":"South"},
 "geometry":{"type":"Point","coordinates":[-35.2,44.600]}},
{"type":"Feature","properties":{"role":"audience","name":"Lawn"},
 "geometry":{"type":"LineString","coordinates":[[-35.201,44.598],[-35.199,44.598]]}}]})";

Signer signer(const char* name, const char* role, std::uint8_t byte) {
  record::Seed seed{};
  seed.fill(byte);
  return {record::SigningKey(name, seed), name, role};
}

}  // namespace

show::Show evening_show() {
  show::Show show;
  show.put({show::Role::plan, "plan.csv", kPlan});
  show.put({show::Role::checklist, "small.toml", kChecklist});
  show.put({show::Role::site, "site.geojson", kSite});
  return show;
}

const char* fitting_line(int i) {
  static constexpr const char* kLines[] = {"M01,R1,P01,2.09,ohm", "M01,R1,P02,3.43,ohm",
                                           "M01,R1,P03,5.12,ohm", "M01,R1,P04,6.80,ohm",
                                           "M02,R1,P01,8.49,ohm", "M02,R1,P02,10.17,ohm"};
  return kLines[i];
}

Evening::Evening(std::optional<show::Show> given)
    : show(std::move(given)),
      mara(signer("Mara", "lead", 11)),
      jon(signer("Jon", "safety", 12)),
      edda(signer("Edda", "crew", 13)) {
  reopen();
}

DeskOptions Evening::options() {
  DeskOptions options;
  options.slept_ms = [this] { return slept_ms; };
  return options;
}

void Evening::reopen() {
  desk.reset();
  auto opened = Desk::open(path, show, record::test::station(), clock, options());
  ASSERT_TRUE(opened.ok()) << opened.error().sentence();
  desk.emplace(std::move(opened).value());
}

void Evening::read(const char* line) {
  const auto parsed = desk->parser().parse(line);
  const auto& reading = std::get<tester::Reading>(parsed);
  ASSERT_TRUE(desk->writer().append({"reading", audit::reading_body(reading, line)}).ok());
  ASSERT_TRUE(desk->writer().flush().ok());
}

void Evening::read_all() {
  for (int i = 0; i < 6; ++i) read(fitting_line(i));
}

void Evening::enrol_all() {
  for (const Signer* each : {&mara, &jon, &edda}) {
    fine(enrol(*desk, each->name, each->role, each->key.verify_key()));
  }
}

void Evening::ready() {
  enrol_all();
  read_all();
  fine(close_pause(*desk, mara, "set"));
  fine(take_key(*desk, mara, "key"));
  const std::int64_t asked = desk->now().up_ms;
  clock.pass(3'000);
  const auto n = fine(answer(*desk, jon, "edge", {"nobody", {}, {}}, asked));
  fine(second(*desk, mara, n));
}

void Evening::release() {
  const auto n = fine(desk::release(*desk, mara));
  fine(second(*desk, jon, n));
}

std::string Evening::standing(const std::string& id) const {
  for (const auto& item : desk->state().items) {
    if (item.id == id) return std::string(word(item.standing));
  }
  return "no such item";
}

std::uint64_t fine(const Entry& entry) {
  if (entry) return *entry;
  ADD_FAILURE() << entry.error().sentence();
  return 0;
}

std::string refusal(const Entry& entry) { return entry ? "" : entry.error().sentence(); }

}  // namespace walkdown::desk::test
