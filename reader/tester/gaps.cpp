// SPDX-License-Identifier: Apache-2.0
#include "reader/tester/gaps.h"

namespace walkdown::tester {
namespace {

bool is_last_of_counter(std::uint64_t seq) {
  if (seq == 0xFFU || seq == 0xFFFFU || seq == 0xFFFFFFFFU) return true;
  std::uint64_t nines = 9;
  while (nines < seq && nines < 999'999'999'999U) nines = nines * 10 + 9;
  return seq == nines;
}

}  // namespace

std::optional<SeqNote> SeqWatch::see(std::uint64_t seq) {
  const std::optional<std::uint64_t> last = last_;
  last_ = seq;
  if (!last) return std::nullopt;
  if (seq == *last) return SeqNote{SeqNote::Kind::repeat, 0};
  if (seq < *last) {
    if (seq <= 1 && is_last_of_counter(*last)) return std::nullopt;
    return SeqNote{SeqNote::Kind::restart, 0};
  }
  const std::uint64_t missing = seq - *last - 1;
  if (missing == 0) return std::nullopt;
  lost_ += missing;
  return SeqNote{SeqNote::Kind::gap, missing};
}

}  // namespace walkdown::tester
