// SPDX-License-Identifier: Apache-2.0
// Every state that a small checklist can reach, walked to its end, beside a model of the rules that
// shares nothing with the program but their wording in FORMAT.md.
#include <gtest/gtest.h>

#include <deque>
#include <set>
#include <tuple>

#include "checklist/day/read_checklist.h"
#include "world.h"

namespace walkdown::day {
namespace {

constexpr const char* kTiny = R"(
name = "tiny"
source = "a test"
break_after = "48h"
release_second = ["safety"]
[[key]]
name = "key"
starts = "box"
firing = "desk"
[[stage]]
id = "s"
title = "S"
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
valid_for = "18m"
source = "a test"
needs = ["field"]
broken_by = ["entered", "hold"]
[[stage.item]]
id = "key"
question = "Who has the key?"
kind = "custody"
key = "key"
places = ["role:lead", "desk"]
)";

constexpr std::int64_t kTick_ms =
    6 * kMinute_ms;        // two of them are too late for a second signature
constexpr int kValid = 3;  // ticks
constexpr int kTooLate = 2;
constexpr std::size_t kEdge = 1;

enum class Act {
  in,
  out,
  hang,
  back,
  hold,
  lift,
  good,
  bad,
  confirm,
  take,
  put_box,
  put_desk,
  offer,
  give,
  release,
  second_release,
  withdraw,
  wait
};
constexpr int kActs = 18;

// The rules anew, as one would tell them.
struct Model {
  enum Edge { none, waits, holds, refused, broken };
  enum Key { box, ann, bo, desk };
  enum Release { no, pending, stands, fallen };
  bool in = false, tag = false, hold = false, offered = false, seconded = false;
  Edge edge = none;
  int edge_age = 0;
  Key key = box;
  Release release = no;
  int release_age = 0;

  [[nodiscard]] bool edge_good() const { return edge == holds && edge_age < kValid; }
  [[nodiscard]] bool gate() const {
    return !in && !tag && !hold && edge_good() && (key == ann || key == desk);
  }
  [[nodiscard]] auto tie() const {
    return std::tuple(in, tag, hold, offered, seconded, edge, edge_age, key, release, release_age);
  }

  // Whether the rules take it.
  bool step(Act act) {
    if (act == Act::wait) {
      edge_age = std::min(edge_age + 1, kValid);
      release_age = std::min(release_age + 1, kTooLate);
      return true;
    }
    if (release == stands && !gate()) release = fallen;
    const bool taken = apply(act);
    if ((release == pending || release == stands) && !gate()) release = fallen;
    if (release != pending) release_age = 0;
    const bool settled = edge == none || ((edge == refused || edge == broken) && seconded);
    if (settled) edge_age = 0;
    return taken;
  }

 private:
  bool apply(Act act);
  bool move(Key to) {
    key = to;
    offered = false;
    return true;
  }
  void break_edge() {
    if (edge != none) edge = broken;
  }
};

bool Model::apply(Act act) {
  const bool in_hand = key == ann || key == bo;
  switch (act) {
    case Act::in:
      in = true;
      break_edge();
      return true;
    case Act::out:
      return std::exchange(in, false);
    case Act::hang:
      return tag = true;
    case Act::back:
      return std::exchange(tag, false);
    case Act::hold:
      hold = true;
      break_edge();
      return true;
    case Act::lift:
      if (hold) break_edge();  // the last answer comes up again
      return std::exchange(hold, false);
    case Act::good:
    case Act::bad:
      if (in) return false;
      edge = act == Act::good ? waits : refused;
      edge_age = 0;
      seconded = false;
      return true;
    case Act::confirm:
      // An answer that was bad, or was broken, can be confirmed as well; that mends nothing.
      if (edge == none || seconded || edge_age >= kTooLate) return false;
      if (edge == waits) edge = holds;
      return seconded = true;
    case Act::take:
      if (in_hand || (key == box && tag)) return false;
      return move(ann);
    case Act::put_box:
      return in_hand && move(box);
    case Act::put_desk:
      return in_hand && !in && !tag && !hold && move(desk);
    case Act::offer:
      offered = offered || in_hand;
      return in_hand;
    case Act::give:
      return offered && move(key == ann ? bo : ann);
    case Act::release:
      if (release == stands || !gate()) return false;
      release = pending;
      release_age = 0;
      return true;
    case Act::second_release:
      if (release != pending || release_age >= kTooLate || !gate()) return false;
      release = stands;
      return true;
    case Act::withdraw:
      if (release != pending && release != stands) return false;
      release = fallen;
      return true;
    case Act::wait:
      return true;
  }
  return false;
}

// The program at one state of the walk.
struct Node {
  Fold fold;
  Now now{kStart_ms, 1'000'000};
  std::uint64_t n = 0;
  Model model = {};

  void write(std::string_view kind, Body body) {
    fold.take({n++, now.at_ms, now.up_ms, std::string(kind), std::move(body)});
  }
  void sign(const Who& who, std::string_view kind, Body body) {
    body["by"] = who.name;
    body["role"] = who.role;
    body["signoff"] = plain_note(who, statement(fold.checklist(), kind, body));
    write(kind, std::move(body));
  }
  void second(const Who& who, const std::optional<Claim>& claim) {
    sign(who, "second", {{"of", claim ? claim->n : 0}, {"what", claim ? claim->what : ""}});
  }
  bool step(Act act);
};

bool Node::step(Act act) {
  const Day& day = fold.day();
  const std::uint64_t before = day.ignored_count;
  const auto& answer = day.items[kEdge].answer;
  const Who holder = day.keys[0].holder == "Bo" ? kBo : kAnn;
  const Who other = day.keys[0].holder == "Bo" ? kAnn : kBo;
  switch (act) {
    case Act::in:
      write("in", {{"person", "Cy"}});
      break;
    case Act::out:
      sign(kCy, "out", {{"person", "Cy"}});
      break;
    case Act::hang:
      write("tag-hang", {{"person", "Cy"}});
      break;
    case Act::back:
      sign(kCy, "tag-back", {{"person", "Cy"}});
      break;
    case Act::hold:
      write("hold", Body::object());
      break;
    case Act::lift:
      sign(kAnn, "lift", {{"reason", "it was nothing"}});
      break;
    case Act::good:
    case Act::bad:
      sign(kBo, "answer", {{"item", "edge"}, {"value", act == Act::good ? "nobody" : "a person"}});
      break;
    case Act::confirm:
      second(kAnn, answer ? std::optional(answer->claim) : std::nullopt);
      break;
    case Act::take:
      sign(kAnn, "key-take", {{"key", "key"}, {"place", day.keys[0].holder}});
      break;
    case Act::put_box:
      sign(holder, "key-put", {{"key", "key"}, {"place", "box"}});
      break;
    case Act::put_desk:
      sign(holder, "key-put", {{"key", "key"}, {"place", "desk"}});
      break;
    case Act::offer:
      sign(other, "key-offer", {{"key", "key"}, {"from", day.keys[0].holder}});
      break;
    case Act::give:
      sign(holder, "key-give", {{"key", "key"}, {"of", day.keys[0].offer_n}, {"to", other.name}});
      break;
    case Act::release:
      sign(kAnn, "release", Body::object());
      break;
    case Act::second_release:
      second(kBo, day.release.claim);
      break;
    case Act::withdraw:
      write("withdraw", Body::object());
      break;
    case Act::wait:
      now.at_ms += kTick_ms;
      now.up_ms += kTick_ms;
      break;
  }
  return fold.day().ignored_count == before;
}

std::string edge_word(const Model& model) {
  if (model.edge == Model::holds) return model.edge_age < kValid ? "holds" : "expired";
  static constexpr const char* kWords[] = {"open", "open", "", "refused", "broken"};
  return kWords[model.edge];
}

void expect_same(const Node& node) {
  const State state = node.fold.at(node.now);
  const Model& model = node.model;
  EXPECT_EQ(state.against.empty(), model.gate());
  EXPECT_EQ(std::string(word(state.items[kEdge].standing)), edge_word(model));
  static constexpr const char* kHolders[] = {"box", "Ann", "Bo", "desk"};
  EXPECT_EQ(state.keys[0].holder, kHolders[model.key]);
  EXPECT_EQ(!state.keys[0].offered_to.empty(), model.offered);
  EXPECT_EQ(!state.in_field.empty(), model.in);
  EXPECT_EQ(!state.tags.empty(), model.tag);
  EXPECT_EQ(state.hold.has_value(), model.hold);
  EXPECT_EQ(state.release.word == ReleaseWord::stands,
            model.release == Model::stands && model.gate());
  EXPECT_EQ(state.release.word == ReleaseWord::pending,
            model.release == Model::pending && model.gate());
}

// Each refusal is "kind: what; what to do."
void expect_a_way_on(const std::string& refusal) {
  const std::size_t at = refusal.find("; ");
  EXPECT_NE(at, std::string::npos) << refusal;
  EXPECT_GT(refusal.size(), at + 5) << refusal;
}

Node first_node() {
  auto read = read_checklist(kTiny, "tiny.toml");
  EXPECT_TRUE(read.mistakes.empty());
  Outside outside;
  outside.check_note = check_plain_note;
  Node node{Fold(std::move(read.checklist), std::move(outside))};
  node.write("open", Body::object());
  for (const Who& who : {kAnn, kBo, kCy}) {
    node.write("enrol", {{"name", who.name}, {"role", who.role}, {"vkey", "vkey of " + who.name}});
  }
  return node;
}

TEST(WholeSpace, TheProgramAndTheRulesAgreeInEveryReachableState) {
  std::deque<Node> open{first_node()};
  std::set<decltype(Model().tie())> seen{open.front().model.tie()};
  std::size_t steps = 0;
  std::size_t releases = 0;
  while (!open.empty() && !testing::Test::HasFailure()) {
    const Node from = std::move(open.front());
    open.pop_front();
    for (int i = 0; i < kActs; ++i) {
      Node to = from;
      const Act act = static_cast<Act>(i);
      const bool taken = to.step(act);
      ASSERT_EQ(taken, to.model.step(act))
          << "act " << i << (taken ? "" : " " + to.fold.day().ignored.back().why);
      if (!taken) expect_a_way_on(to.fold.day().ignored.back().why);
      ++steps;
      expect_same(to);
      releases += to.model.release == Model::stands ? 1 : 0;
      if (seen.insert(to.model.tie()).second) open.push_back(std::move(to));
    }
  }
  EXPECT_GT(seen.size(), 500U);
  EXPECT_GT(releases, 50U) << "a walk that never releases proves little";
  RecordProperty("states", std::to_string(seen.size()));
  RecordProperty("steps", std::to_string(steps));
}

}  // namespace
}  // namespace walkdown::day
