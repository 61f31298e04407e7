# SPDX-License-Identifier: Apache-2.0
# Writes each template as a raw string. A raw string may hold 64 KiB in some compilers, so long
# files are cut into pieces that the compiler joins again.
set(body "// Made by embed.cmake; do not edit.\n#include \"templates/embedded.h\"\n\nnamespace walkdown::templates {\nnamespace {\nstruct File { std::string_view name; std::string_view text; };\nconstexpr File kFiles[] = {\n")
foreach(name IN LISTS FILES)
  file(READ ${ROOT}/${name} hex HEX)
  string(REGEX MATCHALL "................................|.+$" rows "${hex}")
  set(literal "")
  foreach(row IN LISTS rows)
    string(REGEX REPLACE "(..)" "\\\\x\\1" row "${row}")
    string(APPEND literal "    \"${row}\"\n")
  endforeach()
  file(SIZE ${ROOT}/${name} size)
  string(APPEND body "  {\"${name}\", std::string_view(\n${literal}    \"\", ${size})},\n")
endforeach()
string(APPEND body "};\n}  // namespace\n\nstd::optional<std::string_view> text(std::string_view name) {\n  for (const File& file : kFiles) {\n    if (file.name == name) return file.text;\n  }\n  return std::nullopt;\n}\n\n}  // namespace walkdown::templates\n")
file(WRITE ${OUT} "${body}")
