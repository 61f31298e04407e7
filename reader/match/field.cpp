// SPDX-License-Identifier: Apache-2.0
#include "reader/match/field.h"

#include <algorithm>
#include <cmath>
#include <map>

namespace walkdown::match {

using plan::PinId;

namespace {

constexpr std::uint32_t kSparse = 8;        // a dense rail holds at least one pin in so many,
constexpr std::uint32_t kSparseFree = 256;  // beyond so many that are free of charge
constexpr std::uint32_t kGrow = 64;         // a rail grows by at most so many pins to what was read

bool takes_part(const Sample& sample) {
  const bool value = sample.over || std::isfinite(sample.ohm);
  return value && sample.pin.module != 0 && sample.pin.rail != 0 && sample.pin.pin != 0;
}

}  // namespace

// Builds rails from the plan's layout and the planned pins, then once more with the pins that were
// read without being in either.
class FieldMaker {
 public:
  FieldMaker(const plan::Plan& plan, std::span<const std::uint32_t> spec_of_pin,
             std::span<const Sample> samples, const tester::Model& tester, bool layout_known)
      : plan_(plan),
        spec_of_pin_(spec_of_pin),
        samples_(samples),
        tester_(tester),
        layout_known_(layout_known) {}

  Field make() {
    build({});
    if (const std::vector<PinId> extra = place(); !extra.empty()) {
      build(extra);
      place();
    }
    summarise();
    return std::move(field_);
  }

 private:
  struct Draft {
    std::uint32_t length = 0;           // as laid out
    std::uint32_t first = 0, last = 0;  // planned pins [first, last)
    std::vector<std::uint16_t> extra;   // read, but not planned or laid out
  };
  using Drafts = std::map<std::uint32_t, Draft>;  // module and rail -> draft

  [[nodiscard]] Drafts drafts(const std::vector<PinId>& extra) const {
    Drafts out;
    for (const auto& [module, lengths] : plan_.layout.rails) {
      if (module == 0) continue;
      for (std::size_t r = 0; r < lengths.size() && r < plan::kMaxRail; ++r) {
        if (lengths[r] == 0) continue;
        Draft& draft = out.try_emplace(out.end(), address(module, r + 1))->second;
        draft.length = std::max<std::uint32_t>(draft.length, lengths[r]);
      }
    }
    for (std::uint32_t i = 0; i < plan_.pins.size();) {
      Draft& draft = out[address(plan_.pins[i].id.module, plan_.pins[i].id.rail)];
      draft.first = i;
      const PinId id = plan_.pins[i].id;
      while (i < plan_.pins.size() && plan_.pins[i].id.module == id.module &&
             plan_.pins[i].id.rail == id.rail) {
        ++i;
      }
      draft.last = i;
      draft.length = std::max<std::uint32_t>(draft.length, plan_.pins[i - 1].id.pin);
    }
    for (const PinId id : extra) out[address(id.module, id.rail)].extra.push_back(id.pin);
    return out;
  }

  static std::uint32_t address(std::size_t module, std::size_t rail) {
    return static_cast<std::uint32_t>((module << 16U) | rail);
  }

  void build(const std::vector<PinId>& extra) {
    field_ = Field{};
    field_.by_number_.assign(std::size_t{plan::kMaxModule} + 2, 0);
    field_.slots.reserve(plan_.pins.size() + plan_.pins.size() / 4);
    for (const auto& [at, draft] : drafts(extra)) add_rail(at, draft);
    for (Module& module : field_.modules) {
      const Rail& last = field_.rails[module.first + module.rails - 1];
      module.first_slot = field_.rails[module.first].first;
      module.slots = last.first + last.size - module.first_slot;
    }
  }

  void add_rail(std::uint32_t at, const Draft& draft) {
    Rail rail;
    rail.module = static_cast<std::uint16_t>(at >> 16U);
    rail.number = static_cast<std::uint16_t>(at & 0xFFFFU);
    rail.first = static_cast<std::uint32_t>(field_.slots.size());
    const std::uint32_t known = draft.last - draft.first;
    std::uint32_t length = draft.length;
    const bool dense = length > 0 && length <= kSparse * known + kSparseFree;
    if (!layout_known_ && dense && known > 0) {
      for (const std::uint16_t pin : draft.extra) {
        if (pin <= length + kGrow) length = std::max<std::uint32_t>(length, pin);
      }
    }
    dense ? add_dense(rail, draft, length) : add_sparse(rail, draft);
    rail.length = dense ? length : 0;
    rail.size = static_cast<std::uint32_t>(field_.slots.size()) - rail.first;
    if (rail.size == 0) return;
    register_rail(rail);
  }

  void add_dense(Rail& rail, const Draft& draft, std::uint32_t length) {
    std::uint32_t next = draft.first;
    for (std::uint32_t pin = 1; pin <= length; ++pin) {
      const bool planned = next < draft.last && plan_.pins[next].id.pin == pin;
      add_slot(rail, static_cast<std::uint16_t>(pin), planned ? next : kNoPlan,
               pin <= draft.length);
      while (next < draft.last && plan_.pins[next].id.pin <= pin) ++next;
    }
    for (const std::uint16_t pin : draft.extra) {
      if (pin > length) add_slot(rail, pin, kNoPlan, false);
    }
  }

  void add_sparse(Rail& rail, const Draft& draft) {
    std::uint32_t next = draft.first;
    auto extra = draft.extra.begin();
    while (next < draft.last || extra != draft.extra.end()) {
      const bool planned =
          next < draft.last && (extra == draft.extra.end() || plan_.pins[next].id.pin <= *extra);
      if (planned) {
        add_slot(rail, plan_.pins[next].id.pin, next, true);
        ++next;
      } else {
        add_slot(rail, *extra++, kNoPlan, false);
      }
    }
  }

  void add_slot(const Rail& rail, std::uint16_t pin, std::uint32_t planned, bool laid_out) {
    Slot slot;
    slot.pin = {rail.module, rail.number, pin};
    slot.planned = planned;
    slot.laid_out = laid_out ? 1 : 0;
    if (planned != kNoPlan) slot.spec = spec_of_pin_[planned];
    field_.slots.push_back(slot);
  }

  void register_rail(const Rail& rail) {
    const auto index = static_cast<std::uint32_t>(field_.rails.size());
    if (field_.modules.empty() || field_.modules.back().number != rail.module) {
      Module module;
      module.number = rail.module;
      module.first = index;
      field_.modules.push_back(module);
      if (rail.module <= plan::kMaxModule) {
        field_.by_number_[rail.module] = static_cast<std::uint32_t>(field_.modules.size());
      }
    }
    ++field_.modules.back().rails;
    field_.rails.push_back(rail);
    field_.rail_of.resize(field_.slots.size(), index);
    field_.module_of.push_back(static_cast<std::uint32_t>(field_.modules.size() - 1));
  }

  // Sorts the samples into slots by counting; returns the pins that have no slot, sorted.
  std::vector<PinId> place() {
    std::vector<PinId> missing;
    slot_of_.assign(samples_.size(), kNoPlan);
    for (Slot& slot : field_.slots) slot.seen = Seen{};
    field_.left_out = 0;
    for (std::size_t i = 0; i < samples_.size(); ++i) {
      if (!takes_part(samples_[i]) || samples_[i].pin.module > plan::kMaxModule) {
        ++field_.left_out;
        continue;
      }
      const auto at = field_.find(samples_[i].pin);
      if (!at) {
        missing.push_back(samples_[i].pin);
        continue;
      }
      slot_of_[i] = *at;
      ++(samples_[i].over ? field_.slots[*at].seen.overs : field_.slots[*at].seen.numbers);
    }
    std::sort(missing.begin(), missing.end());
    missing.erase(std::unique(missing.begin(), missing.end()), missing.end());
    return missing;
  }

  void summarise() {
    std::uint32_t first = 0;
    for (Slot& slot : field_.slots) {
      slot.seen.first = first;
      first += slot.seen.count();
      slot.seen.repeated = !slot.seen.unread();
    }
    field_.order.resize(first);
    std::vector<std::uint32_t> filled(field_.slots.size(), 0);
    std::size_t before = samples_.size();  // the last line of another pin; samples_.size(): none
    std::size_t last = samples_.size();
    for (std::size_t i = 0; i < samples_.size(); ++i) {
      if (slot_of_[i] == kNoPlan) continue;
      if (last < samples_.size() && slot_of_[last] != slot_of_[i]) before = last;
      last = i;
      Slot& slot = field_.slots[slot_of_[i]];
      field_.order[slot.seen.first + filled[slot_of_[i]]++] = static_cast<std::uint32_t>(i);
      if (before == samples_.size() || !same_value(samples_[before], samples_[i])) {
        slot.seen.repeated = false;
      }
    }
    for (Slot& slot : field_.slots) moments(slot.seen);
  }

  static bool same_value(const Sample& a, const Sample& b) {
    return a.over == b.over && (a.over || std::abs(a.ohm - b.ohm) < 1e-9);
  }

  void moments(Seen& seen) const {
    if (seen.numbers == 0) return;
    double sum = 0;
    for (std::uint32_t i = 0; i < seen.count(); ++i) {
      const Sample& sample = samples_[field_.order[seen.first + i]];
      if (!sample.over) sum += judged(sample, tester_);
    }
    seen.mean = sum / seen.numbers;
    for (std::uint32_t i = 0; i < seen.count(); ++i) {
      const Sample& sample = samples_[field_.order[seen.first + i]];
      const double off = sample.over ? 0.0 : judged(sample, tester_) - seen.mean;
      seen.squares += off * off;
    }
  }

  const plan::Plan& plan_;
  std::span<const std::uint32_t> spec_of_pin_;
  std::span<const Sample> samples_;
  const tester::Model& tester_;
  bool layout_known_;
  Field field_;
  std::vector<std::uint32_t> slot_of_;
};

std::optional<std::uint32_t> Field::find(PinId pin) const {
  if (pin.module >= by_number_.size() || by_number_[pin.module] == 0) return std::nullopt;
  const Module& module = modules[by_number_[pin.module] - 1];
  std::uint32_t rail = module.first + pin.rail - 1U;
  if (pin.rail == 0 || pin.rail > module.rails || rails[rail].number != pin.rail) {
    const auto begin = rails.begin() + module.first;
    const auto end = begin + module.rails;
    const auto at = std::lower_bound(begin, end, pin.rail,
                                     [](const Rail& r, std::uint16_t n) { return r.number < n; });
    if (at == end || at->number != pin.rail) return std::nullopt;
    rail = static_cast<std::uint32_t>(at - rails.begin());
  }
  const Rail& held = rails[rail];
  const std::uint32_t hint = held.first + pin.pin - 1U;
  if (pin.pin >= 1 && pin.pin <= held.size && slots[hint].pin.pin == pin.pin) return hint;
  const auto begin = slots.begin() + held.first;
  const auto end = begin + held.size;
  const auto at = std::lower_bound(begin, end, pin.pin,
                                   [](const Slot& s, std::uint16_t n) { return s.pin.pin < n; });
  if (at == end || at->pin.pin != pin.pin) return std::nullopt;
  return static_cast<std::uint32_t>(at - slots.begin());
}

Field make_field(const plan::Plan& plan, std::span<const std::uint32_t> spec_of_pin,
                 std::span<const Sample> samples, const tester::Model& tester, bool layout_known) {
  return FieldMaker(plan, spec_of_pin, samples, tester, layout_known).make();
}

}  // namespace walkdown::match
