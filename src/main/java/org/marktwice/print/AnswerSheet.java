package org.marktwice.print;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.marktwice.advice.Explanation;
import org.marktwice.advice.Option;
import org.marktwice.bench.Bench;
import org.marktwice.bench.BoardState;
import org.marktwice.bench.CannotDo;
import org.marktwice.bench.Mark;
import org.marktwice.drawing.Joint;
import org.marktwice.drawing.Part;
import org.marktwice.drawing.Placing;
import org.marktwice.picture.BoardPicture;
import org.marktwice.picture.Figures;
import org.marktwice.picture.Ink;
import org.marktwice.picture.Struck;
import org.marktwice.rulebook.ExplanationWords;
import org.marktwice.rulebook.Situation;
import org.marktwice.rulebook.WorkedAttempt;
import org.marktwice.scenario.Scenario;
import org.marktwice.timber.Board;
import org.marktwice.timber.Surface;

/** The exercise worked as the boards allow at best: a table, the reasons, and every board as it is marked. */
final class AnswerSheet {
    private final Scenario scenario;
    private final Paper paper;
    private final Bench bench;
    private final Situation situation;
    private final BoardStrips strips;

    AnswerSheet(Scenario scenario, Paper paper, Figures wood) {
        this.scenario = scenario;
        this.paper = paper;
        try {
            this.bench = Bench.after(scenario, WorkedAttempt.of(scenario, "", ""));
        } catch (CannotDo e) {
            throw new IllegalStateException("a worked attempt can be done", e);
        }
        this.situation = Situation.of(bench);
        this.strips = new BoardStrips(wood, scenario.boards(), paper, 0.34);
    }

    List<Leaf> leaves() {
        List<Block> blocks = new ArrayList<>();
        blocks.add(Blocks.heading("The best that these boards allow", ""));
        for (String why : new ExplanationWords(Explanation.of(scenario)).why()) {
            blocks.add(Blocks.text(why, Type.BODY, Ink.INK));
        }
        blocks.addAll(Blocks.table(table()));
        for (BoardState state : bench.boards()) blocks.add(board(state));
        return Leaf.flowing(Sheets.block(SheetKind.ANSWERS, scenario, strips.scale()), paper, blocks);
    }

    private List<Block> table() {
        List<Block> all = new ArrayList<>();
        all.add(Blocks.heading("Part by part", ""));
        Blocks.Columns columns = Blocks.Columns.of("llllllr", 0.19, 0.07, 0.19, 0.19, 0.13, 0.12, 0.11);
        all.add(Blocks.row(
                columns,
                List.of("part", "board", "face side", "face edge", "end 1", "to be cut", "clear of knots"),
                true));
        for (Part part : scenario.drawing().parts()) {
            all.add(Blocks.row(
                    columns,
                    bench.namedAs(part).stream()
                            .flatMap(s -> bench.placing(s).stream().map(p -> row(s, p)))
                            .findFirst()
                            .orElse(List.of(part.name(), "–", "no board serves", "", "", "", "")),
                    false));
        }
        return all;
    }

    private List<String> row(BoardState state, Placing p) {
        return List.of(
                p.part().name(),
                p.board().id(),
                marked(state.faceSide(), Surface.FACE_1, p),
                marked(state.faceEdge(), Surface.EDGE_1, p),
                "at the " + p.turn().of(Surface.END_1).id(),
                off(p),
                clear(situation.judged(p)));
    }

    /** In the worksheet's own words: on which surface, and where that looks; without marks, how the board lies. */
    private static String marked(Optional<Mark> mark, Surface unmarked, Placing p) {
        Surface on = mark.map(Mark::on).orElse(unmarked);
        return (mark.isPresent() ? "" : "none: ") + on.spoken() + " looks "
                + p.turn().of(on).id();
    }

    private static String off(Placing p) {
        List<String> off = new ArrayList<>();
        for (Surface end : List.of(Surface.END_1, Surface.END_2)) {
            if (p.off(end) > 0.005) off.add(Figure.number(p.off(end)) + " off " + end.spoken());
        }
        return off.isEmpty() ? "nothing off" : String.join(", ", off);
    }

    private static String clear(Option option) {
        if (option.nearest().isEmpty()) return "no knot near";
        return Figure.tenth(option.nearest().get().clearance()) + " mm";
    }

    private Block board(BoardState state) {
        Board board = state.board();
        Optional<Placing> placing = state.setAside().isPresent() ? Optional.empty() : bench.placing(state);
        String role = state.setAside()
                .map(a -> "set aside: " + a.because().spoken())
                .or(() -> placing.map(p -> p.part().name()))
                .orElse("not needed");
        List<Block> blocks = new ArrayList<>();
        blocks.add(Blocks.heading("Board " + board.id() + " · " + role, strips.own(board)));
        blocks.add(strips.of(picture(state, placing)));
        placing.ifPresent(p -> blocks.add(Blocks.text(said(state, p), Type.NOTE, Ink.QUIET)));
        return Blocks.together(blocks);
    }

    private String said(BoardState state, Placing p) {
        String nearest = situation
                .judged(p)
                .nearest()
                .map(n -> "; nearest: knot " + Figure.knot(n.knot()) + ", " + Figure.tenth(n.clearance())
                        + " mm from the " + joint(n.joint(), p.part()) + " (" + Figure.number(n.margin()) + " wanted)")
                .orElse("; no knot is near a cut");
        String marks = state.faceSide().isEmpty() && state.faceEdge().isEmpty()
                ? "No marks: face 1 looks " + p.turn().of(Surface.FACE_1).id() + ", edge 1 "
                        + p.turn().of(Surface.EDGE_1).id()
                : "Face side: " + marked(state.faceSide(), Surface.FACE_1, p) + "; face edge: "
                        + marked(state.faceEdge(), Surface.EDGE_1, p);
        return marks + "; end 1 at the " + p.turn().of(Surface.END_1).id() + "; " + off(p) + nearest + ".";
    }

    /** A joint is told by its other part. */
    private String joint(String id, Part part) {
        Optional<Joint> joint = scenario.drawing().joint(id);
        return joint.map(j -> j.in().equals(part.id()) ? j.takes() : j.in())
                .flatMap(other -> scenario.drawing().part(other))
                .map(other -> "joint with the " + other.name())
                .orElse(id);
    }

    private BoardPicture picture(BoardState state, Optional<Placing> placing) {
        String written = placing.map(p -> p.part().name()).orElse(null);
        BoardPicture plain = BoardPicture.of(state, written).struck(Struck.on(bench, state));
        return placing.map(p -> plain.offcutsOf(p)
                        .cuts(p.cuts().stream()
                                .map(c -> new BoardPicture.LaidCut(c, false))
                                .toList()))
                .orElse(plain);
    }
}
