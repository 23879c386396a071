// SPDX-License-Identifier: MIT
#include "property/layout.hpp"

#include <algorithm>

#include "file/toml_scan.hpp"
#include "file/write_value.hpp"

using namespace doorcard;

namespace {

/// A text in lines, with \n.
class Layout {
public:
    Layout(const Draft& draft, Draw& draw, bool odd) : draft_(draft), draw_(draw), odd_(odd) {}

    std::string make() {
        if (draw_.one_in(2)) comment("");
        root_ += "format = 1\n";
        for (const KeyTable& table : all_tables()) add(table);
        if (odd_) draw_.shuffle(parts_);
        std::string text = std::move(root_);
        for (const std::string& part : parts_) text += part;
        if (draw_.one_in(3)) text += "\n# the end\n";
        return text;
    }

private:
    void* owner(const KeyTable& table, std::size_t row) { return table.row(const_cast<Draft&>(draft_), row); }

    void comment(const std::string& indent) { root_ += indent + "# c" + std::to_string(comments_++) + "\n"; }
    std::string a_comment() { return "# c" + std::to_string(comments_++); }

    void add(const KeyTable& table) {
        const std::size_t count = row_count(draft_, table);
        const bool is_empty =
            count == 0 || (table.name == "survey" && written_keys(table.keys, owner(table, 0)).empty());
        if (is_empty && (table.name != "survey" || !draw_.one_in(2))) return;
        const int way = odd_ ? draw_.number(1, 4) : 4;
        if (way == 1 && table.shape != Shape::one)
            add_list(table, count);
        else if (way == 1)
            root_ += std::string(table.name) + " = " + written_table(table.keys, owner(table, 0)) + "\n";
        else if (way == 2 && table.shape == Shape::one && !written_keys(table.keys, owner(table, 0)).empty())
            add_dotted(table);
        else
            add_headers(table, count);
    }

    void add_list(const KeyTable& table, std::size_t count) {
        const bool in_lines = draw_.one_in(2);
        root_ += std::string(table.name) + " = [";
        for (std::size_t row = 0; row < count; ++row) {
            if (in_lines) root_ += "\n    ";
            root_ += written_table(table.keys, owner(table, row));
            if (row + 1 < count || draw_.one_in(2)) root_ += in_lines ? "," : ", ";
            if (in_lines && draw_.one_in(3)) root_ += "  " + a_comment();
        }
        root_ += in_lines ? "\n]\n" : "]\n";
    }

    void add_dotted(const KeyTable& table) {
        for (const WrittenKey& key : written_keys(table.keys, owner(table, 0)))
            root_ += std::string(table.name) + "." + key.key + " = " + key.value + "\n";
    }

    void add_headers(const KeyTable& table, std::size_t count) {
        std::string part;
        const bool one =
            table.shape == Shape::one || (table.shape == Shape::one_or_many && count == 1 && draw_.one_in(2));
        const std::string name =
            odd_ && draw_.one_in(8) ? "\"" + std::string(table.name) + "\"" : std::string(table.name);
        for (std::size_t row = 0; row < count; ++row) {
            if (!draw_.one_in(6)) part += "\n";
            if (draw_.one_in(4)) part += a_comment() + "\n\n";
            if (draw_.one_in(4)) part += a_comment() + "\n";
            part += one ? "[" + name + "]" : odd_ && draw_.one_in(6) ? "[[ " + name + " ]]" : "[[" + name + "]]";
            part += draw_.one_in(5) ? "  " + a_comment() + "\n" : "\n";
            part += body(table, owner(table, row));
        }
        parts_.push_back(part);
    }

    std::string body(const KeyTable& table, void* thing) {
        std::vector<WrittenKey> keys = written_keys(table.keys, thing);
        if (odd_) draw_.shuffle(keys);
        const std::string indent = draw_.one_in(5) ? "  " : "";
        const std::size_t width = draw_.one_in(4) ? 16 : 0;
        std::string lines, below;
        for (const WrittenKey& key : keys) {
            if (draw_.one_in(8)) lines += indent + a_comment() + "\n";
            if (draw_.one_in(12)) lines += "\n";
            if (odd_ && key.value.starts_with("{ ") && draw_.one_in(3))
                below += inner_section(table, key);
            else if (odd_ && key.value.starts_with("{ ") && draw_.one_in(3))
                lines += dotted(indent, key);
            else
                lines += line(indent, width, key);
        }
        if (draw_.one_in(8)) lines += a_comment() + "\n";
        return lines + below;
    }

    std::string line(const std::string& indent, std::size_t width, const WrittenKey& key) {
        std::string text =
            indent + key.key + std::string(key.key.size() < width ? width - key.key.size() : 0, ' ') + " = ";
        text += odd_ && key.value.starts_with('[') && draw_.one_in(3) ? over_lines(indent, key.value) : key.value;
        return text + (draw_.one_in(6) ? "   " + a_comment() + "\n" : "\n");
    }

    std::vector<WrittenKey> members(const std::string& braces) const {
        std::vector<WrittenKey> keys;
        for (const Statement& statement : TomlScan(braces).statements_in_braces({0, braces.size()}))
            keys.push_back({std::string(statement.key.of(braces)), std::string(statement.value.of(braces))});
        return keys;
    }
    std::string dotted(const std::string& indent, const WrittenKey& key) {
        std::string lines;
        for (const WrittenKey& member : members(key.value))
            lines += indent + key.key + (draw_.one_in(4) ? " . " : ".") + member.key + " = " + member.value + "\n";
        return lines;
    }
    std::string inner_section(const KeyTable& table, const WrittenKey& key) {
        std::string lines = "[" + std::string(table.name) + "." + key.key + "]\n";
        for (const WrittenKey& member : members(key.value)) lines += member.key + " = " + member.value + "\n";
        return lines;
    }
    std::string over_lines(const std::string& indent, const std::string& list) {
        std::string text = "[\n";
        const auto items = TomlScan(list).items_of({0, list.size()});
        for (std::size_t i = 0; i < items.size(); ++i) {
            if (draw_.one_in(4)) text += indent + "    " + a_comment() + "\n";
            text +=
                indent + "    " + std::string(items[i].of(list)) + (i + 1 < items.size() || draw_.one_in(2) ? "," : "");
            text += draw_.one_in(3) ? " " + a_comment() + "\n" : "\n";
        }
        return text + indent + "]";
    }

    const Draft& draft_;
    Draw& draw_;
    bool odd_;
    int comments_ = 0;
    std::string root_;
    std::vector<std::string> parts_;
};

std::string with_crlf(const std::string& text) {
    std::string result;
    for (const char c : text) result += c == '\n' ? "\r\n" : std::string(1, c);
    return result;
}

}  // namespace

std::string random_layout(const Draft& draft, Draw& draw, Wildness wildness) {
    std::string text = Layout(draft, draw, wildness == Wildness::odd).make();
    if (draw.one_in(3)) text = with_crlf(text);
    if (draw.one_in(4)) text.erase(text.find_last_not_of("\r\n") + 1);
    return draw.one_in(4) ? "\xEF\xBB\xBF" + text : text;
}

std::string plain_text(const Draft& draft) {
    std::string text = "format = 1\n";
    for (const KeyTable& table : all_tables())
        for (std::size_t row = 0; row < row_count(draft, table); ++row) {
            text += table.header() + "\n";
            for (const WrittenKey& key : written_keys(table.keys, table.row(const_cast<Draft&>(draft), row)))
                text += key.key + " = " + key.value + "\n";
        }
    return text;
}
