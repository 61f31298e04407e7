// SPDX-License-Identifier: Apache-2.0
#include "checklist/cli/demo_day.h"

#include <fmt/format.h>

#include <utility>

#include "checklist/day/duration.h"
#include "checklist/desk/witness.h"
#include "checklist/record/cosign.h"
#include "checklist/record/sha256.h"

namespace walkdown::cli {
namespace {

using desk::Desk;
using desk::Signer;

constexpr std::int64_t kMinute_ms = 60'000;
constexpr std::int64_t kStartHour = 15;
constexpr const char* kKey = "arming key";
constexpr std::int64_t kLook_ms = 9'000;  // to read a question and look
constexpr std::int64_t kNext_ms = 6'000;  // until the next thing is done

std::int64_t demo_at(int hour, int minute) {
  return kDemoStart_at_ms + ((hour - kStartHour) * 60 + minute) * kMinute_ms;
}

std::string permit_hash() {
  return record::hex(record::sha256("the invented permit of a demonstration"));
}

}  // namespace

DemoDay::DemoDay(Desk& desk, DemoClock& clock, DemoCrew crew, Say say)
    : desk_(&desk), clock_(&clock), crew_(std::move(crew)), say_(std::move(say)) {}

Result<DemoDay> DemoDay::begin(Desk& desk, DemoClock& clock, const std::string& crew_folder,
                               Say say) {
  auto crew = make_demo_crew(crew_folder);
  if (!crew) return crew.error();
  return DemoDay(desk, clock, std::move(crew).value(), std::move(say));
}

Done DemoDay::act(const Does& does) {
  const day::State before = desk_->state();
  const auto entry = does(*desk_);
  if (!entry) return entry.error();
  const day::State after = desk_->state();
  for (const auto& told : desk_->told(1)) {
    say_(fmt::format("  {}  {}", day::say_clock(told.at_ms, kDemoOffset_min), told.say));
  }
  for (const auto& change : changes(desk_->checklist(), before, after))
    say_("           - " + change);
  clock_->skip(kNext_ms);
  return done();
}

void DemoDay::clock_to(int hour, int minute) { clock_->skip_to(demo_at(hour, minute)); }
void DemoDay::heading(const char* text) { say_(fmt::format("\n{}", text)); }

Done DemoDay::at(int hour, int minute, const Does& does) {
  clock_to(hour, minute);
  return act(does);
}

Done DemoDay::all(const std::vector<std::function<Done()>>& steps) {
  for (const auto& step : steps) {
    if (const Done well = step(); !well) return well;
  }
  return done();
}

Done DemoDay::answer(const Signer& who, const char* item, const char* value) {
  const std::int64_t asked_up_ms = desk_->now().up_ms;
  clock_->skip(kLook_ms);
  return act([&](Desk& desk) {
    return desk::answer(desk, who, item, {value, {}, {}}, asked_up_ms);
  });
}

Done DemoDay::answer(const Signer& who, const char* item, const char* value, const Signer& second) {
  if (const Done first = answer(who, item, value); !first) return first;
  clock_->skip(kLook_ms);
  const std::uint64_t of = desk_->state().waiting.back().n;
  return act([&](Desk& desk) { return desk::second(desk, second, of); });
}

Done DemoDay::morning() {
  return all({[&] { return enrol_and_brief(); }, [&] { return ground(); },
              [&] { return into_the_field(); }});
}

Done DemoDay::enrol_and_brief() {
  heading("The crew");
  const Done noted = act([](Desk& desk) {
    return desk::note(desk,
                      "This is a demonstration: people, place, show and faults are invented, the "
                      "tester is simulated, and so is this clock, which skips the waits of the "
                      "day.");
  });
  if (!noted) return noted;
  clock_to(15, 20);
  for (const Signer* each :
       {&crew_.mara, &crew_.jon, &crew_.edda, &crew_.ines, &crew_.tomas, &crew_.olga}) {
    const Done enrolled = act([&](Desk& desk) {
      return desk::enrol(desk, each->name, each->role, each->key.verify_key());
    });
    if (!enrolled) return enrolled;
  }
  return all({[&] {
                return at(15, 30, [&](Desk& desk) {
                  return desk::set_show_time(desk, crew_.mara, demo_at(22, 15), kDemoOffset_min);
                });
              },
              [&] {
                return at(15, 40, [](Desk& desk) {
                  return desk::note(desk,
                                    "briefing held: everybody knows the stop word, the stop "
                                    "channel and the way out");
                });
              }});
}

Done DemoDay::ground() {
  heading("The ground");
  clock_to(15, 55);
  const std::int64_t asked_up_ms = desk_->now().up_ms;
  clock_->skip(kLook_ms);
  const Done permit = act([&](Desk& desk) {
    return desk::answer(desk, crew_.mara, "permit", {"permit.pdf", {}, permit_hash()}, asked_up_ms);
  });
  if (!permit) return permit;
  clock_to(17, 20);  // a long break: the last answer comes up again
  if (const Done edges = answer(crew_.jon, "distances", "on the plan"); !edges) return edges;
  const std::int64_t again_up_ms = desk_->now().up_ms;
  clock_->skip(kLook_ms);
  const Done still = act([&](Desk& desk) {
    return desk::answer(desk, crew_.mara, "permit", {"permit.pdf", {}, permit_hash()}, again_up_ms);
  });
  if (!still) return still;
  clock_to(17, 32);
  const char* away = "as planned, away from people";
  if (const Done angles = answer(crew_.edda, "mortar-angles", away, crew_.jon); !angles) {
    return angles;
  }
  const std::int64_t counted_up_ms = desk_->now().up_ms;
  clock_->skip(4 * kMinute_ms);
  return all(
      {[&] {
         return act([&](Desk& desk) {
           return desk::answer(desk, crew_.jon, "extinguishers", {{}, 4'000, {}}, counted_up_ms);
         });
       },
       [&] {
         return at(17, 50,
                   [&](Desk& desk) { return desk::close_pause(desk, crew_.mara, "ground"); });
       }});
}

Done DemoDay::into_the_field() {
  heading("Before the field is read");
  clock_to(18, 50);
  const Done unit = answer(crew_.mara, "firing-unit", "key out, battery off");
  if (!unit) return unit;
  clock_->skip(2 * kMinute_ms);
  if (const Done current = test_current(); !current) return current;
  clock_to(19, 0);
  for (const Signer* each : {&crew_.edda, &crew_.ines}) {
    const Done inside =
        all({[&] { return act([&](Desk& desk) { return desk::hang_tag(desk, each->name); }); },
             [&] { return act([&](Desk& desk) { return desk::go_in(desk, each->name, {}); }); }});
    if (!inside) return inside;
  }
  return done();
}

Done DemoDay::test_current() {
  const std::int64_t asked_up_ms = desk_->now().up_ms;
  clock_->skip(kLook_ms);
  return act([&](Desk& desk) {
    return desk::answer(desk, crew_.mara, "test-current", {{}, 8'000, {}}, asked_up_ms);
  });
}

Done DemoDay::evening() {
  return all({[&] { return out_of_the_field(); }, [&] { return custody(); },
              [&] { return clear(); }, [&] { return release(); }});
}

Done DemoDay::out_of_the_field() {
  heading("Out of the field");
  clock_to(20, 5);
  const Done alike = answer(crew_.ines, "alike", "labels and plan agree", crew_.mara);
  if (!alike) return alike;
  if (const Done current = test_current(); !current) return current;  // it came up again
  for (const Signer* each : {&crew_.edda, &crew_.ines}) {
    const Done outside = all(
        {[&] { return act([&](Desk& desk) { return desk::come_out(desk, *each, each->name); }); },
         [&] {
           return act([&](Desk& desk) { return desk::take_tag_back(desk, *each, each->name); });
         }});
    if (!outside) return outside;
  }
  return at(20, 20, [&](Desk& desk) { return desk::close_pause(desk, crew_.mara, "proof"); });
}

// A key that goes from hand to hand, weather far off, and a hold that turns out well.
Done DemoDay::custody() {
  heading("While it gets dark");
  const Signer& mara = crew_.mara;
  const Signer& jon = crew_.jon;
  return all(
      {[&] { return at(20, 25, [](Desk& desk) { return desk::thunder(desk, 48'000); }); },
       [&] { return at(20, 30, [&](Desk& desk) { return desk::take_key(desk, mara, kKey); }); },
       [&] { return at(20, 45, [&](Desk& desk) { return desk::offer_key(desk, jon, kKey); }); },
       [&] { return act([&](Desk& desk) { return desk::give_key(desk, mara, kKey); }); },
       [&] {
         return at(21, 5, [](Desk& desk) {
           return desk::instrument_wind(desk, {5'400, 8'200, 600'000});
         });
       },
       [&] {
         return at(21, 20, [&](Desk& desk) {
           return desk::hold(desk, crew_.tomas.name, "a rowing boat inside the line");
         });
       },
       [&] {
         return at(21, 31, [&](Desk& desk) {
           return desk::lift(desk, mara, "the boat was led away, Tomas sees the water empty");
         });
       },
       [&] { return at(21, 40, [&](Desk& desk) { return desk::offer_key(desk, mara, kKey); }); },
       [&] { return act([&](Desk& desk) { return desk::give_key(desk, jon, kKey); }); }});
}

Done DemoDay::clear() {
  heading("Clear and release");
  const Signer& mara = crew_.mara;
  const Signer& jon = crew_.jon;
  const char* away = "as planned, away from people";
  // A hold asks the last answer again; here that was about the pins that read alike, whose pause is
  // closed, so it stands.
  return all({[&] {
                clock_to(21, 44);
                return answer(crew_.edda, "mortar-angles-again", away, jon);
              },
              [&] {
                clock_to(21, 56);
                return answer(crew_.tomas, "edge", "nobody");
              },
              [&] {
                return at(21, 58, [&](Desk& desk) {
                  return desk::hand_wind(desk, jon, {4'900, 7'600, 600'000});
                });
              },
              [&] {
                clock_to(21, 59);
                return answer(mara, "stop-line", "Tomas at the water, Ines at the gate", jon);
              },
              [&] {
                clock_to(22, 2);
                return answer(mara, "firing-unit-again", "key out, battery off", jon);
              },
              [&] {
                return at(22, 4, [&](Desk& desk) {
                  return desk::state_as(desk, crew_.olga,
                                        "I walked the line with the lead and saw nobody inside it");
                });
              }});
}

Done DemoDay::release() {
  clock_to(22, 6);
  const Done signed_first = act([&](Desk& desk) { return desk::release(desk, crew_.mara); });
  if (!signed_first) return signed_first;
  clock_->skip(kLook_ms);
  const std::uint64_t of = desk_->state().waiting.back().n;
  const Done both = act([&](Desk& desk) { return desk::second(desk, crew_.jon, of); });
  if (!both) return both;
  const auto head = desk::head_note(desk_->path());
  if (!head) return head.error();
  const auto cosigned = record::cosign(*head, crew_.olga.key, clock_->at_ms() / 1000);
  if (!cosigned) return cosigned.error();
  return act([&](Desk& desk) { return desk::add_cosignature(desk, *cosigned); });
}

Done DemoDay::show() {
  heading("The show");
  const Done put = at(
      22, 10, [&](Desk& desk) { return desk::put_key(desk, crew_.mara, kKey, "firing position"); });
  if (!put) return put;
  clock_to(22, 15);
  if (desk_->state().release.word != day::ReleaseWord::stands) {
    return Error{Code::refused, "no release stands at the show time", desk_->state().release.why,
                 ""};
  }
  say_("  22:15  the release stands; the show goes");
  clock_to(22, 38);
  return answer(crew_.mara, "last-shot", "22:37, cue 96");
}

Done DemoDay::after(const Sweep& sweep) {
  heading("After the show");
  const Done back = all(
      {[&] {
         return at(22, 41, [&](Desk& desk) { return desk::take_key(desk, crew_.mara, kKey); });
       },
       [&] {
         return act([&](Desk& desk) { return desk::put_key(desk, crew_.mara, kKey, "lock box"); });
       }});
  if (!back) return back;
  clock_to(22, 55);
  const auto live = sweep();
  if (!live) return live.error();
  return search(*live);
}

Done DemoDay::search(std::size_t live) {
  heading("The search of the ground");
  const Done inside = at(23, 5, [&](Desk& desk) { return desk::go_in(desk, crew_.edda.name, {}); });
  if (!inside) return inside;
  if (live > 0) {
    clock_to(23, 25);
    const Done found =
        all({[&] { return answer(crew_.edda, "sweep", "live material, marked and guarded"); },
             [&] {
               return act([&](Desk& desk) {
                 return desk::note(desk,
                                   fmt::format("{} pins still read a load after the show: each was "
                                               "guarded, shunted and taken down by the lead",
                                               live));
               });
             }});
    if (!found) return found;
  }
  clock_to(23, 55);
  const Done clean = answer(crew_.edda, "sweep", "nothing live", crew_.jon);
  if (!clean) return clean;
  return act([&](Desk& desk) { return desk::come_out(desk, crew_.edda, crew_.edda.name); });
}

}  // namespace walkdown::cli
