// SPDX-License-Identifier: Apache-2.0
#include "gui/field/field_view.h"

#include <QEvent>
#include <QVBoxLayout>
#include <algorithm>

#include "gui/parts/flow_layout.h"
#include "gui/parts/pieces.h"

namespace walkdown::gui {

FieldView::FieldView(Session& session, QWidget* parent)
    : QWidget(parent),
      session_(session),
      canvas_(new FieldCanvas),
      legend_(new Legend),
      page_(new PinPage(session)),
      find_(new QLineEdit) {
  const desk::Prepared& prepared = session.prepared();
  scene_ = std::make_shared<const Scene>(
      make_scene(prepared.planned.plan, prepared.site ? &*prepared.site : nullptr));
  canvas_->set_scene(scene_);
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(0, 0, 0, 0);
  panes_ = new TwoPane(QStringLiteral("field"), make_left(), scrolled(page_), 58);
  layout->addWidget(panes_);
  connect(canvas_, &FieldCanvas::pin_picked, page_, &PinPage::show_pin);
  connect(canvas_, &FieldCanvas::pin_opened, this, [this](plan::PinId pin) {
    page_->show_pin(pin);
    panes_->show_page();
  });
  connect(page_, &PinPage::group_wanted, this, [this](const std::vector<plan::PinId>& pins) {
    panes_->show_list();
    canvas_->mark_group(pins);
    canvas_->show_all();
  });
}

QWidget* FieldView::make_left() {
  auto* left = new QWidget;
  auto* layout = new QVBoxLayout(left);
  layout->setContentsMargins(0, 0, 0, 0);
  tools_ = new QWidget;
  auto* row = new FlowLayout(tools_);
  find_->setAccessibleName(tr("Go to a pin"));
  find_->setPlaceholderText(tr("Pin, as M01/R1/P05"));
  connect(find_, &QLineEdit::returnPressed, this, &FieldView::find);
  row->addWidget(find_);
  row->addWidget(button(tr("Whole field"), [this] { canvas_->show_all(); }));
  row->addWidget(button(tr("Nearer"), [this] { canvas_->zoom(1.6, canvas_->rect().center()); }));
  row->addWidget(
      button(tr("Farther"), [this] { canvas_->zoom(1 / 1.6, canvas_->rect().center()); }));
  layout->addWidget(tools_);
  layout->addWidget(canvas_, 1);
  legend_scroll_ = scrolled(legend_);
  legend_scroll_->viewport()->installEventFilter(this);
  layout->addWidget(legend_scroll_);
  left->setFocusProxy(canvas_);
  return left;
}

void FieldView::find() {
  const QString text = find_->text().trimmed().toUpper();
  const auto pin = plan::parse_pin(text.toStdString());
  if (pin && canvas_->pick(*pin)) return;
  Q_EMIT session_.said(tr("There is no pin %1; a pin is written M01/R1/P05.").arg(text),
                       QStringLiteral("bad"));
}

void FieldView::see(const Seen& seen) {
  if (shown_ != seen->outcome) {
    shown_ = seen->outcome;
    canvas_->set_facts(std::make_shared<const CellFacts>(facts_of(*scene_, *shown_)));
    legend_->see(*shown_);
    fit_legend();
  }
  page_->see(*seen);
}

void FieldView::dress(const Look& look) {
  canvas_->dress(look);
  legend_->dress(look);
  fit_placeholder(*find_);
  page_->dress(look);
  panes_->set_least_width(look.em(46));
  fit_legend();
}

void FieldView::resizeEvent(QResizeEvent*) { fit_legend(); }

bool FieldView::eventFilter(QObject* watched, QEvent* event) {
  if (event->type() == QEvent::Resize) fit_legend();
  return QWidget::eventFilter(watched, event);
}

// The drawing comes first: where the legend would take more than a third of the height it leaves
// out what no pin has, and scrolls.
void FieldView::fit_legend() {
  const QWidget* left = canvas_->parentWidget();
  const int others = tools_->heightForWidth(left->width()) + canvas_->minimumSizeHint().height() +
                     2 * left->layout()->spacing();
  const int room = std::min(left->height() / 3, left->height() - others);
  const int width = legend_scroll_->viewport()->width();
  legend_->set_brief(false);
  if (legend_->heightForWidth(width) > room) legend_->set_brief(true);
  legend_scroll_->setFixedHeight(std::clamp(room, 0, legend_->heightForWidth(width)));
}

void FieldView::show_pin(plan::PinId pin) { canvas_->pick(pin); }

}  // namespace walkdown::gui
