// SPDX-License-Identifier: Apache-2.0
// The template files as they were when the program was built, by their path below templates/:
// "igniters/generic.toml", "testers/addressed-lines.toml".
#pragma once

#include <optional>
#include <string_view>

namespace walkdown::templates {

// Empty where no template has that name.
[[nodiscard]] std::optional<std::string_view> text(std::string_view name);

}  // namespace walkdown::templates
