// SPDX-License-Identifier: Apache-2.0
#include "gui/field/legend.h"

#include <QPainter>

#include "gui/look/glyph.h"
#include "gui/look/words.h"

namespace walkdown::gui {

struct Legend::Piece {
  match::Verdict verdict;
  QString text;
  QRect mark;
  QRect words;
};

Legend::Legend(QWidget* parent) : QWidget(parent) {
  setAccessibleName(tr("Verdicts and how many pins have each"));
  QSizePolicy policy(QSizePolicy::Preferred, QSizePolicy::Fixed);
  policy.setHeightForWidth(true);
  setSizePolicy(policy);
}

void Legend::see(const match::Outcome& outcome) {
  counts_.fill(0);
  for (const auto& pin : outcome.pins) ++counts_.at(static_cast<std::size_t>(pin.verdict));
  QStringList lines;
  for (std::size_t v = 0; v < match::kVerdicts; ++v) {
    lines << words(static_cast<match::Verdict>(v)) +
                 QStringLiteral(" %1").arg(static_cast<qulonglong>(counts_.at(v)));
  }
  setAccessibleDescription(lines.join(QStringLiteral(", ")));
  setMinimumHeight(heightForWidth(width()));
  update();
}

void Legend::dress(const Look& look) {
  look_ = look;
  setMinimumHeight(heightForWidth(width()));
  updateGeometry();
  update();
}

void Legend::set_brief(bool brief) {
  if (brief == brief_) return;
  brief_ = brief;
  setMinimumHeight(heightForWidth(width()));
  update();
}

std::vector<Legend::Piece> Legend::pieces(int width) const {
  std::vector<Piece> out;
  const QFontMetrics metrics(look_.font());
  const int side = look_.em(1.5);
  const int step = side + 6;
  int x = 4, y = 4;
  for (std::size_t v = 0; v < match::kVerdicts; ++v) {
    if (brief_ && counts_.at(v) == 0) continue;
    const auto verdict = static_cast<match::Verdict>(v);
    const QString text =
        words(verdict) + QStringLiteral(" %1").arg(static_cast<qulonglong>(counts_.at(v)));
    const int wide = side + 5 + metrics.horizontalAdvance(text);
    if (x > 4 && x + wide > width - 4) {
      x = 4;
      y += step;
    }
    out.push_back(
        {verdict, text, QRect(x, y, side, side), QRect(x + side + 5, y, wide - side - 4, side)});
    x += wide + look_.em(0.9);
  }
  return out;
}

int Legend::heightForWidth(int width) const {
  const auto all = pieces(width);
  return all.empty() ? 0 : all.back().mark.bottom() + 6;
}
QSize Legend::sizeHint() const { return {400, heightForWidth(std::max(width(), 400))}; }

void Legend::resizeEvent(QResizeEvent*) { setMinimumHeight(heightForWidth(width())); }

void Legend::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  painter.setFont(look_.font());
  for (const Piece& piece : pieces(width())) {
    draw_mark(painter, piece.mark, piece.verdict, look_.palette());
    painter.setPen(look_.palette()[Tone::text]);
    painter.drawText(piece.words, Qt::AlignVCenter | Qt::AlignLeft, piece.text);
  }
}

}  // namespace walkdown::gui
