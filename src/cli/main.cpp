// SPDX-License-Identifier: MIT
#include <CLI/CLI.hpp>
#include <cstdlib>
#include <iostream>

#include "cli/commands.hpp"
#include "cli/load_survey.hpp"

namespace {

/// The language of the environment's messages where the library has it, else English.
std::string language_of_environment() {
    for (const char* name : {"LC_ALL", "LC_MESSAGES", "LANG"})
        if (const char* value = std::getenv(name); value && *value)
            return std::string(value).substr(0, 2) == "es" ? "es" : "en";
    return "en";
}

/// The first word is no command.
int no_command(const std::string& word) {
    std::cerr << "doorcard: there is no command '" << word << "'; doorcard --help lists them\n";
    return doorcard::exit_usage;
}

int run_command(int argc, char** argv) {
    CLI::App app("doorcard: panel schedule and load survey tool", "doorcard");
    app.require_subcommand(1);
    app.fallthrough();
    app.set_version_flag("--version", "doorcard " DOORCARD_VERSION ", survey format 1");
    app.footer(
        "Qualified persons only inside a panel: de-energise, lock out, test before touch. Local code and the "
        "authority\n"
        "having jurisdiction decide. Each command: doorcard COMMAND --help");
    std::string language = language_of_environment();
    app.add_option("--language", language, "en or es: the words of sheets and findings")
        ->check(CLI::IsMember({"en", "es"}))
        ->option_text("en|es");
    doorcard::Run run;
    doorcard::add_commands(app, run);
    try {
        app.parse(argc, argv);
    } catch (const CLI::ParseError& error) {
        if (app.get_subcommands().empty() && !app.remaining().empty()) return no_command(app.remaining().front());
        return app.exit(error) == 0 ? doorcard::exit_done : doorcard::exit_usage;
    }
    return run(std::cout, std::cerr, doorcard::Words::in(language));
}

}  // namespace

int main(int argc, char** argv) {
    try {
        const int status = run_command(argc, argv);
        std::cout.flush();
        if (!std::cout) {
            std::cerr << "doorcard: the output could not be written\n";
            return doorcard::exit_output;
        }
        return status;
    } catch (const std::exception& error) {  // a full disk, a read-only folder: what was there is whole
        std::cerr << "doorcard: " << error.what() << '\n';
        return doorcard::exit_output;
    }
}
