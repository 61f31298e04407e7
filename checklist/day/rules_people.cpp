// SPDX-License-Identifier: Apache-2.0
// enrol, in, out, tag-hang, tag-back
#include <fmt/format.h>

#include <algorithm>
#include <array>

#include "checklist/day/body.h"
#include "checklist/day/rules.h"

namespace walkdown::day {
namespace {

constexpr std::size_t kMostPeople = 1'000;

// One name, one key: so that nobody is two people.
Done check_enrol(const Scene& scene) {
  const Enrolled person{scene.text("name"), scene.text("role"), scene.text("vkey")};
  if (person.name.empty() || person.role.empty() || person.vkey.empty()) {
    return refusal("an enrolment needs a name, a role and a key", "give all three");
  }
  if (scene.day().people.size() >= kMostPeople) {
    return refusal("1,000 people are enrolled, and a day takes no more", "begin another record");
  }
  for (const Enrolled& other : scene.day().people) {
    if (other == person) {
      return refusal(fmt::format("{} is enrolled as {} already", person.name, person.role),
                     "let them sign as that");
    }
    if ((other.name == person.name) != (other.vkey == person.vkey)) {
      return refusal(
          fmt::format("{} cannot be enrolled: name or key is that of {}", person.name, other.name),
          "one name has one key: give the other person another name, or the key of this name");
    }
  }
  return done();
}

void apply_enrol(const Scene& scene, Day& day, PinBook& /*book*/) {
  day.people.push_back({scene.text("name"), scene.text("role"), scene.text("vkey")});
}

Done check_person(const Scene& scene) {
  if (scene.text("person").empty()) return refusal("it does not say who", "give the name");
  return done();
}

// Whoever goes in may touch what was read: the positions named, or all of them.
void apply_in(const Scene& scene, Day& day, PinBook& book) {
  const std::string person = scene.text("person");
  day.in_field.insert_or_assign(person, scene.entry.n);
  std::erase_if(day.returns,
                [&](const Return& each) { return !each.tag && each.person == person; });
  undo(scene.view.outside, day, book, scene.entry.n, {{}, texts_in(scene.body(), "positions"), {}});
  if (scene.view.outside.source != nullptr) scene.view.outside.source->take(scene.entry);
  break_items(scene.view.list, day, book, Event::entered, scene.entry.n,
              person + " went into the field");
}

Done check_return(const Scene& scene, const std::map<std::string, std::uint64_t>& out,
                  const char* what) {
  const std::string person = scene.text("person");
  if (!out.contains(person)) {
    return refusal(fmt::format("{} {}", person.empty() ? "nobody" : person, what),
                   "look at who is out, and write the name as it stands there");
  }
  if (scene.by() != person && scene.text("reason").empty()) {
    return refusal("only the owner can do this alone",
                   "give a reason, and let a second person sign");
  }
  return signed_by(scene, {});
}

Done check_out(const Scene& scene) {
  return check_return(scene, scene.day().in_field, "is not in the field");
}

Done check_tag_back(const Scene& scene) {
  return check_return(scene, scene.day().tags, "has no tag out");
}

void give_back(const Scene& scene, Day& day, bool tag) {
  const std::string person = scene.text("person");
  std::erase_if(day.returns,
                [&](const Return& each) { return each.tag == tag && each.person == person; });
  if (scene.by() == person) {
    (tag ? day.tags : day.in_field).erase(person);
    return;
  }
  const char* what = tag ? "the tag of {} is back: {}" : "{} is out of the field: {}";
  day.returns.push_back(
      {claim(scene, fmt::format(fmt::runtime(what), person, scene.text("reason"))), person, tag});
}

void apply_out(const Scene& scene, Day& day, PinBook& /*book*/) { give_back(scene, day, false); }
void apply_tag_back(const Scene& scene, Day& day, PinBook& /*book*/) {
  give_back(scene, day, true);
}

void apply_tag_hang(const Scene& scene, Day& day, PinBook& /*book*/) {
  const std::string person = scene.text("person");
  day.tags.insert_or_assign(person, scene.entry.n);
  std::erase_if(day.returns, [&](const Return& each) { return each.tag && each.person == person; });
}

constexpr std::array<Rule, 5> kRules = {{{"enrol", check_enrol, apply_enrol},
                                         {"in", check_person, apply_in},
                                         {"out", check_out, apply_out},
                                         {"tag-hang", check_person, apply_tag_hang},
                                         {"tag-back", check_tag_back, apply_tag_back}}};

}  // namespace

std::span<const Rule> people_rules() { return kRules; }

}  // namespace walkdown::day
