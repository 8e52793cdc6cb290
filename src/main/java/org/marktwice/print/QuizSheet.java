package org.marktwice.print;

import java.util.ArrayList;
import java.util.List;
import org.marktwice.picture.Figures;
import org.marktwice.picture.Ink;
import org.marktwice.quiz.Answers;
import org.marktwice.quiz.Picture;
import org.marktwice.quiz.Question;
import org.marktwice.rulebook.Cautions;

/** A quiz on paper: questions with room to answer, and the answers on pages of their own. */
public final class QuizSheet {
    /** A pixel of the painters' on the page, points: of questions, and of the smaller pictures beside answers. */
    private static final double UNIT = 0.65;

    private static final double SMALL_UNIT = 0.45;

    private final List<Question> quiz;
    private final long seed;
    private final Paper paper;
    private final double width;
    private final Figures wood = new Wood();

    private QuizSheet(List<Question> quiz, long seed, Paper paper) {
        this.quiz = quiz;
        this.seed = seed;
        this.paper = paper;
        this.width = TitleBlock.inside(paper, false).getWidth();
    }

    /** Questions and answers, each numbered by themselves, so that they can be handed out apart. */
    public record Bound(List<Page> questions, List<Page> answers) {
        public Bound {
            questions = List.copyOf(questions);
            answers = List.copyOf(answers);
        }

        /** The answers after the questions. */
        public List<Page> all() {
            List<Page> all = new ArrayList<>(questions);
            all.addAll(answers);
            return List.copyOf(all);
        }
    }

    /**
     * @param quiz at least one question
     * @param seed what the quiz was made from, to be told on every page
     */
    public static Bound of(List<Question> quiz, long seed, Paper paper) {
        QuizSheet sheet = new QuizSheet(quiz, seed, paper);
        return new Bound(Leaf.bound(sheet.questions(), paper), Leaf.bound(sheet.answers(), paper));
    }

    /** What the files call themselves. */
    public static String title(int questions, long seed) {
        return "Quiz of " + questions + (questions == 1 ? " question" : " questions") + ", seed " + seed;
    }

    private TitleBlock block(String kind) {
        return new TitleBlock(
                kind,
                "Quiz of " + quiz.size() + (quiz.size() == 1 ? " question" : " questions"),
                "level " + quiz.get(0).level() + " · seed " + seed,
                "");
    }

    private List<Leaf> questions() {
        QuizPicture rich = new QuizPicture(wood, UNIT);
        QuizPicture light = new QuizPicture(Wood.light(wood), UNIT);
        List<Block> blocks = new ArrayList<>();
        blocks.add(Blocks.blanks("name", 0.42, "class", 0.24, "date", 0.26));
        blocks.add(Blocks.text(
                "Tick how sure you are before you go on. Where a length stands beside a board, the board can be measured by it.",
                Type.NOTE,
                Ink.QUIET));
        blocks.add(Blocks.text(Cautions.LINE, Type.NOTE, Ink.QUIET));
        for (int i = 0; i < quiz.size(); i++) {
            Question question = quiz.get(i);
            boolean marked = question.answers().how() == Answers.How.POINT;
            blocks.add(question(i + 1, question, marked ? light : rich));
        }
        return Leaf.flowing(block("quiz"), paper, blocks);
    }

    private Block question(int number, Question question, QuizPicture pictures) {
        List<Block> blocks = new ArrayList<>();
        blocks.add(QuizBlocks.head(number, question));
        blocks.add(Blocks.text(Question.unbroken(question.asks()), Type.STRONG, Ink.INK));
        blocks.add(Blocks.text(Question.unbroken(question.beside()), Type.BODY, Ink.INK));
        blocks.add(Blocks.space(4));
        boolean bare = question.picture() instanceof Picture.Beside beside && beside.isEmpty();
        if (!bare) blocks.add(pictures.block(question.picture(), width));
        blocks.add(QuizBlocks.room(question, pictures, width));
        blocks.add(Blocks.space(8));
        return Blocks.together(blocks);
    }

    private List<Leaf> answers() {
        QuizPicture pictures = new QuizPicture(wood, SMALL_UNIT);
        List<Block> blocks = new ArrayList<>();
        blocks.add(Blocks.text("Answers", Type.TITLE, Ink.INK));
        for (int i = 0; i < quiz.size(); i++) {
            blocks.add(QuizBlocks.answer(i + 1, quiz.get(i), pictures, width));
        }
        return Leaf.flowing(block("answers to the quiz"), paper, blocks);
    }
}
