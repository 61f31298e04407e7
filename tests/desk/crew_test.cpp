// SPDX-License-Identifier: Apache-2.0
#include "checklist/desk/crew.h"

#include <gmock/gmock.h>
#include <sys/stat.h>

#include "tests/record/scratch.h"

namespace walkdown::desk {
namespace {

using testing::HasSubstr;

TEST(Crew, AddListFindLoad) {
  const record::test::Scratch scratch;
  const Crew crew(scratch.path("crew"));
  EXPECT_TRUE(crew.list().empty());
  const auto made = crew.add("Mara Linde", "kiln-and-copper", record::Cost::interactive);
  ASSERT_TRUE(made.ok()) << made.error().sentence();
  EXPECT_EQ(made->key.name, "Mara_Linde");
  ASSERT_EQ(crew.list().size(), 1U);
  EXPECT_EQ(crew.list().front().name, "Mara Linde");
  EXPECT_EQ(crew.find("Mara Linde")->key, made->key);
  const auto key = crew.load("Mara Linde", "kiln-and-copper");
  ASSERT_TRUE(key.ok());
  EXPECT_EQ(key->verify_key(), made->key);
  struct stat file {};
  ASSERT_EQ(::stat(crew.path_of("Mara Linde").c_str(), &file), 0);
  EXPECT_EQ(file.st_mode & 0777U, 0600U);
}

TEST(Crew, AWrongPassphraseIsRefusedInASentence) {
  const record::test::Scratch scratch;
  const Crew crew(scratch.path("crew"));
  ASSERT_TRUE(crew.add("Jon Weir", "river-and-stone", record::Cost::interactive).ok());
  const auto wrong = crew.load("Jon Weir", "river-and-stome");
  ASSERT_FALSE(wrong.ok());
  EXPECT_EQ(wrong.error().code, Code::refused);
  EXPECT_THAT(wrong.error().sentence(), HasSubstr("the passphrase is wrong"));
  EXPECT_EQ(crew.load("Edda Horn", "river-and-stone").error().code, Code::io);
}

TEST(Crew, NoKeyTwiceAndNoShortPassphrase) {
  const record::test::Scratch scratch;
  const Crew crew(scratch.path("crew"));
  EXPECT_EQ(crew.add("Jon Weir", "short", record::Cost::interactive).error().code, Code::refused);
  ASSERT_TRUE(crew.add("Jon Weir", "river-and-stone", record::Cost::interactive).ok());
  EXPECT_EQ(crew.add("Jon Weir", "river-and-stone", record::Cost::interactive).error().code,
            Code::refused);
}

TEST(Crew, NamesThatCannotBeKeys) {
  for (const char* name : {"", " Jon", "Jon ", "Jon  Weir", "Jon_Weir", "../Jon", ".Jon", "a+b",
                           "Jon\nWeir", "\xFF"}) {
    EXPECT_FALSE(key_name(name).ok()) << name;
  }
  EXPECT_EQ(*key_name("Zoë van der Aa"), "Zoë_van_der_Aa");
  EXPECT_EQ(person_name("Zoë_van_der_Aa"), "Zoë van der Aa");
}

}  // namespace
}  // namespace walkdown::desk
