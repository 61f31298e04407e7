// SPDX-License-Identifier: Apache-2.0
#include "checklist/desk/ask_hold.h"

#include <fmt/format.h>

#include <thread>

#include "checklist/desk/hold_box.h"

namespace walkdown::desk {
namespace {

using SteadyClock = std::chrono::steady_clock;
constexpr auto kLook = std::chrono::milliseconds(20);
constexpr auto kOpen = std::chrono::seconds(1);

Error not_recorded(const HoldAsk& ask) {
  return {Code::busy,
          fmt::format("the hold is NOT recorded: the program that has the record open did not take "
                      "it up within {} s",
                      ask.patience.count() / 1000),
          ask.record, "shout, and call it in that program, or end that program and call it again"};
}

// Laid over by another's call, or taken up: which of the two, the record alone tells.
Result<std::optional<std::uint64_t>> look(const HoldAsk& ask, const HoldCall& call) {
  const auto lying = lying_hold_call(ask.record);
  if (lying && lying->request == call.request) return std::optional<std::uint64_t>();
  auto entry = hold_entry(ask.record, call.request);
  if (!entry || *entry) return entry;
  if (const Done again = put_hold_call(ask.record, call); !again) return again.error();
  return entry;
}

// In the record it may be although its file could not be taken away.
Entry give_up(const HoldAsk& ask, const HoldCall& call) {
  const auto entry = hold_entry(ask.record, call.request);
  if (entry && *entry) return **entry;
  const auto lying = lying_hold_call(ask.record);
  if (lying && lying->request == call.request) take_hold_call_away(ask.record);
  return not_recorded(ask);
}

}  // namespace

Entry ask_for_hold(const HoldAsk& ask) {
  const auto call = new_hold_call(ask.by, ask.reason);
  if (!call) return call.error();
  if (const Done laid = put_hold_call(ask.record, *call); !laid) return laid.error();
  const auto end = SteadyClock::now() + ask.patience;
  auto open_next = SteadyClock::now() + kOpen;
  while (SteadyClock::now() < end) {
    std::this_thread::sleep_for(kLook);
    const auto entry = look(ask, *call);
    if (!entry) return entry.error();
    if (*entry) return **entry;
    if (!ask.open || SteadyClock::now() < open_next) continue;
    ask.open();
    open_next = SteadyClock::now() + kOpen;
  }
  return give_up(ask, *call);
}

}  // namespace walkdown::desk
