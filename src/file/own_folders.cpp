// SPDX-License-Identifier: MIT
#include "file/own_folders.hpp"

#include "base/write_whole.hpp"

namespace doorcard {
namespace {

std::string absolute(const std::string& variable) { return variable.starts_with('/') ? variable : std::string(); }

/// The folder that the variable names, or the usual one below home.
std::string ours(const std::string& variable, const std::string& home, const char* usual) {
    if (!absolute(variable).empty()) return variable + "/doorcard";
    return absolute(home).empty() ? std::string() : home + usual + "/doorcard";
}

}  // namespace

std::string settings_file(const FolderVariables& variables) {
    const std::string folder = ours(variables.config_home, variables.home, "/.config");
    return folder.empty() ? folder : folder + "/settings.json";
}

std::string state_folder(const FolderVariables& variables) {
    return ours(variables.state_home, variables.home, "/.local/state");
}

std::vector<std::string> example_folders(const std::string& program) {
    const std::string above = folder_of(program) + "/..";
    return {above + "/share/doc/doorcard/examples", above + "/../examples"};
}

}  // namespace doorcard
