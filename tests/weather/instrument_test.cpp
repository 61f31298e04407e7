// SPDX-License-Identifier: Apache-2.0
#include <gtest/gtest.h>

#include <string>

#include "checklist/weather/decimal.h"
#include "checklist/weather/metar.h"
#include "checklist/weather/nmea.h"

namespace walkdown::weather {
namespace {

TEST(Decimal, ExactThousandths) {
  EXPECT_EQ(milli("12.4"), 12'400);
  EXPECT_EQ(milli("0"), 0);
  EXPECT_EQ(milli("0.0005"), 1);
  EXPECT_EQ(milli("0.0004"), 0);
  EXPECT_EQ(milli("999999999.999"), 999'999'999'999);
  for (const char* bad : {"", ".", "1.", ".5", "-1", "+1", "1e3", "1,5", "1.2.3", "9999999999"}) {
    EXPECT_FALSE(milli(bad)) << bad;
  }
}

// gpsd, NMEA.adoc: 10.5 kt and 5.4 m/s in one sentence; the figure in m/s is taken.
TEST(Nmea, TrueWindOfMwd) {
  const auto wind = parse_nmea("$WIMWD,302.4,T,289.6,M,10.5,N,5.4,M*6F\r\n");
  ASSERT_TRUE(wind) << wind.error().sentence();
  EXPECT_EQ(wind->mm_per_s, 5'400);
  EXPECT_EQ(wind->from_ddeg, 3024);
}

// pynmea2, test_types.py.
TEST(Nmea, RelativeWindOfMwvHasNoBearing) {
  const auto wind = parse_nmea("$IIMWV,271.0,R,000.2,N,A*3B");
  ASSERT_TRUE(wind);
  EXPECT_EQ(wind->mm_per_s, 103);  // 0.2 kt of 1852 m an hour
  EXPECT_FALSE(wind->from_ddeg);
}

// Computed independently: the same wind in knots and in m/s.
TEST(Nmea, UnitsAgree) {
  EXPECT_EQ(parse_nmea("$WIMWV,245.0,T,12.4,N,A*11")->mm_per_s, 6'379);
  EXPECT_EQ(parse_nmea("$WIMWV,245.0,T,6.4,M,A*27")->mm_per_s, 6'400);
}

TEST(Nmea, RefusesEveryOneBitChange) {
  const std::string good = "$WIMWV,245.0,T,12.4,N,A*11";
  for (std::size_t i = 0; i < good.size(); ++i) {
    std::string bad = good;
    bad[i] = static_cast<char>(bad[i] ^ 1);
    EXPECT_FALSE(parse_nmea(bad)) << bad;
  }
}

TEST(Nmea, RefusesInvalidStatusAndOtherSentences) {
  EXPECT_FALSE(parse_nmea("$WIMWV,245.0,T,12.4,N,V*06"));
  EXPECT_FALSE(parse_nmea("$GPZDA,160012.71,11,03,2004,-1,00*7D"));
  EXPECT_FALSE(parse_nmea(""));
  EXPECT_FALSE(parse_nmea("$*00"));
  EXPECT_FALSE(parse_nmea("$WIMWV,245.0,T,12.4,N,A"));
}

struct Group {
  const char* text;
  std::optional<std::int32_t> from_deg;
  std::int64_t mean_kt;
  std::optional<std::int64_t> gust_kt;
};

std::int64_t knots(std::int64_t kt) { return (kt * 1'852'000 + 1800) / 3600; }

// FAA AIM, Navy P-304, python-metar test_metar.py.
TEST(MetarWind, PublishedGroups) {
  const Group groups[] = {
      {"13008KT", 130, 8, {}},       {"08032G45KT", 80, 32, 45},      {"VRB04KT", {}, 4, {}},
      {"00000KT", 0, 0, {}},         {"210103G130KT", 210, 103, 130}, {"27025G40KT", 270, 25, 40},
      {"33065G105KT", 330, 65, 105}, {"VRB03G40KT", {}, 3, 40},
  };
  for (const Group& group : groups) {
    const auto metar = parse_metar_wind(group.text);
    ASSERT_TRUE(metar) << group.text;
    EXPECT_EQ(metar->from_deg, group.from_deg) << group.text;
    EXPECT_EQ(metar->mean_mm_per_s, knots(group.mean_kt)) << group.text;
    ASSERT_EQ(metar->gust_mm_per_s.has_value(), group.gust_kt.has_value()) << group.text;
    EXPECT_EQ(metar->gust_mm_per_s.value_or(0), group.gust_kt ? knots(*group.gust_kt) : 0);
  }
}

TEST(MetarWind, MetresPerSecondAndVariation) {
  EXPECT_EQ(parse_metar_wind("09010MPS")->mean_mm_per_s, 10'000);
  EXPECT_EQ(parse_metar_wind("09036KMH")->mean_mm_per_s, 10'000);
  const auto varying = parse_metar_wind("32012G22KT 280V350");
  ASSERT_TRUE(varying);
  EXPECT_EQ(varying->varies_from_deg, 280);
  EXPECT_EQ(varying->varies_to_deg, 350);
  EXPECT_TRUE(parse_metar_wind("240P99KT")->above);
}

TEST(MetarWind, InsideAReport) {
  const auto metar =
      parse_metar_wind("METAR KCOF 281855Z FEW029TCU FEW040 SCT250 09008KT 7SM 32/25 A3008");
  ASSERT_TRUE(metar);
  EXPECT_EQ(metar->from_deg, 90);
  EXPECT_EQ(metar->mean_mm_per_s, knots(8));
}

// python-metar test_metar.py.
TEST(MetarWind, MustReject) {
  for (const char* bad :
       {"90010KT", "9010KT", "09010 KT", "09010MPH", "00///KT", "VAR10KT", "21010KT 180-240", ""}) {
    EXPECT_FALSE(parse_metar_wind(bad)) << bad;
  }
}

}  // namespace
}  // namespace walkdown::weather
