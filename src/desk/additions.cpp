// SPDX-License-Identifier: MIT
#include "desk/additions.hpp"

#include <fmt/format.h>

#include "desk/entry_keys.hpp"
#include "file/write_value.hpp"
#include "survey/edits/panel_edits.hpp"
#include "survey/edits/source_edits.hpp"

namespace doorcard {
namespace {

/// "P2", "S2": the first such id that nothing has.
std::string free_id(const Survey& survey, std::string_view letters, std::size_t from) {
    for (std::size_t n = from;; ++n) {
        const std::string id = fmt::format("{}{}", letters, n);
        if (!survey.panels.contains(id) && !survey.sources.contains(id) && !survey.breakers.contains(id) &&
            !survey.dwellings.contains(id))
            return id;
    }
}

}  // namespace

Added panel_added(const Survey& survey, const std::string& fed_by) {
    Panel panel;
    panel.id = survey.panels.empty() ? "MAIN" : free_id(survey, "P", survey.panels.size() + 1);
    if (!fed_by.empty()) panel.fed_by = {fed_by};
    return {add_panel(panel), "panel:" + panel.id};
}

Added source_added(const Survey& survey) {
    Source source;
    source.id = survey.sources.empty() ? "utility" : free_id(survey, "source-", survey.sources.size() + 1);
    if (survey.sources.empty()) source.kind = "utility";
    return {add_source(source), "source:" + source.id};
}

Added dwelling_added(const Survey& survey) {
    const std::string id =
        survey.dwellings.empty() ? "dwelling" : free_id(survey, "dwelling-", survey.dwellings.size() + 1);
    const std::string address = "dwelling:" + id;
    return {keys_edit({tr("add dwelling {0}"), {id}}, {EntryEdit::Kind::add, address, {}, Mentions::refuse}), address};
}

Added photo_added(const Survey& survey, const std::string& file, const std::string& of) {
    std::vector<KeyEdit> keys{{"file", quoted(file)}};
    if (!of.empty()) keys.push_back({"of", quoted(of)});
    return {
        keys_edit({tr("add photo {0}"), {file}}, {EntryEdit::Kind::add, "photo:", std::move(keys), Mentions::refuse}),
        fmt::format("photo:{}", survey.photos.size() + 1)};
}

}  // namespace doorcard
