// SPDX-License-Identifier: Apache-2.0
#include "gui/report/printable.h"

#include <QFile>
#include <QImage>
#include <QPageSize>
#include <QPdfWriter>
#include <QRegularExpression>
#include <QUrl>

#include "checklist/report/build.h"
#include "checklist/report/html.h"
#include "gui/look/words.h"
#include "gui/report/drawing.h"

namespace walkdown::gui {
namespace {

constexpr int kDpi = 96;

// White becomes the ground, black the text; of a code the other way round, because readers do not
// take light modules on a dark ground for granted.
void recolour(QImage& image, const Palette& palette, bool code) {
  const QColor ground = palette[Tone::ground];
  const QColor text = palette[Tone::text];
  const auto mix = [](int from, int to, int share) { return from + (to - from) * share / 255; };
  for (int y = 0; y < image.height(); ++y) {
    auto* line = reinterpret_cast<QRgb*>(image.scanLine(y));
    for (int x = 0; x < image.width(); ++x) {
      const int dark = code ? qGray(line[x]) : 255 - qGray(line[x]);
      line[x] = qRgb(mix(ground.red(), text.red(), dark), mix(ground.green(), text.green(), dark),
                     mix(ground.blue(), text.blue(), dark));
    }
  }
}

// Each <svg> of the page becomes an <img> of the document.
QString with_images(const QString& html, QTextDocument& document, int width_px,
                    const Palette& light) {
  static const QRegularExpression kSvg(QStringLiteral("<svg.*?</svg>"),
                                       QRegularExpression::DotMatchesEverythingOption);
  QString out;
  qsizetype at = 0;
  int count = 0;
  for (auto it = kSvg.globalMatch(html); it.hasNext();) {
    const auto match = it.next();
    out += html.mid(at, match.capturedStart() - at);
    at = match.capturedEnd();
    const QByteArray svg = match.captured().toUtf8();
    QImage image = drawing(svg, width_px);
    if (image.isNull()) continue;
    if (light.light != Light::day) recolour(image, light, is_code(svg));
    const QString name = QStringLiteral("drawing:%1").arg(++count);
    document.addResource(QTextDocument::ImageResource, QUrl(name), image);
    // By the line height of the text, a tall image would have half of its height as a gap above.
    out +=
        QStringLiteral("<div style='line-height:100%'><img src='%1' width='%2' height='%3'></div>")
            .arg(name)
            .arg(image.width() / kSharp)
            .arg(image.height() / kSharp);
  }
  return out + html.mid(at);
}

// A text document sets nothing apart by its least width: the number of a section ran into its
// title.
QString with_gaps(QString html) {
  static const QRegularExpression kNumber(QStringLiteral("<span class=\"no\">(\\d+)</span>"));
  return html.replace(kNumber, QStringLiteral("\\1&nbsp;&nbsp;"));
}

// The page's own sheet in the colours of the light, its sizes in proportion to the text.
QString in_light(const QString& html, const Look& look) {
  const auto end = html.indexOf(QStringLiteral("</style>"));
  if (end < 0) return html;
  QString sheet = html.left(end);
  static const QRegularExpression kSize(QStringLiteral("(\\d+(?:\\.\\d+)?)pt"));
  QString out;
  qsizetype at = 0;
  for (auto it = kSize.globalMatch(sheet); it.hasNext();) {
    const auto match = it.next();
    out += sheet.mid(at, match.capturedStart() - at);
    out += QString::number(match.captured(1).toDouble() * look.text_pct / 100, 'f', 2) + "pt";
    at = match.capturedEnd();
  }
  out += sheet.mid(at);
  const Palette& palette = look.palette();
  for (const char* dark : {"#111", "#333"}) out.replace(dark, palette[Tone::text].name());
  out.replace(QStringLiteral("#999"), palette[Tone::rule].name());
  out.replace(QStringLiteral("#fff"), palette[Tone::ground].name());
  return out + html.mid(end);
}

}  // namespace

std::unique_ptr<QTextDocument> printable(const std::string& html, int width_px) {
  auto document = std::make_unique<QTextDocument>();
  QFont font(QStringLiteral("DejaVu Sans"));
  font.setPointSizeF(9);
  document->setDefaultFont(font);
  document->setHtml(with_images(with_gaps(q(html)), *document, width_px, palette(Light::day)));
  return document;
}

std::unique_ptr<QTextDocument> preview(const std::string& html, int width_px, const Look& look) {
  auto document = std::make_unique<QTextDocument>();
  document->setDefaultFont(look.font());
  document->setHtml(
      with_images(with_gaps(in_light(q(html), look)), *document, width_px, look.palette()));
  return document;
}

Done write_pdf(const std::string& html, const QString& pdf) {
  if (!has_font()) {
    return Error{Code::io, "no font is installed, so every text of the PDF would be missing", "",
                 "install one, such as the package fonts-dejavu-core"};
  }
  QFile file(pdf);
  if (!file.open(QIODevice::WriteOnly)) {
    return Error{Code::io, "the PDF cannot be written", pdf.toStdString(),
                 file.errorString().toStdString()};
  }
  QPdfWriter writer(&file);
  writer.setPageSize(QPageSize(QPageSize::A4));
  writer.setPageMargins(QMarginsF(15, 15, 15, 15), QPageLayout::Millimeter);
  writer.setResolution(kDpi);
  writer.setTitle(QStringLiteral("walkdown"));
  const QSizeF page = writer.pageLayout().paintRectPixels(kDpi).size();
  const auto document = printable(html, static_cast<int>(page.width()) - 20);
  document->setPageSize(page);
  document->print(&writer);
  if (file.error() == QFileDevice::NoError) return done();
  return Error{Code::io, "the PDF was not written to its end", pdf.toStdString(),
               file.errorString().toStdString()};
}

Done write_report_pdf(const std::string& record, const QString& pdf) {
  const auto model = report::build(record);
  if (!model) return model.error();
  return write_pdf(report::html(*model), pdf);
}

}  // namespace walkdown::gui
