// SPDX-License-Identifier: Apache-2.0
#include "gui/app/settings.h"

#include <QSettings>
#include <algorithm>

namespace walkdown::gui {

Look kept_look() {
  const QSettings settings;
  Look look;
  const int light = settings.value(QStringLiteral("look/light"), 1).toInt();
  look.light = static_cast<Light>(std::clamp(light, 0, static_cast<int>(kLights) - 1));
  look.text_pct = std::clamp(settings.value(QStringLiteral("look/text"), 100).toInt(),
                             kLeastText_pct, kMostText_pct);
  return look;
}

void keep_look(const Look& look) {
  QSettings settings;
  settings.setValue(QStringLiteral("look/light"), static_cast<int>(look.light));
  settings.setValue(QStringLiteral("look/text"), look.text_pct);
}

QByteArray kept_geometry() {
  return QSettings().value(QStringLiteral("window/geometry")).toByteArray();
}

void keep_geometry(const QByteArray& geometry) {
  QSettings().setValue(QStringLiteral("window/geometry"), geometry);
}

int kept_view() { return QSettings().value(QStringLiteral("window/view"), 0).toInt(); }

void keep_view(int view) { QSettings().setValue(QStringLiteral("window/view"), view); }

QString kept_record() { return QSettings().value(QStringLiteral("window/record")).toString(); }

void keep_record(const QString& path) {
  QSettings().setValue(QStringLiteral("window/record"), path);
}

}  // namespace walkdown::gui
