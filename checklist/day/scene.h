// SPDX-License-Identifier: Apache-2.0
// One entry before the day, and who signed it. Internal to this folder.
#pragma once

#include <string>
#include <string_view>

#include "checklist/day/gate.h"
#include "checklist/day/standing.h"
#include "checklist/record/entry.h"
#include "reader/result.h"

namespace walkdown::day {

struct Scene {
  const View& view;
  const record::Entry& entry;
  Moment moment;
  bool proposed = false;  // not signed yet: everything but the signature is checked

  [[nodiscard]] const nlohmann::json& body() const { return entry.body; }
  [[nodiscard]] const Day& day() const { return view.day; }
  [[nodiscard]] std::string text(const char* name) const;
  [[nodiscard]] std::string by() const { return text("by"); }
};

// What is refused, with the name of what it is about in it, and what to do.
[[nodiscard]] Error refusal(std::string what, std::string remedy);
// Those that several rules have.
[[nodiscard]] Error no_such_item(const Scene& scene);
[[nodiscard]] Error not_begun(const Scene& scene, std::size_t stage);
[[nodiscard]] Error gate_is_shut(const Gate& gate);

// Whether `by` is enrolled in `role`, that role is one of `roles` (empty: any but a witness's or a
// station's), and the note under `signoff` is that person's, states this entry and nothing else.
[[nodiscard]] Done signed_by(const Scene& scene, const Roles& roles);

[[nodiscard]] bool enrolled(const Day& day, std::string_view name);

}  // namespace walkdown::day
