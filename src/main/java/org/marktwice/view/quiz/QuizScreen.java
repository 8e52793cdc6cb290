package org.marktwice.view.quiz;

import java.awt.BorderLayout;
import java.awt.Rectangle;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.IntStream;
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
import org.marktwice.quiz.Picture;
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
import org.marktwice.view.Sign;

/** One picture, one question, one place to answer, then the reason. */
final class QuizScreen implements Screen {
    private static final int DRAWN_COLUMNS = 2;

    private final Sitting sitting;
    private final FigureCache figures;
    private final Runnable onEnd;
    private final List<Deed> deeds;
    private final JPanel page = new JPanel(new BorderLayout());
    private final JLabel line = Look.label(" ", Style.BODY);
    private final JPanel stage = new JPanel(new BorderLayout());
    private final List<OfferRow> rows = new ArrayList<>();
    private final List<PictureView> views = new ArrayList<>();
    private final JTextField field = new JTextField(8);
    private final JButton answer = Look.primary(new JButton("Answer"));
    private final Column side = new Column(new MigLayout("insets 20, gap 0, wrap 1, hidemode 3", "[grow,fill]"));
    private final JPanel reason = new JPanel(new MigLayout("insets 0, gap 0, wrap 1", "[grow,fill]"));
    private final Deed sure;
    private final Deed unsure;
    private final JToggleButton sureButton = new JToggleButton();
    private final JToggleButton unsureButton = new JToggleButton();
    private boolean movement;
    private int chosen = -1;

    /** @param onEnd when all questions have been asked */
    QuizScreen(Sitting sitting, FigureCache figures, boolean movement, Runnable onProgress, Runnable onEnd) {
        this.sitting = sitting;
        this.figures = figures;
        this.movement = movement;
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
        stage.setOpaque(false);
        line.setName("line");
        field.setName("figure");
        field.addActionListener(e -> answerOrGoOn());
        answer.setName("answer");
        answer.addActionListener(e -> answerOrGoOn());
        sureButton.setAction(sure);
        sureButton.setName("sure");
        unsureButton.setAction(unsure);
        unsureButton.setName("unsure");
        reason.setOpaque(false);
        reason.setName("reason");
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

    private boolean isDrawn() {
        return question().answers().offers().get(0).drawn() != null;
    }

    /** Puts the question before the learner. */
    private void ask(Runnable onProgress) {
        chosen = -1;
        rows.clear();
        views.clear();
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
        stage.removeAll();
        stage.add(shown());
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

    /** The question's picture, or the drawn answers. */
    private JComponent shown() {
        List<Offer> offers = question().answers().offers();
        if (isDrawn()) {
            JPanel grid = new JPanel(new MigLayout(
                    "insets 0, gap 16, fill, wrap " + DRAWN_COLUMNS,
                    "[grow,fill,sg d][grow,fill,sg d]",
                    "[grow,fill,sg h][grow,fill,sg h]"));
            grid.setOpaque(false);
            for (int i = 0; i < offers.size(); i++) {
                int offer = i;
                Offer one = offers.get(i);
                PictureView view =
                        view(Objects.requireNonNull(one.drawn()), "picture-" + Answers.letter(i), one.text());
                OfferRow row = new OfferRow(Answers.letter(i), view, () -> choose(offer), true);
                rows.add(row);
                grid.add(row, "grow, wmin 0, hmin 0");
            }
            return withPicture(grid);
        }
        Card card = new Card(new BorderLayout());
        PictureView view = view(question().picture(), "picture", question().given());
        if (question().answers().how() == Answers.How.POINT) {
            view.offer(p -> offerAt(p) >= 0, p -> choose(offerAt(p)), p -> pass(p));
        }
        card.add(view);
        return card;
    }

    /** The drawn answers, with what they are asked about above them where there is something. */
    private JComponent withPicture(JComponent grid) {
        if (question().picture() instanceof Picture.Beside beside && beside.isEmpty()) return grid;
        Card card = new Card(new BorderLayout());
        PictureView above = view(question().picture(), "picture", question().given());
        views.remove(above);
        card.add(above);
        JPanel whole = new JPanel(
                new MigLayout("insets 0, gap 0 16, fill, wrap 1", "[grow,fill]", "[150lp!,fill][grow,fill]"));
        whole.setOpaque(false);
        whole.add(card, "grow, wmin 0, hmin 0");
        whole.add(grid, "grow, wmin 0, hmin 0");
        return whole;
    }

    /** What shows the reason, and the drawn answers in a row under it. */
    private JComponent told() {
        JPanel whole = new JPanel(
                new MigLayout("insets 0, gap 0 16, fill, wrap 1", "[grow,fill]", "[grow,fill][170lp!,fill]"));
        whole.setOpaque(false);
        Card card = new Card(new BorderLayout());
        card.add(view(question().reason().shows(), "shows", question().reason().text()));
        whole.add(card, "grow, wmin 0, hmin 0");
        JPanel row = new JPanel(new MigLayout("insets 0, gap 12, fill"));
        row.setOpaque(false);
        rows.forEach(one -> row.add(one, "grow, wmin 0, hmin 0, sg d"));
        whole.add(row, "grow, wmin 0, hmin 0");
        return whole;
    }

    private static JTextArea prose(String text, Style style, Ink ink) {
        return Look.prose(Question.unbroken(text), style, ink);
    }

    private PictureView view(Picture picture, String name, String told) {
        PictureView view = new PictureView(figures, picture);
        view.setMovement(movement);
        view.setName(name);
        view.getAccessibleContext().setAccessibleName("Picture");
        view.getAccessibleContext().setAccessibleDescription(told);
        views.add(view);
        return view;
    }

    private int offerAt(Offer.Place place) {
        List<Offer> offers = question().answers().offers();
        return IntStream.range(0, offers.size())
                .filter(i -> place.equals(offers.get(i).place()))
                .findFirst()
                .orElse(-1);
    }

    private void pass(Optional<Offer.Place> place) {
        if (!isOpen()) return;
        line.setText(
                place.map(p -> question().answers().offers().get(offerAt(p)).text())
                        .orElse(" "));
    }

    private void fillSide() {
        side.removeAll();
        reason.removeAll();
        Question asked = question();
        JTextArea asks = prose(asked.asks(), Style.SUBTITLE, Ink.INK);
        asks.setName("asks");
        side.add(asks, "wmin 0");
        side.add(prose(asked.beside(), Style.BODY, Ink.QUIET), "wmin 0, gaptop 8");
        if (isFigure()) side.add(entry(), "gaptop 20");
        else if (!isDrawn()) addRows();
        if (isDrawn())
            side.add(
                    prose("Point at one of the pictures, or press its letter.", Style.BODY, Ink.INK),
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
            side.add(prose("Point at it in the picture, or choose here.", Style.NOTE, Ink.QUIET), "wmin 0, gaptop 20");
        }
        for (int i = 0; i < offers.size(); i++) {
            int offer = i;
            JTextArea words = prose(offers.get(i).text(), Style.BODY, Ink.INK);
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
        if (place != null) views.get(0).choose(place);
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
        JLabel verdict = Look.inked(
                new JLabel(heard.right() ? "Right" : "Not so"), Style.SUBTITLE, heard.right() ? Ink.SOUND : Ink.WRONG);
        verdict.setIcon(new Sign(heard.right() ? Verdict.SOUND : Verdict.WRONG));
        verdict.setIconTextGap(Look.px(8));
        verdict.setName("verdict");
        reason.add(verdict);
        if (!heard.right()) {
            // the reason may say it already
            heard.offer()
                    .filter(o -> !asked.reason().text().contains(o.because()))
                    .ifPresent(o -> reason.add(prose(o.because(), Style.BODY, Ink.INK), "wmin 0, gaptop 8"));
            if (isFigure()) {
                String should = "Right: " + asked.answers().rightOne().text() + ".";
                reason.add(prose(should, Style.STRONG, Ink.INK), "wmin 0, gaptop 8");
            }
        }
        JTextArea why = prose(asked.reason().text(), Style.BODY, Ink.INK);
        why.setName("why");
        reason.add(why, "wmin 0, gaptop 8");
        reason.add(prose(sitting.remark(), Style.NOTE, Ink.QUIET), "wmin 0, gaptop 12");
        if (isDrawn()) {
            stage.removeAll();
            stage.add(told());
        } else {
            views.get(0).offer(p -> false, p -> {}, p -> {});
            views.get(0).show(asked.reason().shows());
        }
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
        return views.isEmpty() ? null : views.get(0);
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
        movement = shown;
        views.forEach(v -> v.setMovement(shown));
    }

    @Override
    public void focus() {
        if (sitting.question().isPresent() && isOpen() && isFigure()) field.requestFocusInWindow();
        else answer.requestFocusInWindow();
    }
}
