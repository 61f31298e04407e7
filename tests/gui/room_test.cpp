// SPDX-License-Identifier: Apache-2.0
// Every view and state, in every language, at 100 and 200 % text in the smallest window: nothing is
// cut off.
#include "tests/gui/room.h"

#include <gtest/gtest.h>

#include <QLabel>
#include <QLineEdit>
#include <QScrollArea>
#include <QVBoxLayout>

#include "gui/look/language.h"
#include "tests/gui/demo_window.h"
#include "tests/gui/tour.h"

namespace walkdown::gui {
namespace {

// Says the window's sentences in another language for as long as it lives.
class Speaking {
 public:
  explicit Speaking(const QString& language) {
    if (load_language(translator_, {language}, WALKDOWN_QM)) {
      QApplication::installTranslator(&translator_);
    }
  }

 private:
  Translator translator_;  // Qt forgets one that goes
};

// A name or an entry may be too long for the strip and is whole when pointed at; its own words are
// not.
void expect_whole(const Strip& strip, const QString& where) {
  for (const auto field : {Strip::show, Strip::day, Strip::people, Strip::wind, Strip::tester}) {
    EXPECT_TRUE(strip.field(field).whole())
        << where.toStdString() << ": " << strip.field(field).text().toStdString();
  }
}

class Room : public ::testing::TestWithParam<const char*> {};

TEST_P(Room, NoTextIsCutOff) {
  const Speaking speaking(QString::fromLatin1(GetParam()));
  const QTemporaryDir folder;
  auto demo = Demo::make(folder.path().toStdString());
  ASSERT_TRUE(demo) << demo.error().sentence();
  const record::SystemClock clock;
  auto desk = (*demo)->open(clock);
  ASSERT_TRUE(desk) << desk.error().sentence();
  Window window;
  window.open(std::make_unique<Session>(std::move(desk).value(), crew_of((*demo)->places())),
              demo->get());
  window.resize(1024, 700);
  window.show();
  read_the_field(window, **demo);
  auto stops = tour(window);
  for (auto& stop : made_up_states(window, **demo)) stops.push_back(std::move(stop));
  for (const int pct : {100, 200}) {
    window.dress({Light::day, pct});
    for (const Stop& stop : stops) {
      QTest::qWait(10);
      stop.visit([&](QWidget& seen) {
        settle();
        for (const QString& each : without_room(seen)) {
          ADD_FAILURE() << stop.name.toStdString() << " at " << pct << " %: " << each.toStdString();
        }
      });
      expect_whole(window.strip(), QStringLiteral("%1 at %2 %").arg(stop.name).arg(pct));
    }
    EXPECT_EQ(window.size(), QSize(1024, 700)) << "the window grew";
  }
}

INSTANTIATE_TEST_SUITE_P(Languages, Room, ::testing::Values("en", "de", "fr", "es"),
                         [](const auto& language) { return std::string(language.param); });

// That the finder finds.
TEST(WithoutRoom, IsSaidOfWhatIsCutOffAndOfWhatLiesOverAnother) {
  QWidget page;
  page.resize(200, 100);
  auto* cut = new QLabel(QStringLiteral("a line much longer than the room it has"), &page);
  cut->setGeometry(0, 0, 60, 20);
  auto* outside = new QLabel(QStringLiteral("x"), &page);
  outside->setGeometry(180, 60, 60, 40);
  page.show();
  EXPECT_EQ(without_room(page).size(), 2U);
  auto* layout = new QVBoxLayout(&page);
  layout->addWidget(cut);
  layout->addWidget(outside);
  layout->activate();
  EXPECT_EQ(without_room(page).size(), 0U + (page.width() < cut->sizeHint().width() ? 1U : 0U));
  outside->setGeometry(cut->geometry());
  EXPECT_GE(without_room(page).size(), 1U);
}

TEST(WithoutRoom, IsSaidOfAPageWiderThanWhatItScrollsIn) {
  QWidget whole;
  whole.resize(100, 100);
  QScrollArea area(&whole);
  area.resize(100, 100);
  auto* page = new QWidget;
  page->resize(90, 400);
  area.setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  area.setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  area.setWidget(page);
  whole.show();
  EXPECT_EQ(without_room(whole).size(), 0U);
  page->resize(160, 400);
  EXPECT_EQ(without_room(whole).size(), 1U);
}

TEST(WithoutRoom, IsSaidOfAnEmptyLineThatCannotSayWhatItIsFor) {
  QWidget page;
  auto* line = new QLineEdit(&page);
  line->setPlaceholderText(QStringLiteral("What is to be written here"));
  page.resize(600, 100);
  line->setGeometry(0, 0, 500, line->sizeHint().height());
  page.show();
  EXPECT_EQ(without_room(page).size(), 0U);
  line->setGeometry(0, 0, 60, line->sizeHint().height());
  EXPECT_EQ(without_room(page).size(), 1U);
}

}  // namespace
}  // namespace walkdown::gui
