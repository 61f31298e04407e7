// SPDX-License-Identifier: Apache-2.0
#include "checklist/desk/copy.h"

#include <cstdlib>
#include <utility>

namespace walkdown::desk {

Result<Copy> Copy::open(const std::string& path, record::VerifyOptions options) {
  Copy copy;
  copy.folded_ = std::make_unique<Folded>();
  options.visitor = [&, given = std::move(options.visitor)](const record::EntryView& entry) {
    auto why = copy.folded_->take(entry);
    return why || !given ? why : given(entry);
  };
  auto report = record::verify_file(path, options);
  if (!report) return report.error();
  copy.report_ = std::move(report).value();
  if (!copy.folded_->opened()) {
    return Error{Code::bad_input, "this is no record that can be shown: " + copy.report_.why, path,
                 ""};
  }
  return copy;
}

day::Now Copy::moment(day::Now now) const {
  const day::Now last = folded_->last();
  const std::int64_t apart_ms = (now.at_ms - now.up_ms) - (last.at_ms - last.up_ms);
  const bool same_run = now.up_ms >= last.up_ms && std::abs(apart_ms) <= day::Timeline::kPace_ms;
  return same_run && !report_.closed ? now : last;
}

day::State Copy::state(day::Now now) const { return folded_->day().at(moment(now)); }

}  // namespace walkdown::desk
