// SPDX-License-Identifier: MIT
#include "assess/label_words.hpp"

#include <algorithm>
#include <cctype>
#include <map>

namespace doorcard {
namespace {

using WordSet = std::set<std::string_view>;

bool is_letter(unsigned char c) { return c >= 0x80 || std::isalpha(c) != 0; }
bool is_digit(unsigned char c) { return std::isdigit(c) != 0; }

// A slash joins single letters ('A/C'), else it parts words.
bool joins(const std::string& text, std::size_t slash) {
    const auto letter = [&](std::size_t i) {
        return i < text.size() && is_letter(static_cast<unsigned char>(text[i]));
    };
    return slash > 0 && letter(slash - 1) && letter(slash + 1) && !(slash > 1 && letter(slash - 2)) &&
           !letter(slash + 2);
}

bool inside_word(const std::string& text, std::size_t i) {
    const auto c = static_cast<unsigned char>(text[i]);
    if (is_letter(c) || is_digit(c) || c == '\'' || c == '-') return true;
    return c == '/' && joins(text, i);
}

LabelWord finished(const std::string& text, std::size_t begin, std::size_t end) {
    LabelWord word;
    word.written = text.substr(begin, end - begin);
    word.folded = folded(word.written);
    word.dotted = end < text.size() && text[end] == '.';
    const std::size_t next = text.find_first_not_of(" .", end);
    word.explained = next != std::string::npos && text[next] == '(';
    return word;
}

bool figure(const std::string& word) {
    static const WordSet units = {"",     "a",     "v",  "w",  "va", "amp", "amps", "volt", "volts",
                                  "watt", "watts", "kw", "hp", "p",  "th",  "st",   "nd",   "rd"};
    const std::size_t unit = word.find_first_not_of("0123456789");
    if (unit == 0) return false;
    return units.contains(std::string_view(word).substr(std::min(unit, word.size())));
}

const WordSet& joining_words() {
    static const WordSet words = {"and", "or", "the", "a",    "an", "of",  "for",  "in", "on", "off",
                                  "to",  "at", "by",  "with", "w",  "y",   "e",    "o",  "de", "del",
                                  "la",  "el", "los", "las",  "en", "con", "para", "al", "un", "una"};
    return words;
}

const WordSet& generic_words() {
    static const WordSet words = {"misc",        "miscellaneous", "other",
                                  "others",      "general",       "gen",
                                  "various",     "assorted",      "etc",
                                  "unknown",     "random",        "stuff",
                                  "things",      "some",          "more",
                                  "all",         "new",           "old",
                                  "extra",       "use",           "used",
                                  "purpose",     "room",          "rooms",
                                  "area",        "wall",          "ceiling",
                                  "plug",        "plugs",         "light",
                                  "lights",      "lighting",      "ltg",
                                  "lts",         "lamp",          "lamps",
                                  "receptacle",  "receptacles",   "recept",
                                  "recepts",     "recpt",         "recp",
                                  "outlet",      "outlets",       "socket",
                                  "sockets",     "switch",        "switches",
                                  "circuit",     "circuits",      "ckt",
                                  "breaker",     "breakers",      "load",
                                  "loads",       "power",         "electric",
                                  "electrical",  "electricity",   "appliance",
                                  "appliances",  "equipment",     "equip",
                                  "device",      "devices",       "convenience",
                                  "dedicated",   "fixture",       "fixtures",
                                  "point",       "points",        "tbd",
                                  "na",          "n/a",           "x",
                                  "xx",          "xxx",           "volt",
                                  "volts",       "amp",           "amps",
                                  "vario",       "varios",        "varias",
                                  "otro",        "otros",         "otra",
                                  "otras",       "generales",     "luz",
                                  "luces",       "alumbrado",     "iluminacion",
                                  "foco",        "focos",         "lampara",
                                  "lamparas",    "enchufe",       "enchufes",
                                  "contacto",    "contactos",     "toma",
                                  "tomas",       "tomacorriente", "tomacorrientes",
                                  "receptaculo", "receptaculos",  "salida",
                                  "salidas",     "circuito",      "circuitos",
                                  "interruptor", "interruptores", "apagador",
                                  "apagadores",  "carga",         "cargas",
                                  "equipo",      "equipos",       "aparato",
                                  "aparatos",    "desconocido",   "desconocidos",
                                  "miscelaneo",  "miscelaneos",   "miscelanea",
                                  "cosas",       "uso",           "usos",
                                  "nuevo",       "viejo",         "fuerza",
                                  "corriente",   "cuarto",        "cuartos",
                                  "pared",       "techo"};
    return words;
}

const std::map<std::string_view, std::string_view>& same_thing() {
    static const std::map<std::string_view, std::string_view> same = {
        {"stove", "range"},          {"fridge", "refrigerator"},
        {"refrig", "refrigerator"},  {"ref", "refrigerator"},
        {"fridges", "refrigerator"}, {"heat", "heating"},
        {"heater", "heating"},       {"furnace", "heating"},
        {"boiler", "heating"},       {"dw", "dishwasher"},
        {"mw", "microwave"},         {"ac", "conditioning"},
        {"a/c", "conditioning"},     {"conditioner", "conditioning"},
        {"bathroom", "bath"},        {"basement", "cellar"},
        {"exterior", "outdoor"},     {"outside", "outdoor"},
        {"outdoors", "outdoor"},     {"shop", "workshop"},
        {"washing", "washer"},       {"laundry", "washer"},
        {"ev", "vehicle"},           {"car", "vehicle"},
        {"charger", "charging"},     {"garbage", "disposer"},
        {"disposal", "disposer"},    {"subpanel", "feeder"},
        {"sub-panel", "feeder"},
    };
    return same;
}

// 'bedrooms' and 'bedroom', 'counters' and 'counter'.
std::string singular(std::string word) {
    if (word.size() > 3 && word.back() == 's' && word[word.size() - 2] != 's') word.pop_back();
    return word;
}

std::vector<std::string> parts_of(const LabelWord& word) {
    std::vector<std::string> parts{""};
    for (const char c : word.folded)
        if (c == '-')
            parts.emplace_back();
        else
            parts.back() += c;
    return parts;
}

// 'E. wall outlets': the east wall.
bool compass_letter(const std::string& written) {
    return written.size() == 1 && std::string_view("NESW").find(written) != std::string_view::npos;
}

}  // namespace

std::vector<LabelWord> words_of(std::string_view label) {
    const std::string text = straight_apostrophes(label);
    std::vector<LabelWord> words;
    std::size_t begin = 0;
    for (std::size_t i = 0; i <= text.size(); ++i) {
        if (i < text.size() && inside_word(text, i)) continue;
        if (i > begin) words.push_back(finished(text, begin, i));
        begin = i + 1;
    }
    return words;
}

bool says_nothing(std::string_view label) {
    for (const LabelWord& word : words_of(label)) {
        if (compass_letter(word.written)) return false;
        if (generic_words().contains(word.folded)) continue;
        for (const std::string& part : parts_of(word))
            if (!part.empty() && part != "'" && !figure(part) && !joining_words().contains(part) &&
                !generic_words().contains(part))
                return false;
    }
    return true;
}

std::set<std::string> telling_words(std::string_view label) {
    std::set<std::string> found;
    for (const LabelWord& word : words_of(label)) {
        const std::string& written = word.folded;
        if (figure(written) || joining_words().contains(written) || generic_words().contains(written)) continue;
        const std::string one = singular(written);
        const auto same =
            same_thing().find(same_thing().contains(written) ? std::string_view(written) : std::string_view(one));
        found.insert(same == same_thing().end() ? one : std::string(same->second));
    }
    return found;
}

bool calls_it_spare(std::string_view label) {
    static const WordSet spare = {"spare",   "unused", "blank",   "not used",  "not in use",
                                  "reserva", "libre",  "sin uso", "disponible"};
    std::string words;
    for (const LabelWord& word : words_of(label)) words += (words.empty() ? "" : " ") + word.folded;
    return spare.contains(words);
}

}  // namespace doorcard
