// SPDX-License-Identifier: MIT
// The program killed while it saves: at every system call that it makes from its first look at the lock on, and at
// times drawn by chance. The file is the old one or the new one, whole, each time.
#include <fcntl.h>
#include <signal.h>
#include <sys/ptrace.h>
#include <sys/stat.h>
#include <sys/syscall.h>
#include <sys/wait.h>
#include <unistd.h>

#include <algorithm>
#include <chrono>
#include <optional>
#include <random>
#include <thread>

#include "cli/ran_program.hpp"

namespace {

namespace fs = std::filesystem;

std::string house(int amps) {
    return "format = 1\n[[panel]]\nid = \"M\"\n[[breaker]]\npanel = \"M\"\nspaces = [5]\namps = " +
           std::to_string(amps) + "\n# " + std::string(20'000, 'x') + "\n";
}

/// `doorcard set FILE breaker:M:5 amps=15` as a child; traced, it stops before it begins.
pid_t start(const fs::path& file, bool is_traced) {
    const pid_t child = ::fork();
    if (child != 0) return child;
    const int nowhere = ::open("/dev/null", O_RDWR);
    ::dup2(nowhere, 1), ::dup2(nowhere, 2);
    if (is_traced && ::ptrace(PTRACE_TRACEME, 0, nullptr, nullptr) != 0) ::_exit(99);
    ::execl(DOORCARD_BIN "/doorcard", "doorcard", "set", file.c_str(), "breaker:M:5", "amps=15", nullptr);
    ::_exit(98);
}

/// The number of the system call that a stopped child enters; nullopt where it leaves one.
std::optional<std::uint64_t> entered(pid_t child) {
    __ptrace_syscall_info info{};
    if (::ptrace(PTRACE_GET_SYSCALL_INFO, child, sizeof info, &info) <= 0) return std::nullopt;
    return info.op == PTRACE_SYSCALL_INFO_ENTRY ? std::optional<std::uint64_t>(info.entry.nr) : std::nullopt;
}

struct Stops {
    int all = 0;         // how many there were until the end, or until the kill
    int first_lock = 0;  // the stop at which it first asks for a lock
    bool ended = false;
};

/// Runs the program from stop to stop, two at each system call, and kills it at the one of that number.
Stops run_until(const fs::path& file, int last) {
    const pid_t child = start(file, true);
    Stops stops;
    int status = 0;
    REQUIRE(::waitpid(child, &status, 0) == child);
    ::ptrace(PTRACE_SETOPTIONS, child, nullptr, PTRACE_O_TRACESYSGOOD);
    while (WIFSTOPPED(status)) {
        if (const auto call = entered(child); call == SYS_flock && stops.first_lock == 0) stops.first_lock = stops.all;
        if (stops.all == last)
            ::kill(child, SIGKILL);
        else
            ++stops.all, ::ptrace(PTRACE_SYSCALL, child, nullptr, nullptr);
        REQUIRE(::waitpid(child, &status, 0) == child);
    }
    stops.ended = WIFEXITED(status) && WEXITSTATUS(status) == 0;
    return stops;
}

#ifdef __SANITIZE_ADDRESS__
constexpr bool is_sanitized =
    true;  // a traced program cannot look for its leaks, and hundreds of its starts take minutes
#else
constexpr bool is_sanitized = false;
#endif

bool may_trace() {
    const pid_t child = ::fork();
    if (child == 0) ::_exit(::ptrace(PTRACE_TRACEME, 0, nullptr, nullptr) == 0 ? 0 : 1);
    int status = 0;
    ::waitpid(child, &status, 0);
    return WIFEXITED(status) && WEXITSTATUS(status) == 0;
}

struct Left {
    int old_files = 0, new_files = 0;
    /// The file is one of both, whole; then it is the old one again.
    void look_at(const fs::path& file) {
        const std::string text = file_text(file);
        const bool is_old = text == house(20), is_new = text == house(15);
        REQUIRE((is_old || is_new));
        ++(is_old ? old_files : new_files);
        write_file(file, house(20));
    }
};

/// What killed saves have left goes with the next save, once it is old.
void sweep_all(const fs::path& folder) {
    for (const auto& entry : fs::directory_iterator(folder))
        fs::last_write_time(entry.path(), fs::file_time_type::clock::now() - std::chrono::hours(1));
    REQUIRE(ran(folder, "doorcard set h.toml breaker:M:5 amps=15").status == 0);
    REQUIRE(std::distance(fs::directory_iterator(folder), fs::directory_iterator()) == 1);
    write_file(folder / "h.toml", house(20));
}

}  // namespace

TEST_CASE("killed: at every system call of a save the file is the old one or the new one, whole") {
    if (is_sanitized || !may_trace()) {
        MESSAGE("skipped: no program may be traced here");
        return;
    }
    const TemporaryFolder folder;
    const fs::path file = folder / "h.toml";
    write_file(file, house(20));
    const Stops whole = run_until(file, -1);
    REQUIRE(whole.ended);
    REQUIRE(whole.first_lock > 0);
    REQUIRE(file_text(file) == house(15));
    write_file(file, house(20));
    Left left;
    for (int stop = whole.first_lock;; ++stop) {
        CAPTURE(stop);
        if (run_until(file, stop).ended) break;
        left.look_at(file);
        if (stop % 10 == 0) sweep_all(folder.path());
    }
    MESSAGE(left.old_files << " times the old file, " << left.new_files << " times the new one");
    CHECK(left.old_files >= 10);
    CHECK(left.new_files >= 3);
    write_file(file, house(20));
    sweep_all(folder.path());
}

TEST_CASE("killed: at any time") {
    if (is_sanitized) {
        MESSAGE("skipped: the other build kills it");
        return;
    }
    const TemporaryFolder folder;
    const fs::path file = folder / "h.toml";
    write_file(file, house(20));
    const auto begin = std::chrono::steady_clock::now();
    REQUIRE(ran(folder.path(), "doorcard set h.toml breaker:M:5 amps=15").status == 0);
    const auto longest =
        std::chrono::duration_cast<std::chrono::microseconds>(std::chrono::steady_clock::now() - begin);
    write_file(file, house(20));
    std::mt19937 engine(4);
    Left left;
    constexpr int kills = 300;
    for (int i = 0; i < kills; ++i) {
        const pid_t child = start(file, false);
        std::this_thread::sleep_for(std::chrono::microseconds(engine() % static_cast<unsigned>(longest.count())));
        ::kill(child, SIGKILL);
        int status = 0;
        REQUIRE(::waitpid(child, &status, 0) == child);
        left.look_at(file);
    }
    CHECK(left.old_files + left.new_files == kills);
    CHECK(left.old_files > 0);
}
