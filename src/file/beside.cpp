// SPDX-License-Identifier: MIT
#include "file/beside.hpp"

#include <fcntl.h>
#include <fmt/format.h>
#include <sys/stat.h>
#include <unistd.h>

#include "base/write_whole.hpp"

namespace doorcard {
namespace {

/// With the mode of the survey, which may be private.
void make_like(const std::string& beside, const std::string& survey) {
    struct stat status {};
    if (::stat(survey.c_str(), &status) != 0) return;
    const int made = ::open(beside.c_str(), O_WRONLY | O_CREAT | O_EXCL | O_CLOEXEC | O_NOFOLLOW, 0600);
    if (made < 0) return;
    ::fchmod(made, (status.st_mode & 07777) | S_IWUSR);
    ::close(made);
}

}  // namespace

std::string file_beside(const std::string& survey, std::string_view what) {
    const std::string target = target_of(survey);
    return fmt::format("{}/.{}.{}", folder_of(target), target.substr(target.rfind('/') + 1), what);
}

void write_beside(const std::string& survey, std::string_view what, std::string_view bytes) {
    const std::string beside = file_beside(survey, what);
    make_like(beside, survey);
    write_whole(beside, bytes);
}

}  // namespace doorcard
