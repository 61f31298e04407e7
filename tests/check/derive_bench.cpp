// SPDX-License-Identifier: Apache-2.0
// derive_bench: verify with everything derived again, a million readings of 24,000 pins. Reference:
// SHA-256 of the same bytes by OpenSSL, line by line.
#include <benchmark/benchmark.h>
#include <openssl/evp.h>

#include <array>
#include <cstdlib>

#include "checklist/check/derive.h"
#include "tests/check/big_record.h"
#include "tests/record/scratch.h"
#include "tests/record/versus.h"

namespace walkdown::check::test {
namespace {

using record::test::versus;

std::string big(int pins, int readings) {
  static const record::test::Scratch scratch;
  const std::string path = scratch.path("big-" + std::to_string(readings));
  write_big_record(path, pins, readings);
  return path;
}

void check_it(const std::string& path, bool hash_only) {
  record::VerifyOptions options;
  options.hash_only = hash_only;
  const auto report = check_file(path, options);
  if (!report || !report->holds) std::abort();
}

void line_by_line(const std::string& all) {
  const EVP_MD* digest = EVP_sha256();
  std::array<unsigned char, 32> hash{};
  for (std::size_t begin = 0; begin < all.size();) {
    const std::size_t end = all.find('\n', begin);
    EVP_Digest(all.data() + begin, end - begin, hash.data(), nullptr, digest, nullptr);
    benchmark::DoNotOptimize(hash);
    begin = end + 1;
  }
}

void derive(benchmark::State& state) {
  static const std::string path = big(24'000, 1'000'000);
  static const std::string all = record::test::read_file(path);
  versus(
      state, [] { check_it(path, false); }, [] { line_by_line(all); });
}

BENCHMARK(derive)
    ->Name("verify, all derived again, 1,000,000 readings, against SHA-256 of each line")
    ->UseManualTime()
    ->Iterations(5)
    ->Unit(benchmark::kMillisecond);

}  // namespace
}  // namespace walkdown::check::test

BENCHMARK_MAIN();
