// SPDX-License-Identifier: Apache-2.0
#include <qrencode.h>

#include <memory>

#include "checklist/report/html.h"
#include "checklist/report/page.h"

namespace walkdown::report {

std::string qr_svg(const std::string& text) {
  constexpr int kQuiet = 4;  // modules of margin that readers need
  const std::unique_ptr<QRcode, decltype(&QRcode_free)> code(
      QRcode_encodeString8bit(text.c_str(), 0, QR_ECLEVEL_M), &QRcode_free);
  if (!code) return {};
  const int side = code->width + 2 * kQuiet;
  std::string path;
  for (int y = 0; y < code->width; ++y) {
    for (int x = 0; x < code->width; ++x) {
      if ((code->data[y * code->width + x] & 1U) == 0) continue;
      path += fmt::format("M{} {}h1v1h-1z", x + kQuiet, y + kQuiet);
    }
  }
  return fmt::format(
      "<svg viewBox=\"0 0 {0} {0}\" role=\"img\" aria-label=\"QR code of the mark\" "
      "shape-rendering=\"crispEdges\"><path fill=\"#fff\" d=\"M0 0h{0}v{0}H0z\"/><path "
      "d=\"{1}\"/></svg>",
      side, path);
}

}  // namespace walkdown::report
