// SPDX-License-Identifier: MIT
#include "file/splice_list.hpp"

#include <algorithm>

namespace doorcard {
namespace {

class ListSplicer {
public:
    ListSplicer(Splices& splices, Span list, const std::vector<Span>& items)
        : splices_(splices), text_(splices.text()), scan_(text_), list_(list), items_(items) {}

    void make(std::vector<WantedItem> wanted) {
        put_in_place(wanted);
        std::vector<bool> kept(items_.size());
        std::optional<std::size_t> last;
        for (const WantedItem& item : wanted)
            if (item.kept) kept[*(last = item.kept)] = true;
        if (!last) return make_anew(wanted);
        for (std::size_t i = 0; i < *last; ++i)
            if (!kept[i]) remove_before_another(i);
        std::vector<std::string> added;
        for (const WantedItem& item : wanted) {
            if (!item.kept) {
                added.push_back(item.text);
            } else {
                put_before(*item.kept, added);
                added.clear();
            }
        }
        finish(*last, added);
    }

private:
    /// Between elements that stay, as many new ones as old ones that go: each takes the place of one.
    void put_in_place(std::vector<WantedItem>& wanted) {
        std::size_t next_old = 0;
        for (std::size_t begin = 0, end = 0; begin < wanted.size(); begin = end + 1, next_old = *wanted[end].kept + 1) {
            for (end = begin; end < wanted.size() && !wanted[end].kept;) ++end;
            const std::size_t old_end = end < wanted.size() ? *wanted[end].kept : items_.size();
            if (end - begin == old_end - next_old)
                for (std::size_t i = begin; i < end; ++i) {
                    splices_.replace(items_[next_old + i - begin], wanted[i].text);
                    wanted[i].kept = next_old + i - begin;
                }
            if (end == wanted.size()) break;
        }
    }

    /// The text between two elements, as at the element given: a line of its own, or a blank.
    std::string gap_before(std::size_t item) const {
        if (!begins_line(item)) return " ";
        const std::size_t line = scan_.line_begin(items_[item].begin);
        return std::string(newline_of(text_)) + std::string(text_.substr(line, items_[item].begin - line));
    }

    bool begins_line(std::size_t item) const {
        const std::size_t line = scan_.line_begin(items_[item].begin);
        return line > list_.begin && scan_.behind_blanks(line) == items_[item].begin;
    }

    std::optional<std::size_t> comma_behind(std::size_t item) const {
        const std::size_t at = scan_.behind_gaps(items_[item].end);
        return at < list_.end && text_[at] == ',' ? std::optional(at) : std::nullopt;
    }

    /// Of an element: its line, up to whose end nothing but it stands.
    bool has_line_of_its_own(std::size_t item, std::size_t end) const {
        const std::size_t next = item + 1 < items_.size() ? items_[item + 1].begin : list_.end - 1;
        return begins_line(item) && scan_.behind_line(end) <= next;
    }

    std::string joined(const std::vector<std::string>& texts, const std::string& gap) const {
        std::string all;
        for (const std::string& text : texts) all += (all.empty() ? "" : "," + gap) + text;
        return all;
    }

    void make_anew(const std::vector<WantedItem>& wanted) {
        std::vector<std::string> texts;
        texts.reserve(wanted.size());
        for (const WantedItem& item : wanted) texts.push_back(item.text);
        const bool in_braces = text_[list_.begin] == '{';
        const std::string room = in_braces && !texts.empty() ? " " : "";
        std::string inside = room + joined(texts, " ") + room;
        if (!items_.empty() && begins_line(0) && !texts.empty())
            inside = gap_before(0) + joined(texts, gap_before(0)) + std::string(newline_of(text_));
        splices_.replace({list_.begin + 1, list_.end - 1}, inside);
    }

    void remove_before_another(std::size_t item) {
        const std::size_t end = *comma_behind(item) + 1;
        if (has_line_of_its_own(item, end))
            splices_.remove({scan_.line_begin(items_[item].begin), scan_.behind_line(end)});
        else if (begins_line(item + 1))
            splices_.remove({items_[item].begin, end});
        else
            splices_.remove({items_[item].begin, items_[item + 1].begin});
    }

    void put_before(std::size_t item, const std::vector<std::string>& texts) {
        const std::string gap = gap_before(item);
        for (const std::string& text : texts) splices_.insert(items_[item].begin, text + "," + gap);
    }

    void finish(std::size_t last, const std::vector<std::string>& added) {
        if (last + 1 == items_.size()) return append(last, added);
        const std::size_t first_out = last + 1, end = items_.back().end;
        if (!added.empty())
            splices_.replace({items_[first_out].begin, end}, joined(added, gap_before(first_out)));
        else
            remove_tail(last);
    }

    void remove_tail(std::size_t last) {
        const std::size_t first_out = last + 1;
        const auto comma = comma_behind(items_.size() - 1);
        const std::size_t end = comma ? *comma + 1 : items_.back().end;
        if (!begins_line(first_out))
            splices_.remove({items_[last].end, items_.back().end});
        else if (scan_.behind_line(end) <= list_.end - 1)
            splices_.remove({scan_.line_begin(items_[first_out].begin), scan_.behind_line(end)});
        else
            splices_.remove({items_[first_out].begin, end});
    }

    void append(std::size_t last, const std::vector<std::string>& added) {
        if (added.empty()) return;
        const std::string gap = gap_before(last);
        const auto comma = comma_behind(last);
        const std::size_t end = comma ? *comma + 1 : items_[last].end;
        if (!has_line_of_its_own(last, end)) return splices_.insert(items_[last].end, "," + gap + joined(added, gap));
        const std::string newline(newline_of(text_));
        if (!comma) splices_.insert(items_[last].end, ",");
        splices_.insert(scan_.behind_line(end),
                        gap.substr(newline.size()) + joined(added, gap) + (comma ? "," : "") + newline);
    }

    Splices& splices_;
    std::string_view text_;
    TomlScan scan_;
    Span list_;
    const std::vector<Span>& items_;
};

}  // namespace

std::string_view newline_of(std::string_view text) {
    const std::size_t first = text.find('\n');
    return first != std::string_view::npos && first > 0 && text[first - 1] == '\r' ? "\r\n" : "\n";
}

void splice_list(Splices& splices, Span list, const std::vector<Span>& items, const std::vector<WantedItem>& wanted) {
    ListSplicer(splices, list, items).make(wanted);
}

}  // namespace doorcard
