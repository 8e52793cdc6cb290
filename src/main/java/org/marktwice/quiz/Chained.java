package org.marktwice.quiz;

import java.util.ArrayList;
import java.util.List;
import org.marktwice.bench.Marker;
import org.marktwice.picture.BoardPicture;
import org.marktwice.picture.Struck;
import org.marktwice.timber.Board;
import org.marktwice.timber.Chance;
import org.marktwice.timber.Size;
import org.marktwice.timber.Surface;
import org.marktwice.timber.SurfacePoint;

/** Lines measured each from the one before: where do they come to stand, and how far out can they be? */
final class Chained implements Maker {
    private static final Surface FACE = Surface.FACE_1;
    private static final List<String> NUMBERS = List.of("No", "One", "Two", "Three", "Four", "Five", "Six");

    @Override
    public Kind kind() {
        return Kind.CHAINED;
    }

    @Override
    public Question.Draft make(int level, Chance chance) {
        int steps = level == 1 ? 4 : chance.whole(4, 6);
        List<Double> lengths = new ArrayList<>();
        for (int i = 0; i < steps; i++) lengths.add(30 + 0.5 * chance.whole(0, 60));
        Size size = new Size(10 * chance.whole(42, 50), 5 * chance.whole(16, 24), 20);
        Board board = Boards.of(chance, size, 0.2).next();
        BoardPicture picture = BoardPicture.of(board).struck(lines(board, lengths));
        double error = 0.1 * chance.whole(3, 8);
        String given = Say.of(
                "%s lines are measured on board %s, the first from end 1 and each other from the one before: %s mm.%s",
                NUMBERS.get(steps),
                board.id(),
                Say.and(lengths.stream().map(Say::number).toList()),
                level == 1 ? "" : Say.of(" Each measurement can be out by %s either way.", Say.mm(error)));
        Picture.SquareOn shown = Picture.SquareOn.whole(picture, FACE);
        if (level == 1) return sum(chance, lengths, given, shown);
        return level == 2 || chance.with(0.5)
                ? worst(chance, steps, error, given, shown)
                : between(chance, steps, error, given, shown);
    }

    /** The lines, and shaded where the last of them may come to stand. */
    private static Picture astray(Picture.SquareOn shown, double error) {
        BoardPicture board = shown.board();
        List<Struck> struck = new ArrayList<>(board.struck());
        double x = ((Struck.Line) struck.get(struck.size() - 1)).from().u();
        double width = board.board().size().width();
        struck.add(new Struck.Waste(
                struck.size() + 1,
                List.of(
                        new SurfacePoint(FACE, x - error, 0),
                        new SurfacePoint(FACE, x - error, width),
                        new SurfacePoint(FACE, x + error, width),
                        new SurfacePoint(FACE, x + error, 0))));
        return Picture.SquareOn.whole(board.struck(struck), FACE);
    }

    /** The lines, and a rule laid down once from the end to the last of them. */
    private static Picture measured(Picture.SquareOn shown, double sum) {
        double middle = shown.board().board().size().width() / 2;
        BoardPicture.LaidRule rule = new BoardPicture.LaidRule(
                new SurfacePoint(FACE, 0, middle), new SurfacePoint(FACE, sum, middle), Say.number(sum));
        return Picture.SquareOn.whole(shown.board().rule(rule), FACE);
    }

    private static List<Struck> lines(Board board, List<Double> lengths) {
        List<Struck> lines = new ArrayList<>();
        double x = 0;
        for (double length : lengths) {
            x += length;
            lines.add(new Struck.Line(
                    lines.size() + 1,
                    new SurfacePoint(FACE, x, 0),
                    new SurfacePoint(FACE, x, board.size().width()),
                    Marker.PENCIL));
        }
        return lines;
    }

    private static Question.Draft sum(Chance chance, List<Double> lengths, String given, Picture.SquareOn shown) {
        double sum = lengths.stream().mapToDouble(Double::doubleValue).sum();
        double last = lengths.get(lengths.size() - 1);
        List<Offer> slips = List.of(
                Offer.figure(sum - last, "mm", "One short: that is where the line before it stands."),
                Offer.figure(sum - 10, "mm", "Ten out in the adding up."),
                Offer.figure(last, "mm", "That is measured from the line before, not from the end."));
        Answers answers = Answers.figure(chance, Offer.figure(sum, "mm", "All steps added up."), 0.25, "mm", slips);
        return new Question.Draft(
                given,
                "How far from end 1 does the last line stand?",
                answers,
                shown,
                new Question.Reason(
                        Say.of(
                                "%s = %s. Written so, from one end with the rule laid down once, no step can carry its error"
                                        + " on to the next.",
                                String.join(
                                        " + ", lengths.stream().map(Say::number).toList()),
                                Say.mm(sum)),
                        measured(shown, sum)));
    }

    private static Question.Draft worst(Chance chance, int steps, double error, String given, Picture.SquareOn shown) {
        List<Offer> slips = List.of(
                figure(error, "That holds for a line measured from the end itself; here each step adds its own."),
                figure(Math.sqrt(steps) * error, "So much is likely, where some errors cancel; at worst none do."),
                figure((steps - 1) * error, "One short: the first line is measured as well."));
        return new Question.Draft(
                given,
                "How far out can the last line be at worst?",
                Answers.figure(chance, figure(steps * error, "Every step adds its own error."), 0.05, "mm", slips),
                shown,
                new Question.Reason(
                        Say.of(
                                "%d × %s = %s at worst, and √%d × %s = %s is likely. Measured from end 1 with the rule laid"
                                        + " down once it would be %s. Shaded is where the line may come to stand.",
                                steps,
                                Say.number(error),
                                Say.mm(steps * error),
                                steps,
                                Say.number(error),
                                Say.mm(Math.sqrt(steps) * error),
                                Say.mm(error)),
                        astray(shown, steps * error)));
    }

    private static Question.Draft between(
            Chance chance, int steps, double error, String given, Picture.SquareOn shown) {
        List<Offer> slips = List.of(
                figure(steps * error, "One too many: the first line's own error moves both lines alike."),
                figure(2 * error, "That holds for two lines each measured from the end."),
                figure(error, "That is a single step's error."));
        return new Question.Draft(
                given,
                "How far out can the distance between the first and the last line be at worst?",
                Answers.figure(
                        chance,
                        figure((steps - 1) * error, "Only the steps between the two lines add up."),
                        0.05,
                        "mm",
                        slips),
                shown,
                new Question.Reason(
                        Say.of(
                                "Between the two lie %d steps: %d × %s = %s. Measured both from end 1 it would be 2 × %s = %s at"
                                        + " worst, however many lines lie between. Shaded is where the last line may come to stand.",
                                steps - 1,
                                steps - 1,
                                Say.number(error),
                                Say.mm((steps - 1) * error),
                                Say.number(error),
                                Say.mm(2 * error)),
                        astray(shown, steps * error)));
    }

    private static Offer figure(double mm, String because) {
        return Offer.figure(Math.round(mm * 100) / 100.0, "mm", because);
    }
}
