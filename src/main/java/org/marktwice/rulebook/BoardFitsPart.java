package org.marktwice.rulebook;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.marktwice.bench.BoardState;
import org.marktwice.drawing.Part;
import org.marktwice.drawing.PartStuff;
import org.marktwice.scenario.Stage;
import org.marktwice.timber.Board;
import org.marktwice.timber.Size;

/** A board has its part's stuff, its width and thickness to 0.5 mm, and at least its length. */
final class BoardFitsPart implements Rule {
    @Override
    public String id() {
        return "board-fits-part";
    }

    @Override
    public Stage stage() {
        return Stage.NAMES;
    }

    @Override
    public double worth() {
        return 1;
    }

    @Override
    public List<Finding> judge(Situation situation) {
        List<Finding> findings = new ArrayList<>();
        for (Workpiece w : Workpiece.all(situation)) {
            Part part = w.part();
            if (part != null) findings.add(judge(w, part));
        }
        Workpiece.missing(situation).forEach(p -> findings.add(Found.missing(this, p, "says.no-board")));
        return findings;
    }

    private Finding judge(Workpiece w, Part part) {
        Board board = w.board();
        Found found = Found.by(this, w)
                .at(w.state().named().map(BoardState.Named::step).orElse(null));
        w.state().named().ifPresent(n -> found.showing(n.at().surface()).showing(n.at()));
        if (!sameStuff(board, part)) {
            return instead(found, w, part)
                    .wrong(board.isSheet() ? "says.sheet" : "says.timber", "board", board.id(), "part", part.id());
        }
        Misfit misfit = Misfit.of(board.size(), part.size());
        found.measured(misfit.difference(), "mm", misfit.limit());
        Object[] all = {
            "board", board.id(), "part", part.id(), "is", misfit.is(), "wanted", misfit.wanted(), "by", misfit.by()
        };
        if (misfit.fits()) return found.sound("says.sound", all);
        instead(found, w, part);
        return switch (misfit.what()) {
            case "length" -> found.wrong("says.short", all);
            case "width" -> found.wrong(misfit.is() > misfit.wanted() ? "says.wide" : "says.narrow", all);
            default -> found.wrong(misfit.is() > misfit.wanted() ? "says.thick" : "says.thin", all);
        };
    }

    private static boolean sameStuff(Board board, Part part) {
        return board.isSheet() == (part.stuff() == PartStuff.SHEET);
    }

    /** A size held against the one wanted. @param limit how much it may differ; a length may be any amount over */
    private record Misfit(String what, double is, double wanted, double limit) {
        /** The worst of the three; too short comes before all else, for no planing mends it. */
        static Misfit of(Size is, Size wanted) {
            Misfit along = new Misfit("length", is.length(), wanted.length(), 0);
            if (!along.fits()) return along;
            Misfit width = new Misfit("width", is.width(), wanted.width(), Board.SIZE_TOLERANCE);
            Misfit thickness = new Misfit("thickness", is.thickness(), wanted.thickness(), Board.SIZE_TOLERANCE);
            return width.difference() >= thickness.difference() ? width : thickness;
        }

        double by() {
            return Math.abs(is - wanted);
        }

        double difference() {
            return what.equals("length") ? Math.max(0, wanted - is) : by();
        }

        boolean fits() {
            return limit == 0 ? difference() <= 0 : Board.sameSize(is, wanted);
        }
    }

    /** Another board that would do, or else another part for this one. */
    private static Found instead(Found found, Workpiece w, Part part) {
        Situation situation = w.situation();
        Optional<Board> other = Stream.concat(free(situation), all(situation))
                .filter(b -> fits(b, part))
                .findFirst();
        if (other.isPresent()) {
            Size size = other.get().size();
            return found.instead(
                    "better.board",
                    "other",
                    other.get().id(),
                    "part",
                    part.id(),
                    "length",
                    size.length(),
                    "width",
                    size.width(),
                    "thickness",
                    size.thickness());
        }
        List<String> parts = situation.scenario().drawing().parts().stream()
                .filter(p -> fits(w.board(), p))
                .map(Part::id)
                .toList();
        return parts.isEmpty()
                ? found.instead("better.none", "part", part.id())
                : found.instead("better.part", "board", w.board().id(), "parts", parts);
    }

    private static boolean fits(Board board, Part part) {
        return sameStuff(board, part) && Misfit.of(board.size(), part.size()).fits();
    }

    private static Stream<Board> free(Situation situation) {
        return situation.bench().boards().stream()
                .filter(b -> b.named().isEmpty() && b.setAside().isEmpty())
                .map(BoardState::board);
    }

    private static Stream<Board> all(Situation situation) {
        return situation.bench().boards().stream().map(BoardState::board);
    }
}
