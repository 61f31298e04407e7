// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QByteArray>
#include <QString>

#include "reader/result.h"

namespace walkdown::gui {

// All or nothing: the file as it was stays where the bytes cannot be written to their end. Waits
// for the disk: not for the window's thread. Error: io, with what the system says.
Done save_file(const QString& path, const QByteArray& bytes);

}  // namespace walkdown::gui
