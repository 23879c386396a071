// SPDX-License-Identifier: MIT
#pragma once
#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

namespace doorcard {

/// Bytes [begin, end) of a text.
struct Span {
    std::size_t begin = 0;
    std::size_t end = 0;
    bool operator==(const Span&) const = default;
    std::string_view of(std::string_view text) const { return text.substr(begin, end - begin); }
};

using KeyPath = std::vector<std::string>;

/// `a.b = value`: where it stands in the text. `whole` is its lines with their last newline, or, inside braces, from
/// its key to the end of its value.
struct Statement {
    KeyPath path;
    Span key;
    Span value;
    Span whole;
    bool is_line = true;
};

/// Steps over the parts of a text that is known to be TOML 1.0, byte by byte, so that what is found can be cut out and
/// put in. It refuses nothing: on other texts it stops somewhere inside them.
class TomlScan {
public:
    explicit TomlScan(std::string_view text) : text_(text) {}

    std::size_t line_begin(std::size_t at) const;
    std::size_t behind_line(std::size_t at) const;    ///< behind the next newline, or the end of the text
    std::size_t behind_blanks(std::size_t at) const;  ///< spaces and tabs
    std::size_t behind_gaps(std::size_t at) const;    ///< spaces, newlines and comments
    std::size_t behind_string(std::size_t at) const;
    std::size_t behind_value(std::size_t at) const;
    /// A key from its first character on; `path` gets its parts as they read.
    std::size_t behind_key(std::size_t at, KeyPath& path) const;
    bool is_comment_line(std::size_t line) const { return at(behind_blanks(line)) == '#'; }
    bool is_blank_line(std::size_t line) const;

    /// `key = value` that begins at `at`.
    Statement statement_at(std::size_t at, bool is_line) const;
    /// All statements of the lines between.
    std::vector<Statement> statements_in(Span lines) const;
    /// Of a table in braces.
    std::vector<Statement> statements_in_braces(Span value) const;
    /// Elements of a list.
    std::vector<Span> items_of(Span list) const;

private:
    char at(std::size_t i) const { return i < text_.size() ? text_[i] : '\0'; }
    std::size_t behind_bracket(std::size_t at, char closing) const;

    std::string_view text_;
};

/// The text inside a TOML string's quotes, escapes resolved (of the four kinds only those of one line).
std::string unquoted(std::string_view quoted);

}  // namespace doorcard
