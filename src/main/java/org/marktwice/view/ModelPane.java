package org.marktwice.view;

import java.awt.CardLayout;
import java.util.Locale;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import org.marktwice.advice.Explanation;
import org.marktwice.bench.Bench;
import org.marktwice.feedback.ModelBoard;
import org.marktwice.picture.FigureCache;
import org.marktwice.rulebook.ExplanationWords;
import org.marktwice.view.Look.Style;
import org.marktwice.view.bench.BoardView;
import org.marktwice.view.bench.UnrolledView;

/** The model answer for one board, and, where it is asked for, why it is the best. */
final class ModelPane extends Card {
    private static final long serialVersionUID = 1L;
    private static final String BOARD = "board";
    private static final String WHY = "why";
    private static final String ASK = "Why?";

    private final transient Session session;
    private final transient ExplanationWords explained;
    private final JLabel heading = Look.quiet(" ", Style.HEADING);
    private final JLabel words = Look.label(" ", Style.SUBTITLE);
    private final JLabel figure = Look.quiet(" ", Style.NOTE);
    private final JButton why = new JButton(ASK);
    private final CardLayout either = new CardLayout();
    private final JPanel shown = new JPanel(either);
    private final BoardView board;
    private final UnrolledView unrolled;
    private final WhyPane reasons = new WhyPane();
    private String showing = "";
    private boolean reasoning;

    ModelPane(Session session, FigureCache figures) {
        super(new MigLayout("insets 18 20 16 20, gap 0, fill", "[grow,fill][]", "[]4[]6[70lp::]4[grow,fill]"));
        this.session = session;
        explained = new ExplanationWords(Explanation.of(session.scenario()));
        board = new BoardView(figures).tiltable();
        unrolled = new UnrolledView(figures);
        board.setName("model-board");
        why.setName("why");
        why.setToolTipText("Why this set of boards is the best, and what each turn of this board would give");
        why.addActionListener(e -> showReasons(!reasoning));
        add(heading, "wmin 0");
        add(why, "spany 2, aligny top, wmin 104lp, wrap");
        add(words, "wmin 0, wrap");
        add(figure, "spanx 2, wmin 0, aligny top, wrap");
        shown.setOpaque(false);
        shown.add(pictures(), BOARD);
        shown.add(reasons, WHY);
        add(shown, "spanx 2, grow, wmin 0, hmin 0");
    }

    private JPanel pictures() {
        JPanel both = new JPanel(
                new MigLayout("insets 0, gap 0, wrap 1, fill", "[grow,fill]", "[grow 3,fill]8[grow 2,fill]"));
        both.setOpaque(false);
        both.add(board, "grow, wmin 0, hmin 0");
        both.add(unrolled, "grow, wmin 0, hmin 0");
        return both;
    }

    /** Turns between the board and the reasons. */
    void toggleReasons() {
        why.doClick();
    }

    private void showReasons(boolean on) {
        reasoning = on;
        why.setText(on ? "The board" : ASK);
        if (on) fillReasons();
        either.show(shown, on ? WHY : BOARD);
    }

    private void fillReasons() {
        session.scenario().board(showing).ifPresent(b -> reasons.show(b.id(), explained.why(), explained.table(b)));
    }

    void setMovement(boolean on) {
        board.setMovement(on);
    }

    /** Shows the model answer for this board beside what the learner had done to it. */
    void show(Bench bench, String id) {
        ModelBoard model = ModelBoard.of(session.situation(), bench, id);
        heading.setText(("Model answer for board " + id).toUpperCase(Locale.ROOT));
        words.setText(model.words());
        figure.setText(model.figure() + (model.learners().isEmpty() ? "" : "   Yours: " + model.learners()));
        board.show(model.picture(), model.lie());
        board.getAccessibleContext().setAccessibleName("Board " + id + " in the model answer");
        board.getAccessibleContext().setAccessibleDescription(words.getText());
        unrolled.show(model.picture());
        boolean another = !showing.equals(id);
        showing = id;
        if (another && reasoning) fillReasons();
    }
}
