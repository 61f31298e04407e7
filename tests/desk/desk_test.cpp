// SPDX-License-Identifier: Apache-2.0
#include "checklist/desk/desk.h"

#include <gmock/gmock.h>

#include <atomic>
#include <future>
#include <thread>

#include "checklist/audit/drafts.h"
#include "checklist/desk/copy.h"
#include "tests/desk/evening.h"

namespace walkdown::desk::test {
namespace {

using testing::AllOf;
using testing::HasSubstr;
using testing::IsEmpty;

TEST(Desk, AWholeEveningIsReleasedAndVerifies) {
  Evening evening;
  evening.ready();
  EXPECT_THAT(evening.desk->state().against, IsEmpty());
  evening.release();
  const auto state = evening.desk->state();
  EXPECT_EQ(state.word, "released");
  EXPECT_EQ(state.ignored_count, 0U) << state.ignored.back().why;
  EXPECT_EQ(evening.desk->disagrees(), std::nullopt);
  const auto report = record::verify_file(evening.path);
  ASSERT_TRUE(report.ok());
  EXPECT_TRUE(report->holds) << report->why;
}

TEST(Desk, WhatIsRefusedLeavesNothingBehind) {
  Evening evening;
  evening.enrol_all();
  const auto before = evening.desk->counts().entries;
  EXPECT_THAT(refusal(close_pause(*evening.desk, evening.jon, "set")), HasSubstr("loop is open"));
  EXPECT_THAT(refusal(lift(*evening.desk, evening.jon, "because")), HasSubstr("no hold is on"));
  fine(hold(*evening.desk, "", ""));
  EXPECT_THAT(refusal(lift(*evening.desk, evening.jon, "because")),
              HasSubstr("may not do this as safety"));
  EXPECT_EQ(evening.desk->counts().entries, before + 1);
}

TEST(Desk, NobodySignsForAnother) {
  Evening evening;
  evening.enrol_all();
  fine(hold(*evening.desk, "Edda", "smoke"));
  Signer forged = evening.mara;
  forged.key = evening.jon.key;
  EXPECT_FALSE(lift(*evening.desk, forged, "because").ok());
  const auto other = evening.desk->sign(evening.jon, "lift", [&](const auto& fold, day::Now now) {
    return day::propose_lift(fold, now, evening.mara.who(), "because");
  });
  EXPECT_THAT(refusal(other), HasSubstr("not the signer's own"));
  EXPECT_TRUE(evening.desk->state().hold.has_value());
}

TEST(Desk, ReopenedOnAMachineThatRanOnNothingIsLost) {
  Evening evening;
  evening.ready();
  evening.release();
  evening.clock.pass(1'000);
  evening.reopen();
  EXPECT_EQ(evening.desk->state().word, "released");
  EXPECT_EQ(evening.standing("edge"), "holds");
}

TEST(Desk, SleepWhileNoProgramRanIsSeenByTheNext) {
  Evening evening;
  evening.ready();
  evening.slept_ms = 120'000;
  evening.clock.pass(120'000);
  evening.reopen();
  EXPECT_EQ(evening.standing("edge"), "broken");
  EXPECT_EQ(evening.desk->told(1).front().say, "the machine slept for 2 min");
  const auto entries = evening.desk->counts().entries;
  evening.reopen();
  EXPECT_EQ(evening.desk->counts().entries, entries + 1) << "resumed, and the sleep only once";
}

TEST(Desk, TheSameStateAfterARebootButForWhatItBreaks) {
  Evening evening;
  evening.ready();
  evening.release();
  evening.clock.pass(1'000);
  evening.desk.reset();
  evening.clock.up = 500;
  evening.reopen();
  const auto state = evening.desk->state();
  EXPECT_EQ(state.word, "checking") << "edge is broken by a reboot";
  EXPECT_EQ(evening.standing("loop"), "holds");
  EXPECT_EQ(evening.standing("edge"), "broken");
  EXPECT_EQ(state.keys.at(0).holder, "Mara");
  const auto copy = Copy::open(evening.path);
  ASSERT_TRUE(copy.ok());
  EXPECT_TRUE(copy->report().holds) << copy->report().why;
  EXPECT_EQ(to_json(copy->state(evening.desk->now())).dump(), evening.state_json());
}

TEST(Desk, ASecondReaderSeesTheSameToTheByte) {
  Evening evening;
  evening.ready();
  evening.release();
  fine(thunder(*evening.desk, 12'000));
  fine(go_in(*evening.desk, "Edda", {"North"}));
  const auto copy = Copy::open(evening.path);
  ASSERT_TRUE(copy.ok());
  EXPECT_EQ(to_json(copy->state(evening.desk->now())).dump(), evening.state_json());
  evening.clock.pass(3 * kMinute_ms);
  EXPECT_EQ(to_json(copy->state(evening.desk->now())).dump(), evening.state_json());
}

TEST(Desk, AnOldHeadIsMadeFreshBeforeSomebodySigns) {
  Evening evening;
  evening.enrol_all();
  fine(hold(*evening.desk, "", ""));
  evening.clock.pass(3 * 60 * kMinute_ms);
  fine(lift(*evening.desk, evening.mara, "all is quiet"));
  const auto told = evening.desk->told(2);
  EXPECT_EQ(told.at(0).kind, "moment");
  EXPECT_EQ(told.at(1).say, "Mara (lead) lifted the hold: all is quiet");
  EXPECT_TRUE(record::verify_file(evening.path)->holds);
}

TEST(Desk, SleepIsWrittenAndBreaksWhatItShould) {
  Evening evening;
  evening.ready();
  evening.release();
  evening.slept_ms = 40'000;
  evening.clock.pass(40'000);
  ASSERT_TRUE(evening.desk->look().ok());
  EXPECT_EQ(evening.standing("edge"), "broken");
  EXPECT_EQ(evening.desk->state().release.word, day::ReleaseWord::fallen);
  const auto entries = evening.desk->counts().entries;
  ASSERT_TRUE(evening.desk->look().ok());
  EXPECT_EQ(evening.desk->counts().entries, entries) << "it slept once";
}

TEST(Desk, ASteppedWallClockIsWritten) {
  Evening evening;
  evening.ready();
  evening.clock.at += 5'000;
  ASSERT_TRUE(evening.desk->look().ok());
  EXPECT_EQ(evening.standing("edge"), "broken");
  EXPECT_THAT(evening.desk->told(2).front().say, HasSubstr("stepped on by 5 s"));
}

TEST(Desk, DayAndFieldTakeTheSameRehook) {
  for (const bool by_position : {false, true}) {
    Evening evening;
    evening.ready();
    audit::Rehook rehook;
    if (by_position) {
      rehook.positions = {"South"};
    } else {
      rehook.module = 2;
    }
    fine(desk::rehook(*evening.desk, rehook));
    int stale = 0;
    for (const auto& pin : evening.desk->outcome()->pins) {
      stale += pin.verdict == match::Verdict::stale ? 1 : 0;
    }
    EXPECT_EQ(stale, by_position ? 3 : 2);
    const std::string wanted = std::to_string(stale) + " are unread";
    EXPECT_THAT(evening.desk->state().items.at(1).why, HasSubstr(wanted));
  }
}

TEST(Desk, SomebodyAtAPositionMakesItsReadingsStale) {
  Evening evening;
  evening.ready();
  fine(go_in(*evening.desk, "Edda", {"South"}));
  EXPECT_EQ(evening.desk->outcome()->pins.at(3).verdict, match::Verdict::stale);
  EXPECT_EQ(evening.desk->outcome()->pins.at(2).verdict, match::Verdict::fits);
  evening.read(fitting_line(3));
  EXPECT_EQ(evening.desk->outcome()->pins.at(3).verdict, match::Verdict::fits);
}

TEST(Desk, ARehookThatTheFieldCouldNotReadIsNotWritten) {
  Evening evening;
  const auto before = evening.desk->counts().entries;
  EXPECT_FALSE(evening.desk->act("rehook", Desk::Body{{"pins", {"M1"}}}).ok());
  EXPECT_EQ(evening.desk->counts().entries, before);
}

TEST(Desk, AnotherShowIsRefusedAndNoneIsTaken) {
  Evening evening;
  evening.enrol_all();
  evening.desk.reset();
  auto other = evening_show();
  other.put({show::Role::checklist, "small.toml", other.find(show::Role::checklist)->text + "\n"});
  const auto refused = Desk::open(evening.path, other, record::test::station(), evening.clock);
  ASSERT_FALSE(refused.ok());
  EXPECT_THAT(refused.error().sentence(), HasSubstr("another file: checklist"));
  EXPECT_TRUE(Desk::open(evening.path, {}, record::test::station(), evening.clock).ok());
}

TEST(Desk, OneWriterAtATime) {
  Evening evening;
  const auto other = Desk::open(evening.path, {}, record::test::station(), evening.clock);
  ASSERT_FALSE(other.ok());
  EXPECT_EQ(other.error().code, Code::busy);
  EXPECT_TRUE(Copy::open(evening.path).ok()) << "but anybody may look";
}

TEST(Desk, MistakesInTheShowAreSaidBeforeThereIsARecord) {
  record::test::Scratch scratch;
  record::test::ManualClock clock;
  auto show = evening_show();
  show.put({show::Role::checklist, "small.toml", "name = 1\n"});
  const auto refused = Desk::open(scratch.path("x"), show, record::test::station(), clock);
  ASSERT_FALSE(refused.ok());
  EXPECT_THAT(refused.error().sentence(),
              AllOf(HasSubstr("the show has mistakes"), HasSubstr("small.toml, line 1")));
  EXPECT_FALSE(Copy::open(scratch.path("x")).ok());
}

TEST(Desk, WithoutAChecklistPeopleAndHoldsWorkAndNothingIsReleased) {
  show::Show show;
  show.put(*evening_show().find(show::Role::plan));
  Evening evening(show);
  evening.enrol_all();
  fine(hold(*evening.desk, "Edda", "smoke"));
  EXPECT_THAT(refusal(lift(*evening.desk, evening.edda, "gone")), HasSubstr("may not do this"));
  fine(lift(*evening.desk, evening.mara, "gone"));
  EXPECT_THAT(refusal(release(*evening.desk, evening.mara)),
              HasSubstr("no stage is part of the release"));
}

TEST(Desk, TheListenerHearsOfEveryEntryOnceAndInOrder) {
  Evening evening;
  std::atomic<std::uint64_t> next{evening.desk->counts().entries};
  std::atomic<bool> in_order{true};
  std::atomic<std::uint64_t> seen{0};
  evening.desk->listen([&](Written written) {
    if (written.first != next) in_order = false;
    next = written.end;
    seen = evening.desk->state().entries;  // may look, from there
  });
  evening.enrol_all();
  evening.read_all();
  const auto entries = evening.desk->counts().entries;
  for (int i = 0; i < 500 && next < entries; ++i) {
    std::this_thread::sleep_for(std::chrono::milliseconds(10));
  }
  EXPECT_EQ(next, entries);
  EXPECT_TRUE(in_order);
  EXPECT_GE(seen, 1U);
  evening.desk->listen({});
  fine(hold(*evening.desk, "", ""));
  EXPECT_EQ(next, entries);
}

TEST(Desk, ManyThreadsMayLookAndActWhileReadingsCome) {
  Evening evening;
  evening.enrol_all();
  std::atomic<bool> stop{false};
  std::thread reader([&] {
    while (!stop) evening.read(fitting_line(2));
  });
  std::thread looker([&] {
    while (!stop) {
      EXPECT_EQ(evening.desk->state().people.size(), 3U);
      EXPECT_FALSE(evening.desk->outcome()->pins.empty());
    }
  });
  for (int i = 0; i < 20; ++i) {
    fine(hold(*evening.desk, "Edda", "smoke"));
    fine(lift(*evening.desk, evening.mara, "gone " + std::to_string(i)));
  }
  stop = true;
  reader.join();
  looker.join();
  EXPECT_EQ(evening.desk->state().ignored_count, 0U);
  EXPECT_EQ(evening.desk->disagrees(), std::nullopt);
  EXPECT_TRUE(record::verify_file(evening.path)->holds);
}

// A diagnosis of a large field takes longer than a tester's next hundred lines.
TEST(Desk, AReadingReachesTheMediumWhileSomebodyLooks) {
  Evening evening;
  std::future<Done> written;
  bool in_time = false;
  const auto refused =
      evening.desk->act("hold", [&](const day::Fold&, day::Now) -> Result<Desk::Body> {
        written = std::async(std::launch::async, [&] {
          return evening.desk->writer().append_and_wait(record::Draft{"moment"});
        });
        in_time = written.wait_for(std::chrono::seconds(20)) == std::future_status::ready;
        return Error{Code::refused, "looked only", "", ""};
      });
  EXPECT_TRUE(in_time) << "the writer waits for whoever looks at the field";
  EXPECT_FALSE(refused.ok());
  EXPECT_TRUE(written.get().ok());
  EXPECT_EQ(evening.desk->counts().entries, evening.desk->head().size);
}

TEST(Desk, ClaimAndClose) {
  Evening evening;
  evening.read_all();
  ASSERT_TRUE(evening.desk->claim().ok());
  EXPECT_THAT(evening.desk->told(1).front().say, HasSubstr("6 fits"));
  ASSERT_TRUE(evening.desk->close("the day is over").ok());
  EXPECT_FALSE(hold(*evening.desk, "", "").ok());
  const auto copy = Copy::open(evening.path);
  ASSERT_TRUE(copy.ok());
  EXPECT_TRUE(copy->report().holds) << copy->report().why;
  EXPECT_TRUE(copy->report().closed);
}

}  // namespace
}  // namespace walkdown::desk::test
