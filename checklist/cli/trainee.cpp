// SPDX-License-Identifier: Apache-2.0
#include "checklist/cli/trainee.h"

#include <poll.h>
#include <unistd.h>

#include <array>
#include <sstream>
#include <vector>

#include "checklist/cli/status.h"

namespace walkdown::cli {
namespace {

using trainer::RailId;

Error no_such(std::string_view line) {
  return Error{Code::usage, "not a thing to do here", std::string(line), Trainee::words()};
}

std::vector<std::string> words_of(std::string_view line) {
  std::istringstream in{std::string(line)};
  std::vector<std::string> words;
  for (std::string word; in >> word;) words.push_back(word);
  return words;
}

std::optional<RailId> rail_of(std::string_view text) {
  const auto slash = text.find('/');
  if (slash == std::string_view::npos) return std::nullopt;
  const auto module = plan::parse_part(text.substr(0, slash), 'M');
  const auto rail = plan::parse_part(text.substr(slash + 1), 'R');
  if (!module || !rail) return std::nullopt;
  return RailId{*module, *rail};
}

// What the words name tells which exchange is meant: two pins, two rails, or two modules.
Done exchange(trainer::Field& field, const std::string& a, const std::string& b,
              std::string_view line) {
  const auto pin_a = plan::parse_pin(a);
  const auto pin_b = plan::parse_pin(b);
  if (pin_a && pin_b) return field.swap_loads(*pin_a, *pin_b);
  const auto rail_a = rail_of(a);
  const auto rail_b = rail_of(b);
  if (rail_a && rail_b) return field.exchange_rails(*rail_a, *rail_b);
  const auto module_a = plan::parse_part(a, 'M');
  const auto module_b = plan::parse_part(b, 'M');
  if (module_a && module_b) return field.exchange_modules(*module_a, *module_b);
  return no_such(line);
}

}  // namespace

std::string Trainee::words() {
  return "Type: rehook M01/R1/P05 | mend M01/R1/P05 | turn M07/R2 | exchange A B (pins, rails or "
         "modules) | unplug | plug | quit";
}

Done Trainee::act(std::string_view line) {
  const auto words = words_of(line);
  if (words.empty()) return done();
  const std::string& verb = words[0];
  if (words.size() == 1) {
    if (verb == "unplug") return tester_->unplug(), done();
    if (verb == "plug") return tester_->replug();
    if (verb == "quit") return quit_ = true, done();
  }
  if (words.size() == 3 && verb == "exchange") return exchange(*field_, words[1], words[2], line);
  if (words.size() != 2) return no_such(line);
  if (verb == "turn") {
    const auto rail = rail_of(words[1]);
    return rail ? field_->reverse(*rail) : Done(no_such(line));
  }
  const auto pin = plan::parse_pin(words[1]);
  if (pin && verb == "rehook") return field_->rehook(*pin);
  if (pin && verb == "mend") return field_->clear_fault(*pin);
  return no_such(line);
}

bool Trainee::listen() {
  pollfd input{STDIN_FILENO, POLLIN, 0};
  while (!ended_ && !quit_ && poll(&input, 1, 0) > 0) {
    std::array<char, 512> bytes{};
    const auto got = read(STDIN_FILENO, bytes.data(), bytes.size());
    if (got <= 0) {
      ended_ = true;
      break;
    }
    typed_.append(bytes.data(), static_cast<std::size_t>(got));
    for (auto end = typed_.find('\n'); end != std::string::npos; end = typed_.find('\n')) {
      const std::string line = typed_.substr(0, end);
      typed_.erase(0, end + 1);
      const auto acted = act(line);
      complain(acted ? "done: " + line : acted.error().sentence());
    }
  }
  return !quit_;
}

}  // namespace walkdown::cli
