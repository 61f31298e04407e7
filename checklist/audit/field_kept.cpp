// SPDX-License-Identifier: Apache-2.0
// The field as bytes, for a snapshot: fixed-width records, read back only where they add up.
#include <bit>
#include <cmath>
#include <cstring>

#include "checklist/audit/field.h"

namespace walkdown::audit {

static_assert(std::endian::native == std::endian::little, "the bytes are native integers");

namespace {

template <typename T>
void put(std::string& bytes, T value) {
  char raw[sizeof(T)];
  std::memcpy(raw, &value, sizeof(T));
  bytes.append(raw, sizeof(T));
}

// Steps over bytes; once something is missing nothing more is given.
class Cut {
 public:
  explicit Cut(std::string_view bytes) : bytes_(bytes) {}

  template <typename T>
  T take() {
    T value{};
    good_ = good_ && bytes_.size() >= sizeof(T);
    if (!good_) return value;
    std::memcpy(&value, bytes_.data(), sizeof(T));
    bytes_.remove_prefix(sizeof(T));
    return value;
  }
  // A count of things of so many bytes each.
  std::size_t count(std::size_t each) {
    const auto size = take<std::uint64_t>();
    good_ = good_ && size <= bytes_.size() / each;
    return good_ ? static_cast<std::size_t>(size) : 0;
  }
  [[nodiscard]] bool done() const { return good_ && bytes_.empty(); }

 private:
  std::string_view bytes_;
  bool good_ = true;
};

constexpr std::size_t kPinBytes = 6;
constexpr std::size_t kSampleBytes = kPinBytes + 9;

void put_pin(std::string& bytes, plan::PinId pin) {
  put(bytes, pin.module);
  put(bytes, pin.rail);
  put(bytes, pin.pin);
}

plan::PinId take_pin(Cut& cut) {
  plan::PinId pin;
  pin.module = cut.take<std::uint16_t>();
  pin.rail = cut.take<std::uint16_t>();
  pin.pin = cut.take<std::uint16_t>();
  return pin;
}

void put_pins(std::string& bytes, const std::set<plan::PinId>& pins) {
  put(bytes, std::uint64_t{pins.size()});
  for (const plan::PinId pin : pins) put_pin(bytes, pin);
}

std::set<plan::PinId> take_pins(Cut& cut) {
  std::set<plan::PinId> pins;
  for (std::size_t left = cut.count(kPinBytes); left > 0; --left) {
    pins.insert(pins.end(), take_pin(cut));
  }
  return pins;
}

}  // namespace

std::string Field::save() const {
  std::string bytes;
  bytes.reserve(64 + samples_.size() * kSampleBytes);
  put(bytes, readings_);
  put(bytes, rejected_);
  put_pins(bytes, read_);
  put_pins(bytes, stale_);
  put(bytes, std::uint64_t{samples_.size()});
  for (const match::Sample& sample : samples_) {
    put_pin(bytes, sample.pin);
    put(bytes, static_cast<std::uint8_t>(sample.over ? 1 : 0));
    // Readings are whole micro-ohm, so nothing is lost.
    put(bytes, static_cast<std::int64_t>(std::llround(sample.ohm * 1e6)));
  }
  return bytes;
}

bool Field::load(std::string_view bytes) {
  Cut cut(bytes);
  Field loaded(planned_, parser_, layout_known_);
  loaded.readings_ = cut.take<std::uint64_t>();
  loaded.rejected_ = cut.take<std::uint64_t>();
  loaded.read_ = take_pins(cut);
  loaded.stale_ = take_pins(cut);
  const std::size_t count = cut.count(kSampleBytes);
  loaded.samples_.reserve(count);
  for (std::size_t i = 0; i < count; ++i) {
    tester::Reading reading;
    reading.pin = take_pin(cut);
    reading.over = cut.take<std::uint8_t>() != 0;
    reading.micro_ohm = cut.take<std::int64_t>();
    loaded.samples_.push_back({reading.pin, reading.ohm(), reading.over});
  }
  if (!cut.done()) return false;
  *this = std::move(loaded);
  return true;
}

}  // namespace walkdown::audit
