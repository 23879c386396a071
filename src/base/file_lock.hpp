// SPDX-License-Identifier: MIT
#pragma once
#include <string>

namespace doorcard {

/// A lock on a file that several programs may want to save: a side file `.NAME.lock` beside it, held from the making of
/// this to its end, and taken away then. A side file that nobody holds, left by a program that was killed, is no
/// obstacle. Waits a little for a holder that is about to end; `is_held` is false where that one did not. Throws
/// std::system_error where the folder cannot be written.
class FileLock {
public:
    explicit FileLock(const std::string& path);
    FileLock(const FileLock&) = delete;
    FileLock& operator=(const FileLock&) = delete;
    ~FileLock();
    bool is_held() const { return descriptor_ >= 0; }
    static std::string side_file_of(const std::string& path);

private:
    bool try_to_take();

    std::string side_file_;
    int descriptor_ = -1;
};

}  // namespace doorcard
