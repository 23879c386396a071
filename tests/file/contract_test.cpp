// SPDX-License-Identifier: MIT
#include <filesystem>
#include <fstream>
#include <iostream>
#include <iterator>

#include "file/reading.hpp"

using namespace doorcard;

TEST_CASE("contract: every key of its example survey is known, of its type and within its bounds") {
    const std::string path = DOORCARD_SHARED "/contract.md";
    if (!std::filesystem::exists(path)) {
        std::cout << "skipped: ../shared is absent\n";
        return;
    }
    std::ifstream file(path, std::ios::binary);
    std::string text{std::istreambuf_iterator<char>(file), std::istreambuf_iterator<char>()};
    text = text.substr(text.find("```toml\n") + 8);
    const Lines lines = complaints(text.substr(0, text.find("\n```\n")));
    // The example names things that it does not show, and shows every key at once on one breaker and on one waveform.
    for (const std::string& line : lines) {
        CAPTURE(line);
        const bool of_the_example =
            line.find(" is not in the file; ") != std::string::npos ||
            line.ends_with("2 legs for 1 spaces; give a letter for each space, in the order of spaces") ||
            line.ends_with("[[waveform]] has no \"file\"; add file = ... (text)");
        CHECK(of_the_example);
    }
    CHECK(lines.size() == 24);
}
