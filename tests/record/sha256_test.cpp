// SPDX-License-Identifier: Apache-2.0
#include <gmock/gmock.h>
#include <rapidcheck/gtest.h>

#include <vector>

#include "checklist/record/sha256_many.h"

namespace walkdown::record {
namespace {

// Messages one behind the other, each padded.
class Messages {
 public:
  explicit Messages(const std::vector<std::string>& texts) {
    for (const std::string& text : texts) {
      padded_.push_back(text);
      padded_.back().resize(padded_size(text.size()), 'x');
      pad(padded_.back().data(), text.size());
      views_.push_back({padded_.back().data(), text.size()});
    }
    for (std::size_t i = 0; i < views_.size(); ++i) views_[i].data = padded_[i].data();
  }
  [[nodiscard]] std::vector<Hash> many() const {
    std::vector<Hash> out(views_.size());
    sha256_many(views_, out);
    return out;
  }
  [[nodiscard]] std::vector<Hash> plain() const {
    std::vector<Hash> out(views_.size());
    sha256_many_plain(views_, out);
    return out;
  }

 private:
  std::vector<std::string> padded_;
  std::vector<Padded> views_;
};

// NIST's examples to FIPS 180-4 (SHA256.pdf), and the empty message of its SHAVS short vectors.
TEST(Sha256Many, PublishedExamples) {
  const auto hashes = Messages({"abc", "abcdbcdecdefdefgefghfghighijhijkijkljklmklmnlmnomnopnopq",
                                "", std::string(1'000'000, 'a')})
                          .many();
  EXPECT_EQ(hex(hashes[0]), "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
  EXPECT_EQ(hex(hashes[1]), "248d6a61d20638b8e5c026930c3e6039a33ce45964ff2167f6ecedd419db06c1");
  EXPECT_EQ(hex(hashes[2]), "e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855");
  EXPECT_EQ(hex(hashes[3]), "cdc76e5c9914fb9281a1c7e284d73e67f1809a48a497200e046d39ccc7112cd0");
}

// Around the borders of a block and of the padding, beside messages of other lengths.
TEST(Sha256Many, EveryLengthAsOpensslHasIt) {
  std::vector<std::string> texts;
  for (std::size_t size = 0; size < 260; ++size) {
    texts.emplace_back(size, static_cast<char>(size * 7));
    texts.emplace_back((size * 37) % 300, static_cast<char>(size + 1));
  }
  texts.emplace_back("an odd one");
  const Messages messages(texts);
  EXPECT_EQ(messages.many(), messages.plain());
}

RC_GTEST_PROP(Sha256ManyProperty, AsOpensslHasIt, ()) {
  const Messages messages(*rc::gen::arbitrary<std::vector<std::string>>());
  RC_ASSERT(messages.many() == messages.plain());
}

}  // namespace
}  // namespace walkdown::record
