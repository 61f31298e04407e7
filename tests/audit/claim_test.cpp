// SPDX-License-Identifier: Apache-2.0
#include "checklist/audit/claim.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace walkdown::audit {
namespace {

using testing::HasSubstr;

match::Outcome outcome_of_three() {
  match::Outcome outcome;
  for (std::uint16_t pin = 1; pin <= 3; ++pin) {
    match::PinVerdict verdict;
    verdict.pin = {1, 1, pin};
    verdict.verdict = pin == 3 ? match::Verdict::open : match::Verdict::fits;
    outcome.pins.push_back(verdict);
  }
  match::Finding finding;
  finding.kind = match::Kind::open;
  finding.pins = {{1, 1, 3}};
  finding.confidence = 0.976;
  finding.say = "Look at the joint of M01/R1/P03.";
  outcome.findings.push_back(finding);
  return outcome;
}

TEST(Claim, CountsVerdictsAndWritesFindings) {
  const auto body = claim_body(outcome_of_three());
  EXPECT_EQ(body["verdicts"].dump(), R"({"fits":2,"open":1})");
  EXPECT_EQ(body["kinds"].dump(), R"({"open":1})");
  EXPECT_EQ(body["findings"][0]["pins"].dump(), R"(["M01/R1/P03"])");
  EXPECT_EQ(body["findings"][0]["confidence_pct"], 98);
}

TEST(Claim, HoldsAgainstWhatItWasMadeOf) {
  EXPECT_EQ(check_claim(claim_body(outcome_of_three()), outcome_of_three()), std::nullopt);
}

TEST(Claim, WordsAndConfidenceAreTheWritersOwn) {
  auto later = outcome_of_three();
  later.findings[0].say = "Other words.";
  later.findings[0].confidence = 0.91;
  EXPECT_EQ(check_claim(claim_body(outcome_of_three()), later), std::nullopt);
}

TEST(Claim, EachChangeIsNamed) {
  auto other = outcome_of_three();
  other.pins[2].verdict = match::Verdict::fits;
  EXPECT_THAT(*check_claim(claim_body(outcome_of_three()), other), HasSubstr("verdicts"));
  other = outcome_of_three();
  other.findings[0].kind = match::Kind::poor_joint;
  EXPECT_THAT(*check_claim(claim_body(outcome_of_three()), other), HasSubstr("kinds"));
  other = outcome_of_three();
  other.findings[0].pins = {{1, 1, 2}};
  EXPECT_THAT(*check_claim(claim_body(outcome_of_three()), other), HasSubstr("finding 1"));
  EXPECT_TRUE(check_claim(nlohmann::json::object(), other).has_value());
}

TEST(Claim, OfAHugeFieldStaysWithinALine) {
  match::Outcome outcome;
  outcome.findings.resize(20000, outcome_of_three().findings[0]);
  const auto body = claim_body(outcome);
  EXPECT_EQ(body["kinds"]["open"], 20000);
  EXPECT_EQ(body["findings"].size(), kFindingsWritten);
  EXPECT_LT(body.dump().size(), 1U << 20U);
  EXPECT_EQ(check_claim(body, outcome), std::nullopt);
}

}  // namespace
}  // namespace walkdown::audit
