// SPDX-License-Identifier: MIT
// The two laws of the splicing writer on drawn surveys, layouts and edits.
#include <doctest/doctest.h>

#include <algorithm>
#include <regex>
#include <set>
#include <sstream>

#include "file/read_survey.hpp"
#include "file/rewrite_survey.hpp"
#include "property/layout.hpp"

using namespace doorcard;

namespace {

std::string first_complaint(const std::string& text) {
    const auto read = read_survey({"s", text});
    return read ? "" : complaint_line("s", read.error().front());
}

std::vector<std::string> lines_of(const std::string& text) {
    std::vector<std::string> lines;
    std::istringstream in(text);
    for (std::string line; std::getline(in, line);) lines.push_back(line);
    return lines;
}

/// Lines of a text that are not in the other's common beginning and end.
std::pair<std::size_t, std::size_t> different_lines(const std::string& a, const std::string& b) {
    const auto one = lines_of(a), other = lines_of(b);
    std::size_t begin = 0, end = 0;
    while (begin < std::min(one.size(), other.size()) && one[begin] == other[begin]) ++begin;
    while (end < std::min(one.size(), other.size()) - begin &&
           one[one.size() - 1 - end] == other[other.size() - 1 - end])
        ++end;
    return {one.size() - begin - end, other.size() - begin - end};
}

struct Drawn {
    Draft draft;
    std::string text;
    Survey survey;
};

/// A survey that reads, in a layout; nullopt where the draw breaks a law of the file.
std::optional<Drawn> drawn(Draw& draw, Wildness wildness) {
    Drawn it{random_draft(draw), {}, {}};
    it.text = random_layout(it.draft, draw, wildness);
    auto read = read_survey({"s", it.text});
    if (!read) return std::nullopt;
    it.survey = std::move(read->survey);
    return it;
}

/// Every line ends alike, and what stands at both ends of the file is as it was.
void check_form(const std::string& before, const std::string& after) {
    CHECK(before.starts_with("\xEF\xBB\xBF") == after.starts_with("\xEF\xBB\xBF"));
    CHECK(before.ends_with('\n') == after.ends_with('\n'));
    const auto lone_newlines = [](const std::string& text) {
        const auto returns = std::ranges::count(text, '\r');
        return std::ranges::count(text, '\n') - returns;
    };
    if (before.find('\r') != std::string::npos) CHECK(lone_newlines(after) == 0);
    if (before.find('\r') == std::string::npos) CHECK(after.find('\r') == std::string::npos);
}

/// The comments that the layout numbered.
std::set<std::string> comments_of(const std::string& text) {
    static const std::regex comment("# c[0-9]+");
    return {std::sregex_token_iterator(text.begin(), text.end(), comment), std::sregex_token_iterator()};
}

}  // namespace

TEST_CASE("rewrite: any edit of any survey in any layout reads as it was meant") {
    int tried = 0;
    for (std::uint64_t seed = 1; seed <= 1500; ++seed) {
        Draw draw(seed);
        CAPTURE(seed);
        const auto it = drawn(draw, draw.one_in(4) ? Wildness::plain : Wildness::odd);
        if (!it) continue;
        REQUIRE(rewrite(it->text, it->survey, it->survey) == it->text);
        Draft edited = it->draft;
        edit_at_random(edited, draw);
        const auto after = read_survey({"s", plain_text(edited)});
        if (!after) continue;
        ++tried;
        const std::string text = spliced(it->text, it->survey, after->survey);
        const auto read = read_survey({"s", text});
        CHECK_MESSAGE(read, first_complaint(text));
        CHECK((read && read->survey == after->survey));
        check_form(it->text, text);
    }
    CHECK(tried > 600);
}

TEST_CASE("rewrite: an edit and its undoing lead back to what the text said") {
    int tried = 0;
    for (std::uint64_t seed = 1; seed <= 400; ++seed) {
        Draw draw(seed);
        CAPTURE(seed);
        const auto it = drawn(draw, Wildness::odd);
        if (!it) continue;
        Draft edited = it->draft;
        edit_at_random(edited, draw);
        const auto after = read_survey({"s", plain_text(edited)});
        if (!after) continue;
        ++tried;
        const std::string there = rewrite(it->text, it->survey, after->survey);
        const std::string back = rewrite(there, after->survey, it->survey);
        CHECK(read_survey({"s", back})->survey == it->survey);
    }
    CHECK(tried > 150);
}

TEST_CASE("rewrite: one key of one entry is one line of the text, and no comment goes") {
    int tried = 0;
    for (std::uint64_t seed = 1; seed <= 1500; ++seed) {
        Draw draw(seed);
        CAPTURE(seed);
        const auto it = drawn(draw, Wildness::plain);
        if (!it) continue;
        Draft edited = it->draft;
        edit_one_key(edited, draw);
        const auto after = read_survey({"s", plain_text(edited)});
        if (!after || after->survey == it->survey) continue;
        ++tried;
        const std::string text = rewrite(it->text, it->survey, after->survey);
        const auto [was, is] = different_lines(it->text, text);
        const bool heading_is_new = it->text.find("[survey]") == std::string::npos;
        CHECK(was <= 1);
        CHECK(is <= (heading_is_new ? 3 : 1));
        const std::size_t gone = comments_of(it->text).size() - comments_of(text).size();
        CHECK(gone <= (is < was ? 1 : 0));  // a line that goes takes the remark on it along
    }
    CHECK(tried > 400);
}
