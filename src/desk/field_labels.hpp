// SPDX-License-Identifier: MIT
#pragma once
#include <span>
#include <string_view>

#include "base/message.hpp"

namespace doorcard {

/// What a key of the survey file is called on a form; table "*": of every table that has it.
struct FieldLabel {
    std::string_view table, key;
    const char* label;
};
std::span<const FieldLabel> field_labels();
/// What a key means, where its label does not say so.
std::span<const FieldLabel> field_hints();

/// How a word of a closed set is read.
struct WordLabel {
    std::string_view word;
    const char* label;
};
std::span<const WordLabel> word_labels();

}  // namespace doorcard
