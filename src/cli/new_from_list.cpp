// SPDX-License-Identifier: MIT
#include "cli/new_from_list.hpp"

#include <fmt/format.h>

#include <nlohmann/json.hpp>
#include <ostream>

#include "cli/load_survey.hpp"
#include "file/read_list.hpp"
#include "file/read_text.hpp"

namespace doorcard {
namespace {

constexpr auto replace_bad_bytes = nlohmann::ordered_json::error_handler_t::replace;

/// The system that was asked for; text_of has said what is wrong with one that is none.
ListOptions list_options(const NewOptions& options) {
    return {options.panel,
            options.system ? system_named(*options.system) : std::nullopt,
            options.spaces,
            options.main_a,
            {}};
}

bool said_usage(std::ostream& err, const Message& message, const Words& words) {
    err << words.say(message) << '\n';
    return false;
}

/// False after saying what is wrong with --columns.
bool take_columns(const NewOptions& options, ListOptions& list, std::ostream& err, const Words& words) {
    if (!options.columns) return true;
    auto columns = named_columns(*options.columns);
    if (!columns)
        return said_usage(
            err, {tr("--columns: \"{0}\" is not HEAD=WORD; the words are: {1}"), {columns.error(), column_names()}},
            words);
    list.columns = std::move(*columns);
    return true;
}

/// False after saying which options do not go with what is in the list.
bool fits_list(const ListRead& list, const ListOptions& asked, std::ostream& err, const Words& words) {
    if (!list.unknown_columns.empty())
        return said_usage(err, {tr("--columns: the list has no column \"{0}\""), {list.unknown_columns.front()}},
                          words);
    const bool of_one = asked.system || asked.spaces || asked.main_a;
    if (of_one && list.survey.panels.size() > 1)
        return said_usage(
            err,
            {tr("--system, --spaces and --main are of one panel; the list has {0:.0f}: write them into the survey"),
             {static_cast<double>(list.survey.panels.size())}},
            words);
    return true;
}

std::string counts(const ListRead& list, const Words& words) {
    return words.count(trn("{0} read", "{0} read"), static_cast<long>(list.read)) + ", " +
           words.count(trn("{0} not understood", "{0} not understood"), static_cast<long>(list.refused.size()));
}

nlohmann::ordered_json list_json(const NewOptions& options, const ListRead& list, bool written) {
    nlohmann::ordered_json refused = nlohmann::ordered_json::array();
    for (const Complaint& complaint : list.refused)
        refused.push_back({{"line", complaint.place.line}, {"why", complaint.wrong + "; " + complaint.right}});
    nlohmann::ordered_json files = nlohmann::ordered_json::array();
    if (written) files.push_back(options.file);
    return {{"files", std::move(files)}, {"read", list.read}, {"refused", std::move(refused)}};
}

int written_list(const NewOptions& options, const ListRead& list, std::ostream& out, std::ostream& err,
                 const Words& words) {
    for (const Complaint& complaint : list.refused) err << complaint_line(*options.from, complaint) << '\n';
    const bool whole = list.refused.empty() || options.skip_bad;
    const bool to_write = whole && list.read > 0;
    const int status = to_write ? write_new(options.file, listed_survey_text(list.survey), err, words) : exit_input;
    if (status == exit_output) return status;
    if (!to_write)
        err << (whole ? words(tr("nothing in the list was understood; nothing was written"))
                      : words(tr("nothing was written; mend the list, or leave those rows out with --skip-bad")))
            << '\n';
    if (options.json) {
        out << list_json(options, list, to_write).dump(2, ' ', false, replace_bad_bytes) << '\n';
        return status;
    }
    if (to_write)
        out << words.say(
                   {tr("{0}: written. All in it is a claim: look, trace, then: doorcard check {0}"), {options.file}})
            << '\n';
    (to_write ? out : err) << counts(list, words) << '\n';
    return status;
}

}  // namespace

int run_new_from_list(const NewOptions& options, std::ostream& out, std::ostream& err, const Words& words) {
    ListOptions asked = list_options(options);
    if (!take_columns(options, asked, err, words)) return exit_usage;
    const auto source = read_text(*options.from);
    if (!source) {
        for (const Complaint& complaint : source.error()) err << *options.from << ": " << complaint.wrong << '\n';
        return exit_input;
    }
    const ListRead list = read_list(source->bytes, asked);
    if (!fits_list(list, asked, err, words)) return exit_usage;
    return written_list(options, list, out, err, words);
}

}  // namespace doorcard
