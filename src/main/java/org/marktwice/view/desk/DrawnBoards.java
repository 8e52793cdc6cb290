package org.marktwice.view.desk;

import java.awt.event.ActionListener;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import org.jspecify.annotations.Nullable;
import org.marktwice.picture.FigureCache;
import org.marktwice.scenario.Draft;
import org.marktwice.timber.Board;
import org.marktwice.timber.Knot;
import org.marktwice.timber.Surface;
import org.marktwice.view.Card;
import org.marktwice.view.Column;
import org.marktwice.view.Look;
import org.marktwice.view.Look.Style;

/** Boards drawn by hand: one at a time, its figures at the left, its surfaces and its stem at the right. */
final class DrawnBoards {
    private final SetModel model;
    private final List<Runnable> shows = new ArrayList<>();
    private final Choice<String> which;
    private final BoardFigures figures;
    private final KnotFigures knots;
    private final GapLine gap = new GapLine("board-gap");
    private final JLabel outcome = Look.label(" ", Style.BODY);
    private final KnotSheet sheet;
    private final EndSection section;
    private final JComponent form;
    private final JComponent pictures;
    private String letter = "";
    private String shown = "";
    private String knot = "";

    DrawnBoards(SetModel model, FigureCache cache) {
        this.model = model;
        which = new Choice<>("board", "Board", l -> "Board " + l, l -> {
            letter = l;
            refresh();
        });
        sheet = new KnotSheet(cache, new KnotSheet.Host() {
            @Override
            public void picked(String id) {
                knot = id;
                refresh();
            }

            @Override
            public void moved(Knot next, boolean settled) {
                board().ifPresent(b -> put(BoardEdits.with(b, next), settled));
            }
        });
        section = new EndSection(
                cache,
                p -> board().ifPresent(b -> put(BoardEdits.pith(b, p), false)),
                p -> board().ifPresent(b -> put(BoardEdits.pith(b, p), true)));
        OneBoard drawn = new OneBoard() {
            @Override
            public Optional<Board> board() {
                return DrawnBoards.this.board();
            }

            @Override
            public void put(Board next) {
                DrawnBoards.this.put(next, true);
            }

            @Override
            public void refresh() {
                DrawnBoards.this.refresh();
            }
        };
        figures = new BoardFigures(drawn);
        knots = new KnotFigures(drawn);
        form = buildForm();
        pictures = buildPictures();
    }

    JComponent form() {
        return form;
    }

    JComponent pictures() {
        return pictures;
    }

    void outcome(Optional<Grown> found, String otherwise) {
        outcome.setText(
                found.map(f -> (f.isSolvable() ? "✓  " : "×  ") + f.says()).orElse(otherwise));
        outcome.setToolTipText(outcome.getText());
    }

    private Draft draft() {
        return model.draft();
    }

    private int index() {
        List<Board> boards = draft().boards();
        for (int i = 0; i < boards.size(); i++) if (boards.get(i).id().equals(letter)) return i;
        return -1;
    }

    private Optional<Board> board() {
        int at = index();
        return at < 0 ? Optional.empty() : Optional.of(draft().boards().get(at));
    }

    private void put(Board next, boolean settled) {
        int at = index();
        if (at < 0) return;
        List<Board> boards = new ArrayList<>(draft().boards());
        boards.set(at, next);
        Draft with = draft().onBoards(boards);
        if (settled) model.edit(with);
        else model.steps().attempt(with);
    }

    private JComponent buildForm() {
        Column column = new Column(new MigLayout("insets 0 0 0 6, gap 0 8, wrap 1, fillx", "[grow,fill]"));
        JPanel top = panel("insets 0, gap 6, fillx", "[grow,fill][][][]");
        top.add(which, "wmin 0");
        top.add(button("add-board", "Add", "Another planed board without knots", e -> add(BoardEdits.fresh(draft()))));
        JButton copy = button(
                "copy-board",
                "Copy",
                "The same board under another letter",
                e -> board().ifPresent(b -> add(BoardEdits.named(b, BoardEdits.letter(draft().boards())))));
        JButton gone = button("remove-board", "Remove", "Take this board off the rack", e -> remove());
        top.add(copy);
        top.add(gone);
        column.add(top, "wmin 0");
        column.add(gap, "wmin 0, hidemode 3");
        column.add(figures, "wmin 0, hidemode 3");
        JButton fresh = button(
                "add-knot",
                "Add a knot",
                "In the middle of face 1; or double-click where it is to come out",
                e -> board().flatMap(b -> BoardEdits.freshThrough(
                                        b,
                                        new org.marktwice.timber.SurfacePoint(
                                                Surface.FACE_1,
                                                b.size().length() / 2,
                                                b.size().width() / 2))
                                .map(k -> BoardEdits.with(b, k)))
                        .ifPresent(b -> put(b, true)));
        column.add(knots, "wmin 0, hidemode 3");
        column.add(fresh, "growx 0, hidemode 3");
        shows.add(() -> {
            boolean timber = board().filter(b -> !b.isSheet()).isPresent();
            which.setEnabled(board().isPresent());
            copy.setEnabled(board().isPresent());
            gone.setEnabled(board().isPresent());
            figures.setVisible(board().isPresent());
            knots.setVisible(timber);
            fresh.setVisible(timber);
        });
        return column.scrolling();
    }

    private void add(@Nullable Board next) {
        if (next == null) return;
        List<Board> boards = new ArrayList<>(draft().boards());
        boards.add(next);
        letter = next.id();
        model.edit(draft().onBoards(boards));
    }

    private void remove() {
        int at = index();
        if (at < 0) return;
        List<Board> boards = new ArrayList<>(draft().boards());
        boards.remove(at);
        letter = boards.isEmpty() ? "" : boards.get(Math.max(0, at - 1)).id();
        model.edit(draft().onBoards(boards));
    }

    private JComponent buildPictures() {
        JPanel side = panel("insets 0, gap 0 12, wrap 1, fill", "[grow,fill]");
        outcome.setName("outcome");
        side.add(outcome, "wmin 0, h pref!");
        Card board = new Card(new MigLayout("insets 12, fill", "[grow,fill]", "[grow,fill]"));
        board.add(sheet, "grow, hmin 0, wmin 0");
        Card stem = new Card(new MigLayout("insets 12, fill, gap 0 4, wrap 1", "[grow,fill]", "[grow,fill][]"));
        stem.add(section, "grow, hmin 0, wmin 0");
        stem.add(
                Look.quiet(
                        "Drag the pith, or move it by the arrow keys; drag a knot over the surfaces; double-click for a new one.",
                        Style.NOTE),
                "wmin 0");
        side.add(board, "grow, push, hmin 0, wmin 0, h 50%");
        side.add(stem, "grow, push, hmin 0, wmin 0, h 50%, hidemode 3");
        shows.add(() -> stem.setVisible(board().isPresent()));
        return side;
    }

    void refresh() {
        List<String> letters = draft().boards().stream().map(Board::id).toList();
        if (!letters.contains(letter)) letter = letters.isEmpty() ? "" : letters.get(0);
        which.show(letters, letters.isEmpty() ? null : letter);
        // what is no figure of one board is none of another's
        if (!letter.equals(shown)) NumberField.unsound(form).forEach(NumberField::restore);
        shown = letter;
        shows.forEach(Runnable::run);
        gap.show(model.gapsAt(draft().gaps(), index() < 0 ? "boards" : "boards[" + index() + "]"));
        board().ifPresent(b -> {
            figures.showBoard();
            knots.show(b, knot);
        });
        sheet.show(board().orElse(null), knot);
        section.show(board().orElse(null));
    }

    static JPanel panel(String layout, String columns) {
        JPanel panel = new JPanel(new MigLayout(layout, columns));
        panel.setOpaque(false);
        return panel;
    }

    private static JButton button(String name, String word, String help, ActionListener does) {
        JButton button = new JButton(word);
        button.setName(name);
        button.setToolTipText(help);
        button.addActionListener(does);
        return button;
    }
}
