// SPDX-License-Identifier: Apache-2.0
#include "reader/plan/csv_rows.h"

#include <csv.h>

#include <algorithm>
#include <array>
#include <memory>

namespace walkdown::plan {
namespace {

// libcsv calls back for each field and each line end. CRLF gives two line ends of which the second
// is none.
struct Collector {
  const std::function<void(CsvRow&)>* sink = nullptr;
  CsvRow row{.number = 1, .fields = {}};
  std::size_t used = 0;  // fields of this row; the strings behind them are kept for their memory
  int last_end = 0;

  void field(std::string_view text) {
    if (used == row.fields.size()) row.fields.emplace_back();
    row.fields[used++].assign(text);
    last_end = 0;
  }

  void end(int byte) {
    if (used == 0 && byte == CSV_LF && last_end == CSV_CR) {
      last_end = 0;
      return;
    }
    row.fields.resize(used);
    if (!row.blank()) (*sink)(row);
    used = 0;
    ++row.number;
    last_end = byte;
  }
};

void on_field(void* text, std::size_t size, void* collector) {
  static_cast<Collector*>(collector)->field({static_cast<const char*>(text), size});
}

void on_end(int byte, void* collector) { static_cast<Collector*>(collector)->end(byte); }

struct Free {
  void operator()(csv_parser* parser) const { csv_free(parser); }
};

}  // namespace

bool CsvRow::blank() const {
  return std::all_of(fields.begin(), fields.end(), [](const auto& field) { return field.empty(); });
}

char separator_of(std::string_view bytes) {
  constexpr std::array<char, 3> kSeparators = {',', ';', '\t'};
  std::array<std::size_t, 3> counts{};
  bool quoted = false;
  bool seen = false;  // anything but empty lines
  for (const char c : bytes) {
    if (c == '"') quoted = !quoted;
    if (!quoted && (c == '\n' || c == '\r')) {
      if (seen) break;
      continue;
    }
    seen = true;
    const auto* const found = std::find(kSeparators.begin(), kSeparators.end(), c);
    if (!quoted && found != kSeparators.end()) {
      ++counts.at(static_cast<std::size_t>(found - kSeparators.begin()));
    }
  }
  const auto* const most = std::max_element(counts.begin(), counts.end());
  return kSeparators.at(static_cast<std::size_t>(most - counts.begin()));
}

std::optional<CsvFault> for_each_row(std::string_view bytes, char separator,
                                     const std::function<void(CsvRow&)>& sink) {
  Collector collector{.sink = &sink};
  csv_parser parser{};
  constexpr unsigned char kOptions = CSV_STRICT | CSV_STRICT_FINI | CSV_REPALL_NL;
  if (csv_init(&parser, kOptions) != 0) return CsvFault{0, "the CSV library does not start"};
  const std::unique_ptr<csv_parser, Free> owner(&parser);
  csv_set_delim(&parser, static_cast<unsigned char>(separator));
  const std::size_t taken =
      csv_parse(&parser, bytes.data(), bytes.size(), on_field, on_end, &collector);
  if (taken != bytes.size()) {
    return CsvFault{collector.row.number,
                    "a quote stands inside a field; put the whole field in quotes and double it"};
  }
  if (csv_fini(&parser, on_field, on_end, &collector) != 0) {
    return CsvFault{collector.row.number, "a quoted field is not closed; add the missing quote"};
  }
  return std::nullopt;
}

}  // namespace walkdown::plan
