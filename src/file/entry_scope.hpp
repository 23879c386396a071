// SPDX-License-Identifier: MIT
#pragma once
#include <optional>

#include "file/splices.hpp"
#include "file/toml_outline.hpp"

namespace doorcard {

/// A table of the text, wherever its keys stand: under a header, as dotted keys, in braces, under headers of tables
/// within it. Paths are those within the table.
struct EntryScope {
    struct Inner {
        KeyPath path;
        std::size_t section;
    };
    enum class Home { lines, braces, none };

    std::vector<Statement> statements;
    std::vector<Inner> inner;  ///< tables within it that have headers of their own
    Home home = Home::none;    ///< where a new key goes
    std::size_t at = 0;        ///< of lines: before this place
    std::string before_key;    ///< of lines: `wire.` of dotted keys
    std::string header;        ///< of lines: a header that has to be written first
    Span braces;
};

/// Under headers: the sections of one entry of a table, the first of them its own if it has one.
EntryScope scope_of_sections(std::string_view text, const TomlOutline&, const std::vector<std::size_t>& sections);
EntryScope scope_of_braces(std::string_view text, Span braces);
/// The table that a key of a scope is; nullopt where the scope has no such key, or one that is no table.
std::optional<EntryScope> scope_within(std::string_view text, const TomlOutline&, const EntryScope&,
                                       std::string_view key);
/// The statement that gives a key its value in one piece; null where there is none.
const Statement* whole_statement(const EntryScope&, std::string_view key);
bool has_key(const EntryScope&, std::string_view key);

/// A key's line in the manner of its neighbours: their indentation, their `=` in one column.
class LineStyle {
public:
    LineStyle(std::string_view text, const std::vector<Statement>& neighbours);
    std::string line(const std::string& key, const std::string& value) const;

private:
    std::string newline_, indent_, sign_ = " = ";
    std::size_t width_ = 0;  // of keys
};

}  // namespace doorcard
