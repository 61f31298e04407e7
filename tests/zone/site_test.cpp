// SPDX-License-Identifier: Apache-2.0
#include "checklist/zone/site.h"

#include <gmock/gmock.h>

#include <string>

#include "templates/embedded.h"

namespace walkdown::zone {
namespace {

using testing::HasSubstr;
using testing::SizeIs;

std::string collection(const std::string& features) {
  return R"({"type":"FeatureCollection","features":[)" + features + "]}";
}

std::string feature(const std::string& properties, const std::string& type,
                    const std::string& coordinates) {
  return R"({"type":"Feature","properties":{)" + properties + R"(},"geometry":{"type":")" + type +
         R"(","coordinates":)" + coordinates + "}}";
}

const std::string kJetty = feature(R"("role":"position","name":"Jetty")", "Point", "[1,50]");
const std::string kCrowd =
    feature(R"("role":"audience")", "Polygon", "[[[1,50],[1.001,50],[1.001,50.001],[1,50]]]");

std::string first_mistake(const std::string& features) {
  const auto read = read_site(collection(features), "site.geojson");
  return read.mistakes.empty() ? "" : read.mistakes.front().sentence();
}

TEST(Site, ReadsLongitudeFirst) {
  const auto read = read_site(collection(kJetty + "," + kCrowd), "site.geojson");
  ASSERT_THAT(read.mistakes, SizeIs(0));
  const auto* const jetty = read.site.find("Jetty");
  ASSERT_NE(jetty, nullptr);
  EXPECT_EQ(jetty->at.lon_deg, 1);
  EXPECT_EQ(jetty->at.lat_deg, 50);
  ASSERT_THAT(read.site.shapes, SizeIs(1));
  EXPECT_EQ(read.site.shapes[0].name, "audience 1");
  EXPECT_TRUE(read.site.shapes[0].polygon);
}

TEST(Site, TheDemoSiteHasNoMistake) {
  const auto read = read_site(templates::text("demo/site.geojson").value(), "site.geojson");
  EXPECT_THAT(read.mistakes, SizeIs(0));
  EXPECT_THAT(read.site.positions, SizeIs(6));
  EXPECT_THAT(read.site.shapes, SizeIs(5));
}

TEST(Site, AllMistakesAreListedWithTheirPlace) {
  const auto read = read_site(
      collection(feature(R"("role":"position")", "Point", "[1,50]") + "," +
                 feature(R"("role":"crowd")", "Point", "[1,50]") + "," +
                 feature(R"("role":"position","name":"A")", "Point", "[1,95]") + "," +
                 feature(R"("role":"audience")", "Polygon", "[[[1,50],[2,50],[2,51],[1,51]]]")),
      "site.geojson");
  ASSERT_THAT(read.mistakes, SizeIs(4));
  EXPECT_THAT(read.mistakes[0].sentence(), HasSubstr("site.geojson, feature 1"));
  EXPECT_THAT(read.mistakes[1].sentence(), HasSubstr("unknown role crowd"));
  EXPECT_THAT(read.mistakes[2].sentence(), HasSubstr("not on the earth"));
  EXPECT_THAT(read.mistakes[3].sentence(), HasSubstr("not closed"));
}

// Exchanged, these are a good place too, in another ocean.
TEST(Site, SaysWhereItLies) {
  Site site;
  EXPECT_EQ(say_place(site), "");
  site.positions.push_back({"A", {-35.2, 44.6005}, 0});
  EXPECT_EQ(say_place(site), "44.6005 N, 35.2000 W");
  site.positions.front().at = {44.6005, -35.2};
  EXPECT_EQ(say_place(site), "35.2000 S, 44.6005 E");
}

TEST(Site, RefusesWhatItsRoleDoesNotTake) {
  EXPECT_THAT(first_mistake(feature(R"("role":"position","name":"A")", "Polygon", "[]")),
              HasSubstr("not a Point"));
  EXPECT_THAT(first_mistake(feature(R"("role":"exclusion")", "Point", "[1,2]")),
              HasSubstr("role exclusion cannot be a Point"));
  EXPECT_THAT(first_mistake(feature(R"("role":"audience")", "LineString", "[[1,2]]")),
              HasSubstr("fewer than 2"));
  EXPECT_THAT(first_mistake(feature(R"("role":"audience")", "Polygon", "[[[1,2],[1,3],[1,2]]]")),
              HasSubstr("fewer than 4"));
  EXPECT_THAT(first_mistake(feature(R"("role":"audience","accuracy_m":-1)", "LineString",
                                    "[[1,2],[1,2.001]]")),
              HasSubstr("accuracy_m"));
  EXPECT_THAT(first_mistake(kJetty + "," + kJetty), HasSubstr("two positions"));
  EXPECT_THAT(first_mistake(feature(R"("role":"position","name":"A")", "Point", R"(["1",2])")),
              HasSubstr("[longitude, latitude]"));
}

TEST(Site, ASiteOver100KilometresIsAMistake) {
  EXPECT_THAT(
      first_mistake(kJetty + "," + feature(R"("role":"position","name":"B")", "Point", "[50,1]")),
      HasSubstr("100 km"));
}

TEST(Site, AcrossTheAntimeridianASiteIsStillSmall) {
  EXPECT_EQ(
      first_mistake(feature(R"("role":"position","name":"A")", "Point", "[179.999,-17]") + "," +
                    feature(R"("role":"position","name":"B")", "Point", "[-179.999,-17]")),
      "");
}

TEST(Site, HostileTextIsAMistakeAndNoCrash) {
  const std::string deep(100'000, '[');
  for (const std::string& text : {std::string(), std::string("null"), std::string("[]"), deep,
                                  std::string("{\"type\":\"FeatureCollection\"}"),
                                  collection("1,null,[],{}"), collection("{\"geometry\":3}")}) {
    EXPECT_FALSE(read_site(text, "x").mistakes.empty()) << text.substr(0, 40);
  }
}

TEST(Site, EveryCutOfAGoodFileIsAMistake) {
  const std::string whole = collection(kJetty + "," + kCrowd);
  for (std::size_t length = 0; length < whole.size(); ++length) {
    EXPECT_FALSE(read_site(whole.substr(0, length), "x").mistakes.empty()) << length;
  }
}

}  // namespace
}  // namespace walkdown::zone
