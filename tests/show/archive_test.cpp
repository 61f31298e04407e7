// SPDX-License-Identifier: Apache-2.0
#include "checklist/show/archive.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <fstream>
#include <iterator>
#include <random>

#include "checklist/show/envelope.h"

namespace walkdown::show {
namespace {

using testing::HasSubstr;

Show full_show() {
  Show show;
  for (std::uint8_t i = 0; i < kRoles; ++i) {
    const auto role = static_cast<Role>(i);
    show.put({role, std::string(word(role)) + ".txt", "a,\"b\r\nc\"\n\xC2\xB1"});
  }
  show.temp_milli_degc = -3500;
  return show;
}

std::string packed(const Show& show) {
  auto bytes = pack(show);
  EXPECT_TRUE(bytes.ok());
  return bytes.ok() ? *bytes : std::string{};
}

std::string payload_of(const Show& show) {
  const std::string bytes = packed(show);
  return std::string(unwrap(bytes, "x").value());
}

Error error_of(std::string_view bytes) {
  const auto show = unpack(bytes, "stick.show");
  EXPECT_FALSE(show.ok());
  return show.ok() ? Error{} : show.error();
}

std::string fixture(const std::string& name) {
  std::ifstream file(std::string(SHOW_FIXTURES) + "/" + name, std::ios::binary);
  EXPECT_TRUE(file.is_open());
  return {std::istreambuf_iterator<char>(file), {}};
}

TEST(ShowArchive, GivesTheSameShowBack) {
  for (const Show& show : {Show{}, full_show()}) {
    const auto back = unpack(packed(show), "x");
    ASSERT_TRUE(back.ok());
    EXPECT_EQ(*back, show);
  }
}

TEST(ShowArchive, SameShowSameBytes) { EXPECT_EQ(packed(full_show()), packed(full_show())); }

TEST(ShowArchive, KeepsMegabytes) {
  Show show;
  show.put({Role::plan, "large.csv", std::string(20'000'000, 'x')});
  const auto back = unpack(packed(show), "x");
  ASSERT_TRUE(back.ok());
  EXPECT_EQ(*back, show);
}

// The file was written when the class was at version 1, before there was a temperature.
TEST(ShowArchive, OpensAFileOfVersion1) {
  const auto show = unpack(fixture("version-1.show"), "version-1.show");
  ASSERT_TRUE(show.ok()) << show.error().sentence();
  ASSERT_EQ(show->files.size(), 3U);
  EXPECT_EQ(show->find(Role::plan)->text, "cue,module,rail,pin,igniter\r\n1,1,1,1,standard\r\n");
  EXPECT_THAT(show->find(Role::igniters)->text, HasSubstr("invented \xC2\xB1"));
  EXPECT_EQ(show->find(Role::checklist)->text, "");
  EXPECT_EQ(show->temp_milli_degc, std::nullopt);
}

// FORMAT.md: the version of the class is the second byte of the payload.
TEST(ShowArchive, RefusesANewerClassInASentence) {
  std::string payload = payload_of(full_show());
  ASSERT_EQ(payload[1], 2);
  payload[1] = 3;
  const Error error = error_of(wrap(payload));
  EXPECT_EQ(error.code, Code::bad_input);
  EXPECT_THAT(error.sentence(), HasSubstr("version 3"));
  EXPECT_THAT(error.sentence(), HasSubstr("newer"));
  payload[1] = 0;
  EXPECT_THAT(error_of(wrap(payload)).sentence(), HasSubstr("version 0"));
}

TEST(ShowArchive, RefusesANewerEnvelopeInASentence) {
  std::string bytes = packed(full_show());
  bytes[16] = 2;
  EXPECT_THAT(error_of(bytes).sentence(), HasSubstr("envelope version 2"));
}

TEST(ShowArchive, RefusesWhatIsNoShowFile) {
  EXPECT_EQ(error_of("").code, Code::bad_input);
  EXPECT_THAT(error_of("cue,module,rail\n").sentence(), HasSubstr("not a show file"));
  std::string as_text = packed(full_show());
  as_text.erase(as_text.find('\r'), 1);  // what a transfer as text makes of it
  EXPECT_THAT(error_of(as_text).sentence(), HasSubstr("not a show file"));
}

TEST(ShowArchive, EveryCutIsTold) {
  const std::string bytes = packed(full_show());
  for (std::size_t size = 16; size < bytes.size(); ++size) {
    ASSERT_EQ(error_of(std::string_view(bytes).substr(0, size)).code, Code::forged) << size;
  }
}

TEST(ShowArchive, EveryFlippedBitIsTold) {
  const std::string bytes = packed(full_show());
  for (std::size_t bit = 0; bit < bytes.size() * 8; ++bit) {
    std::string bad = bytes;
    bad[bit / 8] = static_cast<char>(bad[bit / 8] ^ (1 << (bit % 8)));
    ASSERT_FALSE(unpack(bad, "x").ok()) << bit;
  }
}

TEST(ShowArchive, LeftOverBytesAreRefusedInsideAndOutside) {
  EXPECT_EQ(error_of(packed(full_show()) + "x").code, Code::forged);
  EXPECT_THAT(error_of(wrap(payload_of(full_show()) + "x")).sentence(), HasSubstr("left over"));
}

TEST(ShowArchive, LengthsAndKindsInsideAreNotBelieved) {
  Show show;
  show.put({Role::plan, "p", "t"});
  const std::string good = payload_of(show);
  const auto with = [&](std::size_t at, std::string_view bytes) {
    std::string bad = good;
    bad.replace(at, bytes.size(), bytes);
    return error_of(wrap(bad)).sentence();
  };
  // Places as in FORMAT.md: count at 5, role at 9, length of the name at 10.
  ASSERT_EQ(good.substr(5, 5), std::string_view("\1\0\0\0\0", 5));
  EXPECT_THAT(with(5, "\xFF\xFF\xFF\xFF"), HasSubstr("files"));
  EXPECT_THAT(with(9, "\x08"), HasSubstr("unknown kind 8"));
  EXPECT_THAT(with(10, "\xFF\xFF\xFF\x7F"), HasSubstr("longer than the file"));
  EXPECT_THAT(with(good.size() - 5, "\x02"), HasSubstr("neither 0 nor 1"));
}

TEST(ShowArchive, ANameIsNeverAPath) {
  for (const std::string name : {"", ".", "..", "../plan.csv", "/etc/x", "a\\b", "c:x", "a\nb"}) {
    Show show;
    show.put({Role::plan, name, ""});
    EXPECT_FALSE(pack(show).ok()) << name;
  }
}

// A hostile file has a good hash: only the check after loading stands in the way.
TEST(ShowArchive, ANameInAHostileFileIsNeverAPath) {
  Show show;
  show.put({Role::plan, "aa/b", ""});
  EXPECT_FALSE(pack(show).ok());
  show.files[0].name = "aaxb";
  std::string payload = payload_of(show);
  payload.replace(payload.find("aaxb"), 4, "../b");
  EXPECT_THAT(error_of(wrap(payload)).sentence(), HasSubstr("name"));
}

TEST(ShowArchive, RefusesToPackWhatJsonCannotCarry) {
  Show show;
  show.put({Role::plan, "plan.csv", "\xFF"});
  EXPECT_THAT(pack(show).error().sentence(), HasSubstr("UTF-8"));
  show.put({Role::plan, "\xC3.csv", ""});
  EXPECT_FALSE(pack(show).ok());
  show.put({Role::plan, "plan.csv", ""});
  show.temp_milli_degc = 100'001;
  EXPECT_THAT(pack(show).error().sentence(), HasSubstr("temperature"));
}

TEST(ShowArchive, TwoFilesOfOneKindAreRefused) {
  Show show;
  show.files = {{Role::plan, "a", ""}, {Role::plan, "b", ""}};
  EXPECT_FALSE(pack(show).ok());
}

// 20,000 mutants with a good hash, so that all of them reach the parser. What is taken must be a
// show that can be packed again.
TEST(ShowArchive, MutantsNeverCrashAndNeverYieldWhatCannotBePacked) {
  const std::string good = payload_of(full_show());
  std::mt19937 random(20260704);  // NOLINT: the same mutants each time
  const auto below = [&](std::size_t n) { return random() % n; };
  std::size_t taken = 0;
  for (int i = 0; i < 20'000; ++i) {
    std::string bad = good;
    for (std::size_t k = 1 + below(4); k > 0; --k) {
      bad[below(bad.size())] = static_cast<char>(below(256));
    }
    if (below(4) == 0) bad.resize(below(bad.size()));
    if (below(8) == 0) bad += bad.substr(below(bad.size() + 1));
    const auto show = unpack(wrap(bad), "mutant");
    if (!show) continue;
    ++taken;
    ASSERT_TRUE(pack(*show).ok());
    ASSERT_NO_THROW((void)to_json(*show).dump());
  }
  EXPECT_GT(taken, 0U);
  EXPECT_LT(taken, 20'000U);
}

}  // namespace
}  // namespace walkdown::show
