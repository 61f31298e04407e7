// SPDX-License-Identifier: Apache-2.0
#include "checklist/record/sha256_many.h"

#include <algorithm>
#include <array>
#include <cstdint>
#include <cstring>

#if defined(__x86_64__)
#include <cpuid.h>
#include <immintrin.h>
#endif

namespace walkdown::record {

void pad(char* data, std::size_t size) {
  const std::size_t whole = padded_size(size);
  data[size] = static_cast<char>(0x80);
  std::memset(data + size + 1, 0, whole - size - 1);
  std::uint64_t bits = std::uint64_t{size} * 8;
  for (std::size_t i = 1; i <= 8; ++i, bits >>= 8U) data[whole - i] = static_cast<char>(bits);
}

void sha256_many_plain(std::span<const Padded> messages, std::span<Hash> out) {
  for (std::size_t i = 0; i < messages.size(); ++i) {
    out[i] = sha256({messages[i].data, messages[i].size});
  }
}

#if defined(__x86_64__)

namespace {

// FIPS 180-4 section 4.2.2.
alignas(64) constexpr std::array<std::uint32_t, 64> kRound = {
    0x428a2f98, 0x71374491, 0xb5c0fbcf, 0xe9b5dba5, 0x3956c25b, 0x59f111f1, 0x923f82a4, 0xab1c5ed5,
    0xd807aa98, 0x12835b01, 0x243185be, 0x550c7dc3, 0x72be5d74, 0x80deb1fe, 0x9bdc06a7, 0xc19bf174,
    0xe49b69c1, 0xefbe4786, 0x0fc19dc6, 0x240ca1cc, 0x2de92c6f, 0x4a7484aa, 0x5cb0a9dc, 0x76f988da,
    0x983e5152, 0xa831c66d, 0xb00327c8, 0xbf597fc7, 0xc6e00bf3, 0xd5a79147, 0x06ca6351, 0x14292967,
    0x27b70a85, 0x2e1b2138, 0x4d2c6dfc, 0x53380d13, 0x650a7354, 0x766a0abb, 0x81c2c92e, 0x92722c85,
    0xa2bfe8a1, 0xa81a664b, 0xc24b8b70, 0xc76c51a3, 0xd192e819, 0xd6990624, 0xf40e3585, 0x106aa070,
    0x19a4c116, 0x1e376c08, 0x2748774c, 0x34b0bcb5, 0x391c0cb3, 0x4ed8aa4a, 0x5b9cca4f, 0x682e6ff3,
    0x748f82ee, 0x78a5636f, 0x84c87814, 0x8cc70208, 0x90befffa, 0xa4506ceb, 0xbef9a3f7, 0xc67178f2};

// FIPS 180-4 section 5.3.3, in the order of the instructions: A B E F, then C D G H, each with its
// first word highest.
struct Lane {
  __m128i abef = _mm_set_epi32(0x6a09e667, static_cast<int>(0xbb67ae85), 0x510e527f,
                               static_cast<int>(0x9b05688c));
  __m128i cdgh = _mm_set_epi32(0x3c6ef372, static_cast<int>(0xa54ff53a), 0x1f83d9ab, 0x5be0cd19);
};

#define WALKDOWN_SHA __attribute__((target("sha,sse4.1,ssse3")))

// One block of each lane. The loops over lanes and rounds are unrolled, so that the instructions of
// the lanes stand side by side.
template <int kLanes>
WALKDOWN_SHA inline void blocks(std::array<Lane, kLanes>& lanes,
                                const std::array<const char*, kLanes>& data) {
  const __m128i swap = _mm_set_epi64x(0x0c0d0e0f08090a0b, 0x0405060700010203);
  std::array<Lane, kLanes> now = lanes;
  __m128i words[kLanes][4];  // NOLINT: a window on the message schedule
#pragma GCC unroll 16
  for (int step = 0; step < 16; ++step) {
    const __m128i round =
        _mm_load_si128(reinterpret_cast<const __m128i*>(kRound.data() + std::ptrdiff_t{4} * step));
#pragma GCC unroll 4
    for (int lane = 0; lane < kLanes; ++lane) {
      auto& w = words[lane];
      auto& [abef, cdgh] = now[lane];
      if (step < 4) {
        w[step] = _mm_shuffle_epi8(
            _mm_loadu_si128(reinterpret_cast<const __m128i*>(data[lane] + 16 * step)), swap);
      }
      const __m128i sum = _mm_add_epi32(w[step % 4], round);
      cdgh = _mm_sha256rnds2_epu32(cdgh, abef, sum);
      if (step >= 3 && step < 15) {
        __m128i& next = w[(step + 1) % 4];
        next = _mm_add_epi32(next, _mm_alignr_epi8(w[step % 4], w[(step + 3) % 4], 4));
        next = _mm_sha256msg2_epu32(next, w[step % 4]);
      }
      abef = _mm_sha256rnds2_epu32(abef, cdgh, _mm_shuffle_epi32(sum, 0x0e));
      if (step >= 1 && step < 13) {
        w[(step + 3) % 4] = _mm_sha256msg1_epu32(w[(step + 3) % 4], w[step % 4]);
      }
    }
  }
#pragma GCC unroll 4
  for (int lane = 0; lane < kLanes; ++lane) {
    lanes[lane].abef = _mm_add_epi32(lanes[lane].abef, now[lane].abef);
    lanes[lane].cdgh = _mm_add_epi32(lanes[lane].cdgh, now[lane].cdgh);
  }
}

WALKDOWN_SHA Hash result(const Lane& lane) {
  const __m128i swap = _mm_set_epi64x(0x0c0d0e0f08090a0b, 0x0405060700010203);
  const __m128i feba = _mm_shuffle_epi32(lane.abef, 0x1b);
  const __m128i dchg = _mm_shuffle_epi32(lane.cdgh, 0xb1);
  Hash hash;
  auto* const to = reinterpret_cast<__m128i*>(hash.data());
  _mm_storeu_si128(to, _mm_shuffle_epi8(_mm_blend_epi16(feba, dchg, 0xf0), swap));
  _mm_storeu_si128(to + 1, _mm_shuffle_epi8(_mm_alignr_epi8(dchg, feba, 8), swap));
  return hash;
}

WALKDOWN_SHA void pair(const Padded& a, const Padded& b, Hash& hash_a, Hash& hash_b) {
  std::array<Lane, 2> both;
  std::array<const char*, 2> data{a.data, b.data};
  const std::size_t in_a = padded_size(a.size) / 64, in_b = padded_size(b.size) / 64;
  const std::size_t common = std::min(in_a, in_b);
  for (std::size_t i = 0; i < common; ++i, data[0] += 64, data[1] += 64) blocks<2>(both, data);
  for (std::size_t lane = 0; lane < 2; ++lane) {
    std::array<Lane, 1> rest{both[lane]};
    for (std::size_t i = common; i < (lane == 0 ? in_a : in_b); ++i, data[lane] += 64) {
      blocks<1>(rest, {data[lane]});
    }
    both[lane] = rest[0];
  }
  hash_a = result(both[0]);
  hash_b = result(both[1]);
}

bool has_sha() {
  unsigned a = 0, b = 0, c = 0, d = 0;
  if (__get_cpuid(1, &a, &b, &c, &d) == 0) return false;
  const bool shuffles = (c & bit_SSSE3) != 0 && (c & bit_SSE4_1) != 0;
  return shuffles && __get_cpuid_count(7, 0, &a, &b, &c, &d) != 0 && (b & bit_SHA) != 0;
}

}  // namespace

void sha256_many(std::span<const Padded> messages, std::span<Hash> out) {
  static const bool quick = has_sha();
  if (!quick) return sha256_many_plain(messages, out);
  std::size_t i = 0;
  for (; i + 1 < messages.size(); i += 2) pair(messages[i], messages[i + 1], out[i], out[i + 1]);
  if (i < messages.size()) {
    Hash unused;
    pair(messages[i], messages[i], out[i], unused);
  }
}

#else

void sha256_many(std::span<const Padded> messages, std::span<Hash> out) {
  sha256_many_plain(messages, out);
}

#endif

}  // namespace walkdown::record
