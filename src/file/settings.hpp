// SPDX-License-Identifier: MIT
#pragma once
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace doorcard {

/// What the window remembers from one time to the next.
struct Settings {
    std::vector<std::string> recent;  ///< paths of surveys, the newest first, at most 12
    double scale = 1;
    std::string theme = "system";  ///< or light, dark, contrast
    std::string language;          ///< empty: that of the surroundings
    std::string units = "feet";    ///< or metres
    int width = 1360, height = 900;
    std::optional<std::string> last_folder;
    bool operator==(const Settings&) const = default;
};

/// Read leniently: what is missing, unknown or broken is as at the first start.
Settings read_settings(std::string_view text);
std::string settings_text(const Settings&);
/// With this path as the newest.
Settings with_recent(Settings, const std::string& path);

}  // namespace doorcard
