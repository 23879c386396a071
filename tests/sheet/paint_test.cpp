// SPDX-License-Identifier: MIT
#include <doctest/doctest.h>
#include <unistd.h>

#include <cstdio>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <sstream>

#include "sheet/card.hpp"
#include "sheet/example_panels.hpp"
#include "sheet/paint.hpp"

using namespace doorcard;

namespace {

Sheet card_of(const Survey& survey) { return card_sheet(network_of(survey), Assessment{}, {}, Words::in("en")); }

std::size_t count(const std::string& text, const std::string& part) {
    std::size_t found = 0;
    for (std::size_t at = text.find(part); at != std::string::npos; at = text.find(part, at + part.size())) ++found;
    return found;
}

/// What a program prints about a file of these bytes; empty where it is not installed.
std::string told_by(const std::string& command, const Bytes& bytes) {
    std::string path = std::filesystem::temp_directory_path() / "doorcard-paint-XXXXXX";
    const int file = mkstemp(path.data());
    REQUIRE(file >= 0);
    close(file);
    std::ofstream(path, std::ios::binary) << bytes;
    std::string text;
    if (FILE* pipe = popen(
            (command + " " + path + (command.starts_with("pdftotext") ? " -" : "") + " 2>/dev/null").c_str(), "r")) {
        char piece[4096];
        for (std::size_t read; (read = fread(piece, 1, sizeof piece, pipe)) > 0;) text.append(piece, read);
        pclose(pipe);
    }
    std::filesystem::remove(path);
    return text;
}

unsigned big_endian(const Bytes& bytes, std::size_t at) {
    unsigned number = 0;
    for (std::size_t i = 0; i < 4; ++i) number = number << 8 | static_cast<unsigned char>(bytes[at + i]);
    return number;
}

}  // namespace

TEST_CASE("paint: the same sheet gives the same bytes, in every format") {
    const Sheet first = card_of(example::house());
    const Sheet second = card_of(example::house());
    CHECK(paint_pdf(first) == paint_pdf(second));
    CHECK(paint_svg(first) == paint_svg(second));
    CHECK(paint_png(first, 60) == paint_png(second, 60));
    CHECK(paint_html(first) == paint_html(second));
    CHECK(paint_text(first) == paint_text(second));
}

TEST_CASE("paint: a PDF has its pages, title, author and date, and all fonts inside") {
    const Sheet sheet = card_of(example::house());
    const Bytes pdf = paint_pdf(sheet);
    CHECK(pdf.substr(0, 5) == "%PDF-");
    const std::string info = told_by("TZ=UTC pdfinfo -isodates", pdf);
    const std::string fonts = told_by("pdffonts", pdf);
    if (info.empty() || fonts.empty()) {
        MESSAGE("skipped: poppler-utils are absent");
        return;
    }
    CHECK(info.find("Panel directory, Alder Row 9") != std::string::npos);
    CHECK(info.find("Pages:           2") != std::string::npos);
    CHECK(info.find("CreationDate:    2026-05-14T00:00:00Z") != std::string::npos);
    CHECK(info.find("Author:          rk") != std::string::npos);
    CHECK(fonts.find("DejaVuSans-Bold") != std::string::npos);
    CHECK(fonts.find(" no ") == std::string::npos);  // every font embedded, subset, with its characters
}

TEST_CASE("paint: the words of a PDF can be selected") {
    const std::string text = told_by("pdftotext -layout", paint_pdf(card_of(example::house())));
    if (text.empty()) {
        MESSAGE("skipped: poppler-utils are absent");
        return;
    }
    for (const char* words : {"MULTIPLE SOURCES OF POWER", "Not traced:", "Laundry receptacle", "5 and 7 off together",
                              "Do not switch on 18"})
        CHECK(text.find(words) != std::string::npos);
}

TEST_CASE("paint: an SVG stacks its pages and holds its words") {
    const Bytes svg = paint_svg(card_of(example::house()));
    CHECK(count(svg, "<svg ") == 1);
    CHECK(svg.find("height=\"1584") != Bytes::npos);  // two letter pages of 792 pt
    CHECK(svg.find(">Laundry receptacle</text>") != Bytes::npos);
    CHECK(svg.find("<title>Panel directory, Alder Row 9</title>") != Bytes::npos);
    CHECK(svg.find("\"surface2") == Bytes::npos);
    CHECK(svg.rfind("</svg>") > svg.rfind("</text>"));
}

TEST_CASE("paint: marks of XML in a text do not break the SVG or the HTML") {
    example::Building h = example::empty_house(4);
    h.row({1}, 20, "Saw < 2 kW & \"dust\"");
    const Sheet sheet = card_of(h.survey());
    CHECK(paint_svg(sheet).find("&lt; 2 kW &amp;") != Bytes::npos);
    CHECK(paint_html(sheet).find("Saw &lt; 2 kW &amp; &quot;dust&quot;") != Bytes::npos);
}

TEST_CASE("paint: a PNG stacks its pages") {
    const Bytes png = paint_png(card_of(example::house()), 72);
    CHECK(png.substr(1, 3) == "PNG");
    CHECK(big_endian(png, 16) == 612);
    CHECK(big_endian(png, 20) == 1584);
}

TEST_CASE("paint: HTML has a picture and a table of words for each page") {
    const Bytes html = paint_html(card_of(example::house()));
    CHECK(count(html, "<img ") == 2);
    CHECK(count(html, "<table>") == 2);
    CHECK(html.find("<td>13+15</td><td>Range; 240 V</td><td>50</td>") != Bytes::npos);
    CHECK(html.find("only said, not traced") != Bytes::npos);
    CHECK(html.find("lang=\"en\"") != Bytes::npos);
}

TEST_CASE("paint: plain text fits 80 columns and says what the card says") {
    const Bytes text = paint_text(card_of(example::house()));
    std::istringstream lines(text);
    for (std::string line; std::getline(lines, line);) {
        INFO(line);
        std::size_t columns = 0;
        for (const char c : line) columns += (static_cast<unsigned char>(c) & 0xc0) != 0x80;
        CHECK(columns <= 80);
    }
    for (const char* words :
         {"21     A    15 A   Not traced: treat as live", "[?] Bath receptacle", "N1: 5 and 7 off together",
          "WARNING: Do not switch on 18.", "Feeder to Workshop; panel SHOP, garage", "13 of 16 traced",
          "ASK before switching off 14"}) {
        INFO(words);
        CHECK(text.find(words) != Bytes::npos);
    }
}
