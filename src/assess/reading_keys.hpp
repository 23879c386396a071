// SPDX-License-Identifier: MIT
#pragma once
#include <optional>
#include <span>
#include <string_view>

#include "survey/reading.hpp"

namespace doorcard {

/// A numeric key of `[[reading]]`: its name in the file, its unit ("" for none), and its value in a reading.
struct ReadingKey {
    std::string_view name;
    std::string_view unit;
    std::optional<double> (*value)(const Reading&);
};

std::span<const ReadingKey> reading_number_keys();
const ReadingKey* reading_key(std::string_view name);  ///< null: no such key

}  // namespace doorcard
