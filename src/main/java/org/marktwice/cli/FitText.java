package org.marktwice.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.marktwice.drawing.JobAxis;
import org.marktwice.files.AttemptFile;
import org.marktwice.fit.DryFit;
import org.marktwice.fit.ToleranceStack;
import org.marktwice.rulebook.FitCause;
import org.marktwice.rulebook.FitSheet;
import org.marktwice.rulebook.FitSheet.Kind;
import org.marktwice.rulebook.FitSheet.Line;
import org.marktwice.rulebook.Verdict;
import org.marktwice.timber.Climate;

/** A dry fit as plain text. */
final class FitText {
    private final FitSheet sheet;
    private final AttemptFile.Opened opened;
    private final @Nullable Climate room;
    private final @Nullable Long hand;
    private final List<String> lines = new ArrayList<>();

    FitText(FitSheet sheet, AttemptFile.Opened opened, @Nullable Climate room, @Nullable Long hand) {
        this.sheet = sheet;
        this.opened = opened;
        this.room = room;
        this.hand = hand;
    }

    /** By what it was judged, in which room, by whose hand. */
    String conditions() {
        List<String> all = new ArrayList<>();
        String gap = Text.number(sheet.limits().gap());
        String good = Text.number(sheet.limits().gap() / 2);
        all.add("Judged by " + sheet.limits().title() + "; gaps are good to " + good + " mm and allowed to " + gap
                + " mm.");
        Climate in = room;
        if (in != null) {
            all.add("Settled in a room of " + Text.number(in.celsius()) + " °C and " + Text.number(in.humidity())
                    + " %: its wood at " + Text.number(in.settledMoisture()) + " % moisture.");
        }
        if (hand != null) all.add("Struck by careful hand no. " + hand + ".");
        return String.join(" ", all);
    }

    String all() {
        lines.clear();
        lines.add(Text.ends(
                opened.bench().scenario().title(), opened.file().attempt().learner()));
        lines.add(Text.rule());
        lines.add(sheet.sum());
        lines.add(Text.wrapped("", conditions()));
        opened.file().notices().forEach(n -> lines.add(Text.wrapped("", n)));
        for (String missing : sheet.missing()) lines.add(Text.wrapped("  ○ ", missing));
        section("Joints", Kind.JOINT);
        section("Overall sizes", Kind.SIZE);
        section("Diagonals", Kind.DIAGONAL);
        section("Faces that should come flush", Kind.FLUSH);
        if (room != null) movement();
        return lines.stream().collect(Collectors.joining("\n"));
    }

    private void section(String title, Kind kind) {
        List<Line> all = sheet.lines(kind);
        if (all.isEmpty()) return;
        lines.add("");
        lines.add(title);
        for (Line line : all) {
            String verdict = String.format(
                    Locale.ROOT,
                    "  %s %-7s",
                    sign(line.verdict()),
                    line.verdict().id());
            lines.add(Text.ends(verdict + line.title(), line.figure()));
            boolean talks = line.verdict() == Verdict.WRONG || line.verdict() == Verdict.CLOSE;
            if (talks) {
                lines.add(Text.wrapped("          ", line.says()));
                for (FitCause cause : line.why()) lines.add(Text.wrapped("          · ", cause.says()));
            }
            if (kind == Kind.SIZE) stack(line);
        }
    }

    private void stack(Line line) {
        JobAxis axis = JobAxis.valueOf(line.id().toUpperCase(Locale.ROOT));
        Optional<ToleranceStack> stack = sheet.stack(axis);
        if (stack.isEmpty()) return;
        ToleranceStack.Trial trial = stack.get().trial(FitSheet.TRIAL_JOBS, FitSheet.TRIAL_SEED);
        lines.add(Text.wrapped(
                "          ",
                String.format(
                        Locale.ROOT,
                        "adds up from %s: at worst ±%s mm, likely ±%s mm; of %,d jobs made so %.1f %% come within ±%s mm",
                        Text.count(stack.get().links().size(), "size", "sizes"),
                        Text.number(stack.get().worst()),
                        Text.number(stack.get().likely()),
                        trial.jobs(),
                        100 * trial.within(line.limit()),
                        Text.number(line.limit()))));
    }

    private void movement() {
        lines.add("");
        lines.add("What the room does to each part");
        for (DryFit.PartFit part : sheet.fit().parts()) {
            lines.add(Text.ends(
                    "  " + part.part().name() + ", board " + part.board().id(),
                    "width " + signed(part.wider()) + " mm, thickness " + signed(part.thicker()) + " mm"));
        }
    }

    private static String signed(double mm) {
        String s = String.format(Locale.ROOT, "%.1f", Math.abs(mm));
        return s.equals("0.0") ? "±0" : (mm > 0 ? "+" : "−") + s;
    }

    private static String sign(Verdict verdict) {
        return switch (verdict) {
            case SOUND -> "✓";
            case CLOSE -> "~";
            case WRONG -> "✕";
            case OPEN -> "○";
        };
    }
}
