#include "editor/help/help.hpp"

#include <array>

namespace wrenlet::desk {
namespace {

constexpr HelpWord kWords[] = {
    {"to look at", "something about a word wants your decision; each has its ways out"},
    {"good for", "the skills that this word can be asked for"},
    {"not asked for", "skills it is left out of, with the reason"},
    {"parts", "the syllables of a word, or the two words of a compound"},
    {"onset and rime", "c-at: what comes before the vowel, and the vowel with the rest"},
};
constexpr HelpWord kPicture[] = {
    {"picture", "what a child sees for the word; one of your own can be dropped on the window"},
};
constexpr HelpWord kBring[] = {
    {"new", "your unit has nothing like it"},
    {"otherwise", "both have it, and it is said, pictured or recorded in another way"},
    {"take", "bring it into your unit; one Ctrl Z takes all of it back"},
};
constexpr HelpWord kBooth[] = {
    {"take", "what you just said; it is kept untouched"},
    {"clip", "what children hear of it: trimmed, at one loudness"},
    {"demo voice", "a synthesizer that speaks what you have not recorded"},
    {"\"uh\"", "a vowel added to a sound alone, as in \"buh\"; children then can't join it"},
};
constexpr HelpWord kTry[] = {
    {"skill", "one task with one unit of sound, such as rhyme or first sound"},
    {"question", "what a child is asked once; the program's papers call it an item"},
    {"left out", "no child is asked it; it can be asked again at any time"},
    {"fair set", "ten questions or more, so that guessing does not look like knowing"},
};
constexpr HelpWord kHandOut[] = {
    {"pack", "what tablets play: questions, clips and pictures of one unit, never changed again"},
    {"is out", "the pack that each tablet takes when it next starts"},
    {"classroom folder", "the one folder that desk and tablets share, on a stick or a share"},
};
constexpr HelpWord kTablets[] = {
    {"serve", "this computer hands out the game as a page on the classroom's own network"},
    {"code", "lets one tablet join, once, within 5 minutes; after 5 wrong guesses it is gone"},
    {"waiting", "the tablet has the page open and nobody plays"},
    {"refused", "something that came over the network and did not belong; it changed nothing"},
};
constexpr HelpWord kMap[] = {
    {"missed", "many answers point to it; look at it next"},
    {"growing", "sometimes right, sometimes not"},
    {"steady", "right by far more often than guessing would give"},
    {"too little to say", "too few answers to say anything"},
    {"shielded", "an accent does not tell the two sounds apart; it is never called missed"},
};
constexpr HelpWord kChild[] = {
    {"likely range", "where the true share lies, as far as these answers tell"},
    {"guessing", "what picking at random would give; the dotted tick"},
    {"what was chosen", "which sound was taken for the one that was asked"},
};
constexpr HelpWord kTomorrow[] = {
    {"small table", "three or four children who share a gap, with ten minutes for it"},
    {"the arrow", "who misses what the line turns on: theirs is the voice to catch"},
    {"plan anew", "made of the newest answers; a child changes table only where those moved"},
    {"moved by you", "a child whom you put at a table stays there for as long as it stands"},
};
constexpr HelpWord kPapers[] = {
    {"for the family", "plain words, something to do at home, no figures to compare by"},
    {"for a specialist", "every count, the likely range, and what was chosen instead"},
    {"CSV, xAPI", "tables and statements for other programs, with ids and no names"},
};
constexpr HelpWord kWhy[] = {
    {"first answer", "the one given before anything was explained; only these count"},
    {"not counted", "given without listening, as far as times and touches tell"},
    {"along a shield", "a wrong choice that the child's accent explains: it says nothing"},
};
constexpr HelpWord kAloud[] = {
    {"almost", "nearly said; it is counted, and speaks for neither side"},
    {"probe", "words that nobody in the class has practised: what carries over to new ones"},
};
constexpr HelpWord kList[] = {
    {"badge", "the animal a child finds itself by; no two children have the same"},
    {"key", "two pictures touched after the badge, so that nobody plays in another's place"},
    {"shield", "two sounds that this child's accent does not tell apart"},
    {"left", "no longer here; all answers stay, and the child can come back"},
};
constexpr HelpWord kSettings[] = {
    {"own choice", "the microphone or loudspeaker that the system itself uses"},
};

// In the order of Spot; the first is for no page.
constexpr std::array<Help, kSpotCount> kHelp{{
    {"", "", {}},
    {"Words", "Write this unit's words and sentences, and answer what each one asks of you.",
     kWords},
    {"Picture", "Choose the picture that children see for this word.", kPicture},
    {"Bring in", "Take what you like from another teacher's pack or unit into yours.", kBring},
    {"Booth", "Say each word, sound and sentence; it listens, checks and goes on by itself.",
     kBooth},
    {"Try out", "Meet each question as a child will, and leave out what you don't want asked.",
     kTry},
    {"Find me more", "Find words of the classroom list that give this skill more questions.", kTry},
    {"Hand out", "Make the pack, look it through and put it where the tablets find it.", kHandOut},
    {"Tablets", "Hand the game to tablets on the classroom's network, and see who plays.",
     kTablets},
    {"Map", "See at once which sounds each child misses, and which need more answers.", kMap},
    {"Child", "See what one child's answers say of each sound, with the counts.", kChild},
    {"Tomorrow", "Seat children who share a gap, and see what to ask them and the whole class.",
     kTomorrow},
    {"Papers", "Write a page about a child, or the class's answers for another program.", kPapers},
    {"Why", "See the very answers behind a line, and what was read of them.", kWhy},
    {"Ask aloud", "Ask one child ten things aloud and mark what you hear. Nobody is recorded.",
     kAloud},
    {"List", "Say who is in the class, and how each child is known and asked.", kList},
    {"Settings", "Set the desk for your eyes, hands and ears. It is kept for the next time.",
     kSettings},
}};

constexpr Caution kCautions[] = {
    {"Practice, not a diagnosis",
     "What is said of a child rests on a few answers at a tablet; a tired day, noise or hearing "
     "change it. It is no test and no screening. If you are worried, a speech-language "
     "pathologist or your school's own process decides."},
    {"A difference is not an error",
     "An accent or a first language may not tell two sounds apart. Shield the pair in the list."},
    {"Children's data",
     "It stays in your folders; nothing is sent. Whether you may keep it, and for how long, your "
     "local rules decide."},
    {"Hearing",
     "Set each tablet so that you can talk over it comfortably, with headphones all the more. The "
     "game bounds its own loudness, but does not know the device's. Start quietly here too."},
};

}  // namespace

const Help& helpFor(Spot spot) {
    return kHelp[static_cast<std::size_t>(spot)];
}

std::span<const Caution> cautions() {
    return kCautions;
}

}  // namespace wrenlet::desk
