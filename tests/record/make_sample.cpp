// SPDX-License-Identifier: Apache-2.0
// Writes the sample record to the path given: what the verifier in the other language is tried on.
#include <cstdio>

#include "tests/record/sample.h"

int main(int argc, char** argv) {
  if (argc != 2) return 2;
  walkdown::record::test::write_file(argv[1], walkdown::record::test::sample_record());
  return 0;
}
