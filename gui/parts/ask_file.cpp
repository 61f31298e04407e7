// SPDX-License-Identifier: Apache-2.0
#include "gui/parts/ask_file.h"

#include <QAbstractFileIconProvider>
#include <QCoreApplication>
#include <QFileDialog>
#include <QHeaderView>
#include <QToolButton>
#include <QTreeView>

namespace walkdown::gui {
namespace {

// Names without pictures, which have colours of their own.
class NoIcons : public QAbstractFileIconProvider {
 public:
  [[nodiscard]] QIcon icon(IconType) const override { return {}; }
  [[nodiscard]] QIcon icon(const QFileInfo&) const override { return {}; }
};

struct AskFile {
  Q_DECLARE_TR_FUNCTIONS(AskFile)
};

// Qt's buttons have pictures alone, which tinted are blots: those that matter say what they do.
void name_buttons(const QFileDialog& dialog) {
  const auto found = [&](const char* name) {
    return dialog.findChild<QToolButton*>(QLatin1String(name));
  };
  for (const char* name : {"backButton", "forwardButton", "listModeButton", "detailModeButton"}) {
    if (auto* button = found(name)) button->hide();
  }
  const auto say = [&](const char* name, const QString& text) {
    auto* button = found(name);
    if (button == nullptr) return;
    button->setToolButtonStyle(Qt::ToolButtonTextOnly);
    button->setText(text);
    button->setAccessibleName(text);
    button->setMaximumSize(QWIDGETSIZE_MAX, QWIDGETSIZE_MAX);
  };
  say("toParentButton", AskFile::tr("Up"));
  say("newFolderButton", AskFile::tr("New folder"));
}

// Sizes and dates in full; what kind of file it is, its name says.
void fit_columns(const QFileDialog& dialog) {
  auto* list = dialog.findChild<QTreeView*>(QStringLiteral("treeView"));
  if (list == nullptr) return;
  list->hideColumn(2);
  list->header()->setStretchLastSection(false);
  list->header()->setSectionResizeMode(QHeaderView::ResizeToContents);
  list->header()->setSectionResizeMode(0, QHeaderView::Stretch);
}

QString ask(QFileDialog& dialog) {
  NoIcons none;
  // Qt's own words may not be installed in the language of the window.
  dialog.setLabelText(QFileDialog::LookIn, AskFile::tr("Look in:"));
  dialog.setLabelText(QFileDialog::FileName, AskFile::tr("File name:"));
  dialog.setLabelText(QFileDialog::FileType, AskFile::tr("Files of type:"));
  dialog.setLabelText(QFileDialog::Reject, AskFile::tr("Cancel"));
  dialog.setLabelText(QFileDialog::Accept, dialog.acceptMode() == QFileDialog::AcceptSave
                                               ? AskFile::tr("Save")
                                               : AskFile::tr("Open"));
  dialog.setOption(QFileDialog::DontUseNativeDialog);
  dialog.setIconProvider(&none);
  name_buttons(dialog);
  fit_columns(dialog);
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
