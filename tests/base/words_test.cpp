// SPDX-License-Identifier: MIT
#include "base/words.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <clocale>
#include <locale>
#include <stdexcept>
#include <thread>

using namespace doorcard;

namespace {
const Words english = Words::in("en");
const Words spanish = Words::in("es");

void put(std::string& bytes, std::size_t number) {
    for (int shift = 0; shift < 32; shift += 8) bytes += static_cast<char>(number >> shift);
}

// A compiled catalogue of the header (empty key) and one more text, as GNU gettext lays it out.
std::string catalogue_of(const std::string& key, const std::string& text) {
    const std::string header = "Content-Type: text/plain; charset=UTF-8\n";
    const std::size_t tables = 28, strings = tables + 4 * 8;
    std::string bytes, body;
    for (const std::size_t word :
         {std::size_t{0x950412de}, std::size_t{0}, std::size_t{2}, tables, tables + 16, std::size_t{0}, std::size_t{0}})
        put(bytes, word);
    for (const std::string& entry : {std::string(), key, header, text}) {
        put(bytes, entry.size());
        put(bytes, strings + body.size());
        body += entry + '\0';
    }
    return bytes + body;
}
}  // namespace

TEST_CASE("words: English and Spanish are there, English first") {
    const auto languages = Words::languages();
    REQUIRE(languages.size() >= 2);
    CHECK(languages.front() == "en");
    CHECK(std::count(languages.begin(), languages.end(), "es") == 1);
    CHECK(spanish.language() == "es");
}

TEST_CASE("words: a language without a catalogue is refused") {
    CHECK_THROWS_AS(Words::in("tlh"), std::invalid_argument);
    CHECK_THROWS_AS(Words::in(""), std::invalid_argument);
}

TEST_CASE("words: English is the key itself") { CHECK(english("&Actual size") == "&Actual size"); }

TEST_CASE("words: Spanish comes from the catalogue in UTF-8") { CHECK(spanish("yes") == "sí"); }

TEST_CASE("words: a text that the catalogue lacks comes back in English") {
    CHECK(spanish("nobody says this") == "nobody says this");
}

TEST_CASE("words: the empty text stays empty and is not the catalogue's header") {
    CHECK(spanish("").empty());
    CHECK(english("").empty());
}

TEST_CASE("words: plural forms of English") {
    CHECK(english.count("{0} notice", "{0} notices", 1) == "1 notice");
    CHECK(english.count("{0} notice", "{0} notices", 0) == "0 notices");
    CHECK(english.count("{0} notice", "{0} notices", 2) == "2 notices");
}

TEST_CASE("words: plural forms of Spanish") {
    CHECK(spanish.count("{0} notice", "{0} notices", 1) == "1 aviso");
    CHECK(spanish.count(trn("{0} notice", "{0} notices"), 1) == "1 aviso");
    CHECK(spanish.count("{0} notice", "{0} notices", 0) == "0 avisos");
    CHECK(spanish.count("{0} notice", "{0} notices", 3'000'000'000) == "3000000000 avisos");
}

TEST_CASE("words: a count that the catalogue lacks falls back to the English plural") {
    CHECK(spanish.count("{0} gnome", "{0} gnomes", 1) == "1 gnome");
    CHECK(spanish.count("{0} gnome", "{0} gnomes", 7) == "7 gnomes");
}

TEST_CASE("words: a message is filled in, numbers rounded by the pattern") {
    CHECK(english.say({"{0}: {1:.1f} A of {2:.0f} A", {std::string("K1"), 17.649, 20.0}}) == "K1: 17.6 A of 20 A");
    CHECK(english.say({"{0} A", {16.0}}) == "16 A");
}

TEST_CASE("words: nested messages are translated first") {
    const Message pair{"{0}, {1}", {std::string("x"), Message{"{0} and {1}", {std::string("5"), std::string("7")}}}};
    CHECK(english.say(pair) == "x, 5 and 7");
    CHECK(spanish.say(pair) == "x, 5 y 7");
}

TEST_CASE("words: braces in somebody's own text are only text") {
    CHECK(spanish.say({"{0} and {1}", {std::string("{0}"), std::string("{9:x}")}}) == "{0} y {9:x}");
}

TEST_CASE("words: an empty message says nothing") { CHECK(spanish.say({}).empty()); }

TEST_CASE("words: a catalogue given as bytes") {
    const Words other = Words::from("xx", catalogue_of("{0:.0f} of {1}", "{1}: {0:.0f}"));
    CHECK(other.language() == "xx");
    CHECK(other.say({"{0:.0f} of {1}", {7.0, std::string("MAIN")}}) == "MAIN: 7");
}

TEST_CASE("words: a translation with a broken field is passed over, the sentence stands in English") {
    const Message message{"{0:.1f} A at {1}", {17.64, std::string("K1")}};
    for (const char* slip : {"{0:.1f A en {1}", "{0} A en {2}", "{1:.1f} A en {0}", "} {1}", "{uno} A"})
        CHECK(Words::from("xx", catalogue_of(message.pattern, slip)).say(message) == "17.6 A at K1");
}

TEST_CASE("words: an empty catalogue translates nothing, one that is none is refused") {
    CHECK_THROWS_AS(Words::from("xx", "not a catalogue at all, only text"), std::runtime_error);
    CHECK(Words::from("xx", "")("{0} and {1}") == "{0} and {1}");
}

TEST_CASE("words: the global locales stay as they are") {
    const std::locale before;
    const std::string c_before = std::setlocale(LC_ALL, nullptr);
    CHECK(Words::in("es")("yes") == "sí");
    CHECK(std::locale() == before);
    CHECK(std::setlocale(LC_ALL, nullptr) == c_before);
}

TEST_CASE("words: many threads may speak at once") {
    std::vector<std::string> said(8);
    std::vector<std::thread> threads;
    for (auto& text : said)
        threads.emplace_back([&text] {
            for (int i = 0; i < 200; ++i) text = Words::in("es").say({"{0} and {1}", {std::string("5"), 7.0}});
        });
    for (auto& thread : threads) thread.join();
    CHECK(std::count(said.begin(), said.end(), "5 y 7") == 8);
}
