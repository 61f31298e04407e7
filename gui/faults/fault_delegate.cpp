// SPDX-License-Identifier: Apache-2.0
#include "gui/faults/fault_delegate.h"

#include <QPainter>

#include "gui/faults/fault_model.h"

namespace walkdown::gui {
namespace {

void paint_step(QPainter* painter, const QRectF& box, Fault::Step step, const QColor& colour) {
  painter->setPen(QPen(colour, 2));
  painter->setBrush(Qt::NoBrush);
  painter->drawRect(box);
  if (step == Fault::Step::to_read) {
    painter->fillRect(QRectF(box.left(), box.center().y(), box.width(), box.height() / 2), colour);
  } else if (step == Fault::Step::done) {
    painter->drawPolyline(QPolygonF{{box.left() + box.width() * 0.2, box.center().y()},
                                    {box.left() + box.width() * 0.45, box.bottom() - 4},
                                    {box.right() - 3, box.top() + 4}});
  }
}

}  // namespace

QSize FaultDelegate::sizeHint(const QStyleOptionViewItem&, const QModelIndex&) const {
  const int lines =
      QFontMetrics(look_.font(1.3, true)).height() + 2 * QFontMetrics(look_.font(1.1)).height();
  return {100, lines + 18};
}

void FaultDelegate::paint(QPainter* painter, const QStyleOptionViewItem& option,
                          const QModelIndex& index) const {
  const auto* model = qobject_cast<const FaultModel*>(index.model());
  if (model == nullptr) return;
  const Fault& fault = model->faults().at(static_cast<std::size_t>(index.row()));
  const Palette& palette = look_.palette();
  const bool picked = option.state.testFlag(QStyle::State_Selected);
  const QColor text = palette[picked ? Tone::picked_text : Tone::text];
  painter->save();
  painter->fillRect(option.rect, palette[picked ? Tone::picked : Tone::ground]);
  const double side = look_.em(1.7);
  const QRectF box(option.rect.left() + 10, option.rect.top() + 12, side, side);
  paint_step(painter, box, fault.step, text);
  QRect line = option.rect.adjusted(static_cast<int>(side) + 22, 6, -6, 0);
  const auto write = [&](const QFont& font, const QString& what) {
    painter->setFont(font);
    painter->setPen(text);
    const QFontMetrics metrics(font);
    line.setHeight(metrics.height());
    painter->drawText(line, Qt::AlignLeft, metrics.elidedText(what, Qt::ElideRight, line.width()));
    line.translate(0, metrics.height());
  };
  write(look_.font(1.3, true), fault.kind);
  write(look_.font(1.1), fault.position);
  write(look_.font(1.1), fault.where);
  painter->setPen(QPen(palette[Tone::rule], 1));
  painter->drawLine(option.rect.bottomLeft(), option.rect.bottomRight());
  if (option.state.testFlag(QStyle::State_HasFocus)) {
    painter->setPen(QPen(palette[picked ? Tone::picked_text : Tone::focus], 3));
    painter->setBrush(Qt::NoBrush);
    painter->drawRect(option.rect.adjusted(1, 1, -2, -2));
  }
  painter->restore();
}

}  // namespace walkdown::gui
