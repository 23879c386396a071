// SPDX-License-Identifier: MIT
#include <algorithm>
#include <cctype>

#include "assess/label_words.hpp"

// Who lives or works there, in English and Spanish. Word lists of common practice, no source; a role or an animal that
// owns a room ('Manager's office', 'Men's room', 'Butler's pantry') says what the room is for, and passes.
namespace doorcard {
namespace {

using WordSet = std::set<std::string_view>;

const WordSet& relations() {
    static const WordSet words = {
        "mom",         "moms",      "mum",    "mommy",   "mama",    "mother",  "dad",       "dads",
        "daddy",       "papa",      "father", "grandma", "grandpa", "granny",  "nana",      "grandmother",
        "grandfather", "daughter",  "kid",    "kids",    "baby",    "brother", "sister",    "aunt",
        "uncle",       "cousin",    "nephew", "niece",   "wife",    "husband", "boyfriend", "girlfriend",
        "roommate",    "roommates", "abuela", "abuelo",  "madre",   "padre",   "hijo",      "hija",
        "hijos",       "nino",      "nina",   "ninos",   "bebe",    "hermano", "hermana",   "tio",
        "tia",         "primo",     "prima",  "esposa",  "esposo",  "marido",  "suegra",    "suegro"};
    return words;
}

const WordSet& tenancies() {
    static const WordSet words = {"tenant",    "tenants",   "renter",     "renters",      "rental",
                                  "rented",    "lodger",    "lodgers",    "boarder",      "boarders",
                                  "lessee",    "leased",    "landlord",   "sublet",       "roomer",
                                  "inquilino", "inquilina", "inquilinos", "arrendatario", "arrendado",
                                  "alquiler",  "alquilado", "rentado",    "renta",        "casero"};
    return words;
}

const WordSet& passing_uses() {
    static const WordSet words = {"temporary",   "temporarily", "currently", "christmas", "xmas",      "x-mas",
                                  "halloween",   "holiday",     "holidays",  "today",     "tonight",   "borrowed",
                                  "provisional", "temporal",    "navidad",   "navideno",  "navidenas", "hoy"};
    return words;
}

// Given names that are no common word, place or street: those count wherever they stand.
const WordSet& given_names() {
    static const WordSet words = {
        "aaron",   "adam",      "alan",    "alex",     "alice",    "amanda",    "amy",       "andrea",    "andrew",
        "andy",    "angela",    "anna",    "anne",     "anthony",  "ashley",    "barbara",   "ben",       "benjamin",
        "beth",    "betty",     "bob",     "bobby",    "brandon",  "brenda",    "brian",     "bruce",     "carl",
        "carol",   "catherine", "cathy",   "charlie",  "chloe",    "chris",     "christina", "cindy",     "claire",
        "craig",   "cynthia",   "dan",     "daniel",   "danny",    "dave",      "david",     "deborah",   "debbie",
        "dennis",  "diana",     "diane",   "donna",    "doug",     "edward",    "elena",     "elizabeth", "ella",
        "ellen",   "emily",     "emma",    "eric",     "ethan",    "evan",      "gary",      "george",    "greg",
        "gregory", "hannah",    "harold",  "harry",    "helen",    "henry",     "ian",       "isabella",  "jacob",
        "jake",    "james",     "jamie",   "jane",     "janet",    "jason",     "jeff",      "jeffrey",   "jen",
        "jenny",   "jennifer",  "jeremy",  "jerry",    "jessica",  "jill",      "jim",       "jimmy",     "joan",
        "joe",     "joey",      "john",    "johnny",   "jonathan", "joseph",    "josh",      "joshua",    "judy",
        "julia",   "julie",     "justin",  "karen",    "kate",     "katie",     "kathy",     "keith",     "kelly",
        "ken",     "kevin",     "kim",     "kyle",     "larry",    "laura",     "lauren",    "leah",      "liam",
        "linda",   "lisa",      "lori",    "lucas",    "lucy",     "luke",      "maggie",    "margaret",  "martha",
        "martin",  "mary",      "matt",    "matthew",  "megan",    "melissa",   "michael",   "michelle",  "mike",
        "mia",     "molly",     "nancy",   "natalie",  "nathan",   "nick",      "nicholas",  "nicole",    "noah",
        "oliver",  "olivia",    "pam",     "pamela",   "patricia", "patrick",   "paul",      "peggy",     "peter",
        "phil",    "philip",    "phyllis", "rachel",   "ralph",    "rebecca",   "richard",   "rick",      "robert",
        "roger",   "ron",       "ronald",  "roy",      "ruth",     "ryan",      "sam",       "samantha",  "samuel",
        "sarah",   "scott",     "sean",    "sharon",   "sophia",   "sophie",    "stacy",     "stephanie", "stephen",
        "steve",   "steven",    "sue",     "susan",    "tammy",    "ted",       "teresa",    "terry",     "thomas",
        "tim",     "timmy",     "timothy", "tina",     "todd",     "tom",       "tommy",     "tony",      "tracy",
        "tyler",   "vincent",   "walter",  "wendy",    "william",  "zach",      "alberto",   "alejandro", "alejandra",
        "ana",     "andres",    "antonio", "beatriz",  "camila",   "carlos",    "carmen",    "claudia",   "diego",
        "eduardo", "enrique",   "esteban", "felipe",   "fernando", "francisco", "gabriela",  "guillermo", "gustavo",
        "hector",  "ignacio",   "javier",  "jorge",    "jose",     "josefina",  "juan",      "juana",     "lucia",
        "luis",    "luisa",     "manuel",  "marcos",   "maria",    "mario",     "marta",     "mateo",     "miguel",
        "monica",  "pablo",     "paola",   "patricio", "pedro",    "rafael",    "ramon",     "raul",      "ricardo",
        "roberto", "rodrigo",   "sergio",  "silvia",   "sofia",    "valentina", "veronica",  "ximena"};
    return words;
}

// Owners that say what a place is for, and never who is there now.
const WordSet& roles() {
    static const WordSet words = {
        "men",       "women",     "ladies",    "lady",           "gent",       "gents",     "gentlemen", "man",
        "woman",     "boy",       "boys",      "girl",           "girls",      "children",  "child",     "guest",
        "guests",    "visitor",   "visitors",  "owner",          "owners",     "manager",   "managers",  "director",
        "janitor",   "caretaker", "custodian", "superintendent", "porter",     "guard",     "driver",    "drivers",
        "chef",      "cook",      "butler",    "maid",           "nurse",      "nurses",    "doctor",    "doctors",
        "teacher",   "teachers",  "student",   "students",       "judge",      "clerk",     "cashier",   "engineer",
        "operator",  "worker",    "workers",   "employee",       "employees",  "staff",     "crew",      "player",
        "players",   "coach",     "referee",   "pastor",         "minister",   "priest",    "veteran",   "veterans",
        "farmer",    "farmers",   "fisherman", "tailor",         "barber",     "printer",   "welder",    "mechanic",
        "carpenter", "potter",    "artist",    "artists",        "bride",      "groom",     "king",      "queen",
        "prince",    "captain",   "crow",      "widow",          "horse",      "horses",    "dog",       "dogs",
        "cat",       "cats",      "cow",       "cows",           "hen",        "chicken",   "chickens",  "pig",
        "pigs",      "goat",      "sheep",     "building",       "house",      "church",    "school",    "town",
        "city",      "lover",     "surgeon",   "dentist",        "pharmacist", "master",    "architect", "firefighter",
        "chief",     "president", "principal", "sexton",         "usher",      "conductor", "stage"};
    return words;
}

const WordSet& short_forms() {  // 's that is a verb: 'it's'
    static const WordSet words = {"it", "that", "what", "there", "here", "let", "who"};
    return words;
}

const WordSet& ways_and_places() {  // a name before these is that of a street, a building or a trade name of a part
    static const WordSet words = {
        "street",  "st",    "road",     "rd",     "avenue",    "ave",       "lane",    "ln",       "drive",
        "way",     "court", "square",   "place",  "boulevard", "blvd",      "terrace", "park",     "hill",
        "bridge",  "gate",  "hall",     "church", "chapel",    "cathedral", "school",  "college",  "hospital",
        "library", "tower", "building", "wing",   "creek",     "river",     "lake",    "pond",     "field",
        "farm",    "cross", "crossing", "corner", "market",    "inn",       "day",     "lamp-post"};
    return words;
}

const WordSet& saints() {
    static const WordSet words = {"st",    "saint",   "san", "santa", "santo", "sta",
                                  "calle", "avenida", "av",  "plaza", "paseo", "colonia"};
    return words;
}

// The owner in a possessive: "bob" of "bob's", "kids" of "kids'"; empty for any other word.
std::string owner_of(const std::string& word) {
    if (word.size() > 2 && word.ends_with("'s")) return word.substr(0, word.size() - 2);
    if (word.size() > 2 && word.ends_with("s'")) return word.substr(0, word.size() - 1);
    return "";
}

bool capital(const std::string& written) {
    return !written.empty() && std::isupper(static_cast<unsigned char>(written.front())) != 0;
}

bool names_a_place(const std::vector<LabelWord>& words, std::size_t i) {
    if (i > 0 && saints().contains(words[i - 1].folded)) return true;
    if (i > 1 && words[i].folded == "jill" && words[i - 2].folded == "jack") return true;  // a bath between two rooms
    return i + 1 < words.size() && ways_and_places().contains(words[i + 1].folded);
}

bool forbidden(const std::string& word) {
    return relations().contains(word) || tenancies().contains(word) || passing_uses().contains(word);
}

bool passing(const std::vector<LabelWord>& words, std::size_t i) {
    const std::string& word = words[i].folded;
    const std::string owner = owner_of(word);
    if (forbidden(word) || (!owner.empty() && forbidden(owner))) return !names_a_place(words, i);
    if (word == "now" && i > 0 && words[i - 1].folded == "for") return true;
    if (word == "ahora" && i > 0 && words[i - 1].folded == "por") return true;
    if (given_names().contains(word)) return !names_a_place(words, i);
    if (owner.empty() || names_a_place(words, i)) return false;
    if (given_names().contains(owner)) return true;
    return capital(words[i].written) && !roles().contains(owner) && !short_forms().contains(owner);
}

}  // namespace

std::optional<std::string> transient_word(std::string_view label) {
    const std::vector<LabelWord> words = words_of(label);
    for (std::size_t i = 0; i < words.size(); ++i)
        if (passing(words, i)) return words[i].written;
    return std::nullopt;
}

}  // namespace doorcard
