// SPDX-License-Identifier: Apache-2.0
#include "gui/parts/save.h"

#include <QSaveFile>

namespace walkdown::gui {

Done save_file(const QString& path, const QByteArray& bytes) {
  QSaveFile file(path);
  const bool kept =
      file.open(QIODevice::WriteOnly) && file.write(bytes) == bytes.size() && file.commit();
  if (kept) return done();
  return Error{Code::io, "the file cannot be written", path.toStdString(),
               file.errorString().toStdString()};
}

}  // namespace walkdown::gui
