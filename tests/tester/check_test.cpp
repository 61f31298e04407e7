// SPDX-License-Identifier: Apache-2.0
#include "reader/tester/check.h"

#include <gtest/gtest.h>

#include <string>

namespace walkdown::tester {
namespace {

// NMEA 0183 sentences as published with the open-source projects gpsd and pynmea2.
TEST(Xor8, HoldsForPublishedSentences) {
  for (const std::string_view sentence : {
           "$WIMWD,302.4,T,289.6,M,10.5,N,5.4,M*6F",
           "$IIMWV,271.0,R,000.2,N,A*3B",
           "$GNGGA,001043.00,4404.14036,N,12118.85961,W,1,12,0.98,1113.0,M,-21.3,M*47",
           "$GPGGA,184353.07,1929.045,S,02410.506,E,1,04,2.6,100.00,M,-33.9,M,,0000*6D",
           "$GNRMC,001031.00,A,4404.13993,N,12118.86023,W,0.146,,100117,,,A*7B",
           "$GPRMC,225446,A,4916.45,N,12311.12,W,000.5,054.7,191194,020.3,E*68",
           "$GPZDA,160012.71,11,03,2004,-1,00*7D",
       }) {
    EXPECT_TRUE(check_holds(Check::xor8, split_check(sentence))) << sentence;
  }
}

TEST(Xor8, EveryChangedBitShows) {
  const std::string line = "M07,R2,P05,2.31,ohm";
  for (std::size_t bit = 0; bit < line.size() * 8; ++bit) {
    std::string other = line;
    other[bit / 8] = static_cast<char>(other[bit / 8] ^ (1 << (bit % 8)));
    EXPECT_NE(xor8(other), xor8(line)) << bit;
  }
}

TEST(Crc16, GivesTheCatalogueValue) {
  EXPECT_EQ(crc16_modbus("123456789"), 0x4B37);  // CRC-16/MODBUS check value, reveng catalogue
}

TEST(Crc16, GivesTheValuesOfModbusFrames) {
  // Computed independently (python3, bit by bit): on the wire C5 CD and 41 12, low byte first.
  EXPECT_EQ(crc16_modbus(std::string_view("\x01\x03\x00\x00\x00\x0A", 6)), 0xCDC5);
  EXPECT_EQ(crc16_modbus("\x02\x07"), 0x1241);
}

TEST(Check, TakesEitherCaseOfHexAndNothingElse) {
  EXPECT_TRUE(check_holds(Check::crc16_modbus, split_check("123456789*4B37")));
  EXPECT_TRUE(check_holds(Check::crc16_modbus, split_check("123456789*4b37")));
  for (const char* bad : {"123456789*4B3", "123456789*4B370", "123456789*", "123456789",
                          "123456789*0x4B", "123456789*+B37", "123456789*374B"}) {
    EXPECT_FALSE(check_holds(Check::crc16_modbus, split_check(bad))) << bad;
  }
}

TEST(Check, SplitsAtTheLastStar) {
  const Checked line = split_check("a*b*3F");
  EXPECT_EQ(line.body, "a*b");
  EXPECT_EQ(line.digits, "3F");
  EXPECT_FALSE(split_check("no star").digits.has_value());
  EXPECT_EQ(split_check("").body, "");
}

}  // namespace
}  // namespace walkdown::tester
