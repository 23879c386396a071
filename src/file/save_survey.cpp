// SPDX-License-Identifier: MIT
#include "file/save_survey.hpp"

#include "base/file_lock.hpp"
#include "base/write_whole.hpp"
#include "file/read_text.hpp"

namespace doorcard {
namespace {

void demand_held(const FileLock& lock) {
    if (!lock.is_held()) throw NotSaved({tr("somebody else is saving it at this moment; try again"), {}});
}

}  // namespace

void save_survey(const std::string& path, std::string_view was, std::string_view text) {
    const FileLock lock(path);
    demand_held(lock);
    const auto now = read_text(path);
    if (!now || now->bytes != was)
        throw NotSaved({tr("somebody else has changed it since it was read; it was left alone"), {}});
    sweep_temporaries(folder_of(target_of(path)));
    write_whole(path, text);
}

void save_new_survey(const std::string& path, std::string_view text) {
    const FileLock lock(path);
    demand_held(lock);
    write_whole(path, text, Existing::refuse);
}

}  // namespace doorcard
