// What the game itself says around the items, in the teacher's voice like everything else. A pack
// carries a clip for each phrase that its items need, and for no other: a teacher records them all.
#pragma once

#include <span>
#include <string_view>
#include <vector>

#include "content/exercise/item.hpp"

namespace wrenlet::exercise {

struct Phrase {
    std::string_view id;               // "sort.ask"
    std::string_view text;             // what the teacher says into the microphone
    bool (*is_said_for)(const Item&);  // in a round of that item, or around any
};

/// Every phrase of the game.
std::span<const Phrase> phraseTable();

/// Those that are said in rounds of these items and around them, in the table's order.
std::vector<Phrase> phrasesFor(std::span<const Item> items);

namespace phrase {
inline constexpr std::string_view kWho = "who";                 // who is playing? touch your badge
inline constexpr std::string_view kKeyAsk = "key.ask";          // touch your two pictures
inline constexpr std::string_view kKeyAgain = "key.again";      // those were others; once more
inline constexpr std::string_view kHello = "hello";             // a short welcome
inline constexpr std::string_view kSortAsk = "sort.ask";        // where does it rhyme?
inline constexpr std::string_view kSortShow = "sort.show";      // words that rhyme live together
inline constexpr std::string_view kJoinAsk = "join.ask";        // bring them together
inline constexpr std::string_view kJoinPick = "join.pick";      // which picture is it?
inline constexpr std::string_view kCountAsk = "count.ask";      // one acorn for each word
inline constexpr std::string_view kCountDone = "count.done";    // touch the leaf when you are done
inline constexpr std::string_view kCountShow = "count.show";    // an example of counting
inline constexpr std::string_view kJoinShow = "join.show";      // an example of joining
inline constexpr std::string_view kCountBeats = "count.beats";  // one acorn for each beat
inline constexpr std::string_view kSplitShow = "split.show";    // an example of parting
inline constexpr std::string_view kSplitWords = "split.words";  // a box for each word
inline constexpr std::string_view kSplitBeats = "split.beats";  // a box for each beat
inline constexpr std::string_view kSplitRime = "split.rime";    // its beginning, and the rest
inline constexpr std::string_view kSplitSounds = "split.sounds";  // a box for each sound
inline constexpr std::string_view kSplitDone = "split.done";      // then touch the leaf in the sun
inline constexpr std::string_view kChangeShow = "change.show";    // an example of a change
inline constexpr std::string_view kChangeTake = "change.take";    // take away (what follows)
inline constexpr std::string_view kChangePut = "change.put";      // and put in (what follows)
inline constexpr std::string_view kChangeFirst = "change.first";  // add to the beginning (what)
inline constexpr std::string_view kChangeLast = "change.last";    // add to the end (what)
inline constexpr std::string_view kChangeInside = "change.inside";  // add inside (what)
inline constexpr std::string_view kChangePick = "change.pick";      // what does it say now?
inline constexpr std::string_view kWatch = "watch";                 // before an example
inline constexpr std::string_view kPickRhyme = "pick.rhyme";        // which one rhymes with (what)
inline constexpr std::string_view kPickOdd = "pick.odd";            // which one does not rhyme?
inline constexpr std::string_view kPickFirst = "pick.first";        // which one begins with (what)
inline constexpr std::string_view kPickLast = "pick.last";          // which one ends with (what)
inline constexpr std::string_view kPickMiddle = "pick.middle";      // which one has inside (what)
inline constexpr std::string_view kJudgeAsk = "judge.ask";          // do these two rhyme?
inline constexpr std::string_view kJudgeYes = "judge.yes";          // they do
inline constexpr std::string_view kJudgeNo = "judge.no";            // they do not
inline constexpr std::string_view kLetterName = "letter.name";      // find the letter called (what)
inline constexpr std::string_view kLetterSound = "letter.sound";    // what does this letter say?
inline constexpr std::string_view kLetterFor = "letter.for";        // which letter says (what)
inline constexpr std::string_view kLetterBoth = "letter.both";      // which letter says both (what)
inline constexpr std::string_view kLetterTwo = "letter.two";        // which two letters say (what)
inline constexpr std::string_view kTouchTwice = "touch.twice";      // once to hear, twice to choose
inline constexpr std::string_view kSortFirst = "sort.first";        // where does it begin the same?
inline constexpr std::string_view kSortLast = "sort.last";          // where does it end the same?
inline constexpr std::string_view kSortMiddle = "sort.middle";      // ... sound the same inside?
inline constexpr std::string_view kSortLength = "sort.length";      // is its sound long or short?
inline constexpr std::string_view kSortLong = "sort.long";
inline constexpr std::string_view kSortShort = "sort.short";
inline constexpr std::string_view kSortTune = "sort.tune";  // is it asking or telling?
inline constexpr std::string_view kSortAsking = "sort.asking";
inline constexpr std::string_view kSortTelling = "sort.telling";
inline constexpr std::string_view kListenBoth = "listen.both";    // listen to both
inline constexpr std::string_view kYouChose = "you.chose";        // you chose
inline constexpr std::string_view kWeAsked = "we.asked";          // we are looking for
inline constexpr std::string_view kNowYou = "now.you";            // now you
inline constexpr std::string_view kListenAgain = "listen.again";  // listen again
inline constexpr std::string_view kGoodbye = "goodbye";           // all for today
inline constexpr std::string_view kNextChild = "next.child";      // give it to the next one
}  // namespace phrase

}  // namespace wrenlet::exercise
