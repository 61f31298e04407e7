// SPDX-License-Identifier: Apache-2.0
#include "gui/record/qr_code.h"

#include <qrencode.h>

#include <QPainter>
#include <memory>

namespace walkdown::gui {

QImage qr_image(const QString& text, QRgb dark, QRgb light) {
  const QByteArray bytes = text.toUtf8();
  const std::unique_ptr<QRcode, decltype(&QRcode_free)> code(
      QRcode_encodeString(bytes.constData(), 0, QR_ECLEVEL_M, QR_MODE_8, 1), &QRcode_free);
  if (!code) return {};
  constexpr int kQuiet = 4;
  QImage image(code->width + 2 * kQuiet, code->width + 2 * kQuiet, QImage::Format_RGB32);
  image.fill(light);
  for (int y = 0; y < code->width; ++y) {
    for (int x = 0; x < code->width; ++x) {
      if ((code->data[y * code->width + x] & 1U) != 0) {
        image.setPixel(x + kQuiet, y + kQuiet, dark);
      }
    }
  }
  return image;
}

QrCode::QrCode(QWidget* parent) : QWidget(parent) { dress({}); }

void QrCode::show_text(const QString& text) {
  if (text == text_) return;
  text_ = text;
  setAccessibleName(tr("QR code of the mark %1").arg(text));
  update();
}

void QrCode::dress(const Look& look) {
  look_ = look;
  setFixedSize(look_.em(9), look_.em(9));
  update();
}

// Dark modules on a lit ground in every light: readers do not take the reverse for granted.
void QrCode::paintEvent(QPaintEvent*) {
  if (text_.isEmpty()) return;
  const bool night = look_.light == Light::night;
  const QRgb light = night ? look_.palette()[Tone::text].rgb() : 0xFFFFFFFFU;
  const QImage image = qr_image(text_, 0xFF000000U, light);
  if (image.isNull()) return;
  QPainter painter(this);
  const int times = std::max(1, width() / image.width());
  painter.drawImage(QRect(0, 0, image.width() * times, image.height() * times), image);
}

}  // namespace walkdown::gui
