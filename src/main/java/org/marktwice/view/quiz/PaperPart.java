package org.marktwice.view.quiz;

import java.io.File;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.function.Consumer;
import javax.swing.JButton;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JFileChooser;
import javax.swing.JPanel;
import javax.swing.JSpinner;
import javax.swing.SpinnerNumberModel;
import javax.swing.SwingWorker;
import net.miginfocom.swing.MigLayout;
import org.marktwice.files.FileRefused;
import org.marktwice.picture.Ink;
import org.marktwice.print.Paper;
import org.marktwice.print.QuizSheet;
import org.marktwice.print.SheetFile;
import org.marktwice.quiz.Quiz;
import org.marktwice.view.Look;
import org.marktwice.view.Look.Style;

/** A quiz to print: how many questions, how hard, on which paper, from which number. */
final class PaperPart extends JPanel {
    private static final long serialVersionUID = 1L;
    private static final int MOST = 100;

    private final JSpinner questions = spinner("sheet-questions", "How many questions", 8, 1, MOST);
    private final JSpinner level = spinner("sheet-level", "Level of the questions", 2, 1, Quiz.HARDEST);
    private final JSpinner seed;
    private final JComboBox<String> paper = new JComboBox<>(new String[] {"A4", "letter"});
    private final JButton button = new JButton();
    private final transient Consumer<String> say;

    /** @param say takes one line for the learner */
    PaperPart(long proposed, Consumer<String> say) {
        super(new MigLayout("insets 0, gap 8 8, wrap 4", "[][grow,fill]12[][grow,fill]"));
        this.say = say;
        this.seed = spinner("sheet-seed", "The number that the sheet is made from", (int) proposed, 0, 999_999_999);
        setOpaque(false);
        add(
                Look.prose(
                        "A quiz to print, with room to answer; its answers are on pages of their own at the end. The same number"
                                + " gives the same sheet.",
                        Style.NOTE,
                        Ink.QUIET),
                "span 4, growx, wmin 0");
        paper.setName("sheet-paper");
        paper.getAccessibleContext().setAccessibleName("Paper");
        field("Questions", questions);
        field("Level", level);
        field("Number", seed);
        field("Paper", paper);
        button.setName("sheet");
        add(button, "span 4, growx 0, alignx left");
    }

    private void field(String word, JComponent field) {
        add(Look.label(word, Style.BODY));
        add(field, "wmin 0");
    }

    private static JSpinner spinner(String name, String spoken, int at, int least, int most) {
        JSpinner spinner = new JSpinner(new SpinnerNumberModel(at, least, most, 1));
        spinner.setEditor(new JSpinner.NumberEditor(spinner, "0"));
        spinner.setName(name);
        spinner.getAccessibleContext().setAccessibleName(spoken);
        JComponent editor = ((JSpinner.DefaultEditor) spinner.getEditor()).getTextField();
        editor.getAccessibleContext().setAccessibleName(spoken);
        return spinner;
    }

    JButton button() {
        return button;
    }

    /** Asks for a file, and draws the sheet into it. */
    void save() {
        JFileChooser chooser = new JFileChooser();
        chooser.setSelectedFile(new File("quiz-" + seed.getValue() + ".pdf"));
        if (chooser.showSaveDialog(this) == JFileChooser.APPROVE_OPTION) {
            saveTo(chooser.getSelectedFile().toPath());
        }
    }

    void saveTo(Path file) {
        int many = (Integer) questions.getValue();
        int hard = (Integer) level.getValue();
        long from = ((Integer) seed.getValue()).longValue();
        Paper on = List.of(Paper.A4, Paper.LETTER).get(paper.getSelectedIndex());
        say.accept("Drawing the sheet …");
        new SwingWorker<Integer, Void>() {
            @Override
            protected Integer doInBackground() throws FileRefused {
                SheetFile.check(file);
                QuizSheet.Bound sheet = QuizSheet.of(Quiz.of(from, many, hard), from, on);
                SheetFile.save(file, sheet.all(), QuizSheet.title(many, from));
                return sheet.all().size();
            }

            @Override
            protected void done() {
                try {
                    say.accept("Saved as " + file.getFileName() + ", " + get() + " pages.");
                } catch (InterruptedException e) {
                    Thread.currentThread().interrupt();
                } catch (ExecutionException e) {
                    say.accept("It could not be saved: " + why(e));
                }
            }
        }.execute();
    }

    private static String why(ExecutionException e) {
        if (e.getCause() instanceof FileRefused refused) return refused.reason();
        throw new IllegalStateException(e.getCause());
    }
}
