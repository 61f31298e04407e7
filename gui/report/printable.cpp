// SPDX-License-Identifier: Apache-2.0
#include "gui/report/printable.h"

#include <QFile>
#include <QImage>
#include <QPageSize>
#include <QPainter>
#include <QPdfWriter>
#include <QRegularExpression>
#include <QSvgRenderer>
#include <QUrl>

#include "checklist/report/build.h"
#include "checklist/report/html.h"
#include "gui/look/look.h"
#include "gui/look/words.h"

namespace walkdown::gui {
namespace {

constexpr int kSharp = 3;  // pixels of a drawing for one of the page
constexpr int kDpi = 96;

QImage drawn(const QByteArray& svg, int width_px) {
  QSvgRenderer renderer(svg);
  if (!renderer.isValid()) return {};
  const QSizeF natural = renderer.defaultSize();
  const double times = std::min(1.0, width_px / std::max(1.0, natural.width()));
  QImage image((natural * times * kSharp).toSize(), QImage::Format_ARGB32_Premultiplied);
  if (image.isNull()) return {};
  image.fill(Qt::white);
  QPainter painter(&image);
  renderer.render(&painter);
  return image;
}

// Each <svg> of the page becomes an <img> of the document.
QString with_images(const QString& html, QTextDocument& document, int width_px) {
  static const QRegularExpression kSvg(QStringLiteral("<svg.*?</svg>"),
                                       QRegularExpression::DotMatchesEverythingOption);
  QString out;
  qsizetype at = 0;
  int count = 0;
  for (auto it = kSvg.globalMatch(html); it.hasNext();) {
    const auto match = it.next();
    out += html.mid(at, match.capturedStart() - at);
    at = match.capturedEnd();
    QByteArray svg = match.captured().toUtf8();
    if (!svg.contains("xmlns=")) svg.replace("<svg", "<svg xmlns=\"http://www.w3.org/2000/svg\"");
    const QImage image = drawn(svg, width_px);
    if (image.isNull()) continue;
    const QString name = QStringLiteral("drawing:%1").arg(++count);
    document.addResource(QTextDocument::ImageResource, QUrl(name), image);
    out += QStringLiteral("<img src='%1' width='%2' height='%3'>")
               .arg(name)
               .arg(image.width() / kSharp)
               .arg(image.height() / kSharp);
  }
  return out + html.mid(at);
}

}  // namespace

std::unique_ptr<QTextDocument> printable(const std::string& html, int width_px) {
  auto document = std::make_unique<QTextDocument>();
  QFont font(QStringLiteral("DejaVu Sans"));
  font.setPointSizeF(9);
  document->setDefaultFont(font);
  document->setHtml(with_images(q(html), *document, width_px));
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
