// SPDX-License-Identifier: MIT
#include "file/rewrite_survey.hpp"

#include "file/read_survey.hpp"
#include "file/rewrite_table.hpp"
#include "file/splice_list.hpp"

namespace doorcard {
namespace {

bool is_different(const KeyTable& table, const Difference& difference) {
    if (table.name == "survey") return difference.heading;
    if (table.name == "grounding") return difference.grounding;
    return table.name == "mapping" && difference.mapping;
}

/// Of a text that ends with a newline.
std::string spliced_lines(std::string_view text, const Survey& before, const Survey& after,
                          const Difference& difference) {
    Splices splices(text);
    const TomlOutline outline(text);
    TableRewriter rewriter(splices, outline, before, after);
    for (const KeyTable& table : all_tables())
        if (const TableDifference* rows = difference.of(table.name))
            rewriter.rewrite_many(table, *rows);
        else if (is_different(table, difference))
            rewriter.rewrite_one(table);
    return splices.applied();
}

}  // namespace

std::string spliced(std::string_view text, const Survey& before, const Survey& after) {
    const Difference changes = difference(before, after);
    if (changes.empty()) return std::string(text);
    if (text.ends_with('\n')) return spliced_lines(text, before, after, changes);
    const std::string_view newline = newline_of(text);
    std::string result = spliced_lines(std::string(text).append(newline), before, after, changes);
    for (const char end : {'\n', '\r'})
        if (result.ends_with(end)) result.pop_back();
    return result;
}

std::string rewrite(std::string_view text, const Survey& before, const Survey& after) {
    std::string result = spliced(text, before, after);
    if (result == text && before == after) return result;
    const auto read = read_survey({"", result});
    if (!read || !(read->survey == after))
        throw NotWhatWasMeant("the edited text does not read as it was meant; it is not saved");
    return result;
}

}  // namespace doorcard
