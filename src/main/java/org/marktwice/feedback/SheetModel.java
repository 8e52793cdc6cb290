package org.marktwice.feedback;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.marktwice.advice.Option;
import org.marktwice.bench.Action;
import org.marktwice.bench.Bench;
import org.marktwice.bench.BoardState;
import org.marktwice.drawing.Part;
import org.marktwice.rulebook.Estimates;
import org.marktwice.rulebook.Finding;
import org.marktwice.rulebook.Hints;
import org.marktwice.rulebook.MarkSheet;
import org.marktwice.rulebook.RuleBook;
import org.marktwice.rulebook.Situation;
import org.marktwice.rulebook.Texts;
import org.marktwice.rulebook.Verdict;
import org.marktwice.scenario.Practice;
import org.marktwice.scenario.Scenario;
import org.marktwice.timber.Surface;
import org.marktwice.timber.SurfacePoint;

/** A mark sheet as it is read: findings by board, worst first, in words. No Swing. */
public final class SheetModel {
    /**
     * The findings about one board, or about the job as a whole.
     *
     * @param board the board's id; null for the job as a whole
     * @param title such as {@code Board A · Right upright}
     */
    public record Group(@Nullable String board, String title, List<Line> lines) {
        public double lost() {
            return lines.stream().mapToDouble(l -> l.entry().lost()).sum();
        }

        public double marks() {
            return lines.stream()
                    .mapToDouble(l -> l.entry().worth() - l.entry().lost())
                    .sum();
        }

        public double outOf() {
            return lines.stream().mapToDouble(l -> l.entry().worth()).sum();
        }
    }

    /**
     * One finding in words.
     *
     * @param board the board that shows it; null where none does
     * @param figure measured against its limit, such as {@code 0.0 mm, limit 16.0}; empty where there is none to state
     * @param instead empty where nothing would have been better
     */
    public record Line(
            MarkSheet.Entry entry,
            @Nullable String board,
            String title,
            String figure,
            String says,
            String why,
            String instead,
            String source,
            String safety) {
        public Finding finding() {
            return entry.finding();
        }

        public Verdict verdict() {
            return finding().verdict();
        }

        /** Where it can be seen, such as {@code board A, face 1 and edge 2, knot 3}; empty where no one place shows it. */
        public String where() {
            Finding.Evidence shown = finding().evidence();
            List<String> places = new ArrayList<>();
            if (board != null) places.add("board " + board);
            List<String> surfaces = Stream.concat(
                            shown.surfaces().stream(), shown.points().stream().map(SurfacePoint::surface))
                    .distinct()
                    .map(Surface::spoken)
                    .toList();
            if (!surfaces.isEmpty()) places.add(BoardWords.and(surfaces));
            if (!shown.knots().isEmpty())
                places.add(BoardWords.and(
                        shown.knots().stream().distinct().map(SheetModel::knot).toList()));
            return String.join(", ", places);
        }

        /** Marks got and to be had, such as {@code 1.5 of 3}. */
        public String marks() {
            return number(entry.worth() - entry.lost()) + " of " + number(entry.worth());
        }

        /** The verdict in a word, as always shown beside its sign. */
        public String word() {
            return verdict().id();
        }
    }

    /**
     * What the learner expected beside what came.
     *
     * @param given whether there was an estimate at all
     * @param foreseen titles of rules that lost marks and were expected to
     * @param missed titles of rules that lost marks and were not expected to
     * @param held titles of rules expected to lose marks that lost none
     */
    public record Estimate(boolean given, List<String> foreseen, List<String> missed, List<String> held) {}

    private final Bench bench;
    private final MarkSheet sheet;
    private final List<Group> groups;

    private SheetModel(Bench bench, MarkSheet sheet) {
        this.bench = bench;
        this.sheet = sheet;
        this.groups = grouped();
    }

    public static SheetModel of(Situation situation) {
        return of(situation.bench(), RuleBook.judge(situation));
    }

    public static SheetModel of(Bench bench, MarkSheet sheet) {
        return new SheetModel(bench, sheet);
    }

    public Scenario scenario() {
        return bench.scenario();
    }

    public Bench bench() {
        return bench;
    }

    public MarkSheet sheet() {
        return sheet;
    }

    /** The boards that lost most first; the job as a whole among them. */
    public List<Group> groups() {
        return groups;
    }

    /** Such as {@code 17.5 of 21}. */
    public String total() {
        return number(sheet.marks()) + " of " + number(sheet.outOf());
    }

    /** The step that decided the finding sought, of several the one that lost most; empty where no step did. */
    public OptionalInt decidedAt(Predicate<Finding> sought) {
        return sheet.entries().stream()
                .filter(e -> e.finding().step() != null && sought.test(e.finding()))
                .sorted(Comparator.comparingDouble(e -> -e.lost()))
                .mapToInt(e -> Objects.requireNonNull(e.finding().step()))
                .findFirst();
    }

    public List<String> notJudged() {
        return sheet.notJudged().stream().map(r -> Texts.of(r).title()).toList();
    }

    /** Every estimate of a clearance beside what is computed, a line each. */
    public List<String> clearances() {
        return Estimates.clearances(Situation.of(bench)).stream()
                .map(c -> "Board " + c.board() + " as the " + partName(c.part()) + ": estimated "
                        + ActionWords.mm(c.estimated()) + ", computed " + number(Math.round(c.computed() * 10) / 10.0)
                        + " mm"
                        + (c.computed() >= Option.CAP ? " or more" : ""))
                .toList();
    }

    private String partName(String id) {
        return scenario().drawing().part(id).map(Part::name).orElse(id);
    }

    /** One step down in guidance; empty where there is none that a learner may choose. */
    public static Optional<Practice.Guidance> lessHelp(Practice.Guidance from) {
        return switch (from) {
            case EACH_STEP -> Optional.of(Practice.Guidance.EACH_PART);
            case EACH_PART -> Optional.of(Practice.Guidance.AT_HAND_IN);
            case AT_HAND_IN, EXAMINATION -> Optional.empty();
        };
    }

    /** The hints that were used: what each was about, and how far it went; a line each. */
    public List<String> hints() {
        Map<String, Integer> grades = new LinkedHashMap<>();
        for (Action.Hint hint : bench.hints()) grades.merge(about(hint), hint.grade(), Math::max);
        return grades.entrySet().stream()
                .map(e -> e.getKey() + ": "
                        + IntStream.rangeClosed(1, e.getValue())
                                .mapToObj(Hints::grade)
                                .collect(Collectors.joining(", ")))
                .toList();
    }

    private String about(Action.Hint hint) {
        String rule =
                RuleBook.rule(hint.rule()).isPresent() ? Texts.of(hint.rule()).title() : hint.rule();
        if (hint.board() != null) return rule + ", board " + hint.board();
        return hint.part() == null ? rule : rule + ", " + partName(hint.part());
    }

    /** The parts expected to lose marks beside those that did; by name. */
    public Estimate parts() {
        Set<String> lost = groups.stream()
                .flatMap(g -> g.lines().stream())
                .filter(l -> l.entry().lost() > 1e-9)
                .flatMap(l -> Stream.ofNullable(partOf(l)))
                .collect(Collectors.toCollection(TreeSet::new));
        Set<String> said = bench.expectedParts().orElse(Set.of());
        return new Estimate(
                bench.expectedParts().isPresent(),
                names(lost, said::contains),
                names(lost, p -> !said.contains(p)),
                names(said, p -> !lost.contains(p)));
    }

    private List<String> names(Set<String> parts, Predicate<String> which) {
        return scenario().drawing().parts().stream()
                .filter(p -> parts.contains(p.id()) && which.test(p.id()))
                .map(Part::name)
                .toList();
    }

    public Estimate estimate() {
        Optional<Set<String>> expects = bench.log().stream()
                .filter(Action.Estimate.class::isInstance)
                .map(a -> ((Action.Estimate) a).expects())
                .reduce((earlier, later) -> later);
        Set<String> lost = sheet.entries().stream()
                .filter(e -> e.lost() > 1e-9)
                .map(e -> e.rule().id())
                .collect(Collectors.toCollection(TreeSet::new));
        Set<String> said = expects.orElse(Set.of());
        return new Estimate(
                expects.isPresent(),
                titles(lost, said::contains),
                titles(lost, r -> !said.contains(r)),
                titles(new TreeSet<>(said), r -> !lost.contains(r)));
    }

    /** The worst verdict on each part: its own, and those on the board that is named as it. */
    public Map<String, Verdict> verdicts() {
        Map<String, Verdict> worst = new LinkedHashMap<>();
        for (Part part : scenario().drawing().parts()) {
            groups.stream()
                    .flatMap(g -> g.lines().stream())
                    .filter(l -> part.id().equals(partOf(l)))
                    .map(Line::verdict)
                    .min(Comparator.comparingInt(SheetModel::rank))
                    .ifPresent(v -> worst.put(part.id(), v));
        }
        return worst;
    }

    private @Nullable String partOf(Line line) {
        String part = line.finding().subject().part();
        if (part != null || line.board() == null) return part;
        BoardState state = bench.board(line.board());
        return state.named()
                .filter(n -> state.setAside().isEmpty())
                .map(n -> n.part())
                .orElse(null);
    }

    private static List<String> titles(Set<String> rules, Predicate<String> which) {
        // a rule of another version of the rule book, in an attempt from elsewhere, has no title here
        return rules.stream()
                .filter(which)
                .filter(r -> RuleBook.rule(r).isPresent())
                .map(r -> Texts.of(r).title())
                .toList();
    }

    private List<Group> grouped() {
        Map<String, List<Line>> byBoard = new LinkedHashMap<>();
        for (MarkSheet.Entry entry : sheet.entries()) {
            Line line = line(entry);
            byBoard.computeIfAbsent(line.board() == null ? "" : line.board(), b -> new ArrayList<>())
                    .add(line);
        }
        List<Group> found = new ArrayList<>();
        byBoard.forEach((board, lines) -> {
            lines.sort(worstFirst());
            String id = board.isEmpty() ? null : board;
            found.add(new Group(id, title(id), List.copyOf(lines)));
        });
        found.sort(Comparator.comparingDouble(Group::lost).reversed());
        return List.copyOf(found);
    }

    /** Most marks lost first; of equals the worse verdict; else as in the rule book. */
    private static Comparator<Line> worstFirst() {
        return Comparator.<Line>comparingDouble(l -> -round(l.entry().lost())).thenComparingInt(l -> rank(l.verdict()));
    }

    private static int rank(Verdict verdict) {
        return switch (verdict) {
            case WRONG -> 0;
            case OPEN -> 1;
            case CLOSE -> 2;
            case SOUND -> 3;
        };
    }

    private static double round(double marks) {
        return Math.round(marks * 1000) / 1000.0;
    }

    private Line line(MarkSheet.Entry entry) {
        Finding finding = entry.finding();
        Texts.RuleTexts texts = Texts.of(finding.rule());
        return new Line(
                entry,
                boardOf(finding),
                texts.title(),
                isBareCount(finding.measured()) ? "" : figure(finding.measured()),
                Texts.says(finding, scenario()),
                texts.why(),
                Texts.instead(finding, scenario()),
                texts.source(),
                texts.safety());
    }

    /** The board a finding is about: its own, or the one that is named as its part. */
    private @Nullable String boardOf(Finding finding) {
        if (finding.subject().board() != null) return finding.subject().board();
        String part = finding.subject().part();
        if (part == null) return null;
        return scenario().drawing().part(part).stream()
                .flatMap(p -> bench.namedAs(p).stream())
                .map(b -> b.board().id())
                .findFirst()
                .orElse(null);
    }

    private String title(@Nullable String board) {
        if (board == null) return "The job as a whole";
        return "Board " + board + " · " + role(bench.board(board));
    }

    /** What became of a board: its part, set aside, or not named. */
    public String role(BoardState board) {
        if (board.setAside().isPresent()) return "set aside";
        return board.named()
                .flatMap(n -> scenario().drawing().part(n.part()))
                .map(Part::name)
                .orElse("not named");
    }

    /** A count tells nothing by itself unless it is beyond a limit: the sentence says what was counted. */
    private static boolean isBareCount(Finding.@Nullable Measured measured) {
        return measured != null
                && measured.unit().equals("count")
                && (measured.limit() == 0 || measured.value() <= measured.limit());
    }

    /** A knot's name in a sentence: {@code knot 2}. */
    public static String knot(String id) {
        return "knot " + id.replaceFirst("^k(?=\\d)", "");
    }

    /** A measured figure against its limit; a limit of 0 goes without saying; empty where there is no figure. */
    public static String figure(Finding.@Nullable Measured measured) {
        if (measured == null) return "";
        String value = amount(measured.value(), measured.unit());
        if (measured.limit() == 0) return value;
        boolean said = measured.unit().equals("mm");
        return value + ", limit " + (said ? fixed(measured.limit(), 1) : amount(measured.limit(), measured.unit()));
    }

    private static String amount(double value, String unit) {
        return switch (unit) {
            case "mm" -> fixed(value, 1) + " mm";
            case "degrees" -> fixed(value, 1) + "°";
            case "%" -> fixed(value, 0) + " %";
            case "ratio" -> fixed(value, 2);
            case "count" -> number(value);
            default -> number(value) + " " + unit;
        };
    }

    public static String fixed(double value, int places) {
        return String.format(Locale.ROOT, "%." + places + "f", value);
    }

    /** As few places as tell it to a hundredth. */
    public static String number(double value) {
        String text = fixed(Math.round(value * 100) / 100.0 + 0.0, 2);
        return text.contains(".") ? text.replaceAll("0+$", "").replaceAll("\\.$", "") : text;
    }
}
