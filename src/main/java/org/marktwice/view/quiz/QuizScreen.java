package org.marktwice.view.quiz;

import java.awt.BorderLayout;
import java.awt.Rectangle;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;
import javax.swing.JTextField;
import javax.swing.JToggleButton;
import javax.swing.KeyStroke;
import javax.swing.SwingUtilities;
import net.miginfocom.swing.MigLayout;
import org.jspecify.annotations.Nullable;
import org.marktwice.picture.FigureCache;
import org.marktwice.picture.Ink;
import org.marktwice.quiz.Answers;
import org.marktwice.quiz.Offer;
import org.marktwice.quiz.Question;
import org.marktwice.rulebook.Verdict;
import org.marktwice.view.Bar;
import org.marktwice.view.Card;
import org.marktwice.view.Column;
import org.marktwice.view.Commands;
import org.marktwice.view.Commands.Deed;
import org.marktwice.view.Look;
import org.marktwice.view.Look.Style;
import org.marktwice.view.Screen;

/** One picture, one question, one place to answer, then the reason. */
final class QuizScreen implements Screen {
    private final Sitting sitting;
    private final Runnable onEnd;
    private final List<Deed> deeds;
    private final JPanel page = new JPanel(new BorderLayout());
    private final JLabel line = Look.label(" ", Style.BODY);
    private final QuestionPictures stage;
    private final List<OfferRow> rows = new ArrayList<>();
    private final JTextField field = new JTextField(8);
    private final JButton answer = Look.primary(new JButton("Answer"));
    private final Column side = new Column(new MigLayout("insets 20, gap 0, wrap 1, hidemode 3", "[grow,fill]"));
    private final ReasonPart reason = new ReasonPart();
    private final Deed sure;
    private final Deed unsure;
    private final JToggleButton sureButton = new JToggleButton();
    private final JToggleButton unsureButton = new JToggleButton();
    private int chosen = -1;

    /** @param onEnd when all questions have been asked */
    QuizScreen(Sitting sitting, FigureCache figures, boolean movement, Runnable onProgress, Runnable onEnd) {
        this.sitting = sitting;
        this.stage = new QuestionPictures(figures, movement);
        this.onEnd = onEnd;
        sure = new Deed(QuizCommands.SURE, () -> say(true), this::isOpen);
        unsure = new Deed(QuizCommands.UNSURE, () -> say(false), this::isOpen);
        List<Deed> all = new ArrayList<>(List.of(
                new Deed(QuizCommands.ANSWER, this::answerOrGoOn),
                new Deed(QuizCommands.DOWN, () -> step(+1), this::isOpen),
                new Deed(QuizCommands.UP, () -> step(-1), this::isOpen),
                sure,
                unsure,
                new Deed(QuizCommands.PROGRESS, onProgress)));
        deeds = List.copyOf(all);
        for (int i = 0; i < QuizCommands.LETTERS.size(); i++) {
            int offer = i;
            all.add(new Deed(QuizCommands.LETTERS.get(i), () -> choose(offer), () -> isOpen() && offer < rows.size()));
        }
        line.setName("line");
        field.setName("figure");
        field.addActionListener(e -> answerOrGoOn());
        answer.setName("answer");
        answer.addActionListener(e -> answerOrGoOn());
        sureButton.setAction(sure);
        sureButton.setName("sure");
        unsureButton.setAction(unsure);
        unsureButton.setName("unsure");
        Commands.install(page, all);
        ask(onProgress);
    }

    private Question question() {
        return sitting.question().orElseThrow();
    }

    /** Whether the question is still to be answered. */
    private boolean isOpen() {
        return sitting.question().isPresent() && sitting.heard().isEmpty();
    }

    private boolean isFigure() {
        return question().answers().how() == Answers.How.FIGURE;
    }

    /** Puts the question before the learner. */
    private void ask(Runnable onProgress) {
        chosen = -1;
        rows.clear();
        page.removeAll();
        JButton progress = new JButton(QuizCommands.PROGRESS.word());
        progress.setName("progress");
        progress.setToolTipText(QuizCommands.PROGRESS.help());
        progress.addActionListener(e -> onProgress.run());
        String note = question().kind().idea() + " · level " + question().level();
        JLabel count = Look.quiet(sitting.number() + " of " + sitting.of(), Style.BODY);
        count.setName("count");
        JPanel whole = new JPanel(new MigLayout("insets 0, gap 0, wrap 1, fill", "[grow,fill]", "[][grow,fill][]"));
        whole.add(Bar.top("Quiz", note, count, progress));
        JPanel body = new JPanel(new MigLayout(
                "insets 20, gap 20, fill", "[grow,fill,shrinkprio 200][380lp:34%:520lp,fill]", "[grow,fill]"));
        rows.addAll(stage.ask(question(), this::choose, this::pass));
        body.add(stage, "grow, hmin 0, wmin 0");
        Card card = new Card(new MigLayout("insets 4, fill", "[grow,fill]", "[grow,fill]"));
        JScrollPane scroll = side.scrolling();
        // up and down choose among the answers; page keys scroll
        for (String key : List.of("UP", "DOWN")) {
            scroll.getInputMap(JComponent.WHEN_ANCESTOR_OF_FOCUSED_COMPONENT).put(KeyStroke.getKeyStroke(key), "none");
        }
        card.add(scroll, "grow, hmin 0, wmin 0");
        body.add(card, "growy, hmin 0");
        whole.add(body, "grow, hmin 0");
        whole.add(Bar.bottom(line, Look.quiet(keys(), Style.NOTE)));
        page.add(whole);
        fillSide();
        line.setText(" ");
        page.revalidate();
        page.repaint();
    }

    private String keys() {
        int offers = question().answers().offers().size();
        String choose = isFigure() ? "" : "a to " + Answers.letter(offers - 1) + " or ↑ ↓ choose   ";
        return choose + "Enter answers   F2 sure   F3 not sure";
    }

    private void pass(String words) {
        if (isOpen()) line.setText(words);
    }

    private void fillSide() {
        side.removeAll();
        reason.removeAll();
        Question asked = question();
        JTextArea asks = ReasonPart.prose(asked.asks(), Style.SUBTITLE, Ink.INK);
        asks.setName("asks");
        side.add(asks, "wmin 0");
        side.add(ReasonPart.prose(asked.beside(), Style.BODY, Ink.QUIET), "wmin 0, gaptop 8");
        if (isFigure()) side.add(entry(), "gaptop 20");
        else if (rows.isEmpty()) addRows();
        else
            side.add(
                    ReasonPart.prose("Point at one of the pictures, or press its letter.", Style.BODY, Ink.INK),
                    "wmin 0, gaptop 20");
        side.add(confidence(), "gaptop 20");
        answer.setText("Answer");
        side.add(answer, "gaptop 20, growx 0, alignx left");
        side.add(reason, "gaptop 20, wmin 0");
        sureButton.setSelected(false);
        unsureButton.setSelected(false);
        refresh();
    }

    private JComponent entry() {
        JPanel entry = new JPanel(new MigLayout("insets 0, gapx 8", "[][]"));
        entry.setOpaque(false);
        field.setText("");
        field.setEditable(true);
        field.getAccessibleContext()
                .setAccessibleName("Your figure, in " + question().answers().unit());
        entry.add(field);
        entry.add(Look.label(question().answers().unit(), Style.BODY));
        return entry;
    }

    private void addRows() {
        List<Offer> offers = question().answers().offers();
        boolean point = question().answers().how() == Answers.How.POINT;
        if (point) {
            side.add(
                    ReasonPart.prose("Point at it in the picture, or choose here.", Style.NOTE, Ink.QUIET),
                    "wmin 0, gaptop 20");
        }
        for (int i = 0; i < offers.size(); i++) {
            int offer = i;
            JTextArea words = ReasonPart.prose(offers.get(i).text(), Style.BODY, Ink.INK);
            OfferRow row = new OfferRow(Answers.letter(i), words, () -> choose(offer), false);
            rows.add(row);
            side.add(row, "wmin 0, gaptop " + (i == 0 ? point ? 8 : 20 : 8));
        }
    }

    private JComponent confidence() {
        JPanel panel = new JPanel(new MigLayout("insets 0, gapx 8", "[][]push"));
        panel.setOpaque(false);
        sureButton.setToolTipText(Commands.tooltip(QuizCommands.SURE));
        unsureButton.setToolTipText(Commands.tooltip(QuizCommands.UNSURE));
        panel.add(sureButton);
        panel.add(unsureButton);
        return panel;
    }

    private void say(boolean is) {
        sitting.sure(is);
        sureButton.setSelected(sitting.sure().equals(Optional.of(true)));
        unsureButton.setSelected(sitting.sure().equals(Optional.of(false)));
    }

    private void step(int by) {
        if (rows.isEmpty()) return;
        choose(chosen < 0 ? (by > 0 ? 0 : rows.size() - 1) : (chosen + by + rows.size()) % rows.size());
    }

    private void choose(int offer) {
        if (!isOpen() || offer < 0) return;
        chosen = offer;
        for (int i = 0; i < rows.size(); i++) rows.get(i).choose(i == offer);
        Offer.Place place = question().answers().offers().get(offer).place();
        if (place != null) stage.choose(place);
        refresh();
    }

    private void answerOrGoOn() {
        if (isOpen()) give();
        else goOn();
    }

    /** Answers rightly, or wrongly; for pictures of the screen. */
    void give(boolean rightly) {
        Answers answers = question().answers();
        int offer = rightly
                ? answers.right()
                : (answers.right() + 1) % answers.offers().size();
        if (isFigure()) field.setText(answers.offers().get(offer).text().replaceAll("[^0-9.]", ""));
        else choose(offer);
        give();
    }

    private void give() {
        String said = isFigure() ? field.getText() : chosen < 0 ? "" : Answers.letter(chosen);
        if (!sitting.answer(said)) {
            line.setText(isFigure() ? "Expected a number, such as 12.5." : "Choose an answer first.");
            return;
        }
        tell();
    }

    /** Shows how it went and why, whichever way, and turns the board to where it can be seen. */
    private void tell() {
        Question asked = question();
        Answers.Heard heard = sitting.heard().orElseThrow();
        field.setEditable(false);
        int right = asked.answers().right();
        for (int i = 0; i < rows.size(); i++) {
            boolean given = i == chosen;
            rows.get(i).tell(i == right ? Verdict.SOUND : given ? Verdict.WRONG : null);
        }
        reason.tell(asked, heard, sitting.remark());
        stage.tell(asked, rows);
        String trouble = sitting.trouble();
        line.setText(trouble.isEmpty() ? " " : "This answer is not saved: " + trouble);
        answer.setText(sitting.number() < sitting.of() ? "Next" : "Done");
        refresh();
        page.revalidate();
        page.repaint();
        answer.requestFocusInWindow();
        SwingUtilities.invokeLater(() -> reason.scrollRectToVisible(
                new Rectangle(0, 0, 1, Math.min(reason.getHeight(), side.getVisibleRect().height))));
    }

    private void goOn() {
        sitting.next();
        if (sitting.question().isEmpty()) {
            onEnd.run();
            return;
        }
        Runnable progress = () -> deed(QuizCommands.PROGRESS)
                .actionPerformed(
                        new java.awt.event.ActionEvent(page, java.awt.event.ActionEvent.ACTION_PERFORMED, "progress"));
        ask(progress);
        focus();
    }

    private void refresh() {
        deeds.forEach(Deed::refresh);
    }

    /** Where the picture shows a place; for tests that point there. */
    @Nullable
    PictureView picture() {
        return stage.first();
    }

    Sitting sitting() {
        return sitting;
    }

    @Override
    public JComponent component() {
        return page;
    }

    @Override
    public String title() {
        return "Quiz";
    }

    @Override
    public String menu() {
        return "Quiz";
    }

    @Override
    public List<Deed> deeds() {
        return deeds;
    }

    @Override
    public void setMovement(boolean shown) {
        stage.setMovement(shown);
    }

    @Override
    public void focus() {
        if (sitting.question().isPresent() && isOpen() && isFigure()) field.requestFocusInWindow();
        else answer.requestFocusInWindow();
    }
}
