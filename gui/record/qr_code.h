// SPDX-License-Identifier: Apache-2.0
// A QR code (ISO/IEC 18004, made by libqrencode) in the light of the window: black on white by day,
// else in the palette's text colour, as far as a camera can still read it.
#pragma once

#include <QImage>
#include <QWidget>

#include "gui/look/look.h"

namespace walkdown::gui {

// One pixel a module, with the quiet zone of four modules; null for a text that does not fit.
[[nodiscard]] QImage qr_image(const QString& text, QRgb dark, QRgb light);

class QrCode : public QWidget {
  Q_OBJECT

 public:
  explicit QrCode(QWidget* parent = nullptr);

  void show_text(const QString& text);
  void dress(const Look& look);

 protected:
  void paintEvent(QPaintEvent* event) override;

 private:
  QString text_;
  Look look_;
};

}  // namespace walkdown::gui
