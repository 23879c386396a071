// SPDX-License-Identifier: MIT
#include "file/entry_scope.hpp"

#include <algorithm>

#include "file/splice_list.hpp"
#include "file/write_value.hpp"

namespace doorcard {
namespace {

KeyPath without_first(const KeyPath& path) { return {path.begin() + 1, path.end()}; }

/// The statements of a scope that a section holds, by paths within the scope.
void add_section(std::string_view text, const Section& section, EntryScope& scope) {
    scope.statements = TomlScan(text).statements_in({section.body, section.end});
    scope.home = EntryScope::Home::lines;
    scope.at = section.end;
}

/// New keys go behind the last of its dotted lines.
void settle_dotted(EntryScope& scope, const std::string& before_key) {
    if (scope.home != EntryScope::Home::none || scope.statements.empty()) return;
    if (!std::ranges::all_of(scope.statements, &Statement::is_line)) return;
    scope.home = EntryScope::Home::lines;
    scope.at = scope.statements.back().whole.end;
    scope.before_key = before_key;
}

}  // namespace

EntryScope scope_of_sections(std::string_view text, const TomlOutline& outline,
                             const std::vector<std::size_t>& sections) {
    EntryScope scope;
    for (const std::size_t index : sections) {
        const Section& section = outline.sections[index];
        if (section.path.size() == 1)
            add_section(text, section, scope);
        else
            scope.inner.push_back({without_first(section.path), index});
    }
    return scope;
}

EntryScope scope_of_braces(std::string_view text, Span braces) {
    EntryScope scope;
    scope.statements = TomlScan(text).statements_in_braces(braces);
    scope.home = EntryScope::Home::braces;
    scope.braces = braces;
    return scope;
}

std::optional<EntryScope> scope_within(std::string_view text, const TomlOutline& outline, const EntryScope& outer,
                                       std::string_view key) {
    EntryScope scope;
    for (const Statement& statement : outer.statements) {
        if (statement.path.front() != key) continue;
        if (statement.path.size() == 1) {
            if (text[statement.value.begin] != '{') return std::nullopt;
            return scope_of_braces(text, statement.value);
        }
        scope.statements.push_back(statement);
        scope.statements.back().path = without_first(statement.path);
    }
    settle_dotted(scope, outer.before_key + written_key(key) + ".");
    for (const EntryScope::Inner& inner : outer.inner) {
        if (inner.path.front() != key) continue;
        if (outline.sections[inner.section].is_list) return std::nullopt;
        if (inner.path.size() == 1)
            add_section(text, outline.sections[inner.section], scope);
        else
            scope.inner.push_back({without_first(inner.path), inner.section});
    }
    return scope.statements.empty() && scope.inner.empty() && scope.home == EntryScope::Home::none
               ? std::nullopt
               : std::optional(std::move(scope));
}

const Statement* whole_statement(const EntryScope& scope, std::string_view key) {
    const auto found = std::ranges::find_if(scope.statements, [&](const Statement& statement) {
        return statement.path.size() == 1 && statement.path.front() == key;
    });
    return found == scope.statements.end() ? nullptr : &*found;
}

bool has_key(const EntryScope& scope, std::string_view key) {
    const auto begins_with_it = [&](const auto& part) { return part.path.front() == key; };
    return std::ranges::any_of(scope.statements, begins_with_it) || std::ranges::any_of(scope.inner, begins_with_it);
}

LineStyle::LineStyle(std::string_view text, const std::vector<Statement>& neighbours) : newline_(newline_of(text)) {
    std::vector<std::size_t> columns, widths;
    for (const Statement& statement : neighbours) {
        if (!statement.is_line) continue;
        indent_ = text.substr(statement.whole.begin, statement.key.begin - statement.whole.begin);
        const std::size_t sign = TomlScan(text).behind_blanks(statement.key.end);
        sign_ = text[sign + 1] == ' ' || sign > statement.key.end ? " = " : "=";
        columns.push_back(sign - statement.key.begin);
        widths.push_back(statement.key.end - statement.key.begin);
    }
    const auto alike = [](const std::vector<std::size_t>& all) {
        return std::ranges::all_of(all, [&](std::size_t each) { return each == all.front(); });
    };
    if (columns.size() > 1 && alike(columns) && !alike(widths) && columns.front() > 0) width_ = columns.front() - 1;
}

std::string LineStyle::line(const std::string& key, const std::string& value) const {
    std::string line = indent_ + key;
    if (key.size() < width_) line.append(width_ - key.size(), ' ');
    return line + sign_ + value + newline_;
}

}  // namespace doorcard
