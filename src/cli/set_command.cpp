// SPDX-License-Identifier: MIT
#include "cli/set_command.hpp"

#include <nlohmann/json.hpp>
#include <ostream>
#include <system_error>

#include "cli/load_survey.hpp"
#include "file/edit_keys.hpp"
#include "file/key_changes.hpp"
#include "file/rewrite_survey.hpp"
#include "file/save_survey.hpp"

namespace doorcard {
namespace {

using Json = nlohmann::ordered_json;

EntryEdit edit_of(const SetOptions& options) {
    EntryEdit edit;
    edit.address = options.address;
    edit.kind = options.add ? EntryEdit::Kind::add : options.remove ? EntryEdit::Kind::remove : EntryEdit::Kind::change;
    edit.mentions = options.take_along ? Mentions::take_along : Mentions::refuse;
    for (const std::string& key : options.keys) {
        const std::size_t sign = key.find('=');
        edit.keys.push_back({key.substr(0, sign), key.substr(sign + 1)});
    }
    for (const std::string& key : options.unset) edit.keys.push_back({key, std::nullopt});
    return edit;
}

int complain(const SetOptions& options, const std::vector<Complaint>& complaints, std::ostream& err) {
    for (const Complaint& complaint : complaints)
        err << options.address << ": " << complaint.wrong << "; " << complaint.right << '\n';
    return exit_usage;
}

std::string what_word(KeyChange::What what) {
    return what == KeyChange::What::added ? "added" : what == KeyChange::What::removed ? "removed" : "changed";
}

Json or_null(const std::optional<std::string>& text) { return text ? Json(*text) : Json(); }

void print_json(const std::string& file, const std::vector<KeyChange>& changes, std::ostream& out) {
    Json list = Json::array();
    for (const KeyChange& change : changes)
        list.push_back({{"what", what_word(change.what)},
                        {"of", change.of},
                        {"key", change.key.empty() ? Json() : Json(change.key)},
                        {"was", or_null(change.was)},
                        {"now", or_null(change.now)}});
    const Json files = changes.empty() ? Json::array() : Json::array({file});
    out << Json{{"files", files}, {"changes", list}}.dump(2, ' ', false, Json::error_handler_t::replace) << '\n';
}

Message change_words(const KeyChange& change) {
    if (change.what == KeyChange::What::added) return {tr("{0} added"), {change.of}};
    if (change.what == KeyChange::What::removed) return {tr("{0} taken out"), {change.of}};
    const Message nothing{tr("nothing"), {}};
    const auto or_nothing = [&](const std::optional<std::string>& text) -> Message::Part {
        if (text) return *text;
        return nothing;
    };
    return {tr("{0} {1}: {2}, was {3}"), {change.of, change.key, or_nothing(change.now), or_nothing(change.was)}};
}

void print_text(const std::string& file, const std::vector<KeyChange>& changes, std::ostream& out, const Words& words) {
    for (const KeyChange& change : changes) out << words.say(change_words(change)) << '\n';
    out << words.say(changes.empty() ? Message{tr("{0}: says that already; left as it was"), {file}}
                                     : Message{tr("{0}: saved"), {file}})
        << '\n';
}

}  // namespace

int run_set(const SetOptions& options, std::ostream& out, std::ostream& err, const Words& words) {
    const auto loaded = load_text(options.file, err);
    if (!loaded || !rules_hold(options.rules, loaded->survey.heading.rules.value_or(usual_edition), err))
        return exit_input;
    const auto after = edited(loaded->survey, edit_of(options));
    if (!after) return complain(options, after.error(), err);
    const std::string text = spliced(loaded->text, loaded->survey, *after);
    const auto read = read_survey({options.file, text});
    if (!read) return complain(options, read.error(), err);
    if (!(read->survey == *after))
        throw NotWhatWasMeant("the edited text does not read as it was meant; it is not saved");
    if (text != loaded->text) {
        try {
            save_survey(options.file, loaded->text, text);
        } catch (const NotSaved& refusal) {
            err << options.file << ": " << words.say(refusal.why) << '\n';
            return exit_output;
        } catch (const std::system_error& error) {
            err << options.file << ": " << error.code().message() << '\n';
            return exit_output;
        }
    }
    const auto changes = key_changes(loaded->survey, *after);
    if (options.json)
        print_json(options.file, changes, out);
    else
        print_text(options.file, changes, out, words);
    return exit_done;
}

}  // namespace doorcard
