// SPDX-License-Identifier: MIT
#pragma once
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "base/message.hpp"
#include "file/keys.hpp"

namespace doorcard {

/// The keys of a table that are filled in most often, in the order of a form; empty: all of its keys are.
std::span<const std::string_view> usual_keys(std::string_view table);

/// All keys that a form of a table has, in the order of its list, those of tables within dotted ("wire.size"). A length
/// or area is one field: it stands here in feet.
std::vector<std::string> form_keys(std::string_view table);

/// A key that no form has, and where it is edited.
struct KeyElsewhere {
    std::string_view table, key;  ///< table "*": of all
    const char* where;
};
std::span<const KeyElsewhere> keys_elsewhere();
bool is_edited_elsewhere(std::string_view table, std::string_view key);

/// A length or area in feet and in metres: "run_ft" and "run_m". Both empty where the key is none.
struct MeasureKeys {
    std::string feet, metres;
};
MeasureKeys measure_keys(FieldList, std::string_view key);

}  // namespace doorcard
