// SPDX-License-Identifier: Apache-2.0
// Bytes as plan and readings: three decide a planned pin, five a reading.
#include <cstddef>
#include <cstdint>
#include <cstdlib>

#include "reader/match/coverage.h"
#include "reader/match/diagnose.h"

namespace {

using namespace walkdown;  // NOLINT: a program of one page

class Bytes {
 public:
  Bytes(const std::uint8_t* data, std::size_t size) : data_(data), size_(size) {}
  [[nodiscard]] bool empty() const { return at_ >= size_; }
  std::uint8_t next() { return empty() ? std::uint8_t{0} : data_[at_++]; }

 private:
  const std::uint8_t* data_;
  std::size_t size_;
  std::size_t at_ = 0;
};

plan::Plan plan_from(Bytes& bytes) {
  plan::Plan plan;
  plan.catalogue.igniters.push_back({"A", {1.4, 1.9}, "fuzz", {}, {}, {}, {0, 0}});
  plan.catalogue.igniters.push_back({"B", {2.0, 2.6}, "fuzz", {}, {}, {}, {0, 0.2}});
  plan.catalogue.wires.push_back({"W", {80, 95}, 0.00393, "fuzz"});
  const unsigned pins = bytes.next();
  plan::PinId id{1, 1, 0};
  for (unsigned i = 0; i < pins; ++i) {
    const std::uint8_t step = bytes.next();
    if (step % 16 == 15) id = {static_cast<std::uint16_t>(id.module + 1), 1, 0};
    if (step % 16 == 14) id = {id.module, static_cast<std::uint16_t>(id.rail + 1), 0};
    id.pin = static_cast<std::uint16_t>(id.pin + 1 + step / 64);
    plan::PlannedPin pin;
    pin.id = id;
    const std::uint8_t load = bytes.next();
    pin.load.igniter = load & 1U;
    pin.load.count = static_cast<std::uint16_t>((load >> 1U) & 7U);
    const bool parallel = pin.load.count > 1 && (load & 16U) != 0;
    pin.load.join = parallel ? plan::Join::parallel : plan::Join::series;
    if ((load & 32U) != 0) pin.load.wire = 0, pin.load.lead_m = bytes.next();
    plan.pins.push_back(pin);
    auto& rails = plan.layout.rails[id.module];
    if (rails.size() < id.rail) rails.resize(id.rail);
    rails[id.rail - 1U] = id.pin;
  }
  return plan;
}

}  // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  Bytes bytes(data, size);
  const plan::Plan plan = plan_from(bytes);
  std::vector<match::Sample> samples;
  while (!bytes.empty() && samples.size() < 2000) {
    match::Sample sample;
    sample.pin = {bytes.next(), bytes.next(), bytes.next()};
    sample.ohm = bytes.next() / 10.0 + bytes.next() / 1000.0;
    sample.over = sample.ohm > 25;
    samples.push_back(sample);
  }
  const match::Outcome out = match::diagnose(plan, {}, samples);
  for (const match::PinVerdict& pin : out.pins) {
    if (!(pin.p_ok >= 0 && pin.p_ok <= 1.000001)) std::abort();
    if (pin.readings == 0 && pin.verdict == match::Verdict::fits && plan.find(pin.pin))
      std::abort();
  }
  for (const match::Finding& finding : out.findings) {
    if (finding.say.empty() || !(finding.confidence >= 0)) std::abort();
  }
  return 0;
}
