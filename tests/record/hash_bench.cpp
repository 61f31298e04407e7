// SPDX-License-Identifier: Apache-2.0
// hash_bench: verify against SHA-256 of the same bytes by OpenSSL, in one piece and line by line.
#include <benchmark/benchmark.h>
#include <openssl/evp.h>

#include <array>
#include <cstdlib>
#include <fstream>

#include "tests/record/sample.h"
#include "tests/record/versus.h"

namespace walkdown::record::test {
namespace {

constexpr int kReadings = 1'000'000;

// A record of a million readings, 100 to a commit.
const std::string& big_file() {
  static const Scratch scratch;
  static const std::string path = [] {
    std::string made = scratch.path("big");
    std::vector<std::vector<std::string>> commits(1);
    const Draft opening{"open",
                        {{"format", 1},
                         {"origin", "bench/1"},
                         {"show", nlohmann::json::object()},
                         {"station", text(station().verify_key())}}};
    commits[0].push_back(*entry_line({0, 1'783'191'731'123, 0, "open", opening.body}));
    for (int i = 0; i < kReadings; ++i) {
      if (i % 100 == 0) commits.emplace_back();
      const Draft draft = some_reading(i % 72 + 1);
      commits.back().push_back(*entry_line(
          {static_cast<std::uint64_t>(i) + 1, 1'783'191'731'123 + i, i, draft.kind, draft.body}));
    }
    write_file(made, resealed(commits, "bench/1", station()));
    return made;
  }();
  return path;
}

void verify_it(bool hash_only) {
  VerifyOptions options;
  options.hash_only = hash_only;
  const auto report = verify_file(big_file(), options);
  if (!report || !report->holds || report->entries != kReadings + 1) std::abort();
}

void in_one_piece() {
  std::ifstream file(big_file(), std::ios::binary);
  std::array<char, 1 << 18> buffer{};
  EVP_MD_CTX* context = EVP_MD_CTX_new();
  EVP_DigestInit_ex(context, EVP_sha256(), nullptr);
  while (file.read(buffer.data(), buffer.size()) || file.gcount() > 0) {
    EVP_DigestUpdate(context, buffer.data(), static_cast<std::size_t>(file.gcount()));
  }
  std::array<unsigned char, 32> hash{};
  EVP_DigestFinal_ex(context, hash.data(), nullptr);
  EVP_MD_CTX_free(context);
  benchmark::DoNotOptimize(hash);
}

void line_by_line() {
  static const std::string all = read_file(big_file());
  const EVP_MD* digest = EVP_sha256();
  std::array<unsigned char, 32> hash{};
  for (std::size_t begin = 0; begin < all.size();) {
    const std::size_t end = all.find('\n', begin);
    EVP_Digest(all.data() + begin, end - begin, hash.data(), nullptr, digest, nullptr);
    benchmark::DoNotOptimize(hash);
    begin = end + 1;
  }
}

void hash_only_whole(benchmark::State& state) {
  versus(
      state, [] { verify_it(true); }, in_one_piece);
}
void hash_only_lines(benchmark::State& state) {
  versus(
      state, [] { verify_it(true); }, line_by_line);
}
void deep(benchmark::State& state) {
  versus(
      state, [] { verify_it(false); }, in_one_piece);
}

#define WALKDOWN_HASH_BENCH(function, name) \
  BENCHMARK(function)->Name(name)->UseManualTime()->Iterations(7)->Unit(benchmark::kMillisecond)
WALKDOWN_HASH_BENCH(hash_only_whole, "verify --hash-only against SHA-256 of the file in one piece");
WALKDOWN_HASH_BENCH(hash_only_lines, "verify --hash-only against SHA-256 of each line, EVP_Digest");
WALKDOWN_HASH_BENCH(deep, "verify without derivation against SHA-256 of the file in one piece");

}  // namespace
}  // namespace walkdown::record::test

BENCHMARK_MAIN();
