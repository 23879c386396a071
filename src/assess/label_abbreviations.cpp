// SPDX-License-Identifier: MIT
#include <algorithm>
#include <cctype>
#include <map>

#include "assess/label_words.hpp"
#include "base/message.hpp"

// What the card explains, and what needs no explaining. Common practice, no source. Letters with two common readings
// ('DR': dining room or dryer) are not explained: whoever wrote them knows.
namespace doorcard {
namespace {

using WordSet = std::set<std::string_view>;

const std::map<std::string_view, const char*>& meanings() {
    static const std::map<std::string_view, const char*> known = {
        {"a/c", tr("air conditioning")},
        {"ac", tr("air conditioning")},
        {"afci", tr("arc-fault protection")},
        {"ahu", tr("air handling unit")},
        {"bdrm", tr("bedroom")},
        {"bldg", tr("building")},
        {"br", tr("bedroom")},
        {"bsmt", tr("basement")},
        {"ckt", tr("circuit")},
        {"cctv", tr("video surveillance")},
        {"clg", tr("ceiling")},
        {"disp", tr("disposer")},
        {"dw", tr("dishwasher")},
        {"ef", tr("exhaust fan")},
        {"elec", tr("electric")},
        {"ev", tr("electric vehicle")},
        {"evse", tr("electric vehicle supply")},
        {"ext", tr("exterior")},
        {"facp", tr("fire alarm control panel")},
        {"fau", tr("forced-air furnace")},
        {"gfci", tr("ground-fault protection")},
        {"gfi", tr("ground-fault protection")},
        {"hvac", tr("heating, ventilation, air conditioning")},
        {"hwh", tr("water heater")},
        {"kit", tr("kitchen")},
        {"ltg", tr("lighting")},
        {"lts", tr("lights")},
        {"mbr", tr("master bedroom")},
        {"mech", tr("mechanical")},
        {"micro", tr("microwave oven")},
        {"misc", tr("miscellaneous")},
        {"mw", tr("microwave oven")},
        {"ofc", tr("office")},
        {"pv", tr("solar electric")},
        {"rcpt", tr("receptacle")},
        {"recept", tr("receptacle")},
        {"recepts", tr("receptacles")},
        {"recpt", tr("receptacle")},
        {"refrig", tr("refrigerator")},
        {"rtu", tr("rooftop unit")},
        {"ups", tr("uninterruptible supply")},
        {"vfd", tr("motor speed drive")},
        {"w/d", tr("washer and dryer")},
        {"wh", tr("water heater")},
        {"xfmr", tr("transformer")},
    };
    return known;
}

const WordSet& understood() {
    static const WordSet words = {"tv",   "dvd",  "pc",  "led",  "usb", "wc",  "am",  "pm", "ok",  "us",  "it",  "ne",
                                  "nw",   "se",   "sw",  "no",   "st",  "mr",  "mrs", "ms", "etc", "id",  "tvs", "pcs",
                                  "leds", "wifi", "diy", "spa",  "gym", "bbq", "vip", "ii", "iii", "iv",  "vi",  "vii",
                                  "kw",   "kva",  "va",  "hp",   "hz",  "ft",  "mm",  "cm", "sq",  "gal", "btu", "vac",
                                  "vdc",  "ct",   "mri", "incl", "ph",  "dj",  "cd",  "my", "by",  "th",  "rd",  "nd"};
    return words;
}

std::string letters_only(std::string word) {
    while (!word.empty() && (std::isdigit(static_cast<unsigned char>(word.back())) || word.back() == '-'))
        word.pop_back();
    return word;
}

bool all(const std::string& word, int (*is)(int)) {
    return std::all_of(word.begin(), word.end(), [&](char c) { return is(static_cast<unsigned char>(c)) != 0; });
}

bool no_vowel(const std::string& folded) { return folded.find_first_of("aeiouy") == std::string::npos; }

bool shouted(const std::vector<LabelWord>& words) {
    return words.size() > 1 && std::none_of(words.begin(), words.end(), [](const LabelWord& word) {
               return std::any_of(word.written.begin(), word.written.end(),
                                  [](char c) { return std::islower(static_cast<unsigned char>(c)) != 0; });
           });
}

// Letters that stand for words nobody wrote down: capitals, no vowel, or cut off by a period.
bool looks_short(const LabelWord& word, const std::string& letters, bool all_capitals, bool last) {
    if (letters.size() < 2 || letters.size() > 6 || !all(letters, std::isalpha)) return false;
    if (all(letters, std::isupper) && letters.size() <= 5 && !all_capitals) return true;
    if (no_vowel(folded(letters))) return true;
    return word.dotted && !last && letters.size() <= 5;
}

}  // namespace

std::vector<Abbreviation> abbreviations_in(std::string_view label, const std::set<std::string>& names) {
    const std::vector<LabelWord> words = words_of(label);
    const bool all_capitals = shouted(words);
    std::vector<Abbreviation> found;
    for (std::size_t i = 0; i < words.size(); ++i) {
        const LabelWord& word = words[i];
        const std::string letters = letters_only(word.written);
        const std::string key = folded(letters);
        if (names.contains(word.written) || names.contains(letters) || understood().contains(key)) continue;
        const auto known = meanings().find(key);
        if (known != meanings().end())
            found.push_back({letters, known->second});
        else if (!word.explained && looks_short(word, letters, all_capitals, i + 1 == words.size()))
            found.push_back({letters, nullptr});
    }
    return found;
}

}  // namespace doorcard
