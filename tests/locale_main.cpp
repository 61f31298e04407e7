// SPDX-License-Identifier: Apache-2.0
// The main of every test program. With WALKDOWN_TEST_LOCALE set, everything runs under that
// locale, as it would in a window of a desktop that is set to it; a locale that is not installed
// fails at once, because a pass under the fallback would prove nothing.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <clocale>
#include <cstdio>
#include <cstdlib>
#include <locale>
#include <stdexcept>
#include <string>

namespace {

bool take_locale(const char* name) {
  if (std::setlocale(LC_ALL, name) == nullptr) return false;
  try {
    std::locale::global(std::locale(name));
  } catch (const std::runtime_error&) {
    return false;
  }
  return std::string(std::localeconv()->decimal_point) == ",";
}

}  // namespace

int main(int argc, char** argv) {
  testing::InitGoogleMock(&argc, argv);
  const char* name = std::getenv("WALKDOWN_TEST_LOCALE");
  if (name != nullptr && !take_locale(name)) {
    std::fprintf(stderr, "the locale %s is not installed, or has no decimal comma\n", name);
    return 2;
  }
  return RUN_ALL_TESTS();
}
