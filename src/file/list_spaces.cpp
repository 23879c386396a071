// SPDX-License-Identifier: MIT
#include "file/list_spaces.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <charconv>
#include <regex>

#include "base/folded.hpp"
#include "file/list_table.hpp"

namespace doorcard {
namespace {

using Spaces = std::vector<ListSpace>;
constexpr int most_spaces = 999;  // as of `spaces` in the survey file

/// Dashes of all kinds as '-', blanks away, small letters, no '#' or 'no.' before it, no apostrophe of a spreadsheet.
std::string bare(std::string_view cell) {
    std::string text = folded(trimmed(cell));
    for (const std::string_view dash : {"\u2010", "\u2011", "\u2012", "\u2013", "\u2014", "\u2212"})
        for (std::size_t at = text.find(dash); at != std::string::npos; at = text.find(dash, at))
            text.replace(at, dash.size(), "-");
    static const std::regex before(
        "^'?(#|no\\.? ?|nr\\.? ?|n\\.? ?|ckt\\.? ?#?|cct\\.? ?#?|circuit ?#?|circuito ?#?|espacio ?#?|space ?#?)");
    static const std::regex numbers("^(.*[0-9][ab]?) ?(and|y|&) ?([0-9]+[ab]?)$");
    text = std::regex_replace(text, before, "");
    text = std::regex_replace(text, numbers, "$1+$3");
    std::erase(text, ' ');
    while (text.ends_with('.') || text.ends_with(')') || text.ends_with(':')) text.pop_back();
    if (text.starts_with('\'')) text.erase(0, 1);
    if (text.ends_with(".0")) text.resize(text.size() - 2);  // a spreadsheet's number
    return text;
}

tl::unexpected<CellFault> fault(std::string wrong, std::string right) {
    return tl::unexpected(CellFault{std::move(wrong), std::move(right)});
}

bool is_date(const std::string& text) {
    static const std::regex with_month(
        "([0-9]{1,4}[-./ "
        "])?(jan|feb|mar|apr|may|jun|jul|aug|sep|sept|oct|nov|dec|ene|abr|ago|dic)[a-z]*[-./]?([0-9]{1,4}"
        "([-./][0-9]{2,4})?)?");
    static const std::regex with_year(
        "[0-9]{1,2}[-./][0-9]{1,2}[-./][0-9]{4}|[0-9]{4}[-./][0-9]{1,2}[-./][0-9]{1,2}.*");
    return std::regex_match(text, with_month) || std::regex_match(text, with_year);
}

tl::expected<ListSpace, CellFault> one_space(const std::string& part) {
    static const std::regex form("([0-9]{1,6})([ab]?)");
    std::smatch found;
    if (!std::regex_match(part, found, form))
        return fault(fmt::format("\"{}\" is no space", part), "write 5, 13a or 2,4");
    const int number = std::stoi(found[1]);
    if (number < 1 || number > most_spaces)
        return fault(fmt::format("there is no space {}", number),
                     fmt::format("write a number from 1 to {}", most_spaces));
    return ListSpace{number, found[2].length() ? found[2].str()[0] : ' '};
}

tl::expected<Spaces, CellFault> each_space(const std::string& text, std::string_view separators) {
    Spaces spaces;
    std::size_t begin = 0;
    while (begin <= text.size()) {
        const std::size_t end = std::min(text.find_first_of(separators, begin), text.size());
        const auto space = one_space(text.substr(begin, end - begin));
        if (!space) return tl::unexpected(space.error());
        spaces.push_back(*space);
        begin = end + 1;
    }
    std::ranges::sort(spaces);
    return spaces;
}

/// `1-5`: the spaces of one side between them; `1-3-5`, `13b-15a`: those named.
Spaces filled(const Spaces& ends) {
    constexpr int step = 2;  // of one side
    const bool range =
        ends.size() == 2 && ends[0].half == ' ' && ends[1].half == ' ' && (ends[1].number - ends[0].number) % step == 0;
    if (!range) return ends;
    Spaces spaces;
    for (int number = ends[0].number; number <= ends[1].number; number += step) spaces.push_back({number, ' '});
    return spaces;
}

/// What most cells are, and quick: 1 to 999.
std::optional<int> plain_number(std::string_view cell) {
    int number = 0;
    const auto [end, error] = std::from_chars(cell.data(), cell.data() + cell.size(), number);
    if (error != std::errc() || end != cell.data() + cell.size() || number < 1 || number > most_spaces)
        return std::nullopt;
    return number;
}

std::string cut(std::string_view cell) {
    constexpr std::size_t most_shown = 40;
    if (cell.size() <= most_shown) return std::string(cell);
    std::size_t end = most_shown;
    while (end > 0 && (static_cast<unsigned char>(cell[end]) & 0xC0U) == 0x80U) --end;
    return std::string(cell.substr(0, end)) + "...";
}

}  // namespace

std::string name_of(ListSpace space) {
    return space.half == ' ' ? std::to_string(space.number) : std::to_string(space.number) + space.half;
}

tl::expected<Spaces, CellFault> spaces_in(std::string_view cell) {
    constexpr std::size_t longest = 200;
    const std::string_view shown = trimmed(cell);
    if (const auto number = plain_number(shown)) return Spaces{{*number, ' '}};
    const std::string text = shown.size() > longest ? "?" : bare(shown);
    if (text.empty()) return Spaces();
    if (is_date(text))
        return fault(fmt::format("\"{}\" is a date, made by a spreadsheet of two numbers such as 2-4", cut(shown)),
                     "write the spaces as 2,4");
    static const std::regex form("[0-9]{1,6}[ab]?([-,/+&][0-9]{1,6}[ab]?)*");
    if (!std::regex_match(text, form))
        return fault(fmt::format("\"{}\" is no space", cut(shown)), "write 5, 13a or 2,4");
    const auto spaces = each_space(text, "-,/+&");
    if (!spaces) return spaces;
    if (std::ranges::adjacent_find(*spaces) != spaces->end())
        return fault(fmt::format("\"{}\" names a space twice", cut(shown)), "name every space once");
    return text.find('-') == std::string::npos ? *spaces : filled(*spaces);
}

bool are_spaces(std::string_view cell) {
    const auto spaces = spaces_in(cell);
    return spaces && !spaces->empty();
}

bool lie_together(const Spaces& spaces) {
    constexpr int next = 2;  // of the same side
    return std::ranges::adjacent_find(spaces, [](const ListSpace& a, const ListSpace& b) {
               return b.number - a.number != next;
           }) == spaces.end();
}

}  // namespace doorcard
