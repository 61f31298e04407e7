// SPDX-License-Identifier: Apache-2.0
#include "checklist/day/scene.h"

#include <fmt/format.h>

#include <algorithm>
#include <utility>

#include "checklist/day/body.h"
#include "checklist/day/statement.h"

namespace walkdown::day {
namespace {

Done note_fits(const Scene& scene, const std::string& person, const std::string& role) {
  if (!scene.view.outside.check_note)
    return refusal("no signature can be checked here", "open the record as a whole");
  const std::string note = scene.text("signoff");
  if (note.empty()) return refusal("it is not signed", "sign it");
  const auto checked = scene.view.outside.check_note(note, scene.day().people);
  if (!checked) return checked.error();
  const Statement wanted = statement(scene.view.list, scene.entry.kind, scene.body());
  if (checked->person != person || checked->role != role) {
    return Error{Code::forged,
                 fmt::format("it is signed by {} as {}, not by {} as {}", checked->person,
                             checked->role, person, role),
                 "", "let the person it names sign"};
  }
  if (checked->statement != wanted.text || checked->facts != wanted.facts) {
    return Error{Code::forged, "the note that was signed states something else", "",
                 "sign what is entered"};
  }
  return done();
}

}  // namespace

std::string Scene::text(const char* name) const { return text_in(entry.body, name); }

Error refusal(std::string what, std::string remedy) {
  return {Code::refused, std::move(what), {}, std::move(remedy)};
}

Error no_such_item(const Scene& scene) {
  return refusal("the checklist has no such item: " + scene.text("item"),
                 "write its id as the checklist has it");
}

Error not_begun(const Scene& scene, std::size_t stage) {
  const auto& stages = scene.view.list.stages;
  const bool after = stage - 1 == scene.view.list.last_release_stage();
  return refusal(
      after ? fmt::format("\"{}\" has not begun: nothing was released yet", stages[stage].title)
            : fmt::format("\"{}\" has not begun: the pause before it is not closed",
                          stages[stage].title),
      after ? "it begins with the release"
            : fmt::format("finish \"{}\" and close its pause", stages[stage - 1].title));
}

// The first reason is said whole; how many more there are keeps the sentence short.
Error gate_is_shut(const Gate& gate) {
  const std::size_t more = gate.against.size() - 1;
  return refusal("the gate is shut: " + gate.against.front(),
                 more == 0
                     ? "see to that first"
                     : fmt::format("see to that and {} more thing{}", more, more == 1 ? "" : "s"));
}

bool enrolled(const Day& day, std::string_view name) {
  return std::any_of(day.people.begin(), day.people.end(),
                     [&](const Enrolled& each) { return each.name == name; });
}

Done signed_by(const Scene& scene, const Roles& roles) {
  const std::string person = scene.by();
  const std::string role = scene.text("role");
  const bool known =
      std::any_of(scene.day().people.begin(), scene.day().people.end(),
                  [&](const Enrolled& each) { return each.name == person && each.role == role; });
  if (!known) {
    return refusal(
        fmt::format("nobody is enrolled as {} under the name {}", role.empty() ? "(no role)" : role,
                    person.empty() ? "(no name)" : person),
        "enrol the person first");
  }
  const bool outsider = role == "witness" || role == "station";
  if (roles.empty() ? outsider : !contains(roles, role)) {
    std::string list;
    for (const std::string& each : roles) list += (list.empty() ? "" : " or ") + each;
    return refusal(fmt::format("{} may not do this as {}", person, role),
                   list.empty() ? "let one of the crew do it" : "let a " + list + " do it");
  }
  return scene.proposed ? done() : note_fits(scene, person, role);
}

}  // namespace walkdown::day
