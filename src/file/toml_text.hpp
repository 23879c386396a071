// SPDX-License-Identifier: MIT
#pragma once
#include <memory>
#include <string>
#include <string_view>
#include <vector>

#include "base/outcome.hpp"
#include "survey/common.hpp"

namespace doorcard {

struct TomlMember;

/// A value of a parsed TOML text, with its place; valid while its TomlText lives. Asking for a kind it is not is a
/// mistake of ours (an assert).
class TomlNode {
public:
    enum class Kind { text, whole, number, flag, date, time_of_day, moment, list, table };

    explicit TomlNode(const void* node) : node_(node) {}
    Kind kind() const;
    bool is(Kind wanted) const { return kind() == wanted; }
    Place place() const;  ///< of its first character; of a `[[table]]` entry, of its header
    const std::string& text() const;
    std::int64_t whole() const;
    double number() const;  ///< of a whole or a number
    bool flag() const;
    Moment moment() const;     ///< of a date or a moment
    std::size_t size() const;  ///< of a list
    TomlNode operator[](std::size_t index) const;
    /// The keys of a table, by name ascending, into `members` (which it clears).
    void members_into(std::vector<TomlMember>& members) const;

private:
    const void* node_;
};

struct TomlMember {
    std::string_view key;
    Place place;  ///< of the key
    TomlNode node;
};

/// A text that was parsed as TOML 1.0. Refuses with one Complaint: a syntax error, invalid UTF-8, more than 64 MiB, a
/// key with more than 64 dots, brackets nested more than 64 deep.
class TomlText {
public:
    static Outcome<TomlText> parse(std::string_view bytes);
    TomlText(TomlText&&) noexcept;
    TomlText& operator=(TomlText&&) noexcept;
    ~TomlText();
    TomlNode root() const;

private:
    struct Parsed;
    explicit TomlText(std::unique_ptr<Parsed>);
    std::unique_ptr<Parsed> parsed_;
};

/// 'text', 'a number' ...: what a value is, for a sentence.
std::string_view name_of(TomlNode::Kind);

}  // namespace doorcard
