// SPDX-License-Identifier: Apache-2.0
#include "gui/new_show/show_draft.h"

#include <fmt/format.h>

#include <filesystem>
#include <set>

#include "checklist/desk/prepared.h"
#include "gui/parts/load.h"
#include "templates/embedded.h"

namespace walkdown::gui {
namespace {

Result<std::string> text_of(const std::string& path) {
  if (path.starts_with(kTemplate)) {
    const auto text = templates::text(path.substr(kTemplate.size()));
    if (!text) return Error{Code::io, "the program has no such template", path, ""};
    return std::string(*text);
  }
  return load_file(path);
}

}  // namespace

Result<show::Show> show_of(const ShowDraft& draft) {
  show::Show show;
  for (std::uint8_t i = 0; i < show::kRoles; ++i) {
    const auto role = static_cast<show::Role>(i);
    const std::string& path = draft.path(role);
    if (path.empty()) continue;
    auto text = text_of(path);
    if (!text) return text.error();
    const std::string name = std::filesystem::path(path).filename().string();
    show.put({role, name, std::move(text).value()});
  }
  return show;
}

Looked look_at(const ShowDraft& draft) {
  Looked out;
  if (draft.path(show::Role::plan).empty()) {
    out.errors.emplace_back("Choose a plan first.");
    return out;
  }
  const auto show = show_of(draft);
  if (!show) {
    out.errors.push_back(show.error().sentence());
    return out;
  }
  auto prepared = desk::prepare(*show);
  out.errors = std::move(prepared.errors);
  out.warnings = std::move(prepared.warnings);
  if (!prepared.prepared) return out;
  const auto& plan = prepared.prepared->planned.plan;
  std::set<std::string> positions;
  for (const auto& pin : plan.pins) positions.insert(pin.position);
  out.good = true;
  out.summary = fmt::format("{} pins on {} modules, {} positions", plan.pins.size(),
                            plan.layout.rails.size(), positions.size());
  return out;
}

}  // namespace walkdown::gui
