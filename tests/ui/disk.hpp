// SPDX-License-Identifier: MIT
#pragma once
#include <filesystem>
#include <fstream>
#include <iterator>
#include <string>

/// A folder of one test's own, empty at first, beside the programs.
inline std::string own_folder(const std::string& name) {
    const auto folder = std::filesystem::path(DOORCARD_BIN).parent_path() / "ui-files" / name;
    std::filesystem::remove_all(folder);
    std::filesystem::create_directories(folder);
    return folder.string();
}

inline void put(const std::string& path, const std::string& bytes) { std::ofstream(path, std::ios::binary) << bytes; }

/// The bytes of a file; empty where there is none.
inline std::string bytes_of(const std::string& path) {
    std::ifstream file(path, std::ios::binary);
    return {std::istreambuf_iterator<char>(file), {}};
}

/// A survey of one breaker, which feeds a workbench.
inline const std::string cellar = R"(format = 1
[survey]
title = "Nine steps down"
[[panel]]
id = "MAIN"
spaces = 8
[[breaker]]
panel = "MAIN"
spaces = [1]
amps = 20
[[circuit]]
id = "bench"
breaker = "MAIN:1"
purpose = "Workbench"
)";
