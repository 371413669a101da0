// Bringing two states of one class list together: the desk's, and what somebody else wrote
// meanwhile. Nothing that either of them did is lost.
#pragma once

#include "content/pack/classroom.hpp"

namespace wrenlet::desk {

/// `mine` and `theirs` both came from `base`. Of each child, and of each thing about the class,
/// what one of them changed is taken; where both did, `mine`. Children whom either added are in;
/// one whom either moved has moved; one whom one took off the list and the other changed stays;
/// one whom either deleted for good is gone. The order is theirs where they changed it, else mine;
/// the other's new ones stand last. A badge that two would share goes to the first, the other gets
/// a free one.
pack::ClassList mergeClassLists(const pack::ClassList& base, const pack::ClassList& mine,
                                const pack::ClassList& theirs);

}  // namespace wrenlet::desk
