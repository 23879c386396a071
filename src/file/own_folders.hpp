// SPDX-License-Identifier: MIT
#pragma once
#include <string>
#include <vector>

namespace doorcard {

/// What the environment says of folders: XDG_CONFIG_HOME, XDG_STATE_HOME, HOME; empty where it says nothing.
struct FolderVariables {
    std::string config_home, state_home, home;
};

/// Where what is no survey goes, after the XDG Base Directory Specification: a variable that is unset or no absolute
/// path counts as not there. Empty where there is no home either: then nothing is kept.
std::string settings_file(const FolderVariables&);  // as `~/.config/doorcard/settings.json`
std::string state_folder(const FolderVariables&);   // as `~/.local/state/doorcard`

/// Where the examples may be, the likeliest first: as installed beside a program at that path, and in the source tree
/// that it was built in.
std::vector<std::string> example_folders(const std::string& program);

}  // namespace doorcard
