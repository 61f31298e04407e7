// SPDX-License-Identifier: Apache-2.0
// A field of six pins, and entries for it, for the tests of this folder.
#pragma once

#include <deque>
#include <string>

#include "checklist/audit/field.h"

namespace walkdown::audit {

inline show::Show small_show() {
  show::Show show;
  show.put({show::Role::plan, "plan.csv",
            "cue,position,module,rail,pin,igniter,lead_m,wire\n"
            "1,North,1,1,1,standard,2,AWG24\n"
            "2,North,1,1,2,standard,10,AWG24\n"
            "3,North,1,1,3,standard,20,AWG24\n"
            "4,South,1,1,4,standard,30,AWG24\n"
            "5,South,2,1,1,standard,40,AWG24\n"
            "6,South,2,1,2,standard,50,AWG24\n"});
  return show;
}

// What the six pins read when all is as planned: 1.7 ohm and 0.168 ohm a metre.
inline const char* planned_line(int i) {
  static constexpr const char* kLines[] = {"M01,R1,P01,2.09,ohm", "M01,R1,P02,3.43,ohm",
                                           "M01,R1,P03,5.12,ohm", "M01,R1,P04,6.80,ohm",
                                           "M02,R1,P01,8.49,ohm", "M02,R1,P02,10.17,ohm"};
  return kLines[i];
}

class Entries {
 public:
  record::EntryView make(std::string_view kind, const nlohmann::json& body) {
    texts_.push_back(body.dump());
    texts_.emplace_back(kind);
    return {n_++, 0, 0, texts_[texts_.size() - 1], texts_[texts_.size() - 2]};
  }
  record::EntryView reading(const Field& field, std::string_view line) {
    const auto parsed = field.parser().parse(line);
    return make(kReading, reading_body(std::get<tester::Reading>(parsed), line));
  }

 private:
  std::uint64_t n_ = 1;
  std::deque<std::string> texts_;
};

inline Field small_field() { return Field::open({{"show", show::to_json(small_show())}}).value(); }

}  // namespace walkdown::audit
