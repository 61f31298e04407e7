// SPDX-License-Identifier: Apache-2.0
// The report's HTML page in a text document, to be looked at, printed, or made a PDF of. Text
// documents do not draw SVG: each drawing is made an image of the document.
#pragma once

#include <QString>
#include <QTextDocument>
#include <memory>
#include <string>

#include "gui/look/look.h"
#include "reader/result.h"

namespace walkdown::gui {

// Black on white. Drawings are no wider than `width_px`.
[[nodiscard]] std::unique_ptr<QTextDocument> printable(const std::string& html, int width_px);
// The same in the colours and size of the window, so that it does not dazzle at night.
[[nodiscard]] std::unique_ptr<QTextDocument> preview(const std::string& html, int width_px,
                                                     const Look& look);

// A4, from a record that is verified on the way. Errors: as report::build; io where the file cannot
// be written, or no font is installed: every text would be missing.
Done write_report_pdf(const std::string& record, const QString& pdf);
Done write_pdf(const std::string& html, const QString& pdf);

}  // namespace walkdown::gui
