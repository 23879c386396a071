// SPDX-License-Identifier: MIT
#include "base/file_lock.hpp"

#include <fcntl.h>
#include <sys/file.h>
#include <sys/stat.h>
#include <unistd.h>

#include <cerrno>
#include <chrono>
#include <system_error>
#include <thread>

#include "base/write_whole.hpp"

namespace doorcard {
namespace {

/// True where the path still leads to the open file: whoever held the lock before may have taken the name away.
bool leads_to(const std::string& path, int descriptor) {
    struct stat by_name {
    }, open{};
    return ::stat(path.c_str(), &by_name) == 0 && ::fstat(descriptor, &open) == 0 && by_name.st_ino == open.st_ino &&
           by_name.st_dev == open.st_dev;
}

}  // namespace

std::string FileLock::side_file_of(const std::string& path) {
    const std::string target = target_of(path);
    return folder_of(target) + "/." + target.substr(target.rfind('/') + 1) + ".lock";
}

FileLock::FileLock(const std::string& path) : side_file_(side_file_of(path)) {
    constexpr int tries = 40;
    constexpr auto pause = std::chrono::milliseconds(25);
    for (int i = 0; i < tries && !try_to_take(); ++i) std::this_thread::sleep_for(pause);
}

bool FileLock::try_to_take() {
    descriptor_ = ::open(side_file_.c_str(), O_RDWR | O_CREAT | O_CLOEXEC | O_NOFOLLOW, 0666);
    if (descriptor_ < 0) throw std::system_error(errno, std::generic_category(), side_file_);
    const bool taken = ::flock(descriptor_, LOCK_EX | LOCK_NB) == 0 || errno == ENOLCK || errno == EOPNOTSUPP;
    if (taken && leads_to(side_file_, descriptor_)) return true;
    ::close(descriptor_);
    descriptor_ = -1;
    return false;
}

FileLock::~FileLock() {
    if (!is_held()) return;
    ::unlink(side_file_.c_str());
    ::close(descriptor_);
}

}  // namespace doorcard
