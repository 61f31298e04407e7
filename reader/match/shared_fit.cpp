// SPDX-License-Identifier: Apache-2.0
#include "reader/match/shared_fit.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstddef>
#include <cstdint>
#include <utility>
#include <vector>

namespace walkdown::match {
namespace {

constexpr std::size_t kMost = 16;   // unknowns at most: offset, gain, temperature, and wire names
constexpr std::size_t kErrors = 3;  // of them, those that are not a wire's
constexpr double kCut = 4;          // standard deviations; Tukey's biweight is 0 beyond
constexpr int kPasses = 6;
constexpr std::size_t kLeastSpreads = 40;  // pins read more than once
constexpr double kClearlyMore = 1.7;       // of the variance that the tester's profile gives
constexpr double kMostMore = 25;  // beyond five times its deviation the tester itself is at fault
constexpr std::size_t kMostRows = 8192;  // beyond, an even sample: the errors are then known to
                                         // a hundredth of what one pin differs by

using Vector = std::array<double, kMost>;
using Matrix = std::array<Vector, kMost>;

// Inverse of the leading n x n part of a symmetric positive definite matrix, by Gauss and Jordan.
Matrix inverse(Matrix a, std::size_t n) {
  Matrix out{};
  for (std::size_t i = 0; i < n; ++i) out[i][i] = 1;
  for (std::size_t c = 0; c < n; ++c) {
    const double pivot = 1 / std::max(a[c][c], 1e-12);
    for (std::size_t j = 0; j < n; ++j) {
      a[c][j] *= pivot;
      out[c][j] *= pivot;
    }
    for (std::size_t r = 0; r < n; ++r) {
      const double by = a[r][c];
      if (r == c || by == 0) continue;
      for (std::size_t j = 0; j < n; ++j) {
        a[r][j] -= by * a[c][j];
        out[r][j] -= by * out[c][j];
      }
    }
  }
  return out;
}

class Fit {
 public:
  Fit(const Field& field, SpecTable& table, const plan::Catalogue& catalogue,
      const tester::Model& tester, const Allowance& allowance)
      : field_(field), table_(table), catalogue_(catalogue), allowance_(allowance) {
    const double noise = std::abs(tester.noise());
    const double digit = std::max(1e-6, std::abs(tester.resolution_ohm));
    shared_.digit = digit;
    shared_.rounding = digit * digit / 12;
    shared_.noise = noise * noise + shared_.rounding;
    shared_.range = tester.range_ohm > 0 ? tester.range_ohm : 1e12;
    unknowns(tester);
  }

  Shared make() {
    collect();
    if (const double shown = shown_noise(); shown > shared_.noise) {
      shared_.jumps = std::sqrt(shown / shared_.noise);
      shared_.noise = shown;
    }
    for (int pass = 0; pass < kPasses && !rows_.empty(); ++pass) solve();
    // Wire of exactly its nominal area lies on the edge of its class: that is no sign of anything.
    for (std::size_t i = 0; i < kErrors; ++i) {
      if (box_[i] > 0 && std::abs(beta_[i] - mean_[i]) > 0.98 * box_[i]) shared_.at_edge = true;
    }
    publish();
    return std::move(shared_);
  }

 private:
  struct Row {
    double y, expected, lead, variance;
    std::size_t wire;  // unknown of its wire, 0 where it has none
  };

  void unknowns(const tester::Model& tester) {
    const double fixed = std::abs(tester.accuracy_ohm);
    const double gain = std::abs(tester.accuracy_pct) / 100;
    const double warm = kAlpha * std::abs(catalogue_.wiring.temp_tol_k);
    mean_[0] = allowance_.offset_mean;
    box_[0] = 1.5 * fixed + allowance_.offset_ohm;
    sigma_[0] = std::max(1e-4, fixed / std::sqrt(3.0) + allowance_.offset_ohm / 2);
    box_[1] = 1.5 * gain;
    sigma_[1] = std::max(1e-5, gain / std::sqrt(3.0));
    box_[2] = 1.5 * warm;
    sigma_[2] = std::max(1e-5, warm / std::sqrt(3.0));
    shared_.lead_factor.assign(catalogue_.wires.size(), allowance_.lead_factor);
    unknown_of_.assign(catalogue_.wires.size(), 0);
    for (std::size_t w = 0; w < catalogue_.wires.size() && size_ < kMost; ++w) {
      const plan::Interval r = catalogue_.wires[w].ohm_per_km;
      if (r.mid() <= 0 || r.half() <= 0) continue;
      unknown_of_[w] = size_;
      box_[size_] = r.half() / r.mid();
      sigma_[size_] = box_[size_] / std::sqrt(3.0);
      ++size_;
    }
    beta_ = mean_;
  }

  // One row a pin with a steady number, or an even sample of these; never at one stride, which
  // might hit the same place of every rail.
  void collect() {
    const std::size_t step = field_.slots.size() / kMostRows + 1;
    rows_.reserve(field_.slots.size() / step + 1);
    for (std::size_t block = 0; block < field_.slots.size(); block += step) {
      const std::size_t at = block + (block / step * 2654435761U >> 7U) % step;
      if (at < field_.slots.size()) collect(field_.slots[at]);
    }
  }

  void collect(const Slot& slot) {
    if (slot.spec == kNothing || slot.seen.numbers == 0 || slot.seen.overs > 0) return;
    if (slot.seen.numbers > 1) spreads_.emplace_back(slot.seen.numbers, slot.seen.squares);
    const Spec& spec = table_.specs[slot.spec];
    const Shape& load = table_.kinds[spec.kind].sound;
    const double lead = spec.lead_ohm * allowance_.lead_factor;
    const double half = table_.contact_ohm.half();
    const double own = load.variance() + spec.lead_box * spec.lead_box / 12 + half * half / 3;
    const double rest = load.mean + lead + table_.contact_ohm.mid();
    rows_.push_back({slot.seen.mean, rest, lead, own + shared_.noise / slot.seen.numbers,
                     spec.wire == plan::kNoWire ? 0 : unknown_of_[spec.wire]});
  }

  // A tester that jumps more than its profile says would make every pin unsteady: what its repeats
  // show, pin by pin, is its own to all of them. By the calmer three quarters, so that loose
  // contacts do not count; 0 where it is not clearly more than the profile's.
  [[nodiscard]] double shown_noise() {
    constexpr std::size_t kMostCounted = 16;
    std::array<std::vector<double>, kMostCounted + 1> spread;  // by readings a pin
    for (const auto& [numbers, squares] : spreads_) {
      if (numbers <= kMostCounted) spread[numbers].push_back(squares / (numbers - 1.0));
    }
    auto& most = *std::max_element(spread.begin(), spread.end(), [](const auto& a, const auto& b) {
      return a.size() < b.size();
    });
    if (most.size() < kLeastSpreads) return 0;
    const std::size_t calm = most.size() * 3 / 4;
    std::nth_element(most.begin(), most.begin() + static_cast<std::ptrdiff_t>(calm), most.end());
    double sum = 0;
    for (std::size_t i = 0; i < calm; ++i) sum += most[i];
    const auto freedoms = static_cast<double>(&most - spread.data()) - 1;
    const double shown = sum / static_cast<double>(calm) / calm_share(freedoms);
    return shown > kClearlyMore * shared_.noise ? std::min(shown, kMostMore * shared_.noise) : 0;
  }

  // Mean of the lower three quarters of a chi-square over its degrees of freedom: exact for one,
  // within 2 % beyond.
  static double calm_share(double freedoms) {
    return freedoms < 2 ? 0.3685 : 1 - 0.65 / std::sqrt(freedoms);
  }

  [[nodiscard]] double left(const Row& row) const {
    double rest = row.y - row.expected - beta_[0] - beta_[1] * row.expected - beta_[2] * row.lead;
    if (row.wire != 0) rest -= beta_[row.wire] * row.lead;
    return rest;
  }

  void solve() {
    Matrix a{};
    Vector b{};
    for (std::size_t i = 0; i < size_; ++i) {
      a[i][i] = 1 / (sigma_[i] * sigma_[i]);
      b[i] = mean_[i] * a[i][i];
    }
    add_rows(a, b);
    cover_ = inverse(a, size_);
    for (std::size_t i = 0; i < size_; ++i) {
      double value = 0;
      for (std::size_t j = 0; j < size_; ++j) value += cover_[i][j] * b[j];
      beta_[i] = value;
    }
    into_box(a, b);
  }

  // Weighted sums over the rows of one wire; everything the normal equations need.
  struct Sums {
    double w = 0, e = 0, l = 0, ee = 0, el = 0, ll = 0, r = 0, re = 0, rl = 0;
  };

  void add_rows(Matrix& a, Vector& b) const {
    std::array<Sums, kMost> sums{};
    for (const Row& row : rows_) {
      const double rest = left(row);
      const double z = rest * rest / (kCut * kCut * row.variance);
      if (z >= 1) continue;
      const double w = (1 - z) * (1 - z) / row.variance;
      const double we = w * row.expected;
      const double wl = w * row.lead;
      const double gap = row.y - row.expected;
      Sums& to = sums[row.wire];
      to.w += w;
      to.e += we;
      to.l += wl;
      to.ee += we * row.expected;
      to.el += we * row.lead;
      to.ll += wl * row.lead;
      to.r += w * gap;
      to.re += we * gap;
      to.rl += wl * gap;
    }
    for (std::size_t wire = 0; wire < size_; ++wire) add_sums(sums[wire], wire, a, b);
  }

  // Unknown 0 stands for "no wire of its own": then only offset, gain and temperature are moved.
  static void add_sums(const Sums& s, std::size_t wire, Matrix& a, Vector& b) {
    const std::array<std::size_t, 4> at = {0, 1, 2, wire};
    const std::array<std::array<double, 4>, 4> m = {{{s.w, s.e, s.l, s.l},
                                                     {s.e, s.ee, s.el, s.el},
                                                     {s.l, s.el, s.ll, s.ll},
                                                     {s.l, s.el, s.ll, s.ll}}};
    const std::array<double, 4> right = {s.r, s.re, s.rl, s.rl};
    const std::size_t terms = wire == 0 ? 3 : 4;
    for (std::size_t i = 0; i < terms; ++i) {
      for (std::size_t j = 0; j < terms; ++j) a[at[i]][at[j]] += m[i][j];
      b[at[i]] += right[i];
    }
  }

  // Coordinate descent inside the box from the free solution: few unknowns, few steps.
  void into_box(const Matrix& a, const Vector& b) {
    bool inside = true;
    for (std::size_t i = 0; i < size_; ++i) {
      const double held = std::clamp(beta_[i], mean_[i] - box_[i], mean_[i] + box_[i]);
      inside = inside && held == beta_[i];
      beta_[i] = held;
    }
    for (int step = 0; step < 60 && !inside; ++step) {
      for (std::size_t i = 0; i < size_; ++i) {
        double rest = b[i];
        for (std::size_t j = 0; j < size_; ++j) rest -= i == j ? 0 : a[i][j] * beta_[j];
        beta_[i] =
            std::clamp(rest / std::max(a[i][i], 1e-12), mean_[i] - box_[i], mean_[i] + box_[i]);
      }
    }
  }

  void publish() {
    shared_.offset = beta_[0];
    shared_.gain = beta_[1];
    for (std::size_t w = 0; w < shared_.lead_factor.size(); ++w) {
      const double own = unknown_of_[w] == 0 ? 0 : beta_[unknown_of_[w]];
      shared_.lead_factor[w] = allowance_.lead_factor * (1 + beta_[2] + own);
    }
    for (std::size_t s = 1; s < table_.specs.size(); ++s) publish(table_.specs[s]);
    std::vector<double> rest;
    rest.reserve(rows_.size());
    for (const Row& row : rows_) rest.push_back(left(row));
    if (rest.empty()) return;
    const auto middle = rest.begin() + static_cast<std::ptrdiff_t>(rest.size() / 2);
    std::nth_element(rest.begin(), middle, rest.end());
    shared_.residual = *middle;
  }

  void publish(Spec& spec) const {
    const LoadKind& kind = table_.kinds[spec.kind];
    const std::size_t own = spec.wire == plan::kNoWire ? 0 : unknown_of_[spec.wire];
    const double factor = spec.wire == plan::kNoWire ? 1 : shared_.lead_factor[spec.wire];
    spec.lead_shown = spec.lead_ohm * factor;
    Spec shown = spec;
    shown.lead_ohm = spec.lead_shown;
    spec.sound = whole_shape(kind.sound, shown, table_.contact_ohm);
    spec.sound.mean = shared_.shown(spec.sound.mean);
    const double lead = spec.lead_ohm * allowance_.lead_factor;
    Vector x{};
    x[0] = 1;
    x[1] = spec.sound.mean;
    x[2] = lead;
    if (own != 0) x[own] = lead;
    double variance = 0;
    for (std::size_t i = 0; i < size_; ++i) {
      for (std::size_t j = 0; j < size_; ++j) variance += x[i] * cover_[i][j] * x[j];
    }
    spec.shared_var = rows_.empty() ? prior_variance(x) : std::max(0.0, variance);
    // A wire past the last unknown keeps its whole range to itself.
    if (own == 0 && spec.wire != plan::kNoWire) {
      const plan::Interval r = catalogue_.wires[spec.wire].ohm_per_km;
      if (r.mid() > 0) spec.shared_var += std::pow(lead * r.half() / r.mid(), 2) / 3;
    }
    spec.sound.rest += spec.shared_var;
  }

  [[nodiscard]] double prior_variance(const Vector& x) const {
    double variance = 0;
    for (std::size_t i = 0; i < size_; ++i) variance += std::pow(x[i] * sigma_[i], 2);
    return variance;
  }

  static constexpr double kAlpha = 0.00393;  // IEC 60028, per kelvin

  const Field& field_;
  SpecTable& table_;
  const plan::Catalogue& catalogue_;
  Allowance allowance_;
  Shared shared_;
  std::size_t size_ = kErrors;
  Vector mean_{}, box_{}, sigma_{}, beta_{};
  Matrix cover_{};
  std::vector<std::size_t> unknown_of_;
  std::vector<Row> rows_;
  std::vector<std::pair<std::uint32_t, double>> spreads_;  // readings of a pin, Seen::squares
};

}  // namespace

Shared fit_shared(const Field& field, SpecTable& table, const plan::Catalogue& catalogue,
                  const tester::Model& tester, const Allowance& allowance) {
  return Fit(field, table, catalogue, tester, allowance).make();
}

}  // namespace walkdown::match
