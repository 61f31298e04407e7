// SPDX-License-Identifier: Apache-2.0
#include "gui/parts/ask_file.h"

#include <QAbstractFileIconProvider>
#include <QFileDialog>

namespace walkdown::gui {
namespace {

// Names without pictures, which have colours of their own.
class NoIcons : public QAbstractFileIconProvider {
 public:
  QIcon icon(IconType) const override { return {}; }
  QIcon icon(const QFileInfo&) const override { return {}; }
};

QString ask(QFileDialog& dialog) {
  NoIcons none;
  dialog.setOption(QFileDialog::DontUseNativeDialog);
  dialog.setIconProvider(&none);
  if (dialog.parentWidget() != nullptr)
    dialog.resize(dialog.parentWidget()->window()->size() * 0.9);
  return dialog.exec() == QDialog::Accepted ? dialog.selectedFiles().value(0) : QString();
}

}  // namespace

QString ask_to_open(QWidget* parent, const QString& title) {
  QFileDialog dialog(parent, title);
  dialog.setFileMode(QFileDialog::ExistingFile);
  return ask(dialog);
}

QString ask_to_save(QWidget* parent, const QString& title, const QString& name) {
  QFileDialog dialog(parent, title);
  dialog.setAcceptMode(QFileDialog::AcceptSave);
  dialog.selectFile(name);
  return ask(dialog);
}

}  // namespace walkdown::gui
