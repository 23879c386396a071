// SPDX-License-Identifier: MIT
#include "docs/po_file.hpp"

#include <algorithm>
#include <map>
#include <regex>
#include <sstream>
#include <utility>

namespace po {
namespace {

std::string unquoted(const std::string& line) {
    std::string text;
    const auto open = line.find('"'), close = line.rfind('"');
    for (auto i = open + 1; i < close; ++i) {
        if (line[i] != '\\') {
            text += line[i];
            continue;
        }
        ++i;
        text += line[i] == 'n' ? '\n' : line[i] == 't' ? '\t' : line[i];
    }
    return text;
}

// Where the texts of the quoted lines that follow belong.
std::string* slot_of(const std::string& line, std::vector<Entry>& entries) {
    if (line.starts_with("msgid_plural")) return &entries.back().plural;
    if (line.starts_with("msgid")) return &entries.back().id;
    entries.back().translations.emplace_back();
    return &entries.back().translations.back();
}

std::multiset<std::string> of_either(const Entry& entry) {
    return fields_of(entry.plural.empty() ? entry.id : entry.plural);
}

void compare(const Entry& wanted, const Entry& given, std::vector<std::string>& out) {
    const auto fault = [&](const char* what) { out.push_back(std::string(what) + ": " + wanted.id); };
    if (given.fuzzy) fault("fuzzy");
    if (given.plural != wanted.plural) fault("other plural");
    if (given.translations.size() != (wanted.plural.empty() ? 1U : 2U)) fault("not one translation per form");
    for (const std::string& translation : given.translations) {
        if (translation.empty())
            fault("untranslated");
        else if (fields_of(translation) != of_either(wanted) && fields_of(translation) != fields_of(wanted.id))
            fault("other fields");
    }
}

}  // namespace

std::vector<Entry> entries_of(const std::string& text) {
    std::vector<Entry> entries;
    std::string* slot = nullptr;
    bool fuzzy = false;
    std::istringstream in(text);
    for (std::string line; std::getline(in, line);) {
        if (line.starts_with("#,") && line.find("fuzzy") != std::string::npos) fuzzy = true;
        if (line.starts_with("msgid ")) {
            entries.emplace_back();
            entries.back().fuzzy = std::exchange(fuzzy, false);
        }
        if (line.starts_with("msg")) slot = slot_of(line, entries);
        if (slot && (line.starts_with("msg") || line.starts_with("\""))) *slot += unquoted(line);
    }
    return entries;
}

std::multiset<std::string> fields_of(const std::string& pattern) {
    static const std::regex field(R"(\{\{|\}\}|\{[^{}]*\})");
    std::multiset<std::string> fields;
    for (std::sregex_iterator match(pattern.begin(), pattern.end(), field), end; match != end; ++match)
        fields.insert(match->str());
    return fields;
}

std::vector<std::string> faults(const std::vector<Entry>& wanted, const std::vector<Entry>& catalogue) {
    std::vector<std::string> out;
    std::map<std::string, const Entry*> given;
    for (const Entry& entry : catalogue) given[entry.id] = &entry;
    for (const Entry& entry : wanted) {
        if (entry.id.empty()) continue;
        const auto found = given.find(entry.id);
        if (found == given.end())
            out.push_back("missing: " + entry.id);
        else
            compare(entry, *found->second, out);
    }
    for (const Entry& entry : catalogue)
        if (std::none_of(wanted.begin(), wanted.end(), [&](const Entry& other) { return other.id == entry.id; }))
            out.push_back("left over: " + entry.id);
    return out;
}

}  // namespace po
