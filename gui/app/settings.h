// SPDX-License-Identifier: Apache-2.0
// What the window keeps of itself between two starts: how it looks, where it stands, and which
// record it had open. Nothing that is in a record.
#pragma once

#include <QByteArray>
#include <QString>

#include "gui/look/look.h"

namespace walkdown::gui {

[[nodiscard]] Look kept_look();
void keep_look(const Look& look);
[[nodiscard]] QByteArray kept_geometry();
void keep_geometry(const QByteArray& geometry);
// Which view was looked at last, by its place in the navigation.
[[nodiscard]] int kept_view();
void keep_view(int view);

// The record that was open last; empty: none.
[[nodiscard]] QString kept_record();
void keep_record(const QString& path);

}  // namespace walkdown::gui
