// SPDX-License-Identifier: Apache-2.0
#include "gui/live/members.h"

#include <algorithm>

#include "gui/parts/background.h"

namespace walkdown::gui {

Members::Members(desk::Crew crew, QObject* parent) : QObject(parent), crew_(std::move(crew)) {}

void Members::look() {
  in_background(
      this, [crew = crew_] { return crew.list(); },
      [this](const std::vector<desk::Member>& list) { see(list); });
}

void Members::see(std::vector<desk::Member> list) {
  const auto same = [](const desk::Member& a, const desk::Member& b) {
    return a.name == b.name && record::text(a.key) == record::text(b.key);
  };
  if (std::equal(list.begin(), list.end(), list_.begin(), list_.end(), same)) return;
  list_ = std::move(list);
  Q_EMIT changed();
}

}  // namespace walkdown::gui
