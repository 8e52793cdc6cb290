package org.marktwice.files;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.InputFormat;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Random;
import java.util.Set;
import java.util.function.Supplier;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.marktwice.bench.Action;
import org.marktwice.bench.Attempt;
import org.marktwice.bench.CutAt;
import org.marktwice.bench.Cutter;
import org.marktwice.bench.Marker;
import org.marktwice.bench.Reason;
import org.marktwice.bench.Tool;
import org.marktwice.drawing.Direction;
import org.marktwice.drawing.Trim;
import org.marktwice.drawing.Turn;
import org.marktwice.scenario.Practice;
import org.marktwice.scenario.Proportions;
import org.marktwice.scenario.Scenario;
import org.marktwice.timber.Board;
import org.marktwice.timber.Knot;
import org.marktwice.timber.KnotBody;
import org.marktwice.timber.Pith;
import org.marktwice.timber.Shape;
import org.marktwice.timber.Size;
import org.marktwice.timber.SpeciesTable;
import org.marktwice.timber.Stuff;
import org.marktwice.timber.Surface;
import org.marktwice.timber.SurfacePoint;

/** What is written is read back as it was, and keeps to the schemas. */
class RoundTripTest {
    @Test
    void theSampleComesBackAsItWas() throws FileRefused {
        Scenario scenario = Samples.scenario();
        byte[] bytes = ScenarioWriter.bytes(scenario);
        Scenario again = ScenarioFile.read("x", bytes);
        assertSame(again, scenario);
        assertThat(ScenarioWriter.bytes(again)).isEqualTo(bytes);
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void anyBoardsAndSettingsComeBackAsTheyWere(long seed) throws FileRefused {
        Some some = new Some(new Random(seed));
        Scenario sample = Samples.scenario();
        for (int i = 0; i < 25; i++) {
            Scenario scenario = new Scenario(
                    "any-" + i,
                    some.title(),
                    1 + i % 9,
                    some.brief(),
                    some.flip() ? "" : some.title(),
                    sample.stages(),
                    some.practice(),
                    sample.drawing(),
                    some.boards("any-" + i),
                    Optional.empty(),
                    some.flip() ? OptionalInt.empty() : OptionalInt.of(1 + i),
                    "");
            byte[] bytes = ScenarioWriter.bytes(scenario);
            assertThat(SchemaTest.SCENARIO.validate(new String(bytes, StandardCharsets.UTF_8), InputFormat.JSON))
                    .isEmpty();
            assertSame(ScenarioFile.read("x", bytes), scenario);
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void anyActionsComeBackAsTheyWere(long seed) throws FileRefused {
        Some some = new Some(new Random(seed));
        List<Action> actions = new ArrayList<>();
        for (double t = 0; actions.size() < 400; t += some.random.nextDouble()) actions.add(some.action(t));
        Attempt attempt =
                new Attempt("porch-shelf", Bytes.digest(new byte[0]), some.title(), "2026-01-12T09:30:00Z", actions);
        String text = ActionWriter.text(attempt);

        assertThat(AttemptFile.read("x", Samples.utf8(text)).attempt()).isEqualTo(attempt);
        assertThat(text.lines()).hasSize(401).allMatch(line -> SchemaTest.takes(SchemaTest.LINE, line));
    }

    private static void assertSame(Scenario read, Scenario written) {
        assertThat(read)
                .usingRecursiveComparison()
                .ignoringFields("digest", "drawing", "boards")
                .isEqualTo(written);
        assertThat(read.boards())
                .extracting(Board::facts)
                .isEqualTo(written.boards().stream().map(Board::facts).toList());
        assertThat(read.drawing().overall()).isEqualTo(written.drawing().overall());
        assertThat(read.drawing().parts()).isEqualTo(written.drawing().parts());
        assertThat(read.drawing().joints()).isEqualTo(written.drawing().joints());
    }

    /** Values at random, within what the format has. */
    private record Some(Random random) {
        private static final String LETTERS = "abc XYZ 019 äöß — “quoted” \"\\/ 木 \uD83E\uDE9A";

        <T> T of(T[] all) {
            return all[random.nextInt(all.length)];
        }

        boolean flip() {
            return random.nextBoolean();
        }

        double number(double least, double most) {
            double value = least + random.nextDouble() * (most - least);
            // + 0.0: JSON has no negative zero
            return flip() ? value : Math.rint(value) + 0.0;
        }

        <T extends Enum<T>> Set<T> someOf(Class<T> all) {
            Set<T> some = EnumSet.noneOf(all);
            for (T one : all.getEnumConstants()) if (flip()) some.add(one);
            return some;
        }

        String title() {
            int from = random.nextInt(12);
            return "T" + LETTERS.substring(from, from + 14);
        }

        String brief() {
            return flip() ? "" : title() + "\n" + title();
        }

        String ruleId() {
            return of(new String[] {"best-set", "best-turn", "handed-pair", "knot-clear-of-joint"});
        }

        Practice practice() {
            double poor = number(1, 100);
            Map<String, Double> worth = new HashMap<>();
            while (flip()) worth.put(ruleId(), number(0, 9));
            return new Practice(
                    of(Practice.FaceSide.values()),
                    of(Practice.HeartSide.values()),
                    new Practice.KnotMargin(number(0, 30), number(0, 3)),
                    new Practice.CupRatio(poor + number(0, 100), poor),
                    number(0.6, 3),
                    number(0.6, 3),
                    worth,
                    of(Practice.Guidance.values()),
                    someOf(Practice.Aid.class),
                    flip() ? Proportions.USUAL : proportions());
        }

        Proportions proportions() {
            Proportions usual = Proportions.USUAL;
            double stop = 1 + number(0, 20);
            return new Proportions(
                    share(usual.housing()),
                    flip() ? usual.stop() : new Proportions.Range(stop, stop + 1, stop + 2),
                    share(usual.rebate()),
                    share(usual.haunch()),
                    share(usual.stub()),
                    share(usual.dowel()),
                    flip() ? usual.chisels() : List.of(4.0, 9.5));
        }

        Proportions.Range share(Proportions.Range usual) {
            double least = 0.1 + 0.2 * random.nextDouble();
            return flip() ? usual : new Proportions.Range(least, least + 0.1, least + 0.3);
        }

        List<Board> boards(String scenario) {
            List<Board> boards = new ArrayList<>();
            for (int i = 0; i <= random.nextInt(4); i++) boards.add(board("B" + i, scenario));
            return boards;
        }

        Board board(String id, String scenario) {
            boolean wood = random.nextInt(4) > 0;
            Size size = new Size(number(200, 900), number(60, 200), number(12, 50));
            Board.Facts bare = new Board.Facts(
                    id,
                    wood ? Stuff.TIMBER : Stuff.SHEET,
                    wood
                            ? SpeciesTable.all()
                                    .get(random.nextInt(SpeciesTable.all().size()))
                            : null,
                    size,
                    wood ? number(6, 30) : 0,
                    wood ? number(6, 30) : 0,
                    someOf(Surface.class),
                    wood ? new Pith(number(-50, 200), number(-200, -5)) : null,
                    wood ? number(1, 5) : 0,
                    List.of(),
                    shape(),
                    BoardReader.seed(scenario + "/" + id));
            return Board.of(wood ? withKnots(bare) : bare);
        }

        private Board.Facts withKnots(Board.Facts bare) {
            List<Knot> knots = new ArrayList<>();
            for (int i = 0; i < random.nextInt(4); i++) {
                Knot knot = new Knot(
                        "k" + i,
                        number(0, 900),
                        number(-180, 180),
                        number(50, 130),
                        number(2, 20),
                        number(2, 20),
                        end(0),
                        end(30));
                if (!KnotBody.of(knot, bare).isEmpty()) knots.add(knot);
            }
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
                    knots,
                    bare.shape(),
                    bare.seed());
        }

        private double end(double least) {
            return flip() ? Double.POSITIVE_INFINITY : number(least, 300);
        }

        private Shape shape() {
            if (flip()) return Shape.TRUE;
            Map<Surface, Double> square = new HashMap<>();
            for (Surface s : someOf(Surface.class)) if (!s.isFace()) square.put(s, number(-2, 2));
            return new Shape(number(-2, 2), number(-2, 2), number(-2, 2), 0, number(-2, 2), square);
        }

        Surface face() {
            return flip() ? Surface.FACE_1 : Surface.FACE_2;
        }

        Surface end() {
            return flip() ? Surface.END_1 : Surface.END_2;
        }

        Surface surface() {
            return of(Surface.values());
        }

        SurfacePoint point() {
            return new SurfacePoint(surface(), number(-5, 500), number(-5, 200));
        }

        int step() {
            return 1 + random.nextInt(400);
        }

        Map<Surface, Direction> facing() {
            while (true) {
                Surface one = surface();
                Surface other = surface();
                Direction oneLooks = of(Direction.values());
                Direction otherLooks = of(Direction.values());
                if (Turn.facing(one, oneLooks, other, otherLooks).isPresent())
                    return Map.of(one, oneLooks, other, otherLooks);
            }
        }

        Action action(double t) {
            List<Supplier<Action>> all = List.of(
                    () -> new Action.Measure(t, "A", point(), point(), flip() ? null : number(0, 400)),
                    () -> new Action.Test(
                            t,
                            "B2",
                            of(Tool.values()),
                            surface(),
                            flip() ? null : number(0, 400),
                            flip() ? null : surface(),
                            flip() ? null : number(-5, 5)),
                    () -> new Action.FaceSide(t, "A", surface(), surface()),
                    () -> new Action.FaceEdge(t, "A", surface(), surface()),
                    () -> new Action.Name(t, "A", "shelf", point()),
                    () -> new Action.Turning(
                            t,
                            "A",
                            facing(),
                            flip() ? null : new Trim(flip() ? Surface.END_1 : Surface.END_2, number(0, 20))),
                    () -> new Action.SetAside(t, "A", of(Reason.values())),
                    () -> line(t),
                    () -> bevel(t),
                    () -> new Action.Gauge(t, "A", surface(), surface(), number(0, 40)),
                    () -> new Action.Waste(t, "A", "left-housing", step(), step()),
                    () -> new Action.Cut(t, "A", step(), of(Cutter.values()), of(CutAt.values())),
                    () -> new Action.Cramp(t, "A", face(), "C", face(), end(), end()),
                    () -> new Action.Uncramp(t, "A"),
                    () -> new Action.RubOut(t, step()),
                    () -> new Action.Undo(t),
                    () -> new Action.Redo(t),
                    () -> new Action.Estimate(t, new HashSet<>(List.of(ruleId()))),
                    () -> new Action.Estimate(t, new HashSet<>(List.of(ruleId())), Set.of("shelf")),
                    () -> new Action.EstimateClearance(t, "A", random.nextInt(1000) / 10.0),
                    () -> new Action.Hint(t, ruleId(), flip() ? "A" : null, flip() ? "shelf" : null, null, 1),
                    () -> new Action.LessHelp(t, Practice.Guidance.AT_HAND_IN),
                    () -> new Action.TakeOver(t, random.nextInt(1000)),
                    () -> new Action.Fault(t, "A", "two-lefts"));
            return all.get(random.nextInt(all.size())).get();
        }

        private Action bevel(double t) {
            Action.Datum from = flip() ? new Action.Datum.Step(step()) : new Action.Datum.End(end());
            return new Action.Bevel(
                    t, "A", surface(), surface(), from, number(0, 400), number(5, 175), of(Marker.values()));
        }

        private Action line(double t) {
            Action.Datum from = flip()
                    ? new Action.Datum.Step(step())
                    : new Action.Datum.End(flip() ? Surface.END_1 : Surface.END_2);
            boolean mate = flip();
            return new Action.Line(
                    t,
                    "A",
                    surface(),
                    surface(),
                    from,
                    mate ? null : number(0, 400),
                    mate ? "C" : null,
                    of(Marker.values()));
        }
    }
}
