// SPDX-License-Identifier: MIT
#pragma once
#include <algorithm>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <string>
#include <vector>

using Texts = std::vector<std::string>;

/// The files of a folder, by name.
inline Texts seeds_in(const std::filesystem::path& folder) {
    std::vector<std::filesystem::path> paths(std::filesystem::directory_iterator(folder), {});
    std::ranges::sort(paths);
    Texts texts;
    for (const auto& path : paths) {
        std::ifstream file(path, std::ios::binary);
        texts.emplace_back(std::istreambuf_iterator<char>(file), std::istreambuf_iterator<char>());
    }
    return texts;
}
