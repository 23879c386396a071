// SPDX-License-Identifier: MIT
#include "desk/number_typed.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <cstdlib>

#include "base/folded.hpp"
#include "base/quantity.hpp"
#include "desk/typed_words.hpp"
#include "survey/edits/edit.hpp"

namespace doorcard {
namespace {

/// A word for a unit, of a field in another: value = typed * factor + offset.
struct UnitWord {
    std::string_view field, words;
    double factor = 1, offset = 0;
};

constexpr UnitWord unit_words[] = {
    {"A", " a amp amps ampere amperes amperio amperios "},
    {"A", " ma ", 0.001},
    {"A", " ka ", 1000},
    {"mA", " ma "},
    {"mA", " a amp amps ", 1000},
    {"kA", " ka "},
    {"kA", " a amp amps ", 0.001},
    {"V", " v volt volts voltio voltios "},
    {"V", " mv ", 0.001},
    {"V", " kv ", 1000},
    {"W", " w watt watts vatio vatios "},
    {"W", " kw ", 1000},
    {"kW", " kw "},
    {"kW", " w watt watts ", 0.001},
    {"VA", " va "},
    {"VA", " kva ", 1000},
    {"kVA", " kva "},
    {"kVA", " va ", 0.001},
    {"feet", " ft foot feet ' pie pies "},
    {"feet", " m metre metres meter meters metro metros ", feet_per_metre},
    {"metres", " m metre metres meter meters metro metros "},
    {"metres", " ft foot feet ' pie pies ", 1 / feet_per_metre},
    {"square feet", " ft2 sqft sq.ft squarefeet pies2 piescuadrados "},
    {"square feet", " m2 sqm squaremetres squaremeters metroscuadrados ", square_feet_per_square_metre},
    {"square metres", " m2 sqm squaremetres squaremeters metroscuadrados "},
    {"square metres", " ft2 sqft sq.ft squarefeet pies2 piescuadrados ", 1 / square_feet_per_square_metre},
    {"inches", " in inch inches \" pulgada pulgadas "},
    {"inches", " ft foot feet ' pie pies ", 12},
    {"inches", " cm ", 1 / 2.54},
    {"degrees C", " c celsius degc degreesc "},
    {"degrees C", " f fahrenheit degf degreesf ", 1 / 1.8, -32 / 1.8},
    {"hours", " h hr hrs hour hours hora horas "},
    {"hours", " min minute minutes minuto minutos ", 1.0 / 60},
    {"minutes", " min minute minutes minuto minutos "},
    {"minutes", " h hr hrs hour hours hora horas ", 60},
    {"seconds", " s sec second seconds segundo segundos "},
    {"seconds", " ms ", 0.001},
    {"seconds", " min minute minutes minuto minutos ", 60},
    {"gallons", " gal gallon gallons galon galones "},
    {"ohm", " ohm ohms ohmio ohmios "},
    {"ohm", " kohm kohms ", 1000},
    {"megohm", " megohm megohms mohm megohmio megohmios "},
    {"megohm", " gohm ", 1000},
    {"%", " % percent "},
    {"dB", " db "},
    {"", " kcmil mcm "},
};

/// Lower case, without blanks and degree signs, raised twos as plain ones.
std::string plain_unit(std::string_view typed) {
    std::string text = folded(typed);
    for (const auto& [sign, plain] :
         {std::pair<std::string_view, std::string_view>{"²", "2"}, {"°", ""}, {"º", ""}, {"ω", "ohm"}, {" ", ""}})
        for (std::size_t at = 0; (at = text.find(sign, at)) != std::string::npos;) text.replace(at, sign.size(), plain);
    return text;
}

const UnitWord* unit_word(std::string_view typed, std::string_view unit) {
    const std::string wanted = " " + plain_unit(typed) + " ";
    for (const UnitWord& one : unit_words)
        if (one.field == unit && one.words.find(wanted) != std::string_view::npos) return &one;
    return nullptr;
}

bool are_digits(std::string_view text) {
    return !text.empty() && std::ranges::all_of(text, [](char c) { return c >= '0' && c <= '9'; });
}

/// `1,200,000`: first group of 1 to 3, the others of three.
bool are_thousands(std::string_view text, char sign) {
    std::size_t end = text.find(sign);
    if (end == 0 || end > 3 || !are_digits(text.substr(0, end))) return false;
    while (end != std::string_view::npos) {
        const std::size_t next = text.find(sign, end + 1);
        const std::string_view group = text.substr(end + 1, next == std::string_view::npos ? next : next - end - 1);
        if (group.size() != 3 || !are_digits(group)) return false;
        end = next;
    }
    return true;
}

tl::unexpected<std::vector<Complaint>> no_number(std::string_view typed) {
    return refused(fmt::format("\"{}\" is no number", typed), "write a number, as 20 or 3.5");
}

/// Digits with a decimal point alone, of digits with commas and points.
Outcome<std::string> plain_digits(std::string_view text) {
    const std::size_t comma = text.rfind(','), point = text.rfind('.');
    constexpr auto none = std::string_view::npos;
    const auto count = [&](char sign) { return std::ranges::count(text, sign); };
    const bool both = comma != none && point != none;
    const char decimal = both ? (comma > point ? ',' : '.') : comma != none ? ',' : '.';
    const char thousand = decimal == ',' ? '.' : ',';
    if (!both && count(decimal) == 1 && decimal == ',' && are_thousands(text, ',') && text[0] != '0') {
        std::string whole(text), part(text);
        std::erase(whole, ',');
        std::ranges::replace(part, ',', '.');
        return refused(fmt::format("{} may be read two ways", text), fmt::format("write {} or {}", whole, part));
    }
    std::string plain(text);
    if (!both && count(decimal) > 1) {
        if (!are_thousands(text, decimal)) return no_number(text);
        std::erase(plain, decimal);
        return plain;
    }
    const std::size_t at = text.find(decimal);
    if (both && (count(decimal) > 1 || !are_thousands(text.substr(0, at), thousand))) return no_number(text);
    std::erase(plain, thousand);
    std::ranges::replace(plain, decimal, '.');
    return plain;
}

double to_four_places(double number) { return std::round(number * 1e4) / 1e4; }

}  // namespace

Outcome<double> number_typed(std::string_view typed, std::string_view unit) {
    const std::string_view text = trimmed(typed);
    const std::size_t end = std::min(text.find_first_not_of("0123456789.,"), text.size());
    const std::string_view digits = text.substr(0, end), word = trimmed(text.substr(end));
    if (digits.find_first_of("0123456789") == std::string_view::npos) return no_number(text);
    auto plain = plain_digits(digits);
    if (!plain) return tl::unexpected(std::move(plain.error()));
    const double number = std::strtod(plain->c_str(), nullptr);
    if (word.empty() || plain_unit(word) == plain_unit(unit)) return number;
    const UnitWord* of = unit_word(word, unit);
    if (!of && unit.empty()) return no_number(text);
    if (!of) return refused(fmt::format("\"{}\" is not of {}", word, unit), fmt::format("write it in {}", unit));
    if (of->factor == 1 && of->offset == 0) return number;
    return to_four_places(number * of->factor + of->offset);
}

}  // namespace doorcard
