package org.marktwice.quiz;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.joml.Vector3d;
import org.junit.jupiter.api.Test;
import org.marktwice.bench.Mark;
import org.marktwice.drawing.Direction;
import org.marktwice.picture.BoardPicture;
import org.marktwice.timber.Surface;

/** What every question of a kind must hold, over 10,000 seeds of all levels; a subclass says by other means which answers are right. */
abstract class MakerLaws {
    static final int SEEDS = 10_000;

    abstract Kind kind();

    /** Whether this answer is right, found by other means than the maker's. */
    abstract boolean isRight(Question question, Offer offer);

    /** All laws in one pass: making the questions is what takes the time. */
    @Test
    void oneAnswerIsRightTheOthersAreDistinctAndWrongAndNothingIsMissing() {
        forAll(q -> {
            oneAnswerIsRight(q);
            answersAreDistinctAndHeardAsWhatTheyAre(q);
            textsAndPicturesAreComplete(q);
        });
    }

    private void oneAnswerIsRight(Question q) {
        List<String> right = q.answers().offers().stream()
                .filter(o -> isRight(q, o))
                .map(Offer::text)
                .toList();
        assertThat(right).containsExactly(q.answers().rightOne().text());
    }

    private static void answersAreDistinctAndHeardAsWhatTheyAre(Question q) {
        Answers answers = q.answers();
        List<String> texts = answers.offers().stream().map(Offer::text).toList();
        assertThat(texts).hasSizeGreaterThanOrEqualTo(2).doesNotHaveDuplicates();
        for (int i = 0; i < texts.size(); i++) {
            String said = answers.how() == Answers.How.FIGURE ? texts.get(i) : Answers.letter(i);
            Answers.Heard heard = answers.hear(said).orElseThrow();
            assertThat(heard.right()).isEqualTo(i == answers.right());
            assertThat(heard.offer()).contains(answers.offers().get(i));
        }
        if (answers.how() == Answers.How.FIGURE) figuresAreApart(answers);
        else assertThat(answers.hear("none of these")).isEmpty();
    }

    private static void figuresAreApart(Answers answers) {
        double right = answers.rightOne().figure();
        assertThat(answers.offers().size()).isGreaterThanOrEqualTo(3);
        for (Offer one : answers.offers()) {
            if (one.equals(answers.rightOne())) continue;
            assertThat(Math.abs(one.figure() - right)).isGreaterThan(2 * answers.tolerance());
        }
        double within = right + 0.9 * answers.tolerance();
        double beyond = right + 1.5 * answers.tolerance();
        assertThat(answers.hear(decimal(within)).orElseThrow().right()).isTrue();
        assertThat(answers.hear(decimal(beyond)).orElseThrow().right()).isFalse();
        assertThat(answers.hear("many")).isEmpty();
    }

    private static String decimal(double value) {
        return String.format(java.util.Locale.ROOT, "%.3f", value);
    }

    private static final Pattern UNFINISHED = Pattern.compile("null|NaN|%[sdf]|Infinity|Optional|\\{|\\[|  \\w|--");

    private static void textsAndPicturesAreComplete(Question q) {
        List<String> texts = new ArrayList<>(
                List.of(q.given(), q.beside(), q.asks(), q.reason().text()));
        q.answers().offers().forEach(o -> texts.addAll(List.of(o.text(), o.because())));
        String all = String.join(" ", texts).replaceAll("\\n[^\\n]*", "");
        assertThat(texts).noneMatch(String::isBlank);
        assertThat(UNFINISHED.matcher(all).find()).as(all).isFalse();
        assertThat(q.asks()).matches("(?s).*[?.]");
        assertThat(q.reason().text()).endsWith(".");
        List<Offer> offers = q.answers().offers();
        long drawn = offers.stream().filter(o -> o.drawn() != null).count();
        long places = offers.stream().filter(o -> o.place() != null).count();
        assertThat(drawn).isIn(0L, (long) offers.size());
        assertThat(places).isEqualTo(q.answers().how() == Answers.How.POINT ? offers.size() : 0);
    }

    @Test
    void theSameSeedMakesTheSameQuestionAndAnotherMakesAnother() {
        List<Question> some = IntStream.range(0, 60).mapToObj(this::question).toList();

        assertThat(IntStream.range(0, 60).mapToObj(this::question).toList()).isEqualTo(some);
        assertThat(some.stream().map(q -> q.reason().shows()).distinct()).hasSize(60);
    }

    @Test
    void theRightAnswerIsNowhereAtHome() {
        long[] places = new long[8];
        IntStream.range(0, 3000).forEach(i -> places[question(i).answers().right()]++);

        assertThat(IntStream.range(0, 8).filter(i -> places[i] > 0).count()).isGreaterThan(1);
        assertThat(java.util.Arrays.stream(places).max().orElseThrow()).isLessThan(2400);
    }

    Question question(int seed) {
        return Quiz.question(kind(), 1 + seed % Quiz.HARDEST, seed);
    }

    private void forAll(Consumer<Question> law) {
        IntStream.range(0, SEEDS).parallel().forEach(seed -> {
            try {
                law.accept(question(seed));
            } catch (AssertionError | RuntimeException e) {
                throw new AssertionError(kind().id() + ", seed " + seed + ": " + e.getMessage(), e);
            }
        });
    }

    // What subclasses need to look into a question

    static BoardPicture board(Picture picture) {
        if (picture instanceof Picture.Lying p) return p.board();
        if (picture instanceof Picture.Unrolled p) return p.board();
        if (picture instanceof Picture.SquareOn p) return p.board();
        if (picture instanceof Picture.Beside b) {
            return board(b.pictures().stream()
                    .filter(p -> !(p instanceof Picture.Job))
                    .findFirst()
                    .orElseThrow());
        }
        throw new AssertionError("no board: " + picture);
    }

    static Mark mark(BoardPicture picture, Mark.Kind kind) {
        return picture.state().marks().stream()
                .filter(m -> m.kind() == kind)
                .findFirst()
                .orElseThrow();
    }

    static Surface surface(Offer offer) {
        return ((Offer.Place.OnSurface) java.util.Objects.requireNonNull(offer.place())).surface();
    }

    /** The number after these words. */
    static double after(String text, String words) {
        Matcher m =
                Pattern.compile(Pattern.quote(words) + "\\s*(-?\\d+(\\.\\d+)?)").matcher(text);
        assertThat(m.find()).as("%s in %s", words, text).isTrue();
        return Double.parseDouble(m.group(1));
    }

    /** The direction that a text ends in. */
    static Direction direction(String text) {
        String last = text.replaceAll("[?. ]+$", "");
        for (Direction d : Direction.values()) if (last.endsWith(EndDown.looks(d))) return d;
        throw new AssertionError(text);
    }

    /** Which end looks in a direction, by vectors alone, when two surfaces look where they are told to. */
    static Surface looking(Direction asked, Surface one, Direction oneLooks, Surface other, Direction otherLooks) {
        Vector3d third = new Vector3d(one.normal()).cross(other.normal());
        Vector3d thirdLooks = new Vector3d(oneLooks.unit()).cross(otherLooks.unit());
        double same = thirdLooks.dot(asked.unit());
        assertThat(Math.abs(same)).isEqualTo(1);
        return third.x * same > 0 ? Surface.END_2 : Surface.END_1;
    }
}
