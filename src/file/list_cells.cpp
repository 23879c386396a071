// SPDX-License-Identifier: MIT
#include "file/list_cells.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cctype>
#include <charconv>
#include <regex>
#include <set>

#include "base/folded.hpp"
#include "file/list_table.hpp"

namespace doorcard {
namespace {

constexpr std::size_t longest_cell = 200;  // of a cell that is more than text

/// Folded and trimmed, '?' where it is too long to be a figure or a word.
std::string bare(std::string_view cell) {
    const std::string_view text = trimmed(cell);
    return text.size() > longest_cell ? "?" : folded(text);
}

/// Letters and figures with single blanks between.
std::string words_only(std::string_view cell) {
    std::string words;
    for (const char c : bare(cell)) {
        const auto byte = static_cast<unsigned char>(c);
        if (byte >= 0x80 || std::isalnum(byte) != 0)
            words += c;
        else if (!words.empty() && words.back() != ' ')
            words += ' ';
    }
    return std::string(trimmed(words));
}

std::optional<double> number_of(std::string text) {
    double number = 0;
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), number);
    if (error != std::errc() || end != text.data() + text.size()) return std::nullopt;
    return number;
}

/// '20,0' as people write it where a comma parts the decimals.
double decimal(std::string text) {
    std::ranges::replace(text, ',', '.');
    return number_of(text).value_or(0);
}

std::string shown(std::string_view cell) {
    const std::string_view text = trimmed(cell);
    return text.size() > longest_cell ? "a text" : fmt::format("\"{}\"", text);
}

tl::unexpected<CellFault> no_amperes(std::string_view cell) {
    return tl::unexpected(CellFault{shown(cell) + " is no rating", "write 20, 20A, 20/1 or 30/2P"});
}

tl::expected<AmpsCell, CellFault> rated(double amps, const std::string& poles, std::string_view cell) {
    constexpr double most_amps = 99999;
    if (amps < 1 || amps > most_amps) return no_amperes(cell);
    AmpsCell read{amps, std::nullopt};
    if (!poles.empty()) read.poles = poles[0] - '0';
    return read;
}

}  // namespace

tl::expected<AmpsCell, CellFault> amps_in(std::string_view cell) {
    static const std::regex first(
        "([0-9]{1,5}(?:[.,][0-9]{1,2})?) ?(?:amp(?:ere)?s?\\.?|a)?(?: ?[-/, ] ?([1-3]) ?-?(?:p|poles?|polos?)?\\.?)?");
    static const std::regex last("([1-3]) ?-?(?:p|poles?|polos?)\\.? ?[-/, ]? ?([0-9]{1,5}) ?(?:amp(?:ere)?s?\\.?|a)?");
    static const std::regex joined("([0-9]{1,5}) ?a ?([1-3]) ?p");
    static const std::regex two("[0-9]{1,4} ?a? ?/ ?[0-9]{1,4} ?a?");
    const std::string text = bare(guards_in(cell).rest);
    if (is_nothing(text)) return AmpsCell();
    std::smatch found;
    if (std::regex_match(text, found, joined)) return rated(decimal(found[1]), found[2], cell);
    if (std::regex_match(text, found, last)) return rated(decimal(found[2]), found[1], cell);
    if (std::regex_match(text, found, first)) return rated(decimal(found[1]), found[2], cell);
    if (std::regex_match(text, two))
        return tl::unexpected(CellFault{shown(cell) + " is two ratings",
                                        "write a line for each breaker, of a tandem for 5a and 5b; or poles: 20/1"});
    return no_amperes(cell);
}

tl::expected<std::optional<int>, CellFault> poles_in(std::string_view cell) {
    static const std::regex form("([1-3])(?:\\.0)? ?-?(?:p|poles?|polos?)?");
    const std::string text = bare(cell);
    if (is_nothing(text)) return std::nullopt;
    std::smatch found;
    if (std::regex_match(text, found, form)) return found[1].str()[0] - '0';
    return tl::unexpected(CellFault{shown(cell) + " is no number of poles", "write 1, 2 or 3"});
}

std::optional<double> figure_in(std::string_view cell) {
    static const std::regex thousands("[0-9]{1,3}(?:,[0-9]{3})+(?:\\.[0-9]+)?");
    static const std::regex plain("[0-9]{1,12}(?:[.,][0-9]{1,6})?");
    std::string text = bare(cell);
    if (std::regex_match(text, thousands)) {
        std::erase(text, ',');
        return number_of(text);
    }
    return std::regex_match(text, plain) ? std::optional(decimal(text)) : std::nullopt;
}

tl::expected<double, CellFault> load_in(std::string_view cell, double scale) {
    constexpr double kilo = 1000;
    static const std::regex three_decimals("[0-9]{1,3}\\.[0-9]{3}");
    const std::string text = bare(cell);
    const std::size_t unit_at = text.find_last_of("0123456789") + 1;
    const std::string unit(trimmed(std::string_view(text).substr(unit_at)));
    const std::string figure(trimmed(std::string_view(text).substr(0, unit_at)));
    if (unit == "kva" || unit == "kw")
        scale = kilo;
    else if (unit == "va" || unit == "w" || unit == "watt" || unit == "watts")
        scale = 1;
    if (scale == 1 && std::regex_match(figure, three_decimals))
        return tl::unexpected(
            CellFault{shown(cell) + " may be a thousand times more", "write 1200, 1.2 kVA or 1.2 kW"});
    const bool is_unit =
        unit.empty() || std::string_view(" va w watt watts kva kw ").find(" " + unit + " ") != std::string_view::npos;
    const auto number = is_unit ? figure_in(figure) : std::nullopt;
    if (!number)
        return tl::unexpected(CellFault{shown(cell) + " is no figure", "write volt-amperes or watts such as 1200"});
    return *number * scale;
}

/// A guard that the text puts at an outlet, wants, misses or doubts is none that the breaker has.
bool doubts_guard(std::string_view text) {
    static const std::regex outlet("(^|[^a-z])(recept|outlet|plug|toma|enchufe)");
    static const std::regex wanted(
        "(^|[^a-z])(no|not|non|never|without|w/o|sin|needs?|needed|wants?|wanted|requires?|required|req'?d|should|add|"
        "install|replace|upgrade|future|missing|bad|faulty|failed|removed|falta|requiere|necesita|poner|"
        "instalar|cambiar|malo|danado)(?![a-z])|\\?");
    const std::string words = folded(text);
    return std::regex_search(words, outlet) || std::regex_search(words, wanted);
}

GuardWords guards_in(std::string_view text) {
    static const std::regex word(
        "(^|[^A-Za-z])(dual[- ]?function|df[ -]?ci|df|afci[ ]?[/+&,-][ ]?gfci|gfci[ ]?[/+&,-][ "
        "]?afci|c?afci|gfci|gfi|gfpe|gfp|afi)"
        "(?![A-Za-z])",
        std::regex::icase);
    GuardWords words{{}, std::string(text)};
    if (text.size() > longest_cell || doubts_guard(text)) return words;
    std::set<Guard> guards;
    std::smatch found;
    while (std::regex_search(words.rest, found, word)) {
        const std::string name = folded(found[2].str());
        const bool both = name.starts_with("d") || name.find("gf") != std::string::npos;
        if (name.starts_with("gfp"))
            guards.insert(Guard::equipment_ground);
        else if (both)
            guards.insert(Guard::ground);
        if (name.starts_with("d") || name.find("af") != std::string::npos) guards.insert(Guard::arc);
        words.rest = found.prefix().str() + found[1].str() + found.suffix().str();
    }
    words.guards.assign(guards.begin(), guards.end());
    if (!guards.empty()) words.rest = std::string(trimmed(words.rest));
    while (!guards.empty() && !words.rest.empty() &&
           std::string_view("/+,-; ").find(words.rest.back()) != std::string_view::npos)
        words.rest.pop_back();
    return words;
}

std::optional<Wire> wire_in(std::string_view cell) {
    static const std::regex form(
        "#? ?([0-9]{1,4}|[1-4]/0)(?:[/-][234])?(?: ?(?:awg|mcm|kcmil))?(?:[ ,]+(cu|al|copper|aluminum))?(?:[ "
        ",]+(nm-b|nmb|nm|thhn|thwn|"
        "thwn-2|thw|xhhw|xhhw-2|uf-b|use-2|ser|mc|tw))?");
    const std::string text = bare(cell);
    std::smatch found;
    if (!std::regex_match(text, found, form)) return std::nullopt;
    Wire wire;
    wire.size = found[1];
    if (found[2].length()) wire.metal = found[2].str().starts_with('c') ? Metal::copper : Metal::aluminum;
    std::string insulation = found[3];
    std::ranges::transform(insulation, insulation.begin(),
                           [](unsigned char c) { return static_cast<char>(std::toupper(c)); });
    if (!insulation.empty()) wire.insulation = insulation == "NMB" ? "NM-B" : insulation;
    return wire;
}

std::string legs_in(std::string_view cell) {
    std::string legs;
    const std::string text = words_only(cell);
    if (text == "l1" || text == "l2" || text == "l3") return std::string(1, static_cast<char>('A' + (text[1] - '1')));
    for (const char c : text) {
        if (c == ' ') continue;
        if (c < 'a' || c > 'c' || legs.size() >= 3) return {};
        legs += static_cast<char>(std::toupper(static_cast<unsigned char>(c)));
    }
    return legs;
}

bool is_ditto(std::string_view cell) {
    static const std::set<std::string_view> marks = {"\"", "''",     "\"\"", "\u2033", "\u201d", "\u201c", "\u3003",
                                                     "^",  "\u2191", "|",    "||",     "\u2502", "\u2193"};
    static const std::set<std::string_view> words = {"ditto", "do",   "same",  "same as above", "idem",     "id",
                                                     "igual", "cont", "contd", "cont d",        "continued"};
    if (marks.contains(trimmed(cell))) return true;
    return words.contains(words_only(cell));
}

bool is_nothing(std::string_view cell) {
    const std::string text = bare(cell);
    return std::ranges::all_of(text, [](char c) { return c == '-' || c == '.' || c == '_' || c == ' '; }) ||
           text == "\u2013" || text == "\u2014";
}

bool says_spare(std::string_view text) {
    static const std::set<std::string_view> words = {"spare",   "spares",   "spare breaker",
                                                     "reserva", "repuesto", "de reserva"};
    return words.contains(words_only(text));
}

bool says_space(std::string_view text) {
    static const std::set<std::string_view> words = {
        "space",       "spaces",        "blank",       "blanks",       "empty",          "empty space",
        "blank space", "open space",    "spare space", "bussed space", "prepared space", "filler",
        "espacio",     "espacio vacio", "vacio",       "en blanco",    "espacio libre",  "no breaker"};
    return words.contains(words_only(text));
}

bool says_total(std::string_view text) {
    static const std::regex form(
        "(sub ?)?(totals?|totales)( .*)?|(total )?(connected|demand|calculated|panel|phase|conectada|design)( "
        "(load|va|kva|"
        "amps|a|b|c|total|totals|carga))+.*|demand.*|suma( .*)?|(carga )?(total|conectada)( .*)?");
    const std::string words = words_only(text);
    return words.size() <= longest_cell && std::regex_match(words, form);
}

}  // namespace doorcard
