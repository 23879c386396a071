// SPDX-License-Identifier: MIT
#include "cli/new_command.hpp"

#include <fmt/format.h>

#include <nlohmann/json.hpp>
#include <ostream>
#include <system_error>

#include "cli/load_survey.hpp"
#include "cli/new_from_list.hpp"
#include "file/new_survey.hpp"
#include "file/read_survey.hpp"
#include "file/save_survey.hpp"

namespace doorcard {
namespace {

constexpr auto replace_bad_bytes = nlohmann::ordered_json::error_handler_t::replace;

std::string all_system_names() {
    std::string names;
    for (const SystemFacts& facts : all_systems()) names.append(names.empty() ? "" : ", ").append(facts.name);
    return names;
}

/// The text, or an empty one after saying on `err` what is wrong with what was asked for.
std::string text_of(const NewOptions& options, std::ostream& err, const Words& words) {
    NewSurvey known{std::nullopt, options.spaces, options.main_a};
    if (options.system) {
        known.system = system_named(*options.system);
        if (!known.system) {
            err << words.say({tr("there is no system \"{0}\"; known are: {1}"), {*options.system, all_system_names()}})
                << '\n';
            return {};
        }
    }
    std::string text = new_survey(known);
    const auto read =
        read_survey({options.file, text});  // what we write, we read: the bounds of its keys hold here too
    if (read) return text;
    for (const Complaint& complaint : read.error()) err << complaint.wrong << "; " << complaint.right << '\n';
    return {};
}

}  // namespace

int write_new(const std::string& file, const std::string& text, std::ostream& err, const Words& words) {
    try {
        save_new_survey(file, text);
        return exit_done;
    } catch (const NotSaved& refusal) {
        err << file << ": " << words.say(refusal.why) << '\n';
        return exit_output;
    } catch (const std::system_error& error) {
        const bool exists = error.code() == std::errc::file_exists;
        err << file << ": "
            << (exists ? words(tr("exists already and was left alone; name a new file")) : error.code().message())
            << '\n';
        return exit_output;
    }
}

int run_new(const NewOptions& options, std::ostream& out, std::ostream& err, const Words& words) {
    const std::string text = text_of(options, err, words);
    if (text.empty()) return exit_usage;
    if (!rules_hold(options.rules, usual_edition, err)) return exit_input;
    if (options.from) return run_new_from_list(options, out, err, words);
    if (const int status = write_new(options.file, text, err, words); status != exit_done) return status;
    if (options.json)
        out << nlohmann::ordered_json{{"files", {options.file}}}.dump(2, ' ', false, replace_bad_bytes) << '\n';
    else
        out << words.say({tr("{0}: written. Fill in what you see, then: doorcard check {0}"), {options.file}}) << '\n';
    return exit_done;
}

}  // namespace doorcard
