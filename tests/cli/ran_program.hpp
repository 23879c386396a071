// SPDX-License-Identifier: MIT
#pragma once
#include <doctest/doctest.h>
#include <stdlib.h>
#include <sys/wait.h>

#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <string>

/// The text of a file; empty where there is none.
inline std::string file_text(const std::filesystem::path& path) {
    std::ifstream in(path, std::ios::binary);
    return {std::istreambuf_iterator<char>(in), {}};
}

inline void write_file(const std::filesystem::path& path, const std::string& text) {
    std::filesystem::create_directories(path.parent_path());
    std::ofstream(path, std::ios::binary) << text;
}

/// A folder of its own, gone at the end.
class TemporaryFolder {
public:
    TemporaryFolder() {
        std::string name = (std::filesystem::temp_directory_path() / "doorcard.XXXXXX").string();
        REQUIRE(::mkdtemp(name.data()) != nullptr);
        path_ = name;
    }
    TemporaryFolder(const TemporaryFolder&) = delete;
    TemporaryFolder& operator=(const TemporaryFolder&) = delete;
    ~TemporaryFolder() { std::filesystem::remove_all(path_); }
    std::filesystem::path operator/(const std::string& name) const { return path_ / name; }
    const std::filesystem::path& path() const { return path_; }

private:
    std::filesystem::path path_;
};

/// What a command line left behind.
struct Ran {
    int status = -1;  ///< -1: it did not end by itself
    std::string output, errors;
};

/// Runs a shell command line in a folder, with the built doorcard first on the path: English, no colour, no date of
/// today. `before` stands before it: variables of the environment.
inline Ran ran(const std::filesystem::path& folder, const std::string& command, const std::string& before = "") {
    const TemporaryFolder beside;
    const std::string line = "cd '" + folder.string() +
                             "' && export PATH='" DOORCARD_BIN
                             "':\"$PATH\" LC_ALL=C NO_COLOR=1 SOURCE_DATE_EPOCH=0; unset LANGUAGE; " +
                             before + "\n" + command;
    const std::string script = (beside / "run").string();
    write_file(script, line + "\n");
    const int status = std::system(
        ("sh '" + script + "' >'" + (beside / "out").string() + "' 2>'" + (beside / "err").string() + "' </dev/null")
            .c_str());
    return {WIFEXITED(status) ? WEXITSTATUS(status) : -1, file_text(beside / "out"), file_text(beside / "err")};
}
