// SPDX-License-Identifier: Apache-2.0
// What the window keeps of itself between two starts: how it looks and where it stands. Nothing of
// a show.
#pragma once

#include <QByteArray>
#include <QString>

#include "gui/look/look.h"

namespace walkdown::gui {

[[nodiscard]] Look kept_look();
void keep_look(const Look& look);
[[nodiscard]] QByteArray kept_geometry();
void keep_geometry(const QByteArray& geometry);

}  // namespace walkdown::gui
