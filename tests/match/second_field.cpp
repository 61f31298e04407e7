// SPDX-License-Identifier: Apache-2.0
// A second simulated field, written anew: other modules, other plans, other code for what moves and
// what is read, so that no figure hangs on one generator. Rates: THEORY's, by Setting's scales.

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdlib>
#include <optional>
#include <random>
#include <set>

#include "tests/match/second_parts.h"

namespace walkdown::simulated {
namespace {

using match::Kind;
using plan::PinId;

class Maker {
 public:
  explicit Maker(const Setting& setting) : set_(setting), draw_(setting.seed) {}

  Field make() {
    catalogue();
    for (std::uint16_t m = 1; field_.plan.pins.size() < set_.pins; ++m) module(m);
    mistakes();
    field_.tester.noise_ohm = 0.01;
    read_rows(set_, rows_, draw_, field_);
    return std::move(field_);
  }

 private:
  void catalogue() {
    auto& c = field_.plan.catalogue;
    c.igniters.push_back({"D", {1.2, 1.7}, "simulated", {}, {}, {}, {0, 0}});
    c.igniters.push_back({"E", {1.8, 2.4}, "simulated", {}, {}, {}, {0, 0}});
    c.wires.push_back({"thin", {85.5, 85.5}, 0.00393, "simulated"});
    c.wires.push_back({"middle", {52.9, 56.0}, 0.00393, "simulated"});
    c.wires.push_back({"thick", {33.3, 33.3}, 0.00393, "simulated"});
  }

  plan::Load load(double distance_m) {
    static constexpr std::array<double, 8> kStock = {2, 3, 5, 8, 12, 18, 25, 40};
    plan::Load out;
    out.igniter = draw_.yes(0.7) ? 0 : 1;
    out.wire = wire_;
    if (set_.style == Style::alike) {
      out.igniter = 0;
      out.lead_m = 8;
      out.wire = 0;
      return out;
    }
    const double kind = draw_.unit();
    if (kind > 0.65) out.count = static_cast<std::uint16_t>(2 + draw_.pick(5));
    if (kind > 0.88) {
      out.count = static_cast<std::uint16_t>(2 + draw_.pick(3));
      out.join = plan::Join::parallel;
    }
    out.lead_m =
        *std::find_if(kStock.begin(), kStock.end() - 1, [&](double m) { return m >= distance_m; });
    if (draw_.yes(0.6)) out.lead_m = std::round(distance_m * 2) / 2;  // cut to length
    return out;
  }

  void module(std::uint16_t m) {
    static constexpr std::array<std::array<int, 2>, 6> kShapes = {
        {{1, 16}, {2, 16}, {4, 8}, {2, 36}, {1, 32}, {6, 12}}};
    const auto [rails, size] = kShapes[static_cast<std::size_t>(draw_.pick(6))];
    wire_ = static_cast<std::uint16_t>(draw_.pick(3));
    const double position_m = draw_.from(2, 20);
    field_.plan.layout.rails[m].assign(static_cast<std::size_t>(rails),
                                       static_cast<std::uint16_t>(size));
    for (int r = 1; r <= rails; ++r) row({m, static_cast<std::uint16_t>(r), 0}, size, position_m);
  }

  void row(PinId id, int size, double position_m) {
    Row row{id, std::vector<std::optional<plan::Load>>(static_cast<std::size_t>(size)), {}};
    const int habit = draw_.pick(3);  // free pins: at the end, here and there, or one somewhere
    const int tail = habit == 0 ? draw_.pick(std::max(2, size / 4)) : 0;
    const int hole = habit == 2 ? draw_.pick(size) : -1;
    std::optional<plan::Load> last;
    for (int i = 0; i < size; ++i) {
      const bool same = set_.style == Style::blocks && last && draw_.yes(0.85);
      const plan::Load here = same ? *last : load(position_m + draw_.from(0, 10));
      last = here;
      if (i >= size - tail || i == hole || (habit == 1 && draw_.yes(0.10))) continue;
      row.planned[static_cast<std::size_t>(i)] = here;
      plan::PlannedPin pin;
      pin.id = row.pin(i);
      pin.load = here;
      pin.cue = std::to_string(field_.plan.pins.size() + 1);
      field_.plan.pins.push_back(pin);
    }
    for (int i = 0; i < size; ++i) row.now.push_back(row.own(i));
    rows_.push_back(std::move(row));
  }

  using Map = std::map<PinId, PinId>;

  void commit(Kind kind, int by, const Map& map, std::vector<PinId> pins, bool wrapped = false) {
    bool moves = false;
    for (const auto& [pin, source] : map) {
      if (busy_.contains(pin)) return;
      moves = moves || source != (field_.plan.find(pin) != nullptr ? pin : PinId{});
    }
    if (!moves) return;
    Moved moved{kind, by, std::move(pins), map, false, wrapped};
    for (const auto& [pin, source] : map) {
      busy_.insert(pin);
      const auto* a = field_.plan.find(pin);
      const auto* b = field_.plan.find(source);
      if (same_load(a ? &a->load : nullptr, b ? &b->load : nullptr)) continue;
      moved.visible = true;
      field_.wrong[pin] = true;
    }
    std::sort(moved.pins.begin(), moved.pins.end());
    field_.moves.push_back(std::move(moved));
  }

  void cross(Kind kind, const std::vector<std::pair<Row*, Row*>>& pairs) {
    Map map;
    std::vector<PinId> pins;
    for (const auto& [a, b] : pairs) {
      for (int i = 0; i < a->size(); ++i) {
        map[a->pin(i)] = b->own(i);
        map[b->pin(i)] = a->own(i);
        if (a->own(i) != PinId{}) pins.push_back(a->pin(i));
        if (b->own(i) != PinId{}) pins.push_back(b->pin(i));
      }
    }
    commit(kind, 0, map, pins);
  }

  std::vector<Row*> of_module(std::uint16_t m) {
    std::vector<Row*> out;
    for (Row& row : rows_) {
      if (row.id.module == m) out.push_back(&row);
    }
    return out;
  }

  void modules() {
    const auto& layout = field_.plan.layout.rails;
    for (const auto& [m, shape] : layout) {
      if (!draw_.yes(0.010 * set_.move_scale)) continue;
      std::vector<std::uint16_t> like;
      for (const auto& [other, its] : layout) {
        if (other != m && its == shape) like.push_back(other);
      }
      if (like.empty()) continue;
      const auto a = of_module(m);
      const auto b = of_module(draw_.one_of(like));
      std::vector<std::pair<Row*, Row*>> pairs;
      for (std::size_t i = 0; i < a.size(); ++i) pairs.emplace_back(a[i], b[i]);
      cross(Kind::modules_exchanged, pairs);
    }
  }

  void rails() {
    for (Row& row : rows_) {
      if (!draw_.yes(0.004 * set_.move_scale)) continue;
      const bool near = draw_.yes(0.7);
      std::vector<Row*> like;
      for (Row& other : rows_) {
        if (&other != &row && other.size() == row.size() &&
            (other.id.module == row.id.module) == near) {
          like.push_back(&other);
        }
      }
      if (like.empty()) continue;
      cross(Kind::rails_exchanged, {{&row, draw_.one_of(like)}});
    }
  }

  void reverse(const Row& row) {
    Map map;
    std::vector<PinId> pins;
    for (int i = 0; i < row.size(); ++i) {
      map[row.pin(i)] = row.own(row.size() - 1 - i);
      if (row.own(i) != PinId{}) pins.push_back(row.pin(i));
    }
    commit(Kind::reversed, 0, map, pins);
  }

  void shift(const Row& row) {
    int by = draw_.yes(0.8) ? 1 : 2;
    while (by > 1 && by < set_.most_by && draw_.yes(0.5)) ++by;
    if (!draw_.yes(0.5)) by = -by;
    draw_.yes(0.7) ? slide(row, by) : ring(row, by);
  }

  // The block from one pin to the first |by| free pins side by side, or to the end of the rail.
  void slide(const Row& row, int by) {
    const int n = row.size();
    const int step = by > 0 ? 1 : -1;
    const int lo = draw_.pick(n);
    if (row.own(lo) == PinId{}) return;
    Map map;
    std::vector<PinId> pins;
    int free = 0;
    for (int i = lo; i >= 0 && i < n && free < std::abs(by); i += step) {
      const int source = i - by;
      const bool before = step > 0 ? source < lo : source > lo;
      map[row.pin(i)] = before ? PinId{} : row.own(source);
      if (row.own(i) != PinId{}) pins.push_back(row.pin(i));
      free = row.own(i) == PinId{} ? free + 1 : 0;
    }
    commit(Kind::shifted, by, map, pins);
  }

  void ring(const Row& row, int by) {
    const int a = draw_.pick(row.size());
    const int b = draw_.pick(row.size());
    const int lo = std::min(a, b);
    const int n = std::abs(a - b) + 1;
    if (n < std::abs(by) + 2) return;
    Map map;
    std::vector<PinId> pins;
    for (int i = 0; i < n; ++i) {
      map[row.pin(lo + (i + by + n) % n)] = row.own(lo + i);
      if (row.own(lo + i) != PinId{}) pins.push_back(row.pin(lo + i));
    }
    commit(Kind::shifted, by, map, pins, true);
  }

  void swap(const PinId pin) {
    const auto at = std::find_if(rows_.begin(), rows_.end(), [&](const Row& row) {
      return row.id.module == pin.module && row.id.rail == pin.rail;
    });
    const double where = draw_.unit();
    const Row* row = &*at;
    int to = pin.pin - 1;
    if (where < 0.60) {
      to += draw_.yes(0.5) ? 1 : -1;
    } else if (where < 0.85) {
      to = draw_.pick(row->size());
    } else {
      std::vector<const Row*> others;
      for (const Row& other : rows_) {
        if (where >= 0.95 || other.id.module == pin.module) others.push_back(&other);
      }
      row = draw_.one_of(others);
      to = draw_.pick(row->size());
    }
    if (to < 0 || to >= row->size() || row->pin(to) == pin) return;
    commit(Kind::swapped, 0, {{pin, row->own(to)}, {row->pin(to), pin}}, {pin, row->pin(to)});
  }

  void mistakes() {
    modules();
    rails();
    for (const Row& row : rows_) {
      if (draw_.yes(0.004 * set_.move_scale)) reverse(row);
      if (draw_.yes(0.010 * set_.move_scale)) shift(row);
    }
    for (const plan::PlannedPin& pin : field_.plan.pins) {
      if (draw_.yes(0.002 * set_.move_scale)) swap(pin.id);
    }
    for (Row& row : rows_) {
      for (int i = 0; i < row.size(); ++i) {
        for (const Moved& moved : field_.moves) {
          const auto source = moved.effect.find(row.pin(i));
          if (source != moved.effect.end()) row.now[static_cast<std::size_t>(i)] = source->second;
        }
      }
    }
  }

  const Setting& set_;
  Draw draw_;
  Field field_;
  std::uint16_t wire_ = 0;
  std::vector<Row> rows_;
  std::set<PinId> busy_;
};

}  // namespace

Field simulate_second(const Setting& setting) { return Maker(setting).make(); }

}  // namespace walkdown::simulated
