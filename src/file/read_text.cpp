// SPDX-License-Identifier: MIT
#include "file/read_text.hpp"

#include <fcntl.h>
#include <unistd.h>

#include <cerrno>
#include <system_error>

#include "file/key_scan.hpp"

namespace doorcard {
namespace {

/// An open file, closed at the end.
class OpenFile {
public:
    explicit OpenFile(const std::string& path) : descriptor_(::open(path.c_str(), O_RDONLY | O_CLOEXEC)) {}
    OpenFile(const OpenFile&) = delete;
    OpenFile& operator=(const OpenFile&) = delete;
    ~OpenFile() {
        if (is_open()) ::close(descriptor_);
    }
    bool is_open() const { return descriptor_ >= 0; }

    /// Appends some of what is left; false at the end, or where there is an error in errno.
    bool read_more(std::string& bytes) {
        constexpr std::size_t piece = 1 << 20;
        const std::size_t before = bytes.size();
        bytes.resize(before + piece);
        ssize_t count = 0;
        do {
            count = ::read(descriptor_, bytes.data() + before, piece);
        } while (count < 0 && errno == EINTR);
        bytes.resize(before + static_cast<std::size_t>(count > 0 ? count : 0));
        if (count == 0) errno = 0;
        return count > 0;
    }

private:
    int descriptor_;
};

tl::unexpected<std::vector<Complaint>> unreadable(int error) {
    return tl::unexpected(std::vector{
        Complaint{{}, "cannot be read: " + std::generic_category().message(error), "name a survey file that can be"}});
}

}  // namespace

Outcome<SourceText> read_text(const std::string& path) {
    OpenFile file(path);
    if (!file.is_open()) return unreadable(errno);
    SourceText text{path, {}};
    while (text.bytes.size() <= most_bytes && file.read_more(text.bytes)) {
    }
    if (text.bytes.size() > most_bytes) return text;  // refused by whoever reads it
    if (errno == EISDIR) return unreadable(errno);
    if (errno != 0) throw std::system_error(errno, std::generic_category(), path);
    return text;
}

}  // namespace doorcard
