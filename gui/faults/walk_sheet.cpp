// SPDX-License-Identifier: Apache-2.0
#include "gui/faults/walk_sheet.h"

#include <QCoreApplication>
#include <QDateTime>

namespace walkdown::gui {
namespace {

struct Sheet {
  Q_DECLARE_TR_FUNCTIONS(Sheet)
};

}  // namespace

void fill_walk_sheet(QTextDocument& sheet, const std::vector<Fault>& faults, const QString& mark) {
  QString html = QStringLiteral("<body style='color:black'><h1>%1</h1><p>%2</p>")
                     .arg(Sheet::tr("Walk sheet").toHtmlEscaped(),
                          Sheet::tr("Made %1, record %2. Clear the danger area before a reading.")
                              .arg(QDateTime::currentDateTime().toString(Qt::ISODate), mark)
                              .toHtmlEscaped());
  html += QStringLiteral("<table width='100%' cellpadding='5' border='1' cellspacing='0'>");
  for (const Fault& fault : faults) {
    if (fault.step == Fault::Step::done) continue;
    html += QStringLiteral(
                "<tr><td width='8%'>&#9744;</td><td width='30%'><b>%1</b><br>%2</td>"
                "<td>%3<br>%4</td></tr>")
                .arg(fault.position.toHtmlEscaped(), fault.where.toHtmlEscaped(),
                     fault.kind.toHtmlEscaped(), fault.say.toHtmlEscaped());
  }
  sheet.setHtml(html + QStringLiteral("</table></body>"));
}

}  // namespace walkdown::gui
