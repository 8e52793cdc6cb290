package org.marktwice.view.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.marktwice.advice.Option;
import org.marktwice.advice.Options;
import org.marktwice.bench.Bench;
import org.marktwice.bench.BoardState;
import org.marktwice.bench.Mark;
import org.marktwice.drawing.Cut;
import org.marktwice.drawing.Placing;
import org.marktwice.picture.BoardPicture;
import org.marktwice.picture.Ink;
import org.marktwice.picture.Pointed;
import org.marktwice.picture.Struck;
import org.marktwice.rulebook.Verdict;
import org.marktwice.scenario.Practice;
import org.marktwice.timber.Trace;

/**
 * What both views show of the board on the bench.
 *
 * @param picture the board with everything that the painters know
 * @param over the tools that lie on it besides
 */
record Scene(BoardPicture picture, List<Overlay> over) {
    Scene {
        over = List.copyOf(over);
    }

    static Scene of(BenchModel model) {
        BoardPicture picture = plain(model.session().bench(), model.board());
        Optional<Placing> placing = model.placing();
        if (placing.isPresent() && (model.trial().isPresent() || model.liesAsPlaced())) {
            picture = picture.offcutsOf(placing.get()).cuts(cuts(model, placing.get()));
            if (model.grants(Practice.Aid.CLEARANCE)) {
                picture = picture.callouts(
                        Clearance.callout(model.session().scenario(), placing.get(), model.lie()).stream()
                                .map(Scene::drawn)
                                .toList());
            }
        }
        return over(model, picture);
    }

    /** The same for the view above, and for the unrolled one: what was said stands in one of them alone. */
    Scene in(boolean unrolled, BenchModel model) {
        Optional<Callout> said = model.callout();
        if (said.isEmpty()) return unrolled ? new Scene(picture.callouts(List.of()), over) : this;
        boolean seenAbove = model.lie().shows(said.get().at().surface());
        boolean here = unrolled == (model.worksOnUnrolled() || !seenAbove);
        return new Scene(picture.callouts(here ? List.of(drawn(said.get())) : List.of()), over);
    }

    /** A board with all that stands on it, without anything that is being tried. */
    static BoardPicture plain(Bench bench, BoardState state) {
        String written = state.named()
                .flatMap(n -> bench.scenario().drawing().part(n.part()))
                .map(p -> p.name())
                .orElse(null);
        return BoardPicture.of(state, written).struck(Struck.on(bench, state));
    }

    static List<BoardPicture.LaidCut> cuts(BenchModel model, Placing placing) {
        List<Cut> shown = model.shownCuts();
        if (shown.isEmpty()) return List.of();
        boolean told = model.grants(Practice.Aid.CLEARANCE);
        String foul = told ? foul(model, placing) : null;
        return shown.stream()
                .map(c -> new BoardPicture.LaidCut(c, c.joint().equals(foul)))
                .toList();
    }

    private static @Nullable String foul(BenchModel model, Placing placing) {
        return Options.judge(model.session().scenario(), placing)
                .nearest()
                .filter(n -> n.clearance() < n.margin() / 2)
                .map(Option.Nearest::joint)
                .orElse(null);
    }

    static BoardPicture.Callout drawn(Callout said) {
        Verdict verdict = said.tone().verdict();
        String sign =
                verdict == null && !said.tone().sign().isEmpty() ? said.tone().sign() + " " : "";
        return new BoardPicture.Callout(said.at(), verdict, sign + said.lead(), said.more());
    }

    static Ink ink(Note.Tone tone) {
        return switch (tone) {
            case PLAIN, READ -> Ink.INK;
            case REFUSED, WRONG -> Ink.WRONG;
            case SOUND -> Ink.SOUND;
            case CLOSE -> Ink.CLOSE;
            case OPEN -> Ink.QUIET;
        };
    }

    private static Scene over(BenchModel model, BoardPicture plain) {
        BoardPicture picture = plain.pointed(pointed(model).orElse(null));
        List<Overlay> rest = new ArrayList<>();
        Bench bench = model.session().bench();
        bench.paired(model.board().board().id()).ifPresent(p -> rest.add(Overlay.PairLaid.of(bench, p, true)));
        for (Overlay overlay : model.tool().map(BenchTool::overlays).orElse(List.of())) {
            if (overlay instanceof Overlay.GhostMark g) {
                picture = picture.ghost(new Mark(g.kind(), g.on(), g.towards(), 0));
            } else if (overlay instanceof Overlay.RuleLaid r) {
                picture = picture.rule(new BoardPicture.LaidRule(r.from(), r.to(), r.says()));
            } else if (overlay instanceof Overlay.SurfacePicked s) {
                picture = picture.pointed(new Pointed.AtSurface(s.surface()));
            } else if (overlay instanceof Overlay.PencilPicked p) {
                picture = picture.pointed(pencil(model, p.pencil()));
            } else {
                rest.add(overlay);
            }
        }
        return new Scene(picture, rest);
    }

    private static Pointed pencil(BenchModel model, Pencil pencil) {
        boolean name =
                model.board().named().filter(n -> n.step() == pencil.step()).isPresent();
        return name ? new Pointed.AtName() : new Pointed.AtMark(pencil.step());
    }

    /** What is pointed at with nothing in the hand, or with the rule: a knot, pencil, else the whole surface. */
    private static Optional<Pointed> pointed(BenchModel model) {
        if (model.aim().isEmpty()) return Optional.empty();
        Aim aim = model.aim().get();
        Optional<Trace> trace = Words.traceAt(model.board().board(), aim.at());
        if (trace.isPresent()) return Optional.of(new Pointed.AtKnot(trace.get().knot()));
        if (model.tool().isPresent()) return Optional.empty();
        return Optional.of(new Pointed.AtSurface(aim.surface()));
    }
}
