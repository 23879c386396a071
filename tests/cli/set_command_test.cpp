// SPDX-License-Identifier: MIT
#include <sys/stat.h>
#include <unistd.h>

#include <nlohmann/json.hpp>

#include "base/file_lock.hpp"
#include "cli/ran_program.hpp"

using namespace doorcard;

namespace {

const std::string house =
    "format = 1\n\n"
    "[[panel]]\nid = \"MAIN\"\nspaces = 20  # counted\n\n"
    "# the kitchen\n"
    "[[breaker]]\npanel = \"MAIN\"\nspaces = [5]\namps = 20   # as marked\n\n"
    "[[breaker]]\npanel = \"MAIN\"\nspaces = [7]\n\n"
    "[[circuit]]\nid = \"kitchen\"\nbreaker = \"MAIN:5\"\nwire = { size = \"12\", metal = \"cu\" }\n\n"
    "[[reading]]\nof = \"breaker:MAIN:5/A\"\namps = 11.0\n";

/// A folder with the house in it.
struct Kept {
    TemporaryFolder folder;
    Kept() { write_file(file(), house); }
    std::filesystem::path file() const { return folder / "h.toml"; }
    std::string text() const { return file_text(file()); }
    Ran set(const std::string& rest) const { return ran(folder.path(), "doorcard set h.toml " + rest); }
    std::ptrdiff_t files() const {
        return std::distance(std::filesystem::directory_iterator(folder.path()), std::filesystem::directory_iterator());
    }
};

std::string replaced(std::string text, const std::string& from, const std::string& to) {
    for (std::size_t at = text.find(from); at != std::string::npos; at = text.find(from, at + to.size()))
        text.replace(at, from.size(), to);
    return text;
}

}  // namespace

TEST_CASE("set: one value is one value of the text, and no other byte") {
    const Kept place;
    const Ran left = place.set("breaker:MAIN:5 amps=15");
    CHECK(left.output == "breaker:MAIN:5 amps: 15, was 20\nh.toml: saved\n");
    CHECK(left.status == 0);
    CHECK(place.text() == replaced(house, "amps = 20", "amps = 15"));
    CHECK(place.files() == 1);  // neither lock nor temporary is left
}

TEST_CASE("set: a key that is there in another form of number keeps that form") {
    const Kept place;
    CHECK(place.set("reading:1 amps=12").status == 0);
    CHECK(place.text() == replaced(house, "11.0", "12.0"));
}

TEST_CASE("set: keys within a table, new ones, and ones that go") {
    const Kept place;
    CHECK(place.set("circuit:kitchen wire.size=10 wire.length_ft=62 'purpose=Counter, \"east\"' --unset wire.metal")
              .status == 0);
    CHECK(place.text() == replaced(house, "wire = { size = \"12\", metal = \"cu\" }\n",
                                   "wire = { size = \"10\", length_ft = 62 }\npurpose = \"Counter, \\\"east\\\"\"\n"));
}

TEST_CASE("set: a breaker that moves takes along what names it by its place") {
    const Kept place;
    CHECK(place.set("breaker:MAIN:5 spaces=9").status == 0);
    CHECK(place.text() == replaced(replaced(house, "[5]", "[9]"), "MAIN:5", "MAIN:9"));
}

TEST_CASE("set: a place that is taken, an id, and what is named, are refused with the reason") {
    const Kept place;
    CHECK(place.set("breaker:MAIN:5 spaces=7").errors ==
          "breaker:MAIN:5: breaker \"MAIN:7\" sits there; move that one first, or swap the two\n");
    CHECK(place.set("circuit:kitchen id=k").errors ==
          "circuit:kitchen: an id in the file never changes; add a new entry, and take this one out\n");
    CHECK(place.set("breaker:MAIN:5 --remove").errors ==
          "breaker:MAIN:5: \"MAIN:5\" is named by circuit \"kitchen\", reading 1; take it out there first, or take "
          "them along\n");
    CHECK(place.set("breaker:MAIN:5 spaces=21").status == 2);
    CHECK(place.text() == house);
}

TEST_CASE("set: wrong values are told in the manner of the file") {
    const Kept place;
    CHECK(place.set("breaker:MAIN:5 ampz=3").errors ==
          "breaker:MAIN:5: unknown key \"ampz\" in [[breaker]]; did you mean \"amps\"?\n");
    CHECK(place.set("breaker:MAIN:5 amps=0").errors ==
          "breaker:MAIN:5: \"amps\" in [[breaker]] is 0; write amps = number, A, at least 1\n");
    CHECK(
        place.set("circuit:kitchen breaker=MAIN:6")
            .errors.starts_with(
                "circuit:kitchen: breaker \"MAIN:6\" of circuit \"kitchen\" is not in the file; did you mean \"MAIN:"));
    CHECK(place.set("braker:MAIN:5 amps=3").errors ==
          "braker:MAIN:5: there is no kind \"braker\" in a survey; the nearest is \"breaker\"\n");
    CHECK(place.set("breaker:MAIN:55 amps=3").status == 2);
    CHECK(place.set("breaker:MAIN:5 --unset panel").status == 2);
    CHECK(place.set("breaker:MAIN:5 amps").status == 2);
    CHECK(place.text() == house);
}

TEST_CASE("set: an entry added stands behind the last of its kind, one taken out goes with its remark") {
    const Kept place;
    CHECK(place.set("breaker --add panel=MAIN spaces=2,4 amps=30 guards=arc,ground").status == 0);
    const std::string added =
        "[[breaker]]\npanel = \"MAIN\"\nspaces = [2, 4]\namps = 30\nguards = [\"arc\", \"ground\"]\n\n";
    CHECK(place.text() == replaced(house, "[[circuit]]", added + "[[circuit]]"));
    CHECK(place.set("breaker:MAIN:2+4 --remove").status == 0);
    CHECK(place.text() == house);
    CHECK(place.set("breaker:MAIN:5 --remove --take-along").status == 0);
    CHECK(place.text() ==
          "format = 1\n\n[[panel]]\nid = \"MAIN\"\nspaces = 20  # counted\n\n"
          "[[breaker]]\npanel = \"MAIN\"\nspaces = [7]\n\n"
          "[[circuit]]\nid = \"kitchen\"\nwire = { size = \"12\", metal = \"cu\" }\n");
}

TEST_CASE("set: what it did, as JSON; what the file says already is not saved again") {
    const Kept place;
    const auto json = nlohmann::json::parse(place.set("breaker:MAIN:5 amps=15 --json").output);
    CHECK(json == nlohmann::json::parse(R"({"files": ["h.toml"], "changes":
        [{"what": "changed", "of": "breaker:MAIN:5", "key": "amps", "was": "20", "now": "15"}]})"));
    const auto written = std::filesystem::last_write_time(place.file());
    CHECK(place.set("breaker:MAIN:5 amps=15").output == "h.toml: says that already; left as it was\n");
    CHECK(std::filesystem::last_write_time(place.file()) == written);
    CHECK(nlohmann::json::parse(place.set("breaker:MAIN:5 amps=15 --json").output)["files"].empty());
}

TEST_CASE("set: a survey that is wrong is not edited") {
    const Kept place;
    write_file(place.file(), house + "[[room]]\n");
    CHECK(place.set("breaker:MAIN:5 amps=15").status == 3);
    CHECK(ran(place.folder.path(), "doorcard set nowhere.toml breaker:MAIN:5 amps=15").status == 3);
}

TEST_CASE("set: links stay, and so does the mode of what they lead to") {
    const Kept place;
    std::filesystem::create_directory(place.folder / "below");
    std::filesystem::rename(place.file(), place.folder / "below/real.toml");
    std::filesystem::create_symlink("below/real.toml", place.file());
    REQUIRE(::chmod((place.folder / "below/real.toml").c_str(), 0640) == 0);
    CHECK(place.set("breaker:MAIN:5 amps=15").status == 0);
    CHECK(std::filesystem::is_symlink(place.file()));
    CHECK(file_text(place.folder / "below/real.toml").find("amps = 15") != std::string::npos);
    CHECK((std::filesystem::status(place.folder / "below/real.toml").permissions() & std::filesystem::perms::all) ==
          std::filesystem::perms(0640));
}

TEST_CASE("set: while somebody else saves, it waits a moment and gives up with the reason") {
    const Kept place;
    const FileLock lock(place.file().string());
    REQUIRE(lock.is_held());
    const Ran left = place.set("breaker:MAIN:5 amps=15");
    CHECK(left.status == 4);
    CHECK(left.errors == "h.toml: somebody else is saving it at this moment; try again\n");
    CHECK(place.text() == house);
    CHECK(ran(place.folder.path(), "rm h.toml; doorcard new h.toml").status == 4);
}

TEST_CASE("set: a lock that a killed program left is no obstacle") {
    const Kept place;
    write_file(FileLock::side_file_of(place.file().string()), "");
    CHECK(place.set("breaker:MAIN:5 amps=15").status == 0);
    CHECK(place.files() == 1);
}

TEST_CASE("set: a disk that is full leaves the old file whole") {
    const Kept place;
    const std::string large = house + "# " + std::string(100'000, 'x') + "\n";
    write_file(place.file(), large);
    const Ran limited =
        ran(place.folder.path(), "doorcard set h.toml breaker:MAIN:5 amps=15", "trap '' XFSZ; ulimit -f 16");
    CHECK(limited.status == 4);
    CHECK(limited.errors == "h.toml: File too large\n");
    CHECK(place.text() == large);
    CHECK(place.files() == 1);
}

TEST_CASE("set: on a small disk that is full") {
    const Kept place;
    std::filesystem::create_directory(place.folder / "disk");
    const std::string mount = "mount -t tmpfs -o size=160k none disk";
    if (ran(place.folder.path(), "unshare -m sh -c '" + mount + "'").status != 0) {
        MESSAGE("skipped: no disk of our own may be mounted here");
        return;
    }
    const std::string large = house + "# " + std::string(100'000, 'x') + "\n";
    write_file(place.file(), large);
    const Ran left =
        ran(place.folder.path(), "unshare -m sh -c '" + mount +
                                     " && cp h.toml disk && doorcard set disk/h.toml breaker:MAIN:5 amps=15; "
                                     "echo $?; cmp h.toml disk/h.toml && ls -A disk'");
    CHECK(left.output == "4\nh.toml\n");
    CHECK(left.errors == "disk/h.toml: No space left on device\n");
}

TEST_CASE("set: a folder closed to writing") {
    const Kept place;
    REQUIRE(::chmod(place.folder.path().c_str(), 0555) == 0);
    const std::string as_nobody = ::geteuid() == 0 ? "setpriv --reuid=65534 --regid=65534 --clear-groups " : "";
    if (ran(place.folder.path(), as_nobody + "doorcard check h.toml").status > 1) {
        MESSAGE("skipped: nobody but root can run the program here");
        return;
    }
    const Ran left = ran(place.folder.path(), as_nobody + "doorcard set h.toml breaker:MAIN:5 amps=15");
    REQUIRE(::chmod(place.folder.path().c_str(), 0755) == 0);
    CHECK(left.status == 4);
    CHECK(left.errors == "h.toml: Permission denied\n");
    CHECK(place.text() == house);
}
