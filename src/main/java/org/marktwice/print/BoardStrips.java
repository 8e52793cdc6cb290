package org.marktwice.print;

import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import org.marktwice.picture.BoardPicture;
import org.marktwice.picture.Figures;
import org.marktwice.picture.SurfacePainter;
import org.marktwice.picture.Unrolled;
import org.marktwice.timber.Board;

/** Boards unrolled one under another: all of timber to one scale, and sheet stuff, on which little is marked, smaller. */
final class BoardStrips {
    /** A pixel of the painters' on the page, points: lines made for a screen are drawn finer on paper. */
    private static final double UNIT = 0.65;

    private final SurfacePainter painter;
    /** The greatest share of a page's height that sheet stuff takes. */
    private static final double SHEET = 0.24;

    private final Rectangle2D room;
    private final double reduction;

    /** @param share the greatest share of a page's height that a board may take */
    BoardStrips(Figures wood, List<Board> boards, Paper paper, double share) {
        this.painter = new SurfacePainter(wood, Type.BODY.font().deriveFont((float) (Type.BODY.size() / UNIT)));
        this.room = TitleBlock.inside(paper, false);
        double most = 1;
        for (Board board : boards)
            if (!board.isSheet() || boards.stream().allMatch(Board::isSheet))
                most = Math.max(most, least(board, room.getWidth(), room.getHeight() * share));
        this.reduction = most;
    }

    private static double least(Board board, double width, double height) {
        double[] all = Figure.scales();
        for (double reduction : all) {
            Rectangle2D needs = bounds(board, reduction, width);
            if (needs.getWidth() + 4 <= width && needs.getHeight() <= height) return reduction;
        }
        return all[all.length - 1];
    }

    private static Rectangle2D bounds(Board board, double reduction, double width) {
        Rectangle2D high = new Rectangle2D.Double(0, 0, width / UNIT, 1e5);
        Rectangle2D b = unrolled(high, board, reduction).bounds();
        return new Rectangle2D.Double(b.getX() * UNIT, b.getY() * UNIT, b.getWidth() * UNIT, b.getHeight() * UNIT);
    }

    /** The ends on the right, or where there is no room, below. */
    private static Unrolled unrolled(Rectangle2D place, Board board, double reduction) {
        Font font = Type.BODY.font().deriveFont((float) (Type.BODY.size() / UNIT));
        double scale = Paper.points(1) / reduction / UNIT;
        Unrolled right = Unrolled.scaled(place, board, font, scale);
        return right.scale() < scale * (1 - 1e-9) ? Unrolled.endsBelow(place, board, font, scale) : right;
    }

    String scale() {
        return Figure.scaleText(reduction);
    }

    double reduction() {
        return reduction;
    }

    /** How a board is drawn that is drawn smaller than the others; empty where it is not. */
    String own(Board board) {
        double own = reduction(board);
        return own == reduction ? "" : "drawn " + Figure.scaleText(own);
    }

    private double reduction(Board board) {
        return board.isSheet()
                ? Math.max(reduction, least(board, room.getWidth(), room.getHeight() * SHEET))
                : reduction;
    }

    Block of(BoardPicture picture) {
        Rectangle2D needs = bounds(picture.board(), reduction(picture.board()), room.getWidth());
        return Blocks.picture(needs.getHeight() + 3, (pen, place) -> draw(pen, place, picture), null);
    }

    private void draw(Pen pen, Rectangle2D place, BoardPicture picture) {
        Graphics2D g = (Graphics2D) pen.g.create();
        g.scale(UNIT, UNIT);
        Rectangle2D fine = new Rectangle2D.Double(
                place.getX() / UNIT, place.getY() / UNIT, place.getWidth() / UNIT, place.getHeight() / UNIT);
        unrolled(fine, picture.board(), reduction(picture.board())).paint(g, picture, painter, Pen.PALETTE);
        g.dispose();
    }
}
