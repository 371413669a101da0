#include "content/exercise/rhyming.hpp"

#include "content/speech/accent.hpp"
#include "content/speech/rhyme.hpp"

namespace wrenlet::exercise {

Rhyme rhymeFor(const Word& a, const Word& b) {
    switch (speech::rhymeKind(a.sounds, b.sounds)) {
        case speech::RhymeKind::perfect:
            return Rhyme::yes;
        case speech::RhymeKind::none:
            return speech::saidAlikeByMany(speech::rhymingPart(a.sounds),
                                           speech::rhymingPart(b.sounds))
                       ? Rhyme::unsure
                       : Rhyme::no;
        default:
            return Rhyme::unsure;
    }
}

}  // namespace wrenlet::exercise
