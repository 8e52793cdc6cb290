package org.marktwice.print;

import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.function.DoubleUnaryOperator;
import org.marktwice.picture.Ink;
import org.marktwice.quiz.Answers;
import org.marktwice.quiz.Offer;
import org.marktwice.quiz.Picture;
import org.marktwice.quiz.Question;

/** What the questions of a sheet, and their answers, are made of. */
final class QuizBlocks {
    private static final double TICK = 7.5;
    private static final int DRAWN_ACROSS = 2;

    /** Longer answers are told by their letters alone, where their slips are told. */
    private static final int SHORT = 24;

    private QuizBlocks() {}

    /** A question's number and idea over a thin rule; on the right two boxes for how sure one is. */
    static Block head(int number, Question question) {
        Block heading = Blocks.heading(number + "   " + question.kind().idea(), "");
        return over(heading, w -> heading.height(w), (pen, place) -> {
            double base = place.getY() + 8 + Type.HEAD.size();
            double x = place.getMaxX();
            for (String word : List.of("not sure", "sure")) {
                x -= TICK;
                tick(pen, x, base);
                x -= 4 + Type.NOTE.width(word);
                pen.write(word, x, base, Type.NOTE, Ink.QUIET);
                x -= 12;
            }
        });
    }

    /** A box to tick, standing on a line of writing. */
    private static void tick(Pen pen, double x, double base) {
        pen.box(new Rectangle2D.Double(x, base - TICK + 0.5, TICK, TICK), Pen.NARROW, Ink.INK);
    }

    /** Room to answer. */
    static Block room(Question question, QuizPicture pictures, double width) {
        Answers answers = question.answers();
        if (answers.how() == Answers.How.FIGURE) return figure(answers.unit());
        if (answers.how() == Answers.How.POINT) return places(answers.offers());
        if (answers.offers().get(0).drawn() != null) return drawn(answers.offers(), pictures, width);
        List<Block> lines = new ArrayList<>();
        for (int i = 0; i < answers.offers().size(); i++) {
            lines.add(line(Answers.letter(i), answers.offers().get(i).text()));
        }
        return Blocks.together(lines);
    }

    private static Block figure(String unit) {
        return over(Blocks.space(26), w -> 26, (pen, place) -> {
            double base = place.getY() + 19;
            pen.write("answer", place.getX(), base, Type.NOTE, Ink.QUIET);
            double from = place.getX() + 34;
            double to = from + Paper.points(32);
            pen.line(from, base + 2, to, base + 2, Pen.NARROW, Ink.INK);
            pen.write(unit, to + 5, base, Type.BODY, Ink.INK);
        });
    }

    private static Block line(String letter, String text) {
        Block words = Blocks.labelled("", 28, Question.unbroken(text), Type.BODY, Ink.INK);
        return over(words, w -> words.height(w) + 2, (pen, place) -> {
            double base = place.getY() + Type.BODY.size();
            tick(pen, place.getX(), base);
            pen.write(letter, place.getX() + 15, base, Type.STRONG, Ink.INK);
        });
    }

    /** To be crossed in the picture, or ticked in a row. */
    private static Block places(List<Offer> offers) {
        return over(Blocks.space(30), w -> 30, (pen, place) -> {
            String says = "Put a cross on it in the picture, or tick it here:";
            pen.write(says, place.getX(), place.getY() + Type.NOTE.size(), Type.NOTE, Ink.QUIET);
            double base = place.getY() + 24;
            double each = place.getWidth() / Math.max(4, offers.size());
            for (int i = 0; i < offers.size(); i++) {
                double x = place.getX() + i * each;
                tick(pen, x, base);
                pen.write(Answers.letter(i), x + 15, base, Type.STRONG, Ink.INK);
                String text = Pen.cut(offers.get(i).text(), Type.BODY, each - 32);
                pen.write(text, x + 28, base, Type.BODY, Ink.INK);
            }
        });
    }

    private static Block drawn(List<Offer> offers, QuizPicture pictures, double width) {
        double gap = 12;
        double wide = (width - gap) / DRAWN_ACROSS;
        double high = 0;
        for (Offer one : offers) high = Math.max(high, pictures.height(picture(one), wide));
        double row = high + 4;
        int rows = (offers.size() + DRAWN_ACROSS - 1) / DRAWN_ACROSS;
        return over(Blocks.space(rows * row), w -> rows * row, (pen, place) -> {
            for (int i = 0; i < offers.size(); i++) {
                double x = place.getX() + i % DRAWN_ACROSS * (wide + gap);
                double y = place.getY() + i / DRAWN_ACROSS * row;
                pictures.draw(pen, picture(offers.get(i)), new Rectangle2D.Double(x, y, wide, row - 4));
                tick(pen, x, y + 12);
                pen.write(Answers.letter(i), x + 13, y + 12, Type.STRONG, Ink.INK);
            }
        });
    }

    private static Picture picture(Offer offer) {
        return Objects.requireNonNull(offer.drawn());
    }

    /** The right answer and why, with what shows it on the left, and what each slip comes of. */
    static Block answer(int number, Question question, QuizPicture pictures, double width) {
        double wide = width * 0.46;
        double indent = wide + 14;
        Answers answers = question.answers();
        Set<String> told = new HashSet<>();
        List<Block> text = new ArrayList<>();
        text.add(Blocks.labelled("", indent, "Right: " + named(answers, answers.right()), Type.STRONG, Ink.INK));
        String why = Question.unbroken(question.reason().text());
        text.add(Blocks.labelled("", indent, why, Type.BODY, Ink.INK));
        for (int i = 0; i < answers.offers().size(); i++) {
            String because = answers.offers().get(i).because();
            if (i == answers.right() || question.reason().text().contains(because) || !told.add(because)) continue;
            String which = answers.offers().get(i).text().length() > SHORT ? Answers.letter(i) : named(answers, i);
            String slip = Question.unbroken(which + ": " + because);
            text.add(Blocks.labelled("", indent, slip, Type.NOTE, Ink.QUIET));
        }
        Block words = Blocks.together(text);
        Picture shows = question.reason().shows();
        double high = Math.max(pictures.height(shows, wide), words.height(width));
        Block beside = over(
                words,
                w -> high + 4,
                (pen, place) -> pictures.draw(
                        pen,
                        shows,
                        new Rectangle2D.Double(place.getX(), place.getY() + 2, wide, pictures.height(shows, wide))));
        return Blocks.together(
                List.of(Blocks.heading(number + "   " + question.kind().idea(), ""), beside, Blocks.space(4)));
    }

    /** An answer as it is named on the sheet. */
    private static String named(Answers answers, int offer) {
        Offer one = answers.offers().get(offer);
        if (answers.how() == Answers.How.FIGURE) return one.text();
        return one.drawn() == null ? Answers.letter(offer) + " · " + one.text() : Answers.letter(offer);
    }

    private static Block over(Block under, DoubleUnaryOperator height, Blocks.Drawn more) {
        return Blocks.of(height, (pen, x, y, width) -> {
            under.draw(pen, x, y, width);
            more.in(pen, new Rectangle2D.Double(x, y, width, height.applyAsDouble(width)));
        });
    }
}
