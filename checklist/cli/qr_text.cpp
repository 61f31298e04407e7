// SPDX-License-Identifier: Apache-2.0
#include "checklist/cli/qr_text.h"

#include <qrencode.h>

#include <memory>

namespace walkdown::cli {

namespace {

constexpr int kQuiet = 4;  // modules of margin that readers need

bool dark(const QRcode& code, int x, int y) {
  const bool inside = x >= 0 && y >= 0 && x < code.width && y < code.width;
  return inside && (code.data[y * code.width + x] & 1U) != 0;
}

}  // namespace

Result<std::string> qr_text(const std::string& text) {
  const std::unique_ptr<QRcode, decltype(&QRcode_free)> code(
      QRcode_encodeString8bit(text.c_str(), 0, QR_ECLEVEL_M), &QRcode_free);
  if (!code) {
    return Error{Code::bad_input, "the text is too long for one QR code", "", "carry it as a file"};
  }
  std::string out;
  for (int y = -kQuiet; y < code->width + kQuiet; y += 2) {
    out += "\x1b[30;107m";  // black on bright white
    for (int x = -kQuiet; x < code->width + kQuiet; ++x) {
      const bool above = dark(*code, x, y), below = dark(*code, x, y + 1);
      out += above ? (below ? "\u2588" : "\u2580") : (below ? "\u2584" : " ");
    }
    out += "\x1b[0m\n";
  }
  return out;
}

std::string as_carried(std::string_view text) {
  std::string plain;
  for (const char c : text) {
    if (c != '\r') plain += c;
  }
  while (!plain.empty() && (plain.back() == '\n' || plain.back() == ' ')) plain.pop_back();
  return plain + '\n';
}

}  // namespace walkdown::cli
