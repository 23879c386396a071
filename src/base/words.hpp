// SPDX-License-Identifier: MIT
#pragma once
#include <memory>
#include <string>
#include <string_view>
#include <vector>

#include "base/message.hpp"

namespace doorcard {

/// The words of one language, from the catalogue built into the library (docs/po). English is the key and needs no
/// catalogue. A text that the catalogue lacks comes back in English. Cheap to copy; no global locale is touched.
class Words {
public:
    /// "en" or "es"; anything else throws std::invalid_argument.
    static Words in(std::string_view language);
    static std::vector<std::string> languages();
    /// The words of a compiled catalogue (.mo, UTF-8) given as bytes; none at all translates nothing,
    /// other bytes throw std::runtime_error.
    static Words from(std::string_view language, std::string_view catalogue);

    const std::string& language() const { return language_; }
    std::string operator()(const char* english) const;
    std::string operator()(const std::string& english) const { return (*this)(english.c_str()); }
    /// The plural form of the language for this count; the pattern's {0} is the count.
    std::string count(const char* one, const char* many, long number) const;
    std::string count(const Counted& text, long number) const { return count(text.one, text.many, number); }
    /// A whole message: translated, nested messages first, and filled in. Numbers are rounded here, by the pattern.
    std::string say(const Message&) const;

private:
    struct Catalogue;
    std::string language_;
    std::shared_ptr<const Catalogue> catalogue_;
};

}  // namespace doorcard
