package org.marktwice.cli;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import org.marktwice.drawing.JobAxis;
import org.marktwice.files.AttemptFile;
import org.marktwice.fit.DryFit;
import org.marktwice.fit.JointFit;
import org.marktwice.fit.Rectangle;
import org.marktwice.fit.ToleranceStack;
import org.marktwice.rulebook.FitCause;
import org.marktwice.rulebook.FitSheet;
import org.marktwice.rulebook.FitSheet.Kind;
import org.marktwice.rulebook.FitSheet.Line;
import org.marktwice.timber.Climate;

/** A dry fit as the fields of a JSON answer. */
final class FitJson {
    private final FitSheet sheet;
    private final AttemptFile.Opened opened;
    private final @Nullable Climate room;
    private final @Nullable Long hand;

    FitJson(FitSheet sheet, AttemptFile.Opened opened, @Nullable Climate room, @Nullable Long hand) {
        this.sheet = sheet;
        this.opened = opened;
        this.room = room;
        this.hand = hand;
    }

    Map<String, @Nullable Object> answer() {
        DryFit fit = sheet.fit();
        return Fields.with("scenario", opened.bench().scenario().id())
                .and("learner", opened.file().attempt().learner())
                .and("goesTogether", sheet.goesTogether())
                .and("whole", fit.isWhole())
                .and("says", sheet.sum())
                .and(
                        "tolerances",
                        Fields.with("id", sheet.limits().id())
                                .and("title", sheet.limits().title())
                                .and("gap", sheet.limits().gap())
                                .map())
                .maybe("room", room())
                .maybe("hand", hand)
                .and("missing", sheet.missing())
                .and("joints", fit.joints().stream().map(this::joint).toList())
                .and("sizes", sheet.lines(Kind.SIZE).stream().map(this::size).toList())
                .and("diagonals", fit.rectangles().stream().map(this::diagonal).toList())
                .and("flush", fit.steps().stream().map(this::flush).toList())
                .and("parts", fit.parts().stream().map(FitJson::part).toList())
                .map();
    }

    private @Nullable Object room() {
        Climate in = room;
        if (in == null) return null;
        return Fields.with("celsius", in.celsius())
                .and("humidity", in.humidity())
                .and("moisture", in.settledMoisture())
                .map();
    }

    private Line line(Kind kind, String id) {
        return sheet.lines(kind).stream()
                .filter(l -> l.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    private Map<String, @Nullable Object> joint(JointFit joint) {
        Line line = line(Kind.JOINT, joint.joint().id());
        Fields fields = Fields.with("joint", joint.joint().id())
                .and("kind", joint.joint().kind())
                .and("in", joint.joint().in())
                .and("takes", joint.joint().takes())
                .and("state", joint.state().name().toLowerCase(Locale.ROOT).replace('_', '-'))
                .and("verdict", line.verdict().id())
                .and("says", line.says());
        if (joint.state() == JointFit.State.TOGETHER) {
            fields.orNull("off", orNull(joint.off()))
                    .orNull("gap", joint.gap().map(JointFit.Gap::mm).orElse(null))
                    .and("clash", joint.clash())
                    .and("seats", joint.seats().stream().map(FitJson::seat).toList());
        }
        return fields.and("causes", causes(line)).map();
    }

    private static @Nullable Double orNull(OptionalDouble value) {
        return value.isPresent() ? (Double) value.getAsDouble() : null;
    }

    private static Map<String, @Nullable Object> seat(JointFit.SeatFit seat) {
        return Fields.with("axis", JobAxis.values()[seat.seat().axis()].id())
                .and("kind", seat.seat().kind().name().toLowerCase(Locale.ROOT))
                .and("tight", seat.tight())
                .and("wide", seat.wide())
                .and("hidden", seat.hidden())
                .map();
    }

    private static List<Map<String, @Nullable Object>> causes(Line line) {
        return line.why().stream().map(FitJson::cause).toList();
    }

    private static Map<String, @Nullable Object> cause(FitCause cause) {
        return Fields.with("board", cause.board())
                .maybe("step", cause.step())
                .and("mm", cause.mm())
                .and("says", cause.says())
                .map();
    }

    private Map<String, @Nullable Object> size(Line line) {
        JobAxis axis = JobAxis.valueOf(line.id().toUpperCase(Locale.ROOT));
        DryFit.SizeFit size = sheet.fit().sizes().get(axis.ordinal());
        return Fields.with("axis", line.id())
                .and("drawn", size.drawn())
                .orNull("made", orNull(size.made()))
                .orNull("off", orNull(size.off()))
                .and("limit", line.limit())
                .and("verdict", line.verdict().id())
                .and("says", line.says())
                .maybe(
                        "stack",
                        sheet.stack(axis).map(s -> stack(s, line.limit())).orElse(null))
                .and("causes", causes(line))
                .map();
    }

    private static Map<String, @Nullable Object> stack(ToleranceStack stack, double limit) {
        ToleranceStack.Trial trial = stack.trial(FitSheet.TRIAL_JOBS, FitSheet.TRIAL_SEED);
        return Fields.with("links", stack.links().stream().map(FitJson::link).toList())
                .and("worst", stack.worst())
                .and("likely", stack.likely())
                .and(
                        "trial",
                        Fields.with("jobs", trial.jobs())
                                .and("seed", FitSheet.TRIAL_SEED)
                                .and("mean", trial.mean())
                                .and("deviation", trial.deviation())
                                .and("within", trial.within(limit))
                                .map())
                .map();
    }

    private static Map<String, @Nullable Object> link(ToleranceStack.Link link) {
        return Fields.with("part", link.part())
                .and("of", link.of().name().toLowerCase(Locale.ROOT))
                .and("size", link.size())
                .and("plusMinus", link.plusMinus())
                .and("sign", link.sign())
                .map();
    }

    private Map<String, @Nullable Object> diagonal(Rectangle r) {
        Line line = line(Kind.DIAGONAL, r.first() + " " + r.second());
        return Fields.with("first", r.first())
                .and("second", r.second())
                .and("one", r.one())
                .and("other", r.other())
                .and("difference", r.difference())
                .and("limit", line.limit())
                .and("verdict", line.verdict().id())
                .and("says", line.says())
                .map();
    }

    private Map<String, @Nullable Object> flush(DryFit.Step step) {
        Line line = line(Kind.FLUSH, step.joint().id() + " " + step.looks().id());
        return Fields.with("joint", step.joint().id())
                .and("looks", step.looks().id())
                .and("one", step.one())
                .and("other", step.other())
                .and("step", step.step())
                .and("limit", line.limit())
                .and("verdict", line.verdict().id())
                .and("says", line.says())
                .and("causes", causes(line))
                .map();
    }

    private static Map<String, @Nullable Object> part(DryFit.PartFit part) {
        return Fields.with("part", part.part().id())
                .and("board", part.board().id())
                .and(
                        "moved",
                        List.of(part.moved().x(), part.moved().y(), part.moved().z()))
                .and("wider", part.wider())
                .and("thicker", part.thicker())
                .map();
    }
}
