// SPDX-License-Identifier: Apache-2.0
#include "gui/day/item_delegate.h"

#include <QPainter>

#include "gui/day/item_model.h"
#include "gui/look/words.h"

namespace walkdown::gui {
namespace {

constexpr int kPad_px = 8;
constexpr int kWrap = Qt::AlignLeft | Qt::AlignTop | Qt::TextWordWrap;

bool is_item(const QModelIndex& index) { return index.parent().isValid(); }

}  // namespace

QRect ItemDelegate::text_box(int width, const QModelIndex& index) const {
  const QFont font = look_.font(is_item(index) ? 1.0 : 1.15, !is_item(index));
  const QRect room(0, 0, width - 2 * kPad_px, 10'000);
  return QFontMetrics(font).boundingRect(room, kWrap, index.data().toString());
}

QSize ItemDelegate::sizeHint(const QStyleOptionViewItem&, const QModelIndex& index) const {
  const int plate = look_.em(1.6);
  return {width_px_, text_box(width_px_, index).height() + plate + 3 * kPad_px / 2 + kPad_px / 2};
}

void ItemDelegate::paint(QPainter* painter, const QStyleOptionViewItem& option,
                         const QModelIndex& index) const {
  const Palette& palette = look_.palette();
  const bool picked = option.state.testFlag(QStyle::State_Selected);
  painter->save();
  painter->fillRect(option.rect, palette[picked           ? Tone::picked
                                         : is_item(index) ? Tone::ground
                                                          : Tone::panel]);
  painter->setPen(palette[Tone::rule]);
  painter->drawLine(option.rect.bottomLeft(), option.rect.bottomRight());
  const QRect inner = option.rect.adjusted(kPad_px, kPad_px / 2, -kPad_px, -kPad_px / 2);
  const int plate = look_.em(1.6);
  paint_plate(painter, QRect(inner.left(), inner.top(), inner.width(), plate), index, picked);
  painter->setFont(look_.font(is_item(index) ? 1.0 : 1.15, !is_item(index)));
  painter->setPen(palette[picked ? Tone::picked_text : Tone::text]);
  painter->drawText(inner.adjusted(0, plate + kPad_px / 2, 0, 0), kWrap, index.data().toString());
  if (option.state.testFlag(QStyle::State_HasFocus)) {
    painter->setPen(QPen(palette[picked ? Tone::picked_text : Tone::focus], 3));
    painter->setBrush(Qt::NoBrush);
    painter->drawRect(option.rect.adjusted(1, 1, -2, -2));
  }
  painter->restore();
}

// The word stands on a plate: solid where it holds, with a frame where it does not, so that the two
// differ without colour.
void ItemDelegate::paint_plate(QPainter* painter, const QRect& box, const QModelIndex& index,
                               bool picked) const {
  const Palette& palette = look_.palette();
  const QFont font = look_.font(0.9, true);
  const QFontMetrics metrics(font);
  painter->setFont(font);
  int left = box.left();
  const QVariant standing = index.data(StandingRole);
  if (standing.isValid()) {
    const auto is = static_cast<day::Standing>(standing.toInt());
    const QString word = words(is);
    const QRect plate(left, box.top(), metrics.horizontalAdvance(word) + look_.em(1), box.height());
    const QColor colour = picked ? palette[Tone::picked_text] : palette[tone_of(is)];
    const bool solid = is == day::Standing::holds;
    painter->setPen(QPen(colour, 2, is == day::Standing::waived ? Qt::DashLine : Qt::SolidLine));
    painter->setBrush(solid ? QBrush(colour) : QBrush(Qt::NoBrush));
    painter->drawRect(plate.adjusted(1, 1, -1, -1));
    painter->setPen(solid ? palette[picked ? Tone::picked : Tone::ground] : colour);
    painter->drawText(plate, Qt::AlignCenter, word);
    left = plate.right() + kPad_px;
  }
  QString more = index.data(RemainingRole).toString();
  if (index.data(FirstRole).toBool()) more += tr(" \u2013 ends first");
  painter->setFont(look_.font(0.9));
  painter->setPen(palette[picked ? Tone::picked_text : Tone::quiet]);
  const QRect rest(left, box.top(), box.right() - left, box.height());
  painter->drawText(rest, Qt::AlignVCenter | Qt::AlignLeft,
                    QFontMetrics(painter->font()).elidedText(more, Qt::ElideRight, rest.width()));
}

}  // namespace walkdown::gui
