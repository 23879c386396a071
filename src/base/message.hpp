// SPDX-License-Identifier: MIT
#pragma once
#include <string>
#include <variant>
#include <vector>

namespace doorcard {

/// Marks an English text for the catalogues; the catalogues are keyed by it.
constexpr const char* tr(const char* english) { return english; }

/// The two English forms of a text that counts something; the pattern's {0} is the count.
struct Counted {
    const char* one;
    const char* many;
};

/// Marks such a pair for the catalogues.
constexpr Counted trn(const char* one, const char* many) { return {one, many}; }

/// A sentence before it is put into a language: an English pattern of the catalogue with fmt fields ({0}, {1:.1f}) and
/// what goes into them, unrounded. `Words::say` translates the pattern, then any nested message, then fills it in.
struct Message {
    using Part = std::variant<std::string, double, Message>;

    std::string pattern;
    std::vector<Part> parts;

    bool operator==(const Message&) const = default;
    bool empty() const { return pattern.empty(); }
};

/// A text that is nobody's to translate (an id, a person's own words), as a message.
Message verbatim(std::string text);

/// 'A', 'A and B', 'A, B and C'; each may itself be a message.
Message and_list(std::vector<Message::Part> items);

}  // namespace doorcard
