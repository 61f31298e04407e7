// SPDX-License-Identifier: Apache-2.0
#include "gui/faults/walk_sheet.h"

#include <QCoreApplication>
#include <QDateTime>

#include "gui/faults/fault_readings.h"
#include "gui/look/words.h"

namespace walkdown::gui {
namespace {

struct Sheet {
  Q_DECLARE_TR_FUNCTIONS(Sheet)
};

constexpr std::size_t kMostReadings = 4;

// Whoever stands at the pin with a meter has the plan's value at hand.
QString readings_html(const Fault& fault, const match::Outcome& outcome) {
  if (fault.step != Fault::Step::to_do) return {};
  const QStringList lines = readings_words(outcome, fault.pins, kMostReadings);
  if (lines.isEmpty()) return {};
  return QStringLiteral("<br><small>%1</small>")
      .arg(lines.join(QChar('\n')).toHtmlEscaped().replace(QChar('\n'), QStringLiteral("<br>")));
}

}  // namespace

void fill_walk_sheet(QTextDocument& sheet, const std::vector<Fault>& faults,
                     const match::Outcome& outcome, const SheetHead& head) {
  QString html = QStringLiteral("<body style='color:black'><h1>%1</h1><p>%2</p>")
                     .arg(Sheet::tr("Walk sheet").toHtmlEscaped(),
                          Sheet::tr("Made %1, record %2. Clear the danger area before a reading.")
                              .arg(moment_words(QDateTime::currentMSecsSinceEpoch()), head.mark)
                              .toHtmlEscaped());
  if (!head.from.isEmpty()) {
    html += QStringLiteral("<p>%1</p>")
                .arg(Sheet::tr("From %1, about %2 m in straight lines.")
                         .arg(head.from, number_words(head.length_m, 0))
                         .toHtmlEscaped());
  }
  html += QStringLiteral("<table width='100%' cellpadding='5' border='1' cellspacing='0'>");
  for (const Fault& fault : faults) {
    if (fault.step == Fault::Step::done) continue;
    html += QStringLiteral(
                "<tr><td width='8%'>%1 &#9744;</td><td width='30%'><b>%2</b><br>%3</td>"
                "<td>%4<br>%5%6</td></tr>")
                .arg(fault.stop > 0 ? QString::number(fault.stop) : QString(),
                     fault.position.toHtmlEscaped(), fault.where.toHtmlEscaped(),
                     fault.kind.toHtmlEscaped(), fault.say.toHtmlEscaped(),
                     readings_html(fault, outcome));
  }
  sheet.setHtml(html + QStringLiteral("</table></body>"));
}

}  // namespace walkdown::gui
