// SPDX-License-Identifier: Apache-2.0
// The field as the day asks for it. Internal to this folder.
#pragma once

#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "checklist/audit/field.h"
#include "checklist/day/outside.h"

namespace walkdown::desk {

class FieldPins final : public day::PinSource {
 public:
  explicit FieldPins(audit::Field field) : field_(std::move(field)) {}

  // The line that the fold is about to be given: the field is fed from its bytes, at the moment at
  // which the fold hands the entry over, so that both always stand at the same entry.
  void next(const record::EntryView& view) {
    next_ = &view;
    why_.reset();
    taken_ = false;
  }
  // Feeds the field where the fold had no use for the entry. A sentence where it does not hold.
  std::optional<std::string> finish();

  void take(const record::Entry& entry) override;
  [[nodiscard]] std::vector<day::PinFacts> facts() const override;
  [[nodiscard]] std::int64_t alike_groups() const override { return alike_groups_; }
  [[nodiscard]] std::string save() const override { return field_.save(); }
  bool load(std::string_view text) override {
    outcome_.reset();
    return field_.load(text);
  }

  void count_alike();
  [[nodiscard]] const audit::Field& field() const { return field_; }
  [[nodiscard]] std::shared_ptr<const match::Outcome> outcome() const;

 private:
  void feed();

  audit::Field field_;
  const record::EntryView* next_ = nullptr;
  bool taken_ = false;
  std::optional<std::string> why_;
  std::int64_t alike_groups_ = 0;
  mutable std::shared_ptr<const match::Outcome> outcome_;
};

}  // namespace walkdown::desk
