// SPDX-License-Identifier: MIT
// The splicing writer on any text that reads: edits drawn by the text itself, among them those that a person makes.
// What comes out reads as what was meant, and what an edit lets pass keeps the laws of the file.
#include <algorithm>
#include <cstdint>
#include <cstdio>
#include <cstdlib>
#include <random>
#include <string>

#include "file/read_survey.hpp"
#include "file/rewrite_survey.hpp"
#include "file/write_value.hpp"
#include "survey/each_table.hpp"
#include "survey/edits/breaker_edits.hpp"
#include "survey/edits/circuit_edits.hpp"
#include "survey/edits/outlet_edits.hpp"
#include "survey/edits/panel_edits.hpp"

namespace {

using namespace doorcard;

void demand(bool holds, const char* what, const std::string& text) {
    if (holds) return;
    std::fprintf(stderr, "fuzz_splice: broken: %s\n%s\n", what, text.c_str());
    std::abort();
}

/// The plainest text of a survey.
std::string plain_text(const Survey& survey) {
    std::string text = "format = 1\n";
    for (const KeyTable& table : all_tables())
        for (std::size_t row = 0; row < table.count(survey); ++row) {
            text += table.header() + "\n";
            for (const WrittenKey& key : written_keys(table.keys, table.thing(survey, row)))
                text += key.key + " = " + key.value + "\n";
        }
    return text;
}

bool reads_as(const std::string& text, const Survey& survey) {
    const auto read = read_survey({"fuzz", text});
    return read && read->survey == survey;
}

/// Tells both texts where the second does not read as what was meant.
void demand_reads(const std::string& text, const Survey& survey, const char* what, const std::string& before) {
    if (reads_as(text, survey)) return;
    const auto read = read_survey({"fuzz", text});
    const std::string complaint = read ? "another survey" : complaint_line("result", read.error().front());
    demand(false, what, complaint + "\n--- before\n" + before + "\n--- after\n" + text);
}

class Editor {
public:
    explicit Editor(const std::string& text) : random_(std::hash<std::string>{}(text)) {}

    Survey changed(Survey survey) {
        for (std::size_t left = 1 + below(4); left > 0; --left) change(survey);
        return survey;
    }

    /// Nullopt where the edit is refused.
    std::optional<Survey> edited(const Survey& survey) {
        const auto outcome = some_edit(survey).apply(survey);
        return outcome ? std::optional(*outcome) : std::nullopt;
    }

private:
    std::size_t below(std::size_t bound) { return bound == 0 ? 0 : static_cast<std::size_t>(random_() % bound); }

    void change(Survey& survey) {
        const auto& tables = all_tables();
        const KeyTable& table = tables[below(tables.size())];
        const std::size_t count = table.count(survey);
        if (count == 0) return;
        switch (below(4)) {
            case 0:
                return table.erase(survey, below(count));
            case 1:
                return shuffle(survey);
            default: {
                const Field& field = table.keys[below(table.keys.size())];
                if (!field.is_required) table.alter(survey, below(count), [&](void* owner) { field.clear(owner); });
            }
        }
    }

    void shuffle(Survey& survey) {
        each_table([&](std::string_view, auto member) {
            auto rows = (survey.*member).rows();
            if (rows.size() < 2 || below(3) != 0) return;
            std::rotate(rows.begin(), rows.begin() + static_cast<std::ptrdiff_t>(1 + below(rows.size() - 1)),
                        rows.end());
            survey.*member = std::decay_t<decltype(survey.*member)>(std::move(rows));
        });
    }

    template <class T>
    std::string some_id(const Table<T>& table) {
        return table.empty() ? "none" : table[below(table.size())].id;
    }

    Edit some_edit(const Survey& survey) {
        const int space = static_cast<int>(1 + below(40));
        const std::string breaker = some_id(survey.breakers);
        switch (below(7)) {
            case 0:
                return move_breaker(breaker, {some_id(survey.panels), {space}, {}});
            case 1:
                return swap_breakers(breaker, some_id(survey.breakers));
            case 2:
                return remove_breaker(breaker, Mentions::take_along);
            case 3:
                return remove_circuit(some_id(survey.circuits), Mentions::take_along);
            case 4:
                return remove_panel(some_id(survey.panels), Mentions::take_along);
            case 5:
                return remove_outlet(some_id(survey.outlets), Mentions::take_along);
            default:
                return tie_breakers({breaker, some_id(survey.breakers)});
        }
    }

    std::mt19937_64 random_;
};

}  // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    const std::string text(reinterpret_cast<const char*>(data), size);
    const auto read = read_survey({"fuzz", text});
    if (!read) return 0;
    const Survey& before = read->survey;
    demand(rewrite(text, before, before) == text, "nothing changed is the same bytes", text);
    demand_reads(plain_text(before), before, "what is written reads back", text);
    demand_reads(spliced(text, before, Survey{}), Survey{}, "all of it taken out", text);
    Editor editor(text);
    for (int i = 0; i < 3; ++i) {
        const Survey after = editor.changed(before);
        if (reads_as(plain_text(after), after))
            demand_reads(spliced(text, before, after), after, "an edit says what was meant", text);
    }
    if (const auto after = editor.edited(before)) {
        demand_reads(plain_text(*after), *after, "an edit keeps the laws of the file", text);
        demand_reads(spliced(text, before, *after), *after, "an edit of a noun says what was meant", text);
    }
    return 0;
}
