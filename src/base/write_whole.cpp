// SPDX-License-Identifier: MIT
#include "base/write_whole.hpp"

#include <fcntl.h>
#include <sys/file.h>
#include <sys/stat.h>
#include <unistd.h>

#include <array>
#include <cerrno>
#include <cstdio>
#include <cstdlib>
#include <ctime>
#include <filesystem>
#include <optional>
#include <random>
#include <system_error>
#include <utility>

namespace doorcard {
namespace {

[[noreturn]] void fail(const std::string& path, int error = errno) {
    throw std::system_error(error, std::generic_category(), path);
}

/// A descriptor, closed at the end.
class Descriptor {
public:
    Descriptor(const std::string& path, int flags, mode_t mode = 0)
        : number_(::open(path.c_str(), flags | O_CLOEXEC, mode)) {}
    Descriptor(Descriptor&& other) noexcept : number_(std::exchange(other.number_, -1)) {}
    Descriptor& operator=(Descriptor&&) = delete;
    ~Descriptor() {
        if (is_open()) ::close(number_);
    }
    bool is_open() const { return number_ >= 0; }
    int number() const { return number_; }
    /// Some file systems say only now that the bytes did not fit.
    bool close() { return ::close(std::exchange(number_, -1)) == 0; }

private:
    int number_;
};

std::optional<struct stat> status_of(const std::string& path) {
    struct stat status {};
    if (::stat(path.c_str(), &status) == 0) return status;
    return std::nullopt;
}

bool is_link(const std::string& path) {
    struct stat status {};
    return ::lstat(path.c_str(), &status) == 0 && S_ISLNK(status.st_mode);
}

void write_all(const Descriptor& file, std::string_view bytes, const std::string& path) {
    while (!bytes.empty()) {
        const ssize_t count = ::write(file.number(), bytes.data(), bytes.size());
        if (count < 0 && errno != EINTR) fail(path);
        if (count > 0) bytes.remove_prefix(static_cast<std::size_t>(count));
    }
}

/// A new file beside the target, in nobody's way; gone at the end unless it became the target.
class Temporary {
public:
    explicit Temporary(const std::string& target) : target_(target), file_(open_beside(target)) {}
    Temporary(const Temporary&) = delete;
    Temporary& operator=(const Temporary&) = delete;
    ~Temporary() {
        if (!path_.empty()) ::unlink(path_.c_str());
    }

    void keep_mode_and_owner(const struct stat& status) {
        if (::fchown(file_.number(), status.st_uid, status.st_gid) != 0 && errno != EPERM) fail(path_);
        if (::fchmod(file_.number(), status.st_mode & 07777) != 0) fail(path_);
    }
    void write(std::string_view bytes) {
        write_all(file_, bytes, target_);
        if (::fsync(file_.number()) != 0 || !file_.close()) fail(target_);
    }
    void become_target(Existing existing) {
        if (existing == Existing::replace ? ::rename(path_.c_str(), target_.c_str()) != 0 : !move_where_nothing_is())
            fail(target_);
        path_.clear();
    }

private:
    /// A link fails where something is there, and leaves it alone; the temporary name goes then.
    bool move_where_nothing_is() {
        if (::renameat2(AT_FDCWD, path_.c_str(), AT_FDCWD, target_.c_str(), RENAME_NOREPLACE) == 0) return true;
        if (errno != EINVAL && errno != ENOSYS) return false;
        return ::link(path_.c_str(), target_.c_str()) == 0 && ::unlink(path_.c_str()) == 0;
    }
    /// As mkostemp, but with the mode that a new file gets.
    Descriptor open_beside(const std::string& target) {
        std::random_device random;
        constexpr int tries = 100;
        for (int i = 0; i < tries; ++i) {
            path_ = folder_of(target) + "/.doorcard-" + std::to_string(random()) + ".new";
            Descriptor file(path_, O_WRONLY | O_CREAT | O_EXCL, 0666);
            if (file.is_open()) {
                ::flock(file.number(), LOCK_EX | LOCK_NB);  // while it is written nobody sweeps it
                return file;
            }
            if (errno != EEXIST) break;
        }
        path_.clear();
        fail(target);
    }

    std::string target_;
    std::string path_;
    Descriptor file_;
};

/// The new name must be on the disk too. Folders that cannot be synced are left to the system.
void sync_folder(const std::string& folder) {
    const Descriptor file(folder, O_RDONLY | O_DIRECTORY);
    if (file.is_open() && ::fsync(file.number()) != 0 && errno != EINVAL && errno != EROFS) fail(folder);
}

void write_through(const std::string& path, std::string_view bytes) {
    const Descriptor file(path, O_WRONLY);
    if (!file.is_open()) fail(path);
    write_all(file, bytes, path);
}

/// `.doorcard-NUMBER.new`
bool is_name_of_temporary(std::string_view name) {
    constexpr std::string_view begin = ".doorcard-", end = ".new";
    if (!name.starts_with(begin) || !name.ends_with(end) || name.size() <= begin.size() + end.size()) return false;
    const std::string_view number = name.substr(begin.size(), name.size() - begin.size() - end.size());
    return number.find_first_not_of("0123456789") == std::string_view::npos;
}

void sweep(const std::string& path) {
    constexpr std::time_t least_age = 60;
    const Descriptor file(path, O_RDONLY | O_NOFOLLOW);
    struct stat status {};
    if (!file.is_open() || ::fstat(file.number(), &status) != 0 || !S_ISREG(status.st_mode)) return;
    const bool is_ours = status.st_uid == ::geteuid(), is_old = std::time(nullptr) - status.st_mtime >= least_age;
    if (is_ours && is_old && ::flock(file.number(), LOCK_EX | LOCK_NB) == 0) ::unlink(path.c_str());
}

}  // namespace

std::string folder_of(const std::string& path) {
    const std::size_t slash = path.rfind('/');
    if (slash == std::string::npos) return ".";
    return slash == 0 ? "/" : path.substr(0, slash);
}

/// Where a link points, also when nothing is there yet.
std::string target_of(std::string path) {
    constexpr int most_links = 40;  // as the system's own limit
    for (int i = 0; is_link(path); ++i) {
        if (i == most_links) fail(path, ELOOP);
        std::array<char, 4096> target{};
        const ssize_t length = ::readlink(path.c_str(), target.data(), target.size());
        if (length < 0) fail(path);
        const std::string to(target.data(), static_cast<std::size_t>(length));
        path = to.starts_with('/') ? to : folder_of(path).append("/").append(to);
    }
    return path;
}

void sweep_temporaries(const std::string& folder) {
    std::error_code ignored;
    for (std::filesystem::directory_iterator at(folder, ignored), end; !ignored && at != end; at.increment(ignored))
        if (is_name_of_temporary(at->path().filename().string())) sweep(at->path().string());
}

void write_whole(const std::string& path, std::string_view bytes, Existing existing) {
    if (existing == Existing::refuse && (status_of(path) || is_link(path))) fail(path, EEXIST);
    const std::string target = target_of(path);
    const auto before = status_of(target);
    if (before && S_ISDIR(before->st_mode)) fail(path, EISDIR);
    if (before && !S_ISREG(before->st_mode)) return write_through(target, bytes);
    if (before && ::access(target.c_str(), W_OK) != 0) fail(path);  // a file closed to writing is not replaced
    Temporary temporary(target);
    if (before) temporary.keep_mode_and_owner(*before);
    temporary.write(bytes);
    temporary.become_target(existing);
    sync_folder(folder_of(target));
}

}  // namespace doorcard
