// SPDX-License-Identifier: Apache-2.0
#include "reader/tester/profile.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <string>

#include "reader/tester/instrument.h"
#include "reader/tester/line.h"
#include "templates/embedded.h"

namespace walkdown::tester {
namespace {

using ::testing::HasSubstr;

std::string fault(std::string_view toml) {
  const auto profile = read_profile(toml, "x.toml");
  return profile.ok() ? "(taken)" : profile.error().sentence();
}

Profile shipped(std::string_view name) {
  const auto text = templates::text(name);
  EXPECT_TRUE(text.has_value()) << name;
  auto profile = read_profile(text.value_or(""), name);
  EXPECT_TRUE(profile.ok()) << (profile.ok() ? "" : profile.error().sentence());
  return *std::move(profile);
}

TEST(Profile, ReadsEveryKey) {
  const auto read = read_profile(R"(
baud = 115200
bits = 7
parity = "even"
stop = 2
line = '(?P<value>.+)'
check = "crc16-modbus"
check_optional = true
over = ["HI"]
accuracy_pct = 0.5
accuracy_ohm = 0.03
resolution_ohm = 0.001
noise_ohm = 0.002
range_ohm = 2000
zero_ohm = 0.12
test_current_a = 0.001
)",
                                 "meter.toml");
  ASSERT_TRUE(read.ok()) << read.error().sentence();
  EXPECT_EQ(read->port.baud, 115200);
  EXPECT_EQ(read->port.bits, 7);
  EXPECT_EQ(read->port.parity, Parity::even);
  EXPECT_EQ(read->port.stop, 2);
  EXPECT_EQ(read->line, "(?P<value>.+)");
  EXPECT_EQ(read->check, Check::crc16_modbus);
  EXPECT_TRUE(read->check_optional);
  EXPECT_THAT(read->over, ::testing::ElementsAre("HI"));
  EXPECT_DOUBLE_EQ(read->model.accuracy_pct, 0.5);
  EXPECT_DOUBLE_EQ(read->model.accuracy_ohm, 0.03);
  EXPECT_DOUBLE_EQ(read->model.resolution_ohm, 0.001);
  EXPECT_DOUBLE_EQ(read->model.noise(), 0.002);
  EXPECT_DOUBLE_EQ(read->model.range_ohm, 2000);
  EXPECT_DOUBLE_EQ(read->model.zero_ohm, 0.12);
  EXPECT_DOUBLE_EQ(read->model.test_current_a.value_or(0), 0.001);
}

TEST(Profile, AnEmptyFileIsTheDefault) {
  const auto read = read_profile("", "empty.toml");
  ASSERT_TRUE(read.ok());
  EXPECT_EQ(read->line, default_profile().line);
  EXPECT_EQ(read->port.baud, 9600);
  EXPECT_DOUBLE_EQ(read->model.noise(), read->model.resolution_ohm);
  EXPECT_FALSE(read->model.test_current_a.has_value());
}

TEST(Profile, TheShippedDefaultStatesTheDefault) {
  const Profile file = shipped("testers/addressed-lines.toml");
  const Profile built_in = default_profile();
  EXPECT_EQ(file.line, built_in.line);
  EXPECT_EQ(file.over, built_in.over);
  EXPECT_EQ(file.check, built_in.check);
  EXPECT_EQ(file.check_optional, built_in.check_optional);
  EXPECT_DOUBLE_EQ(file.model.accuracy_pct, built_in.model.accuracy_pct);
  EXPECT_DOUBLE_EQ(file.model.accuracy_ohm, built_in.model.accuracy_ohm);
  EXPECT_DOUBLE_EQ(file.model.resolution_ohm, built_in.model.resolution_ohm);
  EXPECT_DOUBLE_EQ(file.model.range_ohm, built_in.model.range_ohm);
}

TEST(Profile, TheShippedBareMeterReadsItsExamples) {
  const auto parser = LineParser::make(shipped("testers/bare-values.toml"));
  ASSERT_TRUE(parser.ok());
  EXPECT_FALSE(parser->addressed());
  for (const char* line : {"2.31", "+2.310000E+00", "2.31 ohm", "2,31"}) {
    const Parsed parsed = parser->parse(line);
    ASSERT_TRUE(std::holds_alternative<BareValue>(parsed)) << line;
    EXPECT_EQ(std::get<BareValue>(parsed).micro_ohm, 2'310'000) << line;
  }
  for (const char* line : {"OL", "9.9E37", "O.L ohm"}) {
    EXPECT_TRUE(std::get<BareValue>(parser->parse(line)).over) << line;
  }
}

TEST(Profile, TheShippedCrcTesterReadsItsExample) {
  const auto parser = LineParser::make(shipped("testers/crc-lines.toml"));
  ASSERT_TRUE(parser.ok());
  const Parsed parsed = parser->parse("104;07;2;05;2.31*F185");
  const auto* reading = std::get_if<Reading>(&parsed);
  ASSERT_NE(reading, nullptr) << std::get<Rejected>(parsed).why;
  EXPECT_EQ(reading->pin, (plan::PinId{7, 2, 5}));
  EXPECT_EQ(reading->seq, 104U);
  EXPECT_TRUE(std::holds_alternative<Rejected>(parser->parse("104;07;2;05;2.31")));
}

TEST(Profile, ANamedCheckIsNotOptional) {
  EXPECT_FALSE(read_profile("check = 'xor8'", "x")->check_optional);
  EXPECT_EQ(read_profile("line = '(?P<value>.+)'", "x")->check, Check::none);
  EXPECT_TRUE(read_profile("baud = 1200", "x")->check_optional);
}

TEST(Profile, ListsEveryMistakeWithItsLine) {
  const std::string all = fault(
      "baud = 'fast'\n"
      "bits = 9\n"
      "parity = \"sometimes\"\n"
      "line = '(?P<volt>x)'\n"
      "over = 'OL'\n"
      "range_ohm = -1\n"
      "acuracy_ohm = 0.02\n");
  EXPECT_THAT(all, HasSubstr("x.toml"));
  EXPECT_THAT(all, HasSubstr("line 1, baud: write a whole number from 50 to 4000000"));
  EXPECT_THAT(all, HasSubstr("line 2, bits: "));
  EXPECT_THAT(all, HasSubstr("line 3, parity: write one of \"none\""));
  EXPECT_THAT(all, HasSubstr("line 4, line: the group 'volt'"));
  EXPECT_THAT(all, HasSubstr("line 5, over: write a list"));
  EXPECT_THAT(all, HasSubstr("line 6, range_ohm: "));
  EXPECT_THAT(
      all,
      HasSubstr(
          "line 7, 'acuracy_ohm' is not a key of a tester profile; did you mean accuracy_ohm?"));
}

TEST(Profile, RefusesWhatIsNoNumber) {
  for (const char* bad :
       {"accuracy_ohm = nan", "accuracy_ohm = inf", "accuracy_ohm = '0.02'", "accuracy_ohm = true",
        "resolution_ohm = 0", "baud = 9600.0", "stop = 3"}) {
    EXPECT_NE(fault(bad), "(taken)") << bad;
  }
  EXPECT_EQ(fault("accuracy_ohm = 1"), "(taken)");
}

TEST(Profile, RefusesPatternsThatCannotBeUsed) {
  EXPECT_THAT(fault("line = '('"), HasSubstr("RE2"));
  EXPECT_THAT(fault("line = 'x'"), HasSubstr("group named value"));
  EXPECT_THAT(fault("line = 3"), HasSubstr("string"));
  EXPECT_THAT(fault("line = '(?P<value>" + std::string(5000, 'x') + ")'"), HasSubstr("4096"));
  EXPECT_NE(fault("line = '(?P<value>((x{1000}){1000}){1000})'"), "(taken)");
}

TEST(Profile, TellsWhichInstrumentItIs) {
  constexpr const char* kToml =
      "[instrument]\ntype = 'Ohm \u00b5'\nserial = '7'\ncertificate = 'C 1'\n"
      "calibrated_on = 2027-03-01\ncalibration_due = '2028-02-29'\n";
  EXPECT_EQ(fault(kToml), "(taken)");
  EXPECT_EQ(instrument_of(kToml),
            (Instrument{"Ohm \u00b5", "7", "C 1", "2027-03-01", "2028-02-29"}));
  EXPECT_FALSE(instrument_of("baud = 9600").told());
  EXPECT_FALSE(instrument_of("[").told());
  EXPECT_THAT(fault("instrument = 'mine'"), HasSubstr("[instrument]"));
  EXPECT_THAT(fault("[instrument]\nserial = 7"), HasSubstr("line 2, instrument.serial"));
  EXPECT_THAT(fault("[instrument]\ntype = 'a\\nb'"), HasSubstr("(taken)"));
  EXPECT_THAT(fault("[instrument]\ntype = \"a\\nb\""), HasSubstr("one line"));
  EXPECT_THAT(fault("[instrument]\ncalibrated_on = '2027-02-30'"), HasSubstr("write a date"));
  EXPECT_THAT(fault("[instrument]\ncalibrated_on = 'soon'"), HasSubstr("write a date"));
  EXPECT_THAT(fault("[instrument]\nserail = '7'"), HasSubstr("calibration_due"));
}

TEST(Profile, RefusesWhatIsNoToml) {
  EXPECT_THAT(fault("baud = \n"), HasSubstr("line 1"));
  EXPECT_NE(fault(std::string("baud = 9600\0", 12)), "(taken)");
  EXPECT_NE(fault("\xFF\xFE"), "(taken)");
  EXPECT_NE(fault("x = " + std::string(100'000, '[')), "(taken)");
  EXPECT_THAT(fault(std::string(kMaxProfileBytes + 1, '#')), HasSubstr("1 MiB"));
}

}  // namespace
}  // namespace walkdown::tester
