// SPDX-License-Identifier: MIT
#include "base/write_whole.hpp"

#include <doctest/doctest.h>
#include <sys/resource.h>
#include <sys/stat.h>
#include <unistd.h>

#include <csignal>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <system_error>

using namespace doorcard;
namespace fs = std::filesystem;

namespace {

/// A folder of its own, gone at the end.
struct Folder {
    fs::path path;
    Folder() {
        std::string name = (fs::temp_directory_path() / "write_whole.XXXXXX").string();
        REQUIRE(::mkdtemp(name.data()) != nullptr);
        path = name;
    }
    Folder(const Folder&) = delete;
    Folder& operator=(const Folder&) = delete;
    ~Folder() {
        std::error_code ignored;
        fs::permissions(path, fs::perms::owner_all, ignored);
        fs::remove_all(path, ignored);
    }
    std::string operator/(const std::string& name) const { return (path / name).string(); }
    std::ptrdiff_t files() const { return std::distance(fs::directory_iterator(path), fs::directory_iterator()); }
};

std::string bytes_of(const std::string& path) {
    std::ifstream file(path, std::ios::binary);
    return {std::istreambuf_iterator<char>(file), std::istreambuf_iterator<char>()};
}

int error_of(const std::string& path, std::string_view bytes, Existing existing = Existing::replace) {
    try {
        write_whole(path, bytes, existing);
    } catch (const std::system_error& error) {
        CHECK(std::string(error.what()).find(path) != std::string::npos);
        return error.code().value();
    }
    return 0;
}

mode_t mode_of(const std::string& path) {
    struct stat status {};
    REQUIRE(::stat(path.c_str(), &status) == 0);
    return status.st_mode & 07777;
}

}  // namespace

TEST_CASE("write_whole: a new file, then other bytes in its place, and nothing else in the folder") {
    const Folder folder;
    write_whole(folder / "a", "first\n");
    CHECK(bytes_of(folder / "a") == "first\n");
    write_whole(folder / "a", std::string(3'000'000, 'x'));
    CHECK(bytes_of(folder / "a").size() == 3'000'000);
    write_whole(folder / "a", "");
    CHECK(bytes_of(folder / "a").empty());
    CHECK(folder.files() == 1);
}

TEST_CASE("write_whole: a new file has the mode that the mask leaves, an old one keeps its own") {
    const Folder folder;
    const mode_t mask = ::umask(027);
    write_whole(folder / "a", "x");
    ::umask(mask);
    CHECK(mode_of(folder / "a") == 0640);
    REQUIRE(::chmod((folder / "a").c_str(), 0604) == 0);
    write_whole(folder / "a", "y");
    CHECK(mode_of(folder / "a") == 0604);
}

TEST_CASE("write_whole: links are followed and stay") {
    const Folder folder;
    fs::create_directory(folder.path / "below");
    write_whole(folder / "below/a", "x");
    fs::create_symlink("below/a", folder.path / "link");
    fs::create_symlink("link", folder.path / "link-to-link");
    write_whole(folder / "link-to-link", "y");
    CHECK(bytes_of(folder / "below/a") == "y");
    CHECK(fs::is_symlink(folder.path / "link-to-link"));
    fs::create_symlink("below/new", folder.path / "dangling");
    write_whole(folder / "dangling", "z");
    CHECK(bytes_of(folder / "below/new") == "z");
}

TEST_CASE("write_whole: a circle of links is an error") {
    const Folder folder;
    fs::create_symlink("b", folder.path / "a");
    fs::create_symlink("a", folder.path / "b");
    CHECK(error_of(folder / "a", "x") == ELOOP);
}

TEST_CASE("write_whole: an existing file is refused where that is asked for, and left alone") {
    const Folder folder;
    write_whole(folder / "a", "old", Existing::refuse);
    CHECK(error_of(folder / "a", "new", Existing::refuse) == EEXIST);
    CHECK(bytes_of(folder / "a") == "old");
    fs::create_symlink("nowhere", folder.path / "dangling");
    CHECK(error_of(folder / "dangling", "new", Existing::refuse) == EEXIST);
    CHECK(folder.files() == 2);
}

TEST_CASE("write_whole: folders, missing folders and files closed to writing") {
    const Folder folder;
    CHECK(error_of(folder / "", "x") == EISDIR);
    CHECK(error_of(folder / "nowhere/a", "x") == ENOENT);
    if (::geteuid() == 0) return;  // nothing is closed to root
    write_whole(folder / "a", "old");
    REQUIRE(::chmod((folder / "a").c_str(), 0444) == 0);
    CHECK(error_of(folder / "a", "new") == EACCES);
    fs::permissions(folder.path, fs::perms::owner_read | fs::perms::owner_exec);
    CHECK(error_of(folder / "b", "new") == EACCES);
    CHECK(bytes_of(folder / "a") == "old");
}

TEST_CASE("write_whole: after a write that fails halfway the old file is whole and no stray file is left") {
    const Folder folder;
    write_whole(folder / "a", "old");
    rlimit before{};
    REQUIRE(::getrlimit(RLIMIT_FSIZE, &before) == 0);
    const rlimit small{4096, before.rlim_max};
    const auto handler = std::signal(SIGXFSZ, SIG_IGN);
    REQUIRE(::setrlimit(RLIMIT_FSIZE, &small) == 0);
    const int error = error_of(folder / "a", std::string(100'000, 'x'));
    REQUIRE(::setrlimit(RLIMIT_FSIZE, &before) == 0);
    std::signal(SIGXFSZ, handler);
    CHECK(error == EFBIG);
    CHECK(bytes_of(folder / "a") == "old");
    CHECK(folder.files() == 1);
}

TEST_CASE("write_whole: a full disk is an error, and a device is written as it is") {
    CHECK(error_of("/dev/full", "x") == ENOSPC);
    CHECK(error_of("/dev/null", "x") == 0);
    CHECK(fs::is_character_file("/dev/null"));
}
