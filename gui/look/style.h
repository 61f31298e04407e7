// SPDX-License-Identifier: Apache-2.0
// The style under the sheet: what a sheet cannot say. Qt draws the cursor of a line in the reverse
// of its ground, which is white on black: at night that is the brightest thing in sight. Here it
// has the colour of the text, and so have the icons of Qt's own dialogs.
#pragma once

#include <QProxyStyle>

class QLineEdit;

namespace walkdown::gui {

class Style : public QProxyStyle {
  Q_OBJECT

 public:
  Style();

  int pixelMetric(PixelMetric metric, const QStyleOption* option,
                  const QWidget* widget) const override;
  QIcon standardIcon(StandardPixmap icon, const QStyleOption* option,
                     const QWidget* widget) const override;

 protected:
  // Of the application: lets a line paint itself, then paints its cursor.
  bool eventFilter(QObject* watched, QEvent* event) override;

 private:
  bool painting_ = false;
};

}  // namespace walkdown::gui
