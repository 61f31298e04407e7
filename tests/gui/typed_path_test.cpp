// SPDX-License-Identifier: Apache-2.0
// Wherever a path is typed: a folder on the way to the file, a device, nothing at all. Each of them
// is told in a sentence, and ends nothing.
#include <gmock/gmock.h>

#include <QFile>

#include "checklist/desk/copy.h"
#include "gui/app/opening.h"
#include "gui/day/file_hash.h"
#include "gui/new_show/new_show_dialog.h"
#include "gui/parts/load.h"
#include "gui/report/printable.h"
#include "tests/gui/demo_window.h"

namespace walkdown::gui {
namespace {

class NoFile : public ::testing::TestWithParam<const char*> {};
INSTANTIATE_TEST_SUITE_P(Paths, NoFile,
                         ::testing::Values("/", "/home", "/dev/zero", "/no/such/file", "", "."));

TEST_P(NoFile, IsToldOfAndReadByNobody) {
  const std::string path = GetParam();
  EXPECT_FALSE(load_file(path));
  EXPECT_FALSE(sha256_of_file(path));
  EXPECT_FALSE(desk::Copy::open(path));
  ShowDraft draft;
  draft.paths.fill(path.empty() ? "/no/such/file" : path);
  EXPECT_FALSE(show_of(draft));
  EXPECT_FALSE(look_at(draft).errors.empty());
}

TEST_F(DemoWindow, APathMayBeTypedLetterByLetter) {
  NewShowDialog pages;
  pages.show();
  const std::string plan = demo_->files().inputs.plan;
  pages.set_path(show::Role::igniters, QString::fromStdString(demo_->files().inputs.igniters));
  pages.set_path(show::Role::modules, QString::fromStdString(demo_->files().inputs.modules));
  for (std::size_t length = 1; length <= plan.size(); ++length) {
    pages.set_path(show::Role::plan, QString::fromStdString(plan.substr(0, length)));
    QTest::qWait(1);
  }
  pages.set_path(show::Role::site, QStringLiteral("/"));
  pages.set_record(folder_.path() + "/typed.record");
  pages.go(pages.steps() - 1);
  EXPECT_TRUE(
      QTest::qWaitFor([&] { return pages.told().contains("this is a folder"); }, kPatience_ms))
      << pages.told().toStdString();
  pages.set_path(show::Role::site, {});
  EXPECT_TRUE(QTest::qWaitFor([&] { return pages.ready(); }, kPatience_ms))
      << pages.told().toStdString();
}

TEST_F(DemoWindow, AFolderIsNoRecord) {
  const std::string folder = folder_.path().toStdString();
  ShowDraft draft;
  draft.path(show::Role::plan) = demo_->files().inputs.plan;
  const auto show = show_of(draft);
  ASSERT_TRUE(show) << show.error().sentence();
  EXPECT_FALSE(open_record(folder, std::nullopt, demo_->places(), clock_));
  EXPECT_FALSE(open_record(folder, *show, demo_->places(), clock_));
  EXPECT_FALSE(write_report_pdf(folder, folder_.path() + "/report.pdf"));
  Window window;
  window.start(clock_, demo_->places());
  window.open_later(folder, std::nullopt);
  window.show();
  EXPECT_TRUE(
      QTest::qWaitFor([&] { return window.refusal().contains(folder_.path()); }, kPatience_ms))
      << window.refusal().toStdString();
}

}  // namespace
}  // namespace walkdown::gui
