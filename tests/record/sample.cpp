// SPDX-License-Identifier: Apache-2.0
#include "tests/record/sample.h"

#include <gtest/gtest.h>

#include "checklist/record/checkpoint.h"
#include "checklist/record/cosign.h"

namespace walkdown::record::test {

Person lead_person() { return {lead().verify_key(), "Mara Linde", "lead"}; }
Person witness_person() { return {witness().verify_key(), "Ivo Brandt", "witness"}; }

SignOff field_clear(const Head& head, std::int64_t at_ms) {
  return {"Mara Linde", "lead", "nobody is left in the field", {{"value", "0"}}, at_ms, head};
}

std::string signed_by_lead(const SignOff& sign_off) {
  auto note = make_sign_off(sign_off, lead());
  EXPECT_TRUE(note.ok()) << note.error().sentence();
  return *note;
}

std::string sample_record() {
  const Scratch scratch;
  ManualClock clock;
  const std::string path = scratch.path("sample.walkdown");
  auto writer = Writer::create(path, {"origin/1", {{"plan", "Ω"}}}, station(), clock);
  EXPECT_TRUE(writer->append_and_wait({enrol(lead_person()), enrol(witness_person())}).ok());
  clock.pass(1000);
  const Head cosigned = writer->head();
  EXPECT_TRUE(
      writer->append_and_wait({some_reading(1), some_reading(2), rejected_line("\xff", "no")})
          .ok());
  const std::string checkpoint =
      text(sign_note(text(Checkpoint{cosigned.origin, cosigned.size, cosigned.root}), station()));
  const auto note = cosign(checkpoint, witness(), 1'783'191'740);
  // Its proof: from three entries to six, by the leaves of the file itself.
  std::vector<Hash> leaves;
  for (const auto& commit : commits_of(read_file(path))) {
    for (const std::string& line : commit) leaves.push_back(leaf_hash(line));
  }
  const auto proof = consistency_path(leaves, cosigned.size);
  const std::string said = signed_by_lead(field_clear(writer->head(), clock.at));
  EXPECT_TRUE(writer->append_and_wait(sign_off(said)).ok());
  EXPECT_TRUE(writer->append_and_wait({"cosign", cosign_body(*note, 6, proof)}).ok());
  EXPECT_TRUE(writer->close().ok());
  return read_file(path);
}

std::string resealed(const std::vector<std::vector<std::string>>& commits,
                     const std::string& origin, const SigningKey& station) {
  Tree tree;
  std::string out;
  for (const auto& commit : commits) {
    for (const std::string& line : commit) {
      tree.add(leaf_hash(line));
      out += line + '\n';
    }
    const std::string head = text(Checkpoint{origin, tree.size(), tree.root()});
    out += checkpoint_line(text(sign_note(head, station))) + '\n';
  }
  return out;
}

std::vector<std::string> lines_of(const std::string& text) {
  std::vector<std::string> lines;
  for (std::size_t begin = 0; begin < text.size();) {
    const std::size_t end = text.find('\n', begin);
    lines.push_back(text.substr(begin, end - begin));
    begin = end + 1;
  }
  return lines;
}

std::string text_of(const std::vector<std::string>& lines) {
  std::string text;
  for (const std::string& line : lines) text += line + '\n';
  return text;
}

std::vector<std::vector<std::string>> commits_of(const std::string& text) {
  std::vector<std::vector<std::string>> commits(1);
  for (const std::string& line : lines_of(text)) {
    if (line.starts_with("{\"checkpoint\"")) {
      commits.emplace_back();
    } else {
      commits.back().push_back(line);
    }
  }
  commits.pop_back();
  return commits;
}

}  // namespace walkdown::record::test
