#include "content/exercise/phrases.hpp"

#include <array>

namespace wrenlet::exercise {

namespace {

// Short, warm, and whole on either side of a cut: some are followed by a word of the item. None
// says "wrong"; after a slip the child hears both words and why.
constexpr std::array<Phrase, 57> kPhrases = {{
    {phrase::kWho, "Who is playing? Touch your badge."},
    {phrase::kKeyAsk, "Now touch your two pictures."},
    {phrase::kKeyAgain, "Try again. Touch your first picture, then the other one."},
    {phrase::kHello, "Hello! Let's listen together."},
    {phrase::kSortAsk, "Where does this one rhyme?"},
    {phrase::kSortShow, "Words that rhyme live together."},
    {phrase::kJoinAsk, "Listen, and bring them together."},
    {phrase::kJoinPick, "Which picture is it?"},
    {phrase::kCountAsk, "One acorn for each word."},
    {phrase::kCountDone, "Touch the leaf when you are done."},
    {phrase::kCountShow, "Watch me count."},
    {phrase::kJoinShow, "Watch me bring them together."},
    {phrase::kCountBeats, "One acorn for each beat."},
    {phrase::kSplitShow, "Watch me part a word."},
    {phrase::kSplitWords, "Make a box for each word in it."},
    {phrase::kSplitBeats, "Make a box for each beat."},
    {phrase::kSplitRime, "Part the beginning from the rest."},
    {phrase::kSplitSounds, "Make a box for each sound."},
    {phrase::kSplitDone, "One box for each. Then touch the leaf in the sun."},
    {phrase::kChangeShow, "Watch me change a word."},
    {phrase::kChangeTake, "Take away"},
    {phrase::kChangePut, "and put in"},
    {phrase::kChangeFirst, "At the beginning, add"},
    {phrase::kChangeLast, "At the end, add"},
    {phrase::kChangeInside, "In the middle, add"},
    {phrase::kChangePick, "What does it say now?"},
    {phrase::kWatch, "Watch. I do one first."},
    {phrase::kPickRhyme, "Which one rhymes with"},
    {phrase::kPickOdd, "Which one does not rhyme?"},
    {phrase::kPickFirst, "Which one begins with"},
    {phrase::kPickLast, "Which one ends with"},
    {phrase::kPickMiddle, "In the middle, which one has"},
    {phrase::kJudgeAsk, "Do these two rhyme?"},
    {phrase::kJudgeYes, "They rhyme."},
    {phrase::kJudgeNo, "They do not rhyme."},
    {phrase::kLetterName, "Find the letter"},
    {phrase::kLetterSound, "What does this letter say?"},
    {phrase::kLetterFor, "Which letter says"},
    {phrase::kLetterBoth, "Which letter says both"},
    {phrase::kLetterTwo, "Which two letters say"},
    {phrase::kTouchTwice, "Touch one to hear it. Touch it again to choose it."},
    {phrase::kSortFirst, "Where does it begin the same?"},
    {phrase::kSortLast, "Where does it end the same?"},
    {phrase::kSortMiddle, "Where does it sound the same in the middle?"},
    {phrase::kSortLength, "Is the sound inside it long or short?"},
    {phrase::kSortLong, "Long."},
    {phrase::kSortShort, "Short."},
    {phrase::kSortTune, "Is the bird asking or telling?"},
    {phrase::kSortAsking, "Asking?"},
    {phrase::kSortTelling, "Telling."},
    {phrase::kListenBoth, "Let's listen to both."},
    {phrase::kYouChose, "You chose"},
    {phrase::kWeAsked, "We are looking for"},
    {phrase::kNowYou, "Now you."},
    {phrase::kListenAgain, "Listen again."},
    {phrase::kGoodbye, "That was good listening. All done for today!"},
    {phrase::kNextChild, "Now it is the next one's turn."},
}};

}  // namespace

std::span<const Phrase> phraseTable() {
    return kPhrases;
}

}  // namespace wrenlet::exercise
