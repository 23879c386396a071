// SPDX-License-Identifier: MIT
#include "file/rewrite_keys.hpp"

#include <algorithm>

#include "file/splice_list.hpp"
#include "file/write_value.hpp"
#include "survey/alignment.hpp"

namespace doorcard {
namespace {

template <class T>
constexpr bool is_list = std::is_same_v<T, Ids> || std::is_same_v<T, std::vector<int>> || std::is_same_v<T, Photos>;

bool is_list_value(const Value& value) {
    return std::visit([](const auto& held) { return is_list<std::decay_t<decltype(held)>>; }, value);
}

/// What two lists of one kind have in common: for each place of the later the place in the earlier.
std::vector<std::optional<std::size_t>> list_alignment(const Value& before, const Value& after) {
    return std::visit(
        [&](const auto& earlier) -> std::vector<std::optional<std::size_t>> {
            using List = std::decay_t<decltype(earlier)>;
            if constexpr (is_list<List>) {
                const auto& later = std::get<List>(after);
                return alignment(earlier.size(), later.size(),
                                 [&](std::size_t b, std::size_t a) { return earlier[b] == later[a]; });
            }
            return {};
        },
        before);
}

std::size_t length_of(const Value& list) {
    if (const auto* texts = std::get_if<Ids>(&list)) return texts->size();
    if (const auto* wholes = std::get_if<std::vector<int>>(&list)) return wholes->size();
    return std::get<Photos>(list).size();
}

class KeyRewriter {
public:
    KeyRewriter(Splices& splices, const TomlOutline& outline, EntryScope& scope)
        : splices_(splices),
          outline_(outline),
          text_(splices.text()),
          scope_(scope),
          kept_(scope.statements.size(), true) {}

    void rewrite(FieldList fields, const void* before, const void* after) {
        for (const Field& field : fields)
            if (field.form == Form::table)
                rewrite_table(field, field.look(before), field.look(after));
            else
                rewrite_value(field, value_of(field, before), value_of(field, after));
        finish();
    }

    /// The members of a table whose keys are the surveyor's own.
    template <class Members, class Written, class Change>
    void rewrite_members(const Members& before, const Members& after, Written written, Change change) {
        for (const auto& [key, value] : before)
            if (!after.contains(key)) remove(key);
        for (const auto& [key, value] : after) {
            const auto was = before.find(key);
            if (was == before.end())
                add(written_key(key), written(value));
            else if (!(was->second == value))
                change(key, was->second, value);
        }
        finish();
    }
    void put(const std::string& key, const std::string& written) {
        if (const Statement* statement = whole_statement(scope_, key))
            return splices_.replace(statement->value, written);
        remove(key);
        add(written_key(key), written);
    }
    std::optional<EntryScope> within(std::string_view key) const { return scope_within(text_, outline_, scope_, key); }

private:
    void rewrite_table(const Field& field, const void* before, const void* after) {
        if (!before && !after) return;
        if (!after) return remove(field.name);
        auto inner = within(field.name);
        const std::string written = written_table(field.keys, after);
        const bool would_vanish = written == "{}" && inner && !inner->before_key.empty();  // dotted keys, all taken out
        const bool can_take_keys = inner && inner->home != EntryScope::Home::none && !would_vanish;
        if (can_take_keys && before) return rewrite_keys(splices_, outline_, *inner, field.keys, before, after);
        if (before && written == written_table(field.keys, before)) return;
        put(std::string(field.name), written);
    }

    void rewrite_value(const Field& field, const std::optional<Value>& before, const std::optional<Value>& after) {
        if (before == after) return;
        if (!after) return remove(field.name);
        if (before && rewrite_in_place(field, *before, *after)) return;
        const Statement* statement = whole_statement(scope_, field.name);
        put(std::string(field.name),
            written_value(field, *after, statement ? statement->value.of(text_) : std::string_view()));
    }

    bool rewrite_in_place(const Field& field, const Value& before, const Value& after) {
        if (field.form == Form::volts_by_address)
            return rewrite_map<std::map<std::string, Volts>>(field, before, after);
        if (field.form == Form::columns)
            return rewrite_map<std::map<std::string, RecordingColumn>>(field, before, after);
        return is_list_value(before) && rewrite_list(field, before, after);
    }

    bool rewrite_list(const Field& field, const Value& before, const Value& after) {
        const Statement* statement = whole_statement(scope_, field.name);
        if (!statement || text_[statement->value.begin] != '[') return false;
        const std::vector<Span> items = TomlScan(text_).items_of(statement->value);
        if (items.size() != length_of(before)) return false;
        const std::vector<std::string> written = written_items(after);
        const auto was = list_alignment(before, after);
        std::vector<WantedItem> wanted;
        for (std::size_t i = 0; i < written.size(); ++i) wanted.push_back({was[i], written[i]});
        splice_list(splices_, statement->value, items, wanted);
        return true;
    }

    static std::string written_member(const Volts& volts) { return written_number(volts.value); }
    static std::string written_member(const RecordingColumn& column) { return written_column(column); }

    void change_member(KeyRewriter& inner, const std::string& key, const Volts&, const Volts& after) {
        inner.put(key, written_member(after));
    }
    void change_member(KeyRewriter& inner, const std::string& key, const RecordingColumn& before,
                       const RecordingColumn& after) {
        auto scope = inner.within(key);
        if (scope && scope->home != EntryScope::Home::none)
            rewrite_keys(splices_, outline_, *scope, recording_column_keys(), &before, &after);
        else
            inner.put(key, written_member(after));
    }

    template <class Map>
    bool rewrite_map(const Field& field, const Value& before, const Value& after) {
        auto scope = within(field.name);
        if (!scope || scope->home == EntryScope::Home::none) return false;
        KeyRewriter inner(splices_, outline_, *scope);
        inner.rewrite_members(
            std::get<Map>(before), std::get<Map>(after), [](const auto& value) { return written_member(value); },
            [&](const std::string& key, const auto& was, const auto& is) { change_member(inner, key, was, is); });
        return true;
    }

    void remove(std::string_view key) {
        for (std::size_t i = 0; i < scope_.statements.size(); ++i) {
            const Statement& statement = scope_.statements[i];
            if (statement.path.front() != key) continue;
            kept_[i] = false;
            if (statement.is_line) splices_.remove(statement.whole);
        }
        for (const EntryScope::Inner& inner : scope_.inner) {
            const Section& section = outline_.sections[inner.section];
            if (inner.path.front() == key) remove_section(splices_, {section.lead, section.tail});
        }
    }

    void add(const std::string& key, const std::string& value) {
        if (scope_.home == EntryScope::Home::braces)
            added_.push_back(key + " = " + value);
        else
            lines_ += LineStyle(text_, scope_.statements).line(scope_.before_key + key, value);
    }

    void finish() {
        if (!lines_.empty() && scope_.header.empty()) splices_.append(scope_.at, lines_);
        if (!lines_.empty() && !scope_.header.empty()) splices_.insert(scope_.at, scope_.header + lines_);
        const bool all_kept = std::ranges::all_of(kept_, [](bool each) { return each; });
        if (scope_.home != EntryScope::Home::braces || (added_.empty() && all_kept)) return;
        std::vector<Span> spans;
        std::vector<WantedItem> wanted;
        for (std::size_t i = 0; i < kept_.size(); ++i) {
            spans.push_back(scope_.statements[i].whole);
            if (kept_[i]) wanted.push_back({i, {}});
        }
        for (const std::string& text : added_) wanted.push_back({std::nullopt, text});
        splice_list(splices_, scope_.braces, spans, wanted);
    }

    Splices& splices_;
    const TomlOutline& outline_;
    std::string_view text_;
    EntryScope& scope_;
    std::vector<bool> kept_;          // of the statements
    std::vector<std::string> added_;  // to braces
    std::string lines_;
};

}  // namespace

void rewrite_keys(Splices& splices, const TomlOutline& outline, EntryScope& scope, FieldList fields, const void* before,
                  const void* after) {
    KeyRewriter(splices, outline, scope).rewrite(fields, before, after);
}

void remove_section(Splices& splices, Span span) {
    const TomlScan scan(splices.text());
    const std::size_t first = splices.text().starts_with("\xEF\xBB\xBF") ? 3 : 0;
    std::size_t begin = span.begin;
    while (begin > first && scan.is_blank_line(std::max(scan.line_begin(begin - 1), first)))
        begin = std::max(scan.line_begin(begin - 1), first);
    if (begin == first)
        while (span.end < splices.text().size() && scan.is_blank_line(span.end)) span.end = scan.behind_line(span.end);
    splices.remove({begin, span.end});
}

}  // namespace doorcard
