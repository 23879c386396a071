// SPDX-License-Identifier: MIT
#include "file/toml_outline.hpp"

namespace doorcard {
namespace {

/// Goes through a text line by line.
class OutlineReader {
public:
    OutlineReader(std::string_view text, std::vector<Section>& sections)
        : text_(text), scan_(text), sections_(sections) {}

    void read() {
        const std::size_t start = text_.starts_with("\xEF\xBB\xBF") ? 3 : 0;  // a byte-order mark
        Section root;
        root.lead = root.header = root.body = root.end = root.tail = start;
        sections_.push_back(root);
        for (std::size_t line = start; line < text_.size();) line = step(line);
        close();
    }

private:
    std::size_t step(std::size_t line) {
        const std::size_t at = scan_.behind_blanks(line);
        const char c = at < text_.size() ? text_[at] : '\n';
        if (c == '\n' || c == '\r' || c == '#') return scan_.behind_line(at);
        if (c == '[') return header(line, at);
        return sections_.back().end = scan_.behind_line(behind_statement(at));
    }

    std::size_t behind_statement(std::size_t at) const {
        while (at < text_.size() && text_[at] != '=')
            at = text_[at] == '"' || text_[at] == '\'' ? scan_.behind_string(at) : at + 1;
        return scan_.behind_value(scan_.behind_blanks(at + 1));
    }

    std::size_t header(std::size_t line, std::size_t at) {
        close();
        Section section;
        section.is_list = text_[at + 1] == '[';
        section.header = line;
        section.lead = lead_above(line);
        scan_.behind_key(at + (section.is_list ? 2 : 1), section.path);
        section.body = section.end = section.tail = scan_.behind_line(at);
        if (sections_.back().tail > section.lead) sections_.back().tail = section.lead;
        sections_.push_back(std::move(section));
        return sections_.back().body;
    }

    /// The comment lines right above, none of which is part of the section before.
    std::size_t lead_above(std::size_t line) const {
        while (line > sections_.back().end) {
            const std::size_t above = scan_.line_begin(line - 1);
            if (above < sections_.back().end || !scan_.is_comment_line(above)) break;
            line = above;
        }
        return line;
    }

    void close() {
        std::size_t tail = sections_.back().end;
        while (tail < text_.size() && scan_.is_comment_line(tail)) tail = scan_.behind_line(tail);
        sections_.back().tail = tail;
    }

    std::string_view text_;
    TomlScan scan_;
    std::vector<Section>& sections_;
};

}  // namespace

TomlOutline::TomlOutline(std::string_view text) {
    OutlineReader(text, sections).read();
    for (std::size_t i = 1; i < sections.size(); ++i) {
        auto& of_table = entries[sections[i].path.front()];
        const bool begins_entry = sections[i].is_list && sections[i].path.size() == 1;
        if (begins_entry || of_table.empty()) of_table.emplace_back();
        of_table.back().push_back(i);
    }
}

}  // namespace doorcard
