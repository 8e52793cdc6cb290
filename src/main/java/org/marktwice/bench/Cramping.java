package org.marktwice.bench;

import static org.marktwice.bench.Checks.refused;

import java.util.Optional;

/** Whether two boards can be cramped together. */
final class Cramping {
    private Cramping() {}

    static void possible(Bench bench, Action.Cramp cramp) throws CannotDo {
        if (cramp.mate().equals(cramp.board())) throw refused("Board %s cannot be its own mate", cramp.board());
        Optional<BoardState> mate = bench.find(cramp.mate());
        if (mate.isEmpty()) throw refused("Board %s is not on the rack", cramp.mate());
        if (mate.get().setAside().isPresent()) {
            throw refused("Board %s is set aside: name it to take it up again", cramp.mate());
        }
        if (!cramp.on().isFace() || !cramp.to().isFace()) throw refused("A pair is cramped face to face");
        if (!cramp.level().isEnd() || !cramp.with().isEnd()) throw refused("A pair is made level at an end of each");
        for (String id : new String[] {cramp.board(), cramp.mate()}) {
            Optional<Pairing> already = bench.paired(id);
            if (already.isPresent()) {
                throw refused(
                        "Board %s lies in the cramp with board %s already",
                        id, already.get().there());
            }
        }
    }
}
