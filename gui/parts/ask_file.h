// SPDX-License-Identifier: Apache-2.0
// Asks for a file with Qt's own dialog: the system's knows nothing of night, and is white.
#pragma once

#include <QString>

class QWidget;

namespace walkdown::gui {

// Empty where nothing was chosen.
[[nodiscard]] QString ask_to_open(QWidget* parent, const QString& title);
[[nodiscard]] QString ask_to_save(QWidget* parent, const QString& title, const QString& name = {});

}  // namespace walkdown::gui
