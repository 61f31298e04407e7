// SPDX-License-Identifier: Apache-2.0
#include "checklist/record/line_block.h"

#include <algorithm>
#include <cstring>
#include <span>
#include <utility>

#include "checklist/record/sha256_many.h"

namespace walkdown::record {

namespace {

constexpr std::size_t kPiece =
    std::size_t{1} << 18U;  // read at a time: smaller ones wake more, larger ones leave the cache

// Lines made ready to be hashed together; few, so that they stay in the nearest cache.
class Messages {
 public:
  void add(std::string_view line) {
    const std::size_t size = line.size() + 1, begin = text_.size();
    text_.resize(begin + padded_size(size));  // may move what stands there, so all() adds the base
    text_[begin] = kLeafPrefix;
    std::memcpy(text_.data() + begin + 1, line.data(), line.size());
    pad(text_.data() + begin, size);
    places_.push_back({begin, size});
  }
  [[nodiscard]] bool full() const { return text_.size() >= kEnough; }
  [[nodiscard]] std::span<const Padded> all() {
    messages_.clear();
    for (const Place& place : places_)
      messages_.push_back({text_.data() + place.begin, place.size});
    return messages_;
  }
  void clear() {
    text_.clear();
    places_.clear();
  }

 private:
  static constexpr std::size_t kEnough = std::size_t{1} << 13U;
  struct Place {
    std::size_t begin, size;
  };
  std::string text_;
  std::vector<Place> places_;
  std::vector<Padded> messages_;
};

}  // namespace

void LineBlock::make_room(std::size_t size) {
  if (size <= room_) return;
  const std::size_t room = std::max(size, room_ * 2);
  std::unique_ptr<char[]> larger(new char[room]);  // NOLINT: see text_
  if (size_ > 0) std::memcpy(larger.get(), text_.get(), size_);
  text_ = std::move(larger);
  room_ = room;
}

std::size_t LineBlock::find_lines(std::size_t from) {
  std::size_t begin = 0;
  const std::string_view all(text_.get(), size_);
  while (true) {
    const std::size_t end = all.find('\n', std::max(begin, from));
    if (end == std::string_view::npos) return begin;
    Line& line = lines_.emplace_back();
    line.begin = begin;
    line.size = static_cast<std::uint32_t>(end - begin);
    begin = end + 1;
  }
}

void LineBlock::fill(const RecordFile& file, std::size_t longest, std::string& rest) {
  make_room(rest.size() + kPiece);
  std::memcpy(text_.get(), rest.data(), rest.size());
  size_ = rest.size();
  std::size_t taken = 0;
  while (lines_.empty() && !over_ && !too_long_) {
    make_room(size_ + kPiece);
    const std::size_t before = size_;
    const auto got = file.read(text_.get() + size_, kPiece);
    if (!got) {
      over_ = got.error();
      return;
    }
    size_ += *got;
    taken = find_lines(before);
    too_long_ = size_ - taken > (lines_.empty() ? longest : kLongestLine);
    if (*got == 0) over_ = std::string(text_.get(), size_);
  }
  rest.assign(text_.get() + taken, size_ - taken);
}

void LineBlock::parse(Bodies bodies) {
  for (Line& line : lines_) note(line, parse_line(view(line), bodies));
}

void LineBlock::hash() {
  leaves_.resize(lines_.size() - others_.size());
  Messages some;
  std::size_t hashed = 0;
  const auto hash_them = [&] {
    sha256_many(some.all(), std::span(leaves_).subspan(hashed));
    hashed += some.all().size();
    some.clear();
  };
  for (const Line& line : lines_) {
    if (!line.entry) continue;
    some.add(view(line));
    if (some.full()) hash_them();
  }
  hash_them();
}

void LineBlock::note(Line& line, Result<LineView> parsed) {
  const auto* entry = parsed ? std::get_if<EntryView>(&*parsed) : nullptr;
  line.entry = entry != nullptr;
  if (entry == nullptr) return others_.push_back(std::move(parsed));
  const auto offset = [&](std::string_view part) {
    return static_cast<std::uint32_t>(part.data() - view(line).data());
  };
  line.kind = offset(entry->kind);
  line.kind_size = static_cast<std::uint32_t>(entry->kind.size());
  line.body = offset(entry->body);
  line.body_size = static_cast<std::uint32_t>(entry->body.size());
  line.n = entry->n;
  line.at_ms = entry->at_ms;
  line.up_ms = entry->up_ms;
}

EntryView LineBlock::entry(const Line& line) const {
  const std::string_view all = view(line);
  return {line.n, line.at_ms, line.up_ms, all.substr(line.kind, line.kind_size),
          all.substr(line.body, line.body_size)};
}

void LineBlock::clear() {
  size_ = 0;
  lines_.clear();
  others_.clear();
  leaves_.clear();
  too_long_ = false;
  over_.reset();
}

}  // namespace walkdown::record
