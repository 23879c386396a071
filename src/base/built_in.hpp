// SPDX-License-Identifier: MIT
#pragma once
#include <array>
#include <span>
#include <string_view>

namespace doorcard {

/// A file that was built into the library: its name without folder and last extension, and its bytes.
struct BuiltIn {
    std::string_view name;
    std::string_view bytes;
};

std::span<const BuiltIn> built_in_catalogues();   // compiled gettext catalogues, by language
std::span<const BuiltIn> built_in_rule_tables();  // published values, by edition or subject

}  // namespace doorcard
