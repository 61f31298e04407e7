// SPDX-License-Identifier: Apache-2.0
#include "gui/app/look_dialog.h"

#include <QButtonGroup>
#include <QRadioButton>
#include <QSlider>
#include <QVBoxLayout>
#include <array>

#include "gui/parts/pieces.h"

namespace walkdown::gui {

LookDialog::LookDialog(const Look& look, QWidget* parent) : Dialog(26, parent), look_(look) {
  setWindowTitle(tr("Light and text"));
  setAttribute(Qt::WA_DeleteOnClose);
  QVBoxLayout* layout = body();
  layout->addWidget(label(tr("Light"), 1.2, true));
  const std::array names{tr("Day"), tr("Dusk"), tr("Night: red on black")};
  for (std::size_t i = 0; i < kLights; ++i) {
    auto* choice = new QRadioButton(names.at(i));
    choice->setAccessibleName(names.at(i));
    choice->setChecked(look_.light == static_cast<Light>(i));
    connect(choice, &QRadioButton::toggled, this, [this, i](bool on) {
      if (!on) return;
      look_.light = static_cast<Light>(i);
      Q_EMIT changed(look_);
    });
    layout->addWidget(choice);
  }
  layout->addWidget(label(tr("Size of text"), 1.2, true));
  auto* sizes = new QButtonGroup(this);
  for (const int pct : {100, 125, 150, 175, 200}) {
    auto* choice = button(tr("%1 %").arg(pct), [this, pct] {
      look_.text_pct = pct;
      Q_EMIT changed(look_);
    });
    choice->setCheckable(true);
    choice->setChecked(look_.text_pct == pct);
    sizes->addButton(choice);
    layout->addWidget(choice);
  }
  foot()->addWidget(button(tr("Close"), [this] { accept(); }));
}

}  // namespace walkdown::gui
