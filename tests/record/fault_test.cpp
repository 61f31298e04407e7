// SPDX-License-Identifier: Apache-2.0
// The medium as it can be: full, slow to take, broken, and left in the middle of a write.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <cstdint>
#include <filesystem>
#include <thread>

#include "checklist/record/writer.h"
#include "tests/record/sample.h"

namespace walkdown::record {
namespace {

using test::ManualClock;
using test::Scratch;
using testing::HasSubstr;

// Passes on until `left` bytes were written, then fails as a full disk does; takes at most `bite`
// bytes a call; can fail to sync.
struct Faults {
  std::size_t left = SIZE_MAX;
  std::size_t bite = SIZE_MAX;
  bool sync_fails = false;
};

class FaultyDevice final : public Device {
 public:
  FaultyDevice(std::unique_ptr<Device> inner, std::shared_ptr<Faults> faults)
      : inner_(std::move(inner)), faults_(std::move(faults)) {}
  Result<std::size_t> write(std::string_view bytes) override {
    if (faults_->left == 0)
      return Error{Code::io, "the record cannot be written: no space", "", ""};
    auto wrote = inner_->write(bytes.substr(0, std::min(faults_->left, faults_->bite)));
    if (wrote) faults_->left -= *wrote;
    return wrote;
  }
  Done sync() override {
    if (faults_->sync_fails) return Error{Code::io, "the record cannot be synced: I/O", "", ""};
    return inner_->sync();
  }

 private:
  std::unique_ptr<Device> inner_;
  std::shared_ptr<Faults> faults_;
};

struct FaultTest : testing::Test {
  Scratch scratch;
  ManualClock clock;
  std::string path = scratch.path("r");
  std::shared_ptr<Faults> faults = std::make_shared<Faults>();

  WriterOptions options() {
    WriterOptions made;
    made.wrap = [this](auto inner) {
      return std::make_unique<FaultyDevice>(std::move(inner), faults);
    };
    return made;
  }
  Result<Writer> create() {
    return Writer::create(path, {"origin/1", {}}, test::station(), clock, options());
  }
  Result<Writer> resume() { return Writer::resume(path, test::station(), clock); }
};

TEST_F(FaultTest, ShortWritesAreFinished) {
  faults->bite = 7;
  {
    auto writer = create();
    ASSERT_TRUE(writer.ok());
    ASSERT_TRUE(writer->append_and_wait(test::some_reading(1)).ok());
  }
  EXPECT_TRUE(verify_file(path)->holds);
}

TEST_F(FaultTest, FullDiskAtTheOpeningLeavesNothing) {
  faults->left = 100;
  const auto writer = create();
  ASSERT_FALSE(writer.ok());
  EXPECT_THAT(writer.error().sentence(), HasSubstr("no space"));
  EXPECT_TRUE(std::filesystem::is_empty(std::filesystem::path(path).parent_path()));
}

TEST_F(FaultTest, FullDiskIsToldAndStaysTold) {
  auto writer = create();
  ASSERT_TRUE(writer.ok());
  faults->left = 50;
  const Done kept = writer->append_and_wait(test::some_reading(1));
  ASSERT_FALSE(kept.ok());
  EXPECT_THAT(kept.error().sentence(), HasSubstr("no space"));
  faults->left = SIZE_MAX;  // room again; but what is on the file now is not known to be a record
  EXPECT_FALSE(writer->append(test::some_reading(2)).ok());
  EXPECT_FALSE(writer->health().ok());
  EXPECT_EQ(writer->head().size, 1U);
}

TEST_F(FaultTest, FullDiskAtEveryByteOfACommitCanBeResumed) {
  for (std::size_t left = 0; left < 480; left += 7) {
    *faults = {};
    std::filesystem::remove(path);
    bool acknowledged = false;
    {
      auto writer = create();
      ASSERT_TRUE(writer.ok());
      faults->left = left;
      acknowledged = writer->append_and_wait(test::some_reading(1)).ok();
    }
    auto writer = resume();
    ASSERT_TRUE(writer.ok()) << left << writer.error().sentence();
    const Report report = *verify_file(path);
    EXPECT_TRUE(report.holds) << left << report.why;
    if (acknowledged) {
      EXPECT_THAT(test::read_file(path), HasSubstr("2310001"));
    }
  }
}

TEST_F(FaultTest, FailedSyncIsNotAcknowledged) {
  auto writer = create();
  ASSERT_TRUE(writer.ok());
  faults->sync_fails = true;
  EXPECT_THAT(writer->append_and_wait(test::some_reading(1)).error().sentence(),
              HasSubstr("synced"));
  EXPECT_EQ(writer->head().size, 1U);
}

TEST_F(FaultTest, SealedIsCalledOnlyForWhatIsOnTheMedium) {
  std::vector<std::uint64_t> seen;
  WriterOptions with = options();
  with.sealed = [&](const EntryView& entry) { seen.push_back(entry.n); };
  auto writer = Writer::create(path, {"origin/1", {}}, test::station(), clock, with);
  ASSERT_TRUE(writer->append_and_wait(test::some_reading(1)).ok());
  faults->sync_fails = true;
  EXPECT_FALSE(writer->append_and_wait(test::some_reading(2)).ok());
  EXPECT_THAT(seen, testing::ElementsAre(0, 1));
}

struct TornTest : FaultTest {
  std::string whole;
  void SetUp() override {
    auto writer = create();
    ASSERT_TRUE(writer->append_and_wait(test::some_reading(1)).ok());
    whole = test::read_file(path);
  }
  void leave(const std::string& tail) { test::write_file(path, whole + tail); }
};

TEST_F(TornTest, TornBytesAreKeptAsideAndTold) {
  leave("{\"n\":2,\"at\":\"2026");
  ASSERT_TRUE(resume().ok());
  EXPECT_EQ(test::read_file(path + ".torn-1"), "{\"n\":2,\"at\":\"2026");
  EXPECT_TRUE(verify_file(path)->holds);
  EXPECT_THAT(test::read_file(path),
              HasSubstr(R"("kind":"torn","body":{"bytes":17,"file":"r.torn-1","sha256":")"));
}

TEST_F(TornTest, EachTearHasItsOwnFileAndIsToldOnce) {
  for (int i = 1; i <= 3; ++i) {
    whole = test::read_file(path);
    leave("torn");
    ASSERT_TRUE(resume().ok()) << i;
    EXPECT_TRUE(std::filesystem::exists(path + ".torn-" + std::to_string(i)));
  }
  const std::string text = test::read_file(path);
  std::size_t told = 0;
  for (std::size_t at = text.find("\"kind\":\"torn\""); at != std::string::npos;
       at = text.find("\"kind\":\"torn\"", at + 1)) {
    ++told;
  }
  EXPECT_EQ(told, 3U);
}

TEST_F(TornTest, TearWhoseTellingWasLostIsToldLater) {
  test::write_file(path + ".torn-1", "cut, then the power went");
  ASSERT_TRUE(resume().ok());
  EXPECT_THAT(test::read_file(path), HasSubstr("\"file\":\"r.torn-1\""));
}

TEST_F(TornTest, ZerosOfAPowerFailureAreATear) {
  leave(std::string(4096, '\0'));
  EXPECT_TRUE(resume().ok());
  leave(std::string(300, '\0') + "xyz\n{\"checkpoint\":\"late\"}\n");
  EXPECT_TRUE(resume().ok());
}

TEST_F(TornTest, WholeLinesWithoutCheckpointAreATear) {
  const auto lines = test::lines_of(whole);
  test::write_file(path, test::text_of({lines[0], lines[1], lines[2]}));
  auto writer = resume();
  ASSERT_TRUE(writer.ok()) << writer.error().sentence();
  EXPECT_EQ(test::read_file(path + ".torn-1"), lines[2] + '\n');
}

TEST_F(TornTest, ChangedRecordIsNotRepaired) {
  std::string forged = whole;
  forged[forged.find("2310001")] = '3';
  test::write_file(path, forged);
  const auto writer = resume();
  ASSERT_FALSE(writer.ok());
  EXPECT_EQ(writer.error().code, Code::forged);
  EXPECT_THAT(writer.error().sentence(), HasSubstr("begin a new record"));
  EXPECT_EQ(test::read_file(path), forged);
}

TEST_F(TornTest, ZeroByteFarFromTheEndIsNotATear) {
  std::string forged = whole + whole;
  forged[5] = '\0';
  test::write_file(path, forged);
  EXPECT_FALSE(resume().ok());
  EXPECT_EQ(test::read_file(path), forged);
}

TEST_F(TornTest, RecordWithoutASealedEntryIsToldApart) {
  test::write_file(path, "{\"n\":0,");
  const auto writer = resume();
  ASSERT_FALSE(writer.ok());
  EXPECT_THAT(writer.error().sentence(), HasSubstr("holds no sealed entry"));
}

// Appends of a commit's worth are sealed by whoever appends, smaller ones by the writer's thread.
TEST(WriterThreadsTest, SealedByAnyThreadInOrder) {
  const Scratch scratch;
  const SystemClock clock;
  std::vector<std::uint64_t> told;
  {
    WriterOptions options;
    options.sealed = [&told](const EntryView& entry) { told.push_back(entry.n); };
    auto writer = Writer::create(scratch.path("r"), {"", {}}, test::station(), clock, options);
    ASSERT_TRUE(writer.ok());
    std::vector<std::thread> threads;
    for (int t = 0; t < 4; ++t) {
      threads.emplace_back([&writer, t] {
        const std::vector<Draft> some(t % 2 == 0 ? 100 : 30, test::some_reading(t + 1));
        for (int i = 0; i < 40; ++i) ASSERT_TRUE(writer->append(some).ok());
      });
    }
    for (std::thread& thread : threads) thread.join();
    ASSERT_TRUE(writer->flush().ok());
  }
  ASSERT_EQ(told.size(), 1U + 2 * 40 * 130);
  for (std::size_t n = 0; n < told.size(); ++n) ASSERT_EQ(told[n], n);
  const Report report = *verify_file(scratch.path("r"));
  EXPECT_TRUE(report.holds) << report.why;
}

TEST(WriterThreadsTest, ManyThreadsAppendOneRecord) {
  const Scratch scratch;
  const SystemClock clock;
  constexpr int kThreads = 4, kEach = 300;
  {
    auto writer = Writer::create(scratch.path("r"), {"", {}}, test::station(), clock);
    ASSERT_TRUE(writer.ok());
    std::vector<std::thread> threads;
    for (int t = 0; t < kThreads; ++t) {
      threads.emplace_back([&] {
        for (int i = 0; i < kEach; ++i) {
          const auto ticket = writer->append(test::some_reading(i));
          ASSERT_TRUE(ticket.ok());
          if (i % 50 == 0) {
            ASSERT_TRUE(writer->wait(*ticket).ok());
          }
          if (i % 70 == 0) {
            EXPECT_GE(writer->head().size, 1U);
          }
        }
      });
    }
    for (std::thread& thread : threads) thread.join();
    ASSERT_TRUE(writer->flush().ok());
    EXPECT_EQ(writer->head().size, 1U + kThreads * kEach);
  }
  const Report report = *verify_file(scratch.path("r"));
  EXPECT_TRUE(report.holds) << report.why;
}

}  // namespace
}  // namespace walkdown::record
