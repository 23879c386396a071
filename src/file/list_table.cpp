// SPDX-License-Identifier: MIT
#include "file/list_table.hpp"

#include <algorithm>
#include <map>

#include "file/list_spaces.hpp"

namespace doorcard {
namespace {

constexpr std::string_view no_break_space = "\xC2\xA0";
bool is_blank(char c) { return c == ' ' || c == '\t' || c == '\n' || c == '\r' || c == '\v' || c == '\f'; }
bool is_digit(char c) { return c >= '0' && c <= '9'; }

/// Goes through a text and knows the place.
class Reader {
public:
    explicit Reader(std::string_view text) : text_(text) {}

    bool at_end() const { return at_ >= text_.size(); }
    bool at_break() const { return at_end() || text_[at_] == '\n' || text_[at_] == '\r'; }
    char peek() const { return text_[at_]; }
    std::string_view rest() const { return text_.substr(at_); }
    Place place() const { return place_; }
    char take() {
        const char c = text_[at_++];
        if (c == '\n' || (c == '\r' && (at_end() || text_[at_] != '\n')))
            place_ = {place_.line + 1, 1};
        else if ((static_cast<unsigned char>(c) & 0xC0U) != 0x80U)
            ++place_.column;
        return c;
    }
    void skip(std::size_t count) {
        while (count-- > 0) take();
    }
    void take_break() {
        if (!at_end() && peek() == '\r') take();
        if (!at_end() && peek() == '\n') take();
    }

private:
    std::string_view text_;
    std::size_t at_ = 0;
    Place place_;
};

bool ends_cell(std::string_view rest, char separator) {
    return rest.empty() || rest[0] == separator || rest[0] == '\n' || rest[0] == '\r';
}

/// Where a quote that opens here closes: before blanks and the cell's end; npos where it does not.
std::size_t closing_quote(std::string_view rest, char separator) {
    for (std::size_t at = rest.find('"', 1); at != std::string_view::npos; at = rest.find('"', at + 1)) {
        if (rest.substr(at + 1).starts_with('"')) {
            ++at;
            continue;
        }
        const std::size_t next = rest.find_first_not_of(' ', at + 1);
        return ends_cell(next == std::string_view::npos ? "" : rest.substr(next), separator) ? at
                                                                                             : std::string_view::npos;
    }
    return std::string_view::npos;
}

/// A quote alone in its cell: the other quotes of its line pair up without it, or it would hold nothing but separators.
bool is_ditto_mark(std::string_view rest, char separator) {
    constexpr std::size_t longest_line = 4096;
    if (!ends_cell(rest.substr(1), separator)) return false;
    const std::string_view line = rest.substr(0, rest.find_first_of("\r\n"));
    if (line.size() > longest_line) return false;
    if (std::ranges::count(line, '"') % 2 == 1) return true;
    const std::string_view held = line.substr(1, line.find('"', 1) - 1);
    return !held.empty() && std::ranges::all_of(held, [&](char c) { return c == separator || c == ' '; });
}

std::string without_doubled_quotes(std::string_view quoted) {
    std::string text;
    for (std::size_t i = 0; i < quoted.size(); ++i) {
        text += quoted[i];
        if (quoted[i] == '"') ++i;
    }
    return text;
}

class CsvReader {
public:
    CsvReader(std::string_view text, char separator, bool ditto_marks)
        : reader_(text), separator_(separator), ditto_marks_(ditto_marks) {}

    std::vector<ListRow> rows() {
        std::vector<ListRow> rows;
        while (!reader_.at_end()) {
            rows.push_back(row());
            reader_.take_break();
        }
        return rows;
    }

private:
    ListRow row() {
        ListRow cells{cell()};
        while (!reader_.at_break()) {
            reader_.take();  // the separator
            cells.push_back(cell());
        }
        return cells;
    }

    ListCell cell() {
        const std::size_t blanks = reader_.rest().find_first_not_of(' ');
        const bool opens = blanks != std::string_view::npos && reader_.rest()[blanks] == '"';
        if (opens && !(ditto_marks_ && is_ditto_mark(reader_.rest().substr(blanks), separator_))) {
            const std::size_t close = closing_quote(reader_.rest().substr(blanks), separator_);
            if (close != std::string_view::npos) return quoted(blanks, close);
        }
        return bare();
    }

    ListCell quoted(std::size_t blanks, std::size_t close) {
        reader_.skip(blanks);
        ListCell cell{without_doubled_quotes(reader_.rest().substr(1, close - 1)), reader_.place()};
        reader_.skip(close + 1);
        while (!reader_.at_end() && reader_.peek() == ' ') reader_.take();
        return cell;
    }

    ListCell bare() {
        ListCell cell{{}, reader_.place()};
        while (!reader_.at_break() && reader_.peek() != separator_) cell.text += reader_.take();
        return cell;
    }

    Reader reader_;
    char separator_;
    bool ditto_marks_;
};

/// Up to where one number of a plain line goes, with what hangs on it without a blank.
std::size_t number_end(std::string_view line, std::size_t at) {
    while (at < line.size() && !is_blank(line[at])) ++at;
    return at;
}

/// Where the next number stands behind a mark that joins spaces, ' & 10', ' and 10'; npos where there is none.
std::size_t joined_number(std::string_view line, std::size_t at) {
    std::string_view rest = line.substr(at);
    const std::string_view behind = trimmed(rest);
    for (const std::string_view mark : {"&", "+", "/", ",", "and ", "y "})
        if (behind.starts_with(mark)) rest = trimmed(behind.substr(mark.size()));
    const bool joins = rest.size() < behind.size() && !rest.empty() && is_digit(rest[0]);
    return joins ? static_cast<std::size_t>(rest.data() - line.data()) : std::string_view::npos;
}

/// Up to where the spaces of a plain line go: '2,4', '2, 4', '8 & 10', '#13a.'; 0 where the line does not begin with
/// any.
std::size_t spaces_end(std::string_view line) {
    const std::size_t begin = line.starts_with('#') ? 1 : 0;
    if (begin >= line.size() || !is_digit(line[begin])) return 0;
    std::size_t at = number_end(line, begin);
    while (true) {
        const bool goes_on = std::string_view(",/+&").find(line[at - 1]) != std::string_view::npos;
        const std::size_t next = line.find_first_not_of(' ', at);
        const std::size_t number = goes_on ? next : joined_number(line, at);
        if (number == std::string_view::npos || !is_digit(line[number])) return at;
        const std::size_t end = number_end(line, number);
        if (!goes_on && !are_spaces(line.substr(0, end))) return at;  // '1 / 2nd floor'
        at = end;
    }
}

/// How far '3 - 5' goes behind spaces that end at `at`; 0 where no space of the same side follows a dash.
std::size_t dashed_end(std::string_view line, std::size_t at) {
    const std::size_t dash = std::min(line.find_first_not_of(' ', at), line.size());
    const std::size_t number = std::min(line.find_first_not_of(" -", dash), line.size());
    if (dash == at || dash == line.size() || line[dash] != '-' || number == line.size()) return 0;
    const std::size_t end = std::min(line.find_first_not_of("0123456789", number), line.size());
    if (end == number || (end < line.size() && std::string_view(" .:)").find(line[end]) == std::string_view::npos))
        return 0;
    constexpr std::size_t most_spaces = 3;
    const auto spaces = spaces_in(line.substr(0, end));
    return spaces && spaces->size() > 1 && spaces->size() <= most_spaces && lie_together(*spaces) ? end : 0;
}

/// Where spaces end that may be parted by dashes: '4 - 6 - Dryer' are two; '3 - 5 Range' may be one or two, so that all
/// of the line is no space, and is told.
std::size_t all_spaces_end(std::string_view line) {
    const std::size_t end = spaces_end(line);
    const std::size_t dashed = end == 0 ? 0 : dashed_end(line, end);
    if (dashed == 0) return end;
    const std::string_view behind = trimmed(line.substr(dashed));
    return behind.empty() || std::string_view("-.:)").find(behind[0]) != std::string_view::npos ? dashed : line.size();
}

bool is_plain_line(std::string_view line) {
    const std::size_t end = spaces_end(line);
    if (!are_spaces(line.substr(0, end))) return false;
    const std::size_t next = std::min(line.find_first_not_of(' ', end), line.size());
    return next == line.size() ? line.find_first_of(",;") == std::string_view::npos
                               : next > end && std::string_view(",;\t").find(line[next]) == std::string_view::npos;
}

/// Calls for each line: the line, its place.
template <class Call>
void each_line(std::string_view text, Call call) {
    Reader reader(text);
    while (!reader.at_end()) {
        const std::string_view rest = reader.rest();
        const Place place = reader.place();
        const std::string_view line = rest.substr(0, rest.find_first_of("\r\n"));
        call(line, place);
        reader.skip(line.size());
        reader.take_break();
    }
}

std::uint32_t columns_in(std::string_view text) {
    return static_cast<std::uint32_t>(
        std::ranges::count_if(text, [](char c) { return (static_cast<unsigned char>(c) & 0xC0U) != 0x80U; }));
}

/// The text behind the spaces, without what parts them: '.', ':', ')', '-', '='.
std::string_view behind_spaces(std::string_view rest) {
    const std::size_t begin = rest.find_first_not_of(" \t.:)-=");
    return begin == std::string_view::npos ? std::string_view() : rest.substr(begin);
}

ListRow plain_row(std::string_view line, Place place) {
    const std::size_t blanks = line.size() - std::min(line.size(), line.find_first_not_of(" \t"));
    const std::size_t begin = line.size() - blanks;
    place.column += columns_in(line.substr(0, begin));
    line.remove_prefix(begin);
    const std::size_t end = all_spaces_end(line);
    std::string spaces(line.substr(0, end));
    while (!spaces.empty() && std::string_view(".:)").find(spaces.back()) != std::string_view::npos) spaces.pop_back();
    const Place text_place{place.line, place.column + columns_in(line.substr(0, end))};
    const std::string_view text = end == 0 ? line : behind_spaces(line.substr(end));
    return {{spaces, place}, {std::string(trimmed(text)), text_place}};
}

/// How many rows are as wide as most are, of two cells and more; and how wide.
std::pair<std::size_t, std::size_t> even_rows(const std::vector<ListRow>& rows) {
    std::map<std::size_t, std::size_t> widths;
    for (const ListRow& row : rows)
        if (row.size() > 1) ++widths[row.size()];
    std::pair<std::size_t, std::size_t> most{0, 0};
    for (const auto& [width, count] : widths) most = std::max(most, {count, width});
    return most;
}

}  // namespace

std::string_view trimmed(std::string_view text) {
    while (!text.empty() && (is_blank(text.front()) || text.starts_with(no_break_space)))
        text.remove_prefix(is_blank(text.front()) ? 1 : no_break_space.size());
    while (!text.empty() && (is_blank(text.back()) || text.ends_with(no_break_space)))
        text.remove_suffix(is_blank(text.back()) ? 1 : no_break_space.size());
    return text;
}

std::vector<ListRow> csv_rows(std::string_view text, char separator, bool ditto_marks) {
    return CsvReader(text, separator, ditto_marks).rows();
}

std::vector<ListRow> plain_rows(std::string_view text) {
    std::vector<ListRow> rows;
    each_line(text, [&](std::string_view line, Place place) { rows.push_back(plain_row(line, place)); });
    return rows;
}

bool looks_plain(std::string_view text) {
    std::size_t plain = 0;
    std::size_t lines = 0;
    each_line(text, [&](std::string_view line, Place) {
        const std::string_view bare = trimmed(line);
        const bool is_plain = is_plain_line(bare);
        if (bare.empty() || (lines == 0 && !is_plain)) return;  // a title
        ++lines;
        if (is_plain) ++plain;
    });
    return plain > 0 && 2 * plain >= lines;
}

char separator_of(std::string_view text) {
    constexpr std::size_t enough = 64 << 10;
    text = text.substr(0, enough);
    char best = '\0';
    std::pair<std::size_t, std::size_t> most{0, 0};
    for (const char separator : {',', ';', '\t'}) {
        const auto even = even_rows(csv_rows(text, separator));
        if (even > most) best = separator;
        most = std::max(most, even);
    }
    return best;
}

}  // namespace doorcard
