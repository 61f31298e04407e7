// SPDX-License-Identifier: Apache-2.0
#include "gui/parts/paper.h"

#include <QCoreApplication>
#include <QPrintDialog>
#include <QPrinter>
#include <utility>

#include "gui/parts/background.h"

namespace walkdown::gui {
namespace {

struct Paper {
  Q_DECLARE_TR_FUNCTIONS(Paper)
};

}  // namespace

bool print_pages(const MakePages& make, QPrinter& printer) {
  make()->print(&printer);
  return printer.printerState() != QPrinter::Error && printer.printerState() != QPrinter::Aborted;
}

void ask_to_print(QWidget* owner, const MakePages& make, const std::function<void(bool)>& then) {
  auto printer = std::make_shared<QPrinter>(QPrinter::HighResolution);
  auto* dialog = new QPrintDialog(printer.get(), owner);
  dialog->setAttribute(Qt::WA_DeleteOnClose);
  QObject::connect(dialog, &QDialog::accepted, owner, [=] {
    in_background(
        owner, [make, printer] { return print_pages(make, *printer); },
        [then](bool printed) { then(printed); });
  });
  dialog->open();
}

QString printed_words(bool printed) {
  return printed ? Paper::tr("Given to the printer.")
                 : Paper::tr("The printer did not take it: look at it and at its queue.");
}

}  // namespace walkdown::gui
