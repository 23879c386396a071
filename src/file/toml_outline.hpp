// SPDX-License-Identifier: MIT
#pragma once
#include <map>

#include "file/toml_scan.hpp"

namespace doorcard {

/// A header of the text and what stands under it; the first is what stands before any header.
struct Section {
    KeyPath path;          ///< as in `[a.b]`
    bool is_list = false;  ///< `[[a.b]]`
    std::size_t lead = 0;  ///< where the comment begins that stands right above the header; else the header's line
    std::size_t header = 0;
    std::size_t body = 0;  ///< behind the header's line
    std::size_t end = 0;   ///< behind the last line of its last statement
    std::size_t tail = 0;  ///< the same, and behind the comment that stands right below it
};

/// Where the sections of a text stand, in one pass. The text is known to be TOML 1.0 and to end with a newline.
struct TomlOutline {
    explicit TomlOutline(std::string_view text);

    std::vector<Section> sections;
    /// For each table of the file the sections of each of its entries: `[[panel]]` and what stands under
    /// `[panel.feeder]`.
    std::map<std::string, std::vector<std::vector<std::size_t>>, std::less<>> entries;
};

}  // namespace doorcard
