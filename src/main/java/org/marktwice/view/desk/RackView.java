package org.marktwice.view.desk;

import java.awt.Dimension;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.Function;
import javax.accessibility.AccessibleRole;
import org.marktwice.picture.BoardPicture;
import org.marktwice.picture.FigureCache;
import org.marktwice.picture.Figures;
import org.marktwice.picture.Ink;
import org.marktwice.picture.SurfacePainter;
import org.marktwice.picture.Unrolled;
import org.marktwice.timber.Board;
import org.marktwice.view.Card;
import org.marktwice.view.Look;
import org.marktwice.view.Look.Style;
import org.marktwice.view.Painted;
import org.marktwice.view.bench.Words;

/** The boards of an exercise, each unrolled on a card of its own, with a line on what it is good for. */
final class RackView extends Painted {
    private static final long serialVersionUID = 1L;
    private static final int CARD = 190;
    /** Where there is room, a board is drawn larger, up to this. */
    private static final int TALLEST = 420;

    private static final int GAP = 12;
    private static final int NARROWEST = 360;

    private final transient FigureCache cache;
    private final transient Consumer<String> onPick;
    private transient List<Board> boards = List.of();
    private transient Function<Board, String> notes = b -> "";
    private String picked = "";

    RackView(FigureCache cache, Consumer<String> onPick) {
        super(AccessibleRole.CANVAS);
        this.cache = cache;
        this.onPick = onPick;
        setName("rack-view");
        addMouseListener(new MouseAdapter() {
            @Override
            public void mousePressed(MouseEvent event) {
                for (int i = 0; i < boards.size(); i++) {
                    if (place(i).contains(event.getPoint()))
                        RackView.this.onPick.accept(boards.get(i).id());
                }
            }
        });
    }

    void show(List<Board> next, Function<Board, String> says, String chosen) {
        boards = List.copyOf(next);
        notes = says;
        picked = chosen;
        readAs(boards.size() + " boards" + (chosen.isEmpty() ? "" : ", picked out: " + chosen));
        revalidate();
        repaint();
    }

    private int columns() {
        // no room is left for boards that there aren't
        int most = Math.max(1, Math.min(3, boards.size()));
        return Math.max(1, Math.min(most, getWidth() / Look.px(NARROWEST)));
    }

    private int lines() {
        return (boards.size() + columns() - 1) / columns();
    }

    private int high() {
        int gap = Look.px(GAP);
        int room = (getHeight() + gap) / Math.max(1, lines()) - gap;
        return Math.max(Look.px(CARD), Math.min(Look.px(TALLEST), room));
    }

    private Rectangle place(int index) {
        int columns = columns();
        int gap = Look.px(GAP);
        int wide = (getWidth() - (columns - 1) * gap) / columns;
        int high = high();
        return new Rectangle((index % columns) * (wide + gap), (index / columns) * (high + gap), wide, high);
    }

    @Override
    protected void draw(Graphics2D g) {
        for (int i = 0; i < boards.size(); i++) {
            Rectangle at = place(i);
            if (g.hitClip(at.x, at.y, at.width, at.height)) paint(g, boards.get(i), at);
        }
    }

    private void paint(Graphics2D g, Board board, Rectangle at) {
        Card.paint(
                g,
                at.x + 0.5,
                at.y + 0.5,
                at.width - 1,
                at.height - 1,
                board.id().equals(picked));
        int inset = Look.px(12);
        int base = at.y + inset + g.getFontMetrics(Style.STRONG.font()).getAscent();
        g.setFont(Style.STRONG.font());
        g.setColor(Look.colour(Ink.INK));
        String letter = "Board " + board.id();
        g.drawString(letter, at.x + inset, base);
        int x = at.x + inset + g.getFontMetrics().stringWidth(letter) + Look.px(8);
        g.setFont(Style.NOTE.font());
        g.setColor(Look.colour(Ink.QUIET));
        int knots = board.knots().size();
        String size = Words.size(board.size()) + " · "
                + (board.isSheet() ? "sheet" : knots + (knots == 1 ? " knot" : " knots"));
        g.drawString(size, x, base);
        String note = notes.apply(board);
        int right = at.x + at.width - inset - g.getFontMetrics().stringWidth(note);
        if (right > x + g.getFontMetrics().stringWidth(size) + inset) g.drawString(note, right, base);
        int top = base + Look.px(10);
        Rectangle2D area =
                new Rectangle2D.Double(at.x + inset, top, at.width - 2 * inset, at.y + at.height - top - inset);
        SurfacePainter painter = new SurfacePainter(Figures.live(cache, this::repaint), Style.NOTE.font());
        Unrolled.in(area, board, Style.NOTE.font()).paint(g, BoardPicture.of(board), painter, Look.palette());
    }

    @Override
    public Dimension getPreferredSize() {
        return new Dimension(Look.px(NARROWEST), Math.max(0, lines() * Look.px(CARD + GAP) - Look.px(GAP)));
    }
}
