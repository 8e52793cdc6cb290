package org.marktwice.view;

import java.util.List;
import java.util.Optional;
import javax.swing.JComponent;
import org.marktwice.picture.FigureCache;
import org.marktwice.view.Commands.Deed;
import org.marktwice.view.bench.BenchScreen;

/** The bench as one of the window's screens. */
final class BenchCard implements Screen {
    private final String title;
    private final BenchScreen bench;

    BenchCard(Session session, FigureCache figures, boolean movement, BenchScreen.Doors doors) {
        title = session.scenario().title();
        bench = new BenchScreen(session, figures, doors);
        bench.setMovement(movement);
    }

    /** The board in hand. */
    String board() {
        return bench.model().board().board().id();
    }

    void take(String board) {
        bench.model().select(board);
    }

    @Override
    public JComponent component() {
        return bench;
    }

    @Override
    public String title() {
        return title;
    }

    @Override
    public String menu() {
        return "Bench";
    }

    @Override
    public List<Deed> deeds() {
        return bench.deeds();
    }

    @Override
    public Optional<Workshop> workshop() {
        return Workshop.of(bench.model().session().scenario());
    }

    @Override
    public void focus() {
        bench.focus();
    }

    @Override
    public void setMovement(boolean shown) {
        bench.setMovement(shown);
    }

    @Override
    public void left() {
        bench.left();
    }
}
