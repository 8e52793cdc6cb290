package org.marktwice.timber;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A real board as it was measured on the rack.
 *
 * @param bare all of it but its knots; without a pith where nobody looked, which only a board without knots may be
 * @param knots where each shows
 */
public record MeasuredBoard(Board.Facts bare, List<Measured> knots) {
    public MeasuredBoard {
        knots = List.copyOf(knots);
        if (bare.pith() == null && !knots.isEmpty()) {
            throw new IllegalArgumentException("board " + bare.id() + " has knots, but no pith");
        }
    }

    /** A knot of it, by name. */
    public record Measured(String id, List<Showing> shows) {
        public Measured {
            shows = List.copyOf(shows);
        }
    }

    /** The board with its knots' bodies found. A knot of which no body lies inside the board stays out, and is doubtful. */
    public Fitted fitted() {
        List<KnotFit> fits = new ArrayList<>();
        List<Knot> found = new ArrayList<>();
        Pith pith = bare.pith();
        for (Measured one : knots) {
            if (pith == null) break;
            for (KnotFit fit : fits(one, pith)) {
                fits.add(fit);
                if (!KnotBody.of(fit.knot(), bare.size(), pith).isEmpty()) found.add(fit.knot());
            }
        }
        return new Fitted(Board.of(withKnots(found)), fits);
    }

    /** One; or where the readings lie on no one branch, one for each, so that whatever is there is kept clear of. */
    private List<KnotFit> fits(Measured one, Pith pith) {
        KnotFit fit = KnotFit.of(one.id(), one.shows(), pith, bare.size());
        if (fit.onOneBranch() || one.shows().size() == 1) return List.of(fit);
        List<KnotFit> fits = new ArrayList<>();
        for (Showing showing : one.shows()) {
            String id = one.id() + "-" + showing.surface().id();
            fits.add(KnotFit.of(id, List.of(showing), pith, bare.size()).asDoubtfulAs(fit));
        }
        return fits;
    }

    private Board.Facts withKnots(List<Knot> found) {
        return new Board.Facts(
                bare.id(),
                bare.stuff(),
                bare.species(),
                bare.size(),
                bare.planedAt(),
                bare.moisture(),
                bare.dressed(),
                bare.pith(),
                bare.ringWidth(),
                found,
                bare.shape(),
                bare.seed());
    }

    /** @param fits by knot, in the order in which they were measured */
    public record Fitted(Board board, List<KnotFit> fits) {
        public Fitted {
            fits = List.copyOf(fits);
        }

        public Optional<KnotFit> fit(String knot) {
            return fits.stream().filter(f -> f.knot().id().equals(knot)).findFirst();
        }
    }
}
