// SPDX-License-Identifier: Apache-2.0
// day time-stamp request, add
#include <fmt/format.h>
#include <sodium.h>

#include <bit>

#include "checklist/cli/day_parts.h"
#include "checklist/cli/files.h"
#include "checklist/desk/witness.h"
#include "checklist/record/timestamp.h"

namespace walkdown::cli {
namespace {

struct StampArguments {
  DayPaths day;
  std::string base;
  std::string answer;
  std::string note;
  std::string request;
};

// The highest bit stays free: some authorities take the nonce for a signed number.
std::uint64_t nonce() {
  std::uint64_t number = 0;
  randombytes_buf(&number, sizeof number);
  return (number >> 1U) | (std::uint64_t{1} << 62U);
}

std::string_view text_of(const record::Bytes& bytes) {
  return {reinterpret_cast<const char*>(bytes.data()), bytes.size()};
}

Status request(const StampArguments& arguments) {
  const auto note = desk::head_note(arguments.day.record);
  if (!note) return not_done(note.error());
  const auto asked = record::time_stamp_request(*note, nonce());
  if (!asked) return not_done(asked.error());
  const std::string note_path = arguments.base + ".note", request_path = arguments.base + ".tsq";
  if (const auto kept = write_file(note_path, *note); !kept) return not_done(kept.error());
  if (const auto kept = write_file(request_path, text_of(*asked)); !kept) {
    return not_done(kept.error());
  }
  fmt::print(
      "{}: the head of this moment\n{}: the request; send it to an authority, and keep the answer "
      "as {}.tsr\n",
      note_path, request_path, arguments.base);
  return Status::nothing_to_act_on;
}

// BASE.tsr -> BASE
std::string base_of(const std::string& answer) {
  const std::size_t dot = answer.rfind('.');
  return dot == std::string::npos || answer.find('/', dot) != std::string::npos
             ? answer
             : answer.substr(0, dot);
}

Result<record::Bytes> bytes_of(const std::string& path) {
  const auto text = read_file(path);
  if (!text) return text.error();
  return record::Bytes(text->begin(), text->end());
}

Status add(const StampArguments& arguments) {
  const auto answer = bytes_of(arguments.answer);
  if (!answer) return not_done(answer.error());
  const std::string base = base_of(arguments.answer);
  const auto note = read_file(arguments.note.empty() ? base + ".note" : arguments.note);
  if (!note) return not_done(note.error());
  const auto asked = bytes_of(arguments.request.empty() ? base + ".tsq" : arguments.request);
  if (!asked) return not_done(asked.error());
  return run_act(arguments.day, [&](desk::Desk& desk) {
    return desk::add_time_stamp(desk, *note, *asked, *answer);
  });
}

}  // namespace

void add_day_time_stamp(CLI::App& day, Run& chosen) {
  auto* stamp = day.add_subcommand(
      "time-stamp", "A time-stamp authority says when the record stood so (RFC 3161)");
  stamp->require_subcommand(1);
  stamp->footer(
      "Example: walkdown day time-stamp request --record today.record -o head\n"
      "Nothing is sent from here: take head.tsq to the authority by any way you have. A closed "
      "record takes no more entries; keep the answer over its last head beside it, and check it by "
      "`walkdown verify today.record --time-stamp head.tsr`.");
  auto arguments = std::make_shared<StampArguments>();
  auto* asking =
      add_part(*stamp, "request", "Write a request over the head of this moment",
               "day time-stamp request --record today.record -o head", chosen, arguments, request);
  asking->add_option("--record", arguments->day.record, "The record")->required();
  asking
      ->add_option("-o,--output", arguments->base,
                   "Where to, without an ending: .note and .tsq are added")
      ->required();
  auto* adding =
      add_part(*stamp, "add", "Put the authority's answer into the record",
               "day time-stamp add head.tsr --record today.record", chosen, arguments, add);
  adding->add_option("ANSWER", arguments->answer, "The answer, .tsr")->required();
  adding->add_option("--note", arguments->note, "The head; default: beside the answer, .note");
  adding->add_option("--request", arguments->request,
                     "The request; default: beside the answer, .tsq");
  add_record(*adding, arguments->day);
}

}  // namespace walkdown::cli
