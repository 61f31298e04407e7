// SPDX-License-Identifier: Apache-2.0
#include "checklist/record/writer.h"

#include <sodium.h>

#include <algorithm>
#include <array>
#include <utility>

#include "checklist/record/json_text.h"
#include "checklist/record/writer_core.h"

namespace walkdown::record {

Writer::Writer(std::unique_ptr<Core> core) : core_(std::move(core)) {}
Writer::Writer(Writer&&) noexcept = default;
Writer& Writer::operator=(Writer&&) noexcept = default;
Writer::~Writer() = default;

std::string make_origin(const std::string& station_name) {
  std::array<std::uint8_t, 8> random{};
  if (sodium_init() >= 0) randombytes_buf(random.data(), random.size());
  return "walkdown/" + station_name + '/' + hex(random.data(), random.size());
}

Result<Writer> Writer::create(const std::string& path, const Opening& opening,
                              const SigningKey& station, const Clock& clock,
                              WriterOptions options) {
  const std::string origin =
      opening.origin.empty() ? make_origin(station.verify_key().name) : opening.origin;
  const Draft open{"open",
                   {{"format", 1},
                    {"origin", origin},
                    {"show", opening.show},
                    {"station", text(station.verify_key())}}};
  Ready first;
  if (Done added = first.add(open); !added) return added.error();
  const EntryView view{0, clock.at_ms(), clock.up_ms(), open.kind, first.text};
  Rules rules;
  if (auto why = rules.accept(view, {})) return Error{Code::bad_input, *why, path, ""};
  Batch batch;
  batch.add(view);
  if (batch.text.size() > kLongestOpen) {
    return Error{Code::bad_input, "the show is larger than a record allows", path, ""};
  }
  Tree tree;
  seal(batch, tree, origin, station);
  auto device = create_locked(path, batch.text, options.wrap);
  if (!device) return device.error();
  batch.tell(options.sealed);
  const Head head{origin, 1, tree.root(), view.at_ms, view.up_ms};
  return Writer(std::make_unique<Core>(std::move(*device), station, clock, std::move(options),
                                       std::move(rules), std::move(tree), head));
}

Result<Ticket> Writer::append(Draft draft) {
  return core_->append(std::vector<Draft>{std::move(draft)});
}

Result<Ticket> Writer::append(const std::vector<Draft>& drafts) { return core_->append(drafts); }

Done Writer::wait(Ticket ticket) { return core_->wait(ticket.end, false); }

Done Writer::append_and_wait(Draft draft) {
  return append_and_wait(std::vector<Draft>{std::move(draft)});
}

Done Writer::append_and_wait(const std::vector<Draft>& drafts) {
  const auto ticket = core_->append(drafts);
  if (!ticket) return ticket.error();
  return core_->wait(ticket->end, false);
}

Done Writer::flush() { return core_->flush(); }
Head Writer::head() const { return core_->head(); }
Done Writer::health() const { return core_->health(); }

Done Writer::close(nlohmann::json body) {
  const auto ticket = core_->append({{"close", std::move(body)}}, true);
  if (!ticket) return ticket.error();
  return core_->wait(ticket->end, true);
}

}  // namespace walkdown::record
