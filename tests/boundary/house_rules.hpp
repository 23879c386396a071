// SPDX-License-Identifier: MIT
#pragma once
#include <string>
#include <vector>

namespace boundary {

/// A file of the project: path from its top, and its text.
struct SourceFile {
    std::string path;
    std::string text;
};

/// Every breach of the house rules in these files, as `PATH:LINE: what`: an include against the order of the stages,
/// a library where it may not be, a missing licence line, a file over 500 lines, a note of unfinished work, a cycle of
/// includes.
std::vector<std::string> breaches(const std::vector<SourceFile>&);

/// The sources below `top` that the rules are for: src, ui, tests, and the scripts.
std::vector<SourceFile> sources_below(const std::string& top);

}  // namespace boundary
