// SPDX-License-Identifier: Apache-2.0
#include "reader/tester/line.h"

#include <fmt/format.h>
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <clocale>
#include <string>

#include "reader/tester/check.h"

namespace walkdown::tester {
namespace {

using ::testing::HasSubstr;

LineParser parser_of(const Profile& profile) {
  auto made = LineParser::make(profile);
  EXPECT_TRUE(made.ok());
  return *std::move(made);
}

Profile pattern(std::string line, Check check = Check::none) {
  Profile profile = default_profile();
  profile.line = std::move(line);
  profile.check = check;
  profile.check_optional = false;
  return profile;
}

std::string why(const Parsed& parsed) {
  const auto* rejected = std::get_if<Rejected>(&parsed);
  return rejected != nullptr ? rejected->why : "(taken)";
}

class DefaultLine : public ::testing::Test {
 protected:
  Parsed parse(std::string_view raw) const { return parser.parse(raw); }
  // Micro-ohm at M07/R2/P05, -1 for over; fails the test where the line is refused.
  std::int64_t value(std::string_view raw) const {
    const Parsed parsed = parse(raw);
    const auto* reading = std::get_if<Reading>(&parsed);
    EXPECT_NE(reading, nullptr) << raw << ": " << why(parsed);
    if (reading == nullptr) return -2;
    EXPECT_EQ(reading->pin, (plan::PinId{7, 2, 5})) << raw;
    return reading->over ? -1 : reading->micro_ohm;
  }
  LineParser parser = parser_of(default_profile());
};

TEST_F(DefaultLine, ReadsAValue) {
  EXPECT_EQ(value("M07,R2,P05,2.31,ohm"), 2'310'000);
  EXPECT_EQ(value("M07,R2,P05,0.00,ohm"), 0);
  EXPECT_EQ(value("M07,R2,P05,-0.01,ohm"), -10'000);
  EXPECT_TRUE(parser.addressed());
}

TEST_F(DefaultLine, ReadsAboveRange) {
  for (const char* token : {"OL", "ol", "O.L", "0L", "OVER", "9.9E37", "+9.90000E+37"}) {
    EXPECT_EQ(value(fmt::format("M07,R2,P05,{},ohm", token)), -1) << token;
  }
  EXPECT_EQ(value("M07,R2,P05,OL,Mohm"), -1);
}

TEST_F(DefaultLine, TakesFieldHabits) {
  EXPECT_EQ(value("m7,r02,p005,2.31,OHM"), 2'310'000);
  EXPECT_EQ(value("M0007;R2;P05;2,31;ohm"), 2'310'000);
  EXPECT_EQ(value("M07,R2,P05,2,31,ohm"), 2'310'000);
  EXPECT_EQ(value("  M07 , R2 ,P05,  2.31 , ohm \r"), 2'310'000);
  EXPECT_EQ(value("M07\tR2\tP05\t2.31\tohm"), 2'310'000);
  EXPECT_EQ(value("\xEF\xBB\xBFM07,R2,P05,2.31,ohm"), 2'310'000);
  EXPECT_EQ(value(std::string_view("\0M07,R2,P05,2.31,ohm\0\0", 22)), 2'310'000);
}

TEST_F(DefaultLine, ReadsUnits) {
  EXPECT_EQ(value("M07,R2,P05,0.00231,kohm"), 2'310'000);
  EXPECT_EQ(value("M07,R2,P05,2310,mOhm"), 2'310'000);
  EXPECT_EQ(value("M07,R2,P05,0.00000231,MOhm"), 2'310'000);
  EXPECT_EQ(value("M07,R2,P05,2.31,\xCE\xA9"), 2'310'000);
  EXPECT_EQ(value("M07,R2,P05,2.31,\xE2\x84\xA6"), 2'310'000);
}

TEST_F(DefaultLine, ReadsItsLineNumber) {
  const Parsed parsed = parse("M07,R2,P05,2.31,ohm,1042");
  ASSERT_TRUE(std::holds_alternative<Reading>(parsed)) << why(parsed);
  EXPECT_EQ(std::get<Reading>(parsed).seq, 1042U);
  EXPECT_EQ(value("M07,R2,P05,2,31,ohm,1042"), 2'310'000);
}

TEST_F(DefaultLine, VerifiesAChecksumWhereThereIsOne) {
  const std::string body = "M07,R2,P05,2.31,ohm";
  const unsigned right = xor8(body);
  EXPECT_EQ(value(fmt::format("{}*{:02X}", body, right)), 2'310'000);
  EXPECT_EQ(value(fmt::format("{}*{:02x} \r", body, right)), 2'310'000);
  for (unsigned wrong = 0; wrong < 256; ++wrong) {
    if (wrong == right) continue;
    EXPECT_THAT(why(parse(fmt::format("{}*{:02X}", body, wrong))), HasSubstr("checksum"));
  }
  for (const char* bad : {"*", "*7", "*7G", "*123", "*1234"}) {
    EXPECT_THAT(why(parse(body + bad)), HasSubstr("checksum")) << bad;
  }
}

// A value that was cut off must never pass for a smaller one.
TEST_F(DefaultLine, RefusesEveryLineThatWasCutOff) {
  const std::string whole = "M07,R2,P05,2.31,ohm";
  for (std::size_t keep = 0; keep < whole.size(); ++keep) {
    EXPECT_NE(why(parse(whole.substr(0, keep))), "(taken)") << whole.substr(0, keep);
    EXPECT_NE(why(parse(whole.substr(keep + 1))), "(taken)") << whole.substr(keep + 1);
  }
}

TEST_F(DefaultLine, SaysWhyNot) {
  EXPECT_EQ(why(parse("")), "the line is blank");
  EXPECT_THAT(why(parse("hello")), HasSubstr("not in the form"));
  EXPECT_THAT(why(parse("M00,R2,P05,2.31,ohm")), HasSubstr("module is not a number from 1"));
  EXPECT_THAT(why(parse("M07,R10000,P05,2.31,ohm")), HasSubstr("rail is not"));
  EXPECT_THAT(why(parse("M07,R2,P99999999999999999999,2.31,ohm")), HasSubstr("pin is not"));
  EXPECT_THAT(why(parse("M07,R2,P05,two,ohm")), HasSubstr("'two' is neither"));
  EXPECT_THAT(why(parse("M07,R2,P05,1.234,5,ohm")), HasSubstr("neither"));
  EXPECT_THAT(why(parse("M07,R2,P05,9.91E37,ohm")), HasSubstr("no number"));
  EXPECT_THAT(why(parse("M07,R2,P05,1e12,ohm")), HasSubstr("outside"));
  EXPECT_THAT(why(parse("M07,R2,P05,2.31,ohmM08,R2,P05,2.31,ohm")), HasSubstr("neither"));
  EXPECT_THAT(why(parse(std::string_view("M07,R2,P05,2\0.31,ohm", 20))), HasSubstr("NUL"));
  EXPECT_THAT(why(parse(std::string(5000, 'x'))), HasSubstr("4096"));
}

TEST_F(DefaultLine, RefusesALineThatIsNotWhole) {
  EXPECT_THAT(why(parser.parse(Line{"M07,R2,P05,2.31,ohm", 1, Ending::hang_up, Beginning::whole})),
              HasSubstr("cut off"));
  EXPECT_THAT(why(parser.parse(Line{"M07,R2,P05,2.31,ohm", 1, Ending::too_long, Beginning::whole})),
              HasSubstr("4096"));
  EXPECT_EQ(
      why(parser.parse(Line{"M07,R2,P05,2.31,ohm", 1, Ending::end_of_file, Beginning::unknown})),
      "(taken)");
}

TEST_F(DefaultLine, AnyByteAnywhereDoesNoHarm) {
  const std::string line = "M07,R2,P05,2.31,ohm,12*00";
  for (std::size_t at = 0; at < line.size(); ++at) {
    for (int byte = 0; byte < 256; ++byte) {
      std::string other = line;
      other[at] = static_cast<char>(byte);
      const std::string reason = why(parse(other));
      EXPECT_TRUE(reason == "(taken)" || reason.size() < 200) << reason;
    }
  }
}

TEST_F(DefaultLine, DoesNotFollowTheLocale) {
  ASSERT_NE(std::setlocale(LC_ALL, "de_DE.UTF-8"), nullptr)
      << "install the locale: localedef -i de_DE -f UTF-8 de_DE.UTF-8";
  EXPECT_EQ(value("M07,R2,P05,2.31,ohm"), 2'310'000);
  EXPECT_EQ(value("M07;R2;P05;2,31;ohm"), 2'310'000);
  std::setlocale(LC_ALL, "C");
}

TEST(BareLine, HasNoAddress) {
  const LineParser parser = parser_of(pattern(R"((?P<value>\S+)(?: (?P<unit>\S+))?)"));
  EXPECT_FALSE(parser.addressed());
  const Parsed parsed = parser.parse("2.31");
  ASSERT_TRUE(std::holds_alternative<BareValue>(parsed));
  EXPECT_EQ(std::get<BareValue>(parsed).micro_ohm, 2'310'000);
  EXPECT_TRUE(std::get<BareValue>(parser.parse("OL")).over);
  EXPECT_THAT(why(parser.parse("2.31 V")), HasSubstr("resistance"));
  // 12.31 whose first digit went before the port was open
  EXPECT_THAT(why(parser.parse(Line{"2.31", 1, Ending::terminated, Beginning::unknown})),
              HasSubstr("beginning"));
}

TEST(OtherLine, APartLeftOutIsOne) {
  const LineParser parser = parser_of(pattern(R"((?P<pin>P?\d+)=(?P<value>\S+))"));
  const Parsed parsed = parser.parse("P12=2.31");
  ASSERT_TRUE(std::holds_alternative<Reading>(parsed)) << why(parsed);
  EXPECT_EQ(std::get<Reading>(parsed).pin, (plan::PinId{1, 1, 12}));
}

TEST(OtherLine, NeedsItsChecksumUnlessToldOtherwise) {
  const LineParser parser = parser_of(pattern(R"(R=(?P<value>\S+))", Check::crc16_modbus));
  EXPECT_EQ(why(parser.parse("R=2.31")), "the checksum is missing");
  EXPECT_EQ(why(parser.parse(fmt::format("R=2.31*{:04X}", crc16_modbus("R=2.31")))), "(taken)");
  EXPECT_THAT(why(parser.parse("R=2.31*0000")), HasSubstr("'0000', the line itself gives"));
}

TEST(OtherLine, RefusesPatternsThatCannotBeUsed) {
  EXPECT_FALSE(LineParser::make(pattern("(")).ok());
  EXPECT_FALSE(LineParser::make(pattern("no value")).ok());
  std::string many = "(?P<value>x)";
  for (int i = 0; i < 20; ++i) many += "(x)";
  EXPECT_TRUE(LineParser::make(pattern(many)).ok());  // only the groups up to the last named count
  many += "(?P<unit>x)";
  EXPECT_FALSE(LineParser::make(pattern(many)).ok());
}

TEST(Habit, RefusesTheOneLineWithoutAChecksum) {
  ChecksumHabit habit;
  for (int i = 0; i < 7; ++i) habit.see("M07,R2,P05,2.31,ohm*00");
  EXPECT_FALSE(habit.expects_check());  // too few to know
  habit.see("M07,R2,P05,2.31,ohm");
  EXPECT_TRUE(habit.expects_check());
  ASSERT_TRUE(habit.judge("M07,R2,P05,2.31,ohm").has_value());
  EXPECT_THAT(habit.judge("M07,R2,P05,2.31,ohm")->why, HasSubstr("missing"));
  EXPECT_FALSE(habit.judge("M07,R2,P05,2.31,ohm*00").has_value());
}

TEST(Habit, LeavesAStreamWithoutChecksumsAlone) {
  ChecksumHabit habit;
  for (int i = 0; i < 50; ++i) habit.see(i % 2 == 0 ? "a*00" : "a");
  EXPECT_FALSE(habit.judge("a").has_value());
}

}  // namespace
}  // namespace walkdown::tester
