// SPDX-License-Identifier: MIT
#include "desk/desk.hpp"

namespace doorcard {
namespace {

std::string file_name(const std::string& path) { return path.substr(path.rfind('/') + 1); }

}  // namespace

std::optional<std::size_t> shown_panel(const Desk& desk) {
    const std::size_t at = desk.survey.panels.position(desk.spot.panel);
    return at < desk.survey.panels.size() ? std::optional(at) : std::nullopt;
}

Message title_of(const Desk& desk) {
    if (const auto& title = desk.survey.heading.title; title && !title->empty()) return verbatim(*title);
    if (!desk.file.path.empty()) return verbatim(file_name(desk.file.path));
    return {tr("New survey"), {}};
}

Message standing_of(const Desk& desk) {
    const auto planned = static_cast<double>(desk.notes.plan.changes.size());
    if (!desk.notes.plan.as_found_locked) return {};
    if (planned == 0) return {tr("as found, locked"), {}};
    return {tr("as found, locked; {0:.0f} planned"), {planned}};
}

Message keeping_of(const Desk& desk) {
    if (desk.file.path.empty()) return {tr("all changes kept, no file yet"), {}};
    return {desk.is_changed ? tr("all changes kept, not yet in the file") : tr("all in the file"), {}};
}

}  // namespace doorcard
