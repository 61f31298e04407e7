// SPDX-License-Identifier: Apache-2.0
#include "checklist/cli/field_record.h"

#include <fmt/format.h>
#include <unistd.h>

#include <array>
#include <filesystem>

#include "checklist/audit/claim.h"
#include "checklist/record/keys.h"

namespace walkdown::cli {
namespace {

std::string station_name() {
  std::array<char, 256> name{};
  if (gethostname(name.data(), name.size() - 1) != 0 || !record::is_key_name(name.data())) {
    return "station";
  }
  return name.data();
}

std::string spoken(const record::EntryView& entry) {
  const auto reading = audit::reading_of(record::entry_of(entry).body);
  if (!reading) return "";
  const auto& value = reading->reading;
  return fmt::format(
      "{} {}", plan::text(value.pin),
      value.over ? std::string("over range") : fmt::format("{:.2f} ohm", value.ohm()));
}

}  // namespace

std::optional<std::string> FieldRecord::Shared::take(const record::EntryView& entry) {
  const std::lock_guard lock(mutex);
  ++counts.entries;
  auto sentence = field->take(entry);
  if (sentence && !disagrees) disagrees = sentence;
  counts.readings = field->readings();
  counts.rejected = field->rejected();
  if (entry.kind == audit::kReading) counts.last = spoken(entry);
  return sentence;
}

Done FieldRecord::same_show(const nlohmann::json& opening, const show::Show& show) {
  const auto recorded = show::from_json(opening.value("show", nlohmann::json()));
  if (!recorded) return recorded.error();
  for (const auto role : {show::Role::plan, show::Role::columns, show::Role::igniters,
                          show::Role::tester, show::Role::modules}) {
    const show::File* then = recorded->find(role);
    const show::File* now = show.find(role);
    if ((then == nullptr) == (now == nullptr) && (then == nullptr || then->text == now->text)) {
      continue;
    }
    return Error{Code::refused, "this record was opened with another file",
                 std::string(show::word(role)),
                 "name the files it was opened with, or a new record"};
  }
  return done();
}

Result<FieldRecord> FieldRecord::open(const std::string& path, const Inputs& inputs,
                                      const std::string& key_path, const record::Clock& clock) {
  const auto key = record::station_key(key_path.empty() ? record::default_station_path() : key_path,
                                       station_name());
  if (!key) return key.error();
  auto field = audit::Field::make(inputs.planned, inputs.show.find(show::Role::modules) != nullptr);
  if (!field) return field.error();

  FieldRecord out;
  out.shared_ = std::make_shared<Shared>();
  out.shared_->field.emplace(std::move(field).value());
  const auto shared = out.shared_;
  record::WriterOptions options;
  options.sealed = [shared](const record::EntryView& entry) { shared->take(entry); };
  Done same = done();
  options.verify.visitor = [shared, &same, &inputs](const record::EntryView& entry) {
    if (entry.n == 0) same = same_show(record::entry_of(entry).body, inputs.show);
    if (!same) return std::optional(same.error().sentence());
    return shared->take(entry);
  };
  std::error_code ignored;
  auto writer =
      std::filesystem::exists(path, ignored)
          ? record::Writer::resume(path, *key, clock, std::move(options))
          : record::Writer::create(path, {.origin = "", .show = show::to_json(inputs.show)}, *key,
                                   clock, std::move(options));
  if (!same) return same.error();
  if (!writer) return writer.error();
  out.writer_.emplace(std::move(writer).value());
  return out;
}

FieldRecord::Counts FieldRecord::counts() const {
  const std::lock_guard lock(shared_->mutex);
  return shared_->counts;
}

match::Outcome FieldRecord::diagnose() const {
  const std::lock_guard lock(shared_->mutex);
  return shared_->field->diagnose();
}

tester::LineParser FieldRecord::parser() const {
  const std::lock_guard lock(shared_->mutex);
  return shared_->field->parser();
}

Result<match::Outcome> FieldRecord::claim() {
  if (const auto flushed = writer_->flush(); !flushed) return flushed.error();
  match::Outcome outcome = diagnose();
  const auto written =
      writer_->append_and_wait({std::string(audit::kClaim), audit::claim_body(outcome)});
  if (!written) return written.error();
  return outcome;
}

}  // namespace walkdown::cli
