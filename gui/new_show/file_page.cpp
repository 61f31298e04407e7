// SPDX-License-Identifier: Apache-2.0
#include "gui/new_show/file_page.h"

#include <QVBoxLayout>

#include "gui/new_show/show_draft.h"
#include "gui/parts/ask_file.h"
#include "gui/parts/pieces.h"
#include "gui/parts/top_layout.h"

namespace walkdown::gui {

FilePage::FilePage(const Step& step, QWidget* parent)
    : QWidget(parent), role_(step.role), path_(new QComboBox) {
  auto* layout = new TopLayout(this);
  layout->addWidget(label(step.title, 1.4, true));
  layout->addWidget(label(step.help));
  path_->setEditable(true);
  path_->setAccessibleName(step.title);
  path_->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
  const QString prefix = QString::fromLatin1(kTemplate.data(), qsizetype{kTemplate.size()});
  path_->addItem({});
  for (const QString& name : step.templates) path_->addItem(prefix + name);
  if (!step.templates.isEmpty()) path_->setCurrentIndex(1);
  layout->addWidget(path_);
  layout->addWidget(button(tr("Choose a file \u2026"), [this] {
    const QString path = ask_to_open(this, tr("Choose a file"));
    if (!path.isEmpty()) set_path(path);
  }));
  connect(path_, &QComboBox::editTextChanged, this, &FilePage::changed);
}

std::string FilePage::path() const { return path_->currentText().trimmed().toStdString(); }
void FilePage::set_path(const QString& path) { path_->setEditText(path); }

}  // namespace walkdown::gui
