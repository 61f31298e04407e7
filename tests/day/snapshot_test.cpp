// SPDX-License-Identifier: Apache-2.0
#include "checklist/day/snapshot.h"

#include <gtest/gtest.h>

#include "world.h"

namespace walkdown::day {
namespace {

// A day with something in every member.
void eventful(World& world) {
  world.released();
  world.put("show-time",
            propose_show_time(world.fold, world.now, kAnn, kStart_ms + 9'000'000, 120));
  world.put("thunder", propose_thunder(world.fold, world.now, 12'000));
  world.put("in", propose_in(world.fold, world.now, "Cy", {"Jetty"}));
  world.put("tag-hang", propose_tag_hang(world.fold, world.now, "Cy"));
  world.put("out", propose_out(world.fold, world.now, kAnn, "Cy", "seen at the van"));
  world.put("key-offer", propose_key_offer(world.fold, world.now, kBo, "key"));
  world.put("waive", propose_waive(world.fold, world.now, kAnn, "edge", "watched by two spotters"));
  world.put("waive-pin",
            propose_waive_pin(world.fold, world.now, kAnn, "M01/R1/P01", "cue is cut"));
  world.put("hold", propose_hold(world.fold, world.now, "Cy", "smoke"));
  world.write("lift", {{"reason", "not signed"}});
}

class Copies {
 public:
  explicit Copies(const World& world)
      : pins_(world.pins), outside_(world.outside), list_(world.fold.checklist()) {
    outside_.source = &pins_;
    fold_.emplace(list_, outside_);
  }
  Fold& fold() { return *fold_; }

 private:
  FakePins pins_;
  Outside outside_;
  Checklist list_;
  std::optional<Fold> fold_;
};

std::string json_at(const Fold& fold, Now now) { return to_json(fold.at(now)).dump(); }

TEST(Snapshot, EveryMemberComesBack) {
  World world;
  eventful(world);
  Copies copy(world);
  ASSERT_TRUE(restore(copy.fold(), snapshot(world.fold)));
  EXPECT_EQ(json_at(copy.fold(), world.now), json_at(world.fold, world.now));
  EXPECT_EQ(snapshot(copy.fold()), snapshot(world.fold));
}

TEST(Snapshot, WhateverComesNextIsTheSame) {
  World world;
  eventful(world);
  Copies copy(world);
  ASSERT_TRUE(restore(copy.fold(), snapshot(world.fold)));
  const std::size_t from = world.entries.size();
  world.pass(3 * kMinute_ms);
  world.second(kBo, world.state().waiting.front().n);
  world.put("key-give", propose_key_give(world.fold, world.now, kAnn, "key"));
  world.put("lift", propose_lift(world.fold, world.now, kAnn, "gone"));
  world.read_all();
  for (std::size_t i = from; i < world.entries.size(); ++i) copy.fold().take(world.entries[i]);
  EXPECT_EQ(json_at(copy.fold(), world.now), json_at(world.fold, world.now));
}

// Cut anywhere, or with any byte changed, it is refused or loads to something, and never ends
// badly.
TEST(Snapshot, DamageEndsWell) {
  World world;
  eventful(world);
  const std::string whole = snapshot(world.fold);
  for (std::size_t i = 0; i < whole.size(); ++i) {
    Copies cut(world);
    EXPECT_FALSE(restore(cut.fold(), whole.substr(0, i))) << i;
    Copies changed(world);
    std::string bytes = whole;
    bytes[i] = static_cast<char>(bytes[i] ^ 0xFF);
    (void)restore(changed.fold(), bytes);
  }
  Copies longer(world);
  EXPECT_FALSE(restore(longer.fold(), whole + "x"));
}

// What version 1 kept of a waiver meant something else: the same bytes under that number are not
// looked at.
TEST(Snapshot, OneOfAnotherVersionIsRefused) {
  World world;
  eventful(world);
  const std::string bytes = snapshot(world.fold);
  const std::size_t at = bytes.find(static_cast<char>(kSnapshotVersion));
  ASSERT_LT(at, 8U) << "the version is not where it was thought to be";
  for (const unsigned version : {0U, 1U, kSnapshotVersion + 1}) {
    std::string other = bytes;
    other[at] = static_cast<char>(version);
    Copies copy(world);
    const std::string before = json_at(copy.fold(), world.now);
    EXPECT_FALSE(restore(copy.fold(), other)) << version;
    EXPECT_EQ(json_at(copy.fold(), world.now), before);
  }
}

TEST(Snapshot, AnotherChecklistOrPlanIsRefused) {
  World world;
  eventful(world);
  const std::string bytes = snapshot(world.fold);
  Checklist shorter = small_checklist();
  shorter.items.pop_back();
  FakePins pins;
  Outside outside = world.outside;
  outside.source = &pins;
  Fold other(shorter, outside);
  const std::string before = json_at(other, world.now);
  EXPECT_FALSE(restore(other, bytes));
  EXPECT_EQ(json_at(other, world.now), before);
  Outside fewer = outside;
  fewer.pins.pop_back();
  Fold planned(small_checklist(), fewer);
  EXPECT_FALSE(restore(planned, bytes));
}

}  // namespace
}  // namespace walkdown::day
