// SPDX-License-Identifier: MIT
#include <doctest/doctest.h>

#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <regex>

#include "docs/po_file.hpp"

namespace {

const std::string top = DOORCARD_SOURCE;

std::string text_of(const std::string& path) {
    std::ifstream in(path, std::ios::binary);
    return {std::istreambuf_iterator<char>(in), {}};
}

std::vector<po::Entry> texts_of_the_sources() {
    const std::string file = std::string(DOORCARD_BIN) + "/texts.pot";
    REQUIRE(std::system(("'" + top + "/docs/po/extract' '" + file + "'").c_str()) == 0);
    return po::entries_of(text_of(file));
}

std::vector<po::Entry> one(const std::string& text) { return po::entries_of(text); }

}  // namespace

TEST_CASE("catalogue: every marked text of the sources is in Spanish") {
    const auto wanted = texts_of_the_sources();
    CHECK(wanted.size() > 10);
    for (const std::string& fault : po::faults(wanted, po::entries_of(text_of(top + "/docs/po/es.po"))))
        FAIL_CHECK(fault);
}

TEST_CASE("catalogue: the template is that of the sources") {
    const auto fresh = texts_of_the_sources();
    CHECK(po::entries_of(text_of(top + "/docs/po/doorcard.pot")).size() == fresh.size());
}

// A pair that counts is marked by trn("...", "...") or by count itself; in two marks of its own it would be two texts.
TEST_CASE("catalogue: no plural pattern is hidden in a mark of its own") {
    static const std::regex hidden(R"(count\(\s*tr\()");
    for (const char* folder : {"src", "ui"})
        for (const auto& entry : std::filesystem::recursive_directory_iterator(top + "/" + folder)) {
            if (!entry.is_regular_file()) continue;
            CHECK_MESSAGE(!std::regex_search(text_of(entry.path()), hidden), entry.path().string());
        }
}

TEST_CASE("catalogue: a catalogue is read with its plurals, breaks and escapes") {
    const auto entries =
        one("msgid \"\"\nmsgstr \"Language: es\\n\"\n\n#, fuzzy\nmsgid \"\"\n\"a \\\"b\\\" \"\n\"c\\n\"\n"
            "msgstr \"d\"\n\nmsgid \"{0} page\"\nmsgid_plural \"{0} pages\"\nmsgstr[0] \"x\"\n"
            "msgstr[1] \"y\"\n#~ msgid \"old\"\n#~ msgstr \"viejo\"\n");
    REQUIRE(entries.size() == 3);
    CHECK(entries[1].id == "a \"b\" c\n");
    CHECK(entries[1].fuzzy);
    CHECK_FALSE(entries[2].fuzzy);
    CHECK(entries[2].plural == "{0} pages");
    CHECK(entries[2].translations == std::vector<std::string>{"x", "y"});
}

TEST_CASE("catalogue: each fault is found") {
    const auto wanted = one("msgid \"{0:.1f} A\"\nmsgstr \"\"\n");
    const auto first_fault = [&](const std::string& catalogue) {
        const auto found = po::faults(wanted, one(catalogue));
        return found.empty() ? std::string("none") : found.front();
    };
    CHECK(first_fault("msgid \"{0:.1f} A\"\nmsgstr \"{0:.1f} A\"\n") == "none");
    CHECK(first_fault("") == "missing: {0:.1f} A");
    CHECK(first_fault("msgid \"{0:.1f} A\"\nmsgstr \"\"\n") == "untranslated: {0:.1f} A");
    CHECK(first_fault("#, fuzzy\nmsgid \"{0:.1f} A\"\nmsgstr \"{0:.1f} A\"\n") == "fuzzy: {0:.1f} A");
    CHECK(first_fault("msgid \"{0:.1f} A\"\nmsgstr \"{0} A\"\n") == "other fields: {0:.1f} A");
    CHECK(first_fault("msgid \"{0:.1f} A\"\nmsgstr \"{0:.1f} A\"\nmsgid \"x\"\nmsgstr \"y\"\n") == "left over: x");
}

TEST_CASE("catalogue: fields of a pattern") {
    CHECK(po::fields_of("{1} of {0:.0f} {{x}}") == std::multiset<std::string>{"{0:.0f}", "{1}", "{{", "}}"});
}
