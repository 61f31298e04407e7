// SPDX-License-Identifier: Apache-2.0
// Whether every text of a window has the room that it needs where it stands.
#pragma once

#include <QString>
#include <QWidget>
#include <vector>

namespace walkdown::gui {

// A sentence for each label, button and choice that is cut off, each control that lies outside of
// what it is part of, and each two that lie over one another.
[[nodiscard]] std::vector<QString> without_room(const QWidget& root);

}  // namespace walkdown::gui
