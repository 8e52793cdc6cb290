package org.marktwice.print.html;

import java.awt.BasicStroke;
import java.awt.Font;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.Locale;
import org.marktwice.feedback.JobVerdicts;
import org.marktwice.feedback.SheetModel;
import org.marktwice.picture.BoardPicture;
import org.marktwice.picture.FigureCache;
import org.marktwice.picture.Figures;
import org.marktwice.picture.Ink;
import org.marktwice.picture.Isometric;
import org.marktwice.picture.IsometricPainter;
import org.marktwice.picture.JobPicture;
import org.marktwice.picture.Lie;
import org.marktwice.picture.Palette;
import org.marktwice.picture.Sign;
import org.marktwice.picture.SurfacePainter;
import org.marktwice.picture.Unrolled;
import org.marktwice.print.Page;
import org.marktwice.rulebook.Verdict;
import org.marktwice.timber.Board;

/** What a page shows of boards and of the job, each drawing once. */
final class BoardDrawings implements AutoCloseable {
    private static final double WIDTH = 480;
    private static final double LYING = 200;
    private static final double STRIPS = 190;
    /** A surface's figure has so many pixels along the grain, and no more than so many a millimetre. */
    private static final double PIXELS = 900;

    private static final double MOST_PER_MM = 2.2;
    private static final double SIGN = 16;

    private record Shown(BoardPicture picture, Lie lie) {}

    private final Drawings drawings = new Drawings();
    private final FigureCache cache = new FigureCache(60_000_000);
    private final SurfacePainter painter;
    private final double strips;
    private int named;

    /** @param boards all that will be shown: they are drawn on grounds of one size */
    BoardDrawings(List<Board> boards, Font font) {
        // one fineness for each board, whatever the view, so that each surface is in the file once
        Figures wood = (board, surface, scale) -> cache.image(
                board, surface, Math.min(MOST_PER_MM, PIXELS / board.size().length()));
        painter = new SurfacePainter(wood, font.deriveFont(13f));
        Rectangle2D room = new Rectangle2D.Double(0, 0, WIDTH, STRIPS);
        strips = boards.stream()
                .mapToDouble(b -> Unrolled.in(room, b, painter.font()).bounds().getHeight())
                .max()
                .orElse(STRIPS);
    }

    String shelf() {
        return drawings.shelf();
    }

    /** A board as it lies, and under that unrolled; with a text for whoever doesn't see it. */
    void board(Markup page, BoardPicture picture, Lie lie, String title, String description) {
        double height = LYING + strips + 8;
        Page drawing = new Page(WIDTH, height, g -> {
            Rectangle2D room = new Rectangle2D.Double(10, 4, WIDTH - 40, LYING - 34);
            Isometric view = Isometric.fit(picture.board().size(), lie.matrix(), room);
            new IsometricPainter(painter).paint(g, picture, view, Inks.PALETTE);
            Rectangle2D under = new Rectangle2D.Double(0, LYING, WIDTH, strips + 2);
            Unrolled.in(under, picture.board(), painter.font()).paint(g, picture, painter, Inks.PALETTE);
        });
        show(page, drawings.id(new Shown(picture, lie), drawing), drawing, "board", title, description);
    }

    /** The job with the verdicts on its parts, by the light that the reader has. */
    void job(Markup page, SheetModel sheet, String title, String description) {
        JobPicture job = JobPicture.of(sheet.scenario().drawing());
        for (Palette palette : List.of(Palette.LIGHT, Palette.DARK)) {
            Page drawing = new Page(360, 260, g -> {
                Rectangle2D room = new Rectangle2D.Double(6, 6, 348, 248);
                JobVerdicts.paint(g, job, sheet, room, 26, palette);
            });
            String light = palette.isDark() ? "job dark" : "job light";
            show(page, drawings.id(light, drawing), drawing, light, title, description);
        }
    }

    private void show(Markup page, String id, Page drawing, String kind, String title, String description) {
        String t = "t" + ++named;
        page.open(
                        "svg",
                        "class",
                        kind,
                        "viewBox",
                        String.format(Locale.ROOT, "0 0 %.0f %.0f", drawing.width(), drawing.height()),
                        "role",
                        "img",
                        "aria-labelledby",
                        t,
                        "aria-describedby",
                        t + "d")
                .element("title", title, "id", t)
                .element("desc", description, "id", t + "d");
        use(page, id);
        page.close();
    }

    /** A verdict's sign, beside its word. */
    void sign(Markup page, Verdict verdict) {
        Page drawing = new Page(SIGN, SIGN, g -> {
            g.setStroke(new BasicStroke(1));
            g.setColor(Inks.PALETTE.of(Ink.of(verdict)));
            Sign.draw(g, verdict, 1, SIGN - 1, SIGN - 2);
        });
        page.open("svg", "class", "sign", "viewBox", "0 0 16 16", "aria-hidden", "true", "focusable", "false");
        use(page, drawings.id(verdict, drawing));
        page.close();
    }

    private static void use(Markup page, String id) {
        page.open("use", "href", "#" + id).close();
    }

    @Override
    public void close() {
        cache.close();
    }
}
