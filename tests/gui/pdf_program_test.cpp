// SPDX-License-Identifier: Apache-2.0
// The program itself, asked for a PDF where no font is installed: an empty page would be taken for
// a report without findings.
#include <gmock/gmock.h>

#include <QFile>
#include <QProcess>

#include "gui/report/drawing.h"
#include "tests/gui/demo_window.h"

namespace walkdown::gui {
namespace {

struct Ended {
  int status = -1;
  std::string said;
};

Ended report(const std::string& record, const QString& pdf, const QString& font_config) {
  QProcess program;
  auto environment = QProcessEnvironment::systemEnvironment();
  environment.insert("QT_QPA_PLATFORM", "offscreen");
  if (!font_config.isEmpty()) environment.insert("FONTCONFIG_FILE", font_config);
  program.setProcessEnvironment(environment);
  program.start(WALKDOWN_GUI, {"--report", QString::fromStdString(record), "--pdf", pdf});
  if (!program.waitForFinished(60'000)) return {};
  return {program.exitCode(), program.readAllStandardError().toStdString()};
}

TEST_F(DemoWindow, ThereIsNoPdfWithoutAFontAndOneWithAFont) {
  const QString none = folder_.path() + "/no-fonts.conf";
  QFile file(none);
  ASSERT_TRUE(file.open(QIODevice::WriteOnly));
  file.write("<?xml version=\"1.0\"?><fontconfig></fontconfig>\n");
  file.close();
  const QString pdf = folder_.path() + "/page.pdf";
  const Ended without = report(session().path(), pdf, none);
  EXPECT_EQ(without.status, 2);
  EXPECT_THAT(without.said, ::testing::HasSubstr("no font is installed"));
  EXPECT_FALSE(QFile::exists(pdf));
  const Ended with = report(session().path(), pdf, {});
  EXPECT_EQ(with.status, 0) << with.said;
  EXPECT_TRUE(QFile::exists(pdf));
}

// One unit a module: as large as the unit it was a speck of 8 mm.
TEST(Drawing, ACodeIsLargeEnoughToBeRead) {
  const QByteArray code =
      "<svg viewBox=\"0 0 29 29\"><rect width=\"29\" height=\"29\" fill=\"#fff\"/></svg>";
  const QImage image = drawing(code, 640);
  EXPECT_GE(image.width() / kSharp, 100);
  EXPECT_EQ(image.width() % 29, 0) << "modules of unequal width";
  const QImage chart = drawing("<svg class=\"chart\" viewBox=\"0 0 720 190\"></svg>", 640);
  EXPECT_EQ(chart.width(), 640 * kSharp);
}

}  // namespace
}  // namespace walkdown::gui
