// SPDX-License-Identifier: Apache-2.0
// What a checklist item asks for, in words.
#pragma once

#include <QString>
#include <QStringList>

#include "checklist/day/checklist.h"

namespace walkdown::gui {

// "2 to 50 mA", "at least 2 pieces"; empty without limits.
[[nodiscard]] QString limits_words(const day::Item& item);
// Lines about an item: who answers, how long it is valid, what breaks it, where limits come from.
[[nodiscard]] QStringList item_facts(const day::Checklist& list, const day::Item& item);
[[nodiscard]] QString roles_words(const day::Roles& roles);

}  // namespace walkdown::gui
