// SPDX-License-Identifier: MIT
#include "file/toml_scan.hpp"

#include <algorithm>
#include <charconv>

namespace doorcard {
namespace {

constexpr auto nowhere = std::string_view::npos;

void append_utf8(std::string& text, std::uint32_t code) {
    const auto tail = [&](unsigned shift) { text += static_cast<char>(0x80U | ((code >> shift) & 0x3FU)); };
    if (code < 0x80) {
        text += static_cast<char>(code);
    } else if (code < 0x800) {
        text += static_cast<char>(0xC0U | (code >> 6));
        tail(0);
    } else if (code < 0x10000) {
        text += static_cast<char>(0xE0U | (code >> 12));
        tail(6), tail(0);
    } else {
        text += static_cast<char>(0xF0U | (code >> 18));
        tail(12), tail(6), tail(0);
    }
}

/// One escape behind its backslash, which is taken off `rest`.
void append_escape(std::string& text, std::string_view& rest) {
    constexpr std::string_view letters = "btnfr", meant = "\b\t\n\f\r";
    const char letter = rest.front();
    rest.remove_prefix(1);
    if (letter == 'u' || letter == 'U') {
        const std::string_view digits = rest.substr(0, letter == 'u' ? 4 : 8);
        std::uint32_t code = 0;
        std::from_chars(digits.data(), digits.data() + digits.size(), code, 16);
        append_utf8(text, code);
        rest.remove_prefix(digits.size());
    } else {
        const std::size_t known = letters.find(letter);
        text += known == nowhere ? letter : meant[known];
    }
}

}  // namespace

std::string unquoted(std::string_view quoted) {
    std::string_view rest = quoted.substr(1, quoted.size() - 2);
    if (quoted.front() == '\'') return std::string(rest);
    std::string text;
    while (!rest.empty()) {
        const char c = rest.front();
        rest.remove_prefix(1);
        if (c == '\\' && !rest.empty())
            append_escape(text, rest);
        else
            text += c;
    }
    return text;
}

std::size_t TomlScan::line_begin(std::size_t at) const {
    const std::size_t newline = at == 0 ? nowhere : text_.rfind('\n', at - 1);
    return newline == nowhere ? 0 : newline + 1;
}

std::size_t TomlScan::behind_line(std::size_t at) const {
    const std::size_t newline = text_.find('\n', at);
    return newline == nowhere ? text_.size() : newline + 1;
}

std::size_t TomlScan::behind_blanks(std::size_t at) const {
    while (this->at(at) == ' ' || this->at(at) == '\t') ++at;
    return at;
}

std::size_t TomlScan::behind_gaps(std::size_t at) const {
    for (;; ++at) {
        const char c = this->at(at);
        if (c == '#')
            at = behind_line(at) - 1;
        else if (c != ' ' && c != '\t' && c != '\n' && c != '\r')
            return at;
        if (at >= text_.size()) return text_.size();
    }
}

bool TomlScan::is_blank_line(std::size_t line) const {
    const char c = at(behind_blanks(line));
    return c == '\n' || c == '\r';
}

std::size_t TomlScan::behind_string(std::size_t at) const {
    const char quote = text_[at];
    const bool is_long = this->at(at + 1) == quote && this->at(at + 2) == quote;
    for (std::size_t i = at + (is_long ? 3 : 1); i < text_.size(); ++i) {
        if (text_[i] == '\\' && quote == '"') {
            ++i;
        } else if (text_[i] == quote) {
            if (!is_long) return i + 1;
            std::size_t run = 1;
            while (this->at(i + run) == quote) ++run;
            if (run >= 3) return i + run;  // up to two quotes may stand before the closing three
            i += run - 1;
        }
    }
    return text_.size();
}

std::size_t TomlScan::behind_bracket(std::size_t at, char closing) const {
    ++at;
    for (;;) {
        at = behind_gaps(at);
        if (at >= text_.size()) return text_.size();
        if (text_[at] == closing) return at + 1;
        if (text_[at] == ',' || text_[at] == '=' || text_[at] == '.')
            ++at;
        else
            at = std::max(behind_value(at), at + 1);
    }
}

std::size_t TomlScan::behind_value(std::size_t at) const {
    const char c = this->at(at);
    if (c == '"' || c == '\'') return behind_string(at);
    if (c == '[') return behind_bracket(at, ']');
    if (c == '{') return behind_bracket(at, '}');
    std::size_t end = text_.find_first_of(",]}#\r\n=", at);
    if (end == nowhere) end = text_.size();
    while (end > at && (text_[end - 1] == ' ' || text_[end - 1] == '\t')) --end;
    return end;
}

std::size_t TomlScan::behind_key(std::size_t at, KeyPath& path) const {
    for (;;) {
        at = behind_blanks(at);
        std::size_t end = at;
        if (this->at(at) == '"' || this->at(at) == '\'') {
            end = behind_string(at);
            path.push_back(unquoted(text_.substr(at, end - at)));
        } else {
            end = std::min(text_.find_first_of(" \t.=]\r\n", at), text_.size());
            path.emplace_back(text_.substr(at, end - at));
        }
        const std::size_t next = behind_blanks(end);
        if (this->at(next) != '.') return end;
        at = next + 1;
    }
}

Statement TomlScan::statement_at(std::size_t at, bool is_line) const {
    Statement statement;
    statement.is_line = is_line;
    statement.key = {at, behind_key(at, statement.path)};
    const std::size_t value = behind_blanks(std::min(behind_blanks(statement.key.end) + 1, text_.size()));
    statement.value = {value, behind_value(value)};
    statement.whole = is_line ? Span{line_begin(at), behind_line(statement.value.end)} : Span{at, statement.value.end};
    return statement;
}

std::vector<Statement> TomlScan::statements_in(Span lines) const {
    std::vector<Statement> statements;
    for (std::size_t at = behind_gaps(lines.begin); at < lines.end; at = behind_gaps(at)) {
        statements.push_back(statement_at(at, true));
        statements.back().whole.begin =
            std::max(statements.back().whole.begin, lines.begin);  // behind a byte-order mark
        at = statements.back().whole.end;
    }
    return statements;
}

std::vector<Statement> TomlScan::statements_in_braces(Span value) const {
    std::vector<Statement> statements;
    std::size_t at = behind_gaps(value.begin + 1);
    while (at + 1 < value.end) {
        statements.push_back(statement_at(at, false));
        at = behind_gaps(statements.back().value.end);
        if (this->at(at) == ',') at = behind_gaps(at + 1);
    }
    return statements;
}

std::vector<Span> TomlScan::items_of(Span list) const {
    std::vector<Span> items;
    std::size_t at = behind_gaps(list.begin + 1);
    while (at + 1 < list.end) {
        items.push_back({at, behind_value(at)});
        at = behind_gaps(items.back().end);
        if (this->at(at) == ',') at = behind_gaps(at + 1);
    }
    return items;
}

}  // namespace doorcard
