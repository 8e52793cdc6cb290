package org.marktwice.picture;

import java.awt.Font;
import java.awt.FontFormatException;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import java.util.Map;
import java.util.Set;
import javax.imageio.ImageIO;
import org.joml.Matrix3d;
import org.marktwice.bench.BoardState;
import org.marktwice.bench.Mark;
import org.marktwice.bench.Marker;
import org.marktwice.drawing.Cut;
import org.marktwice.drawing.Drawing;
import org.marktwice.rulebook.Finding;
import org.marktwice.rulebook.Verdict;
import org.marktwice.scenario.Practice;
import org.marktwice.scenario.Rack;
import org.marktwice.scenario.Stock;
import org.marktwice.timber.Board;
import org.marktwice.timber.Box;
import org.marktwice.timber.Species;
import org.marktwice.timber.SpeciesTable;
import org.marktwice.timber.Surface;
import org.marktwice.timber.SurfacePoint;

/** Renders sample boards and drawings to a folder, to be looked at: {@code Contact FOLDER [SCALE]}. */
public final class Contact {
    private final File folder;
    private final double scale;
    private final Font font;
    private final FigureCache cache = new FigureCache();
    private final SurfacePainter painter;

    private Contact(File folder, double scale) {
        this.folder = folder;
        this.scale = scale;
        this.font = font();
        this.painter = new SurfacePainter(Figures.exact(cache), font);
    }

    /** The program's sans at its body size. */
    static Font font() {
        try (InputStream in = Contact.class.getResourceAsStream("/com/formdev/flatlaf/fonts/inter/Inter-Regular.otf")) {
            return Font.createFont(Font.TRUETYPE_FONT, in).deriveFont(13f);
        } catch (IOException | FontFormatException e) {
            throw new IllegalStateException("the test class path holds the font", e);
        }
    }

    public static void main(String[] args) throws IOException {
        System.setProperty("java.awt.headless", "true");
        double scale = args.length > 1 ? Double.parseDouble(args[1]) : 1;
        Contact c = new Contact(new File(args[0]), scale);
        for (Palette pal : List.of(Palette.LIGHT, Palette.DARK)) {
            c.iso(pal);
            c.unrolled(pal);
            c.drawings(pal);
        }
        if (scale == 1) c.species();
        c.randomBoards();
        c.stockBoards();
        c.sawnBoards();
        c.closeUps();
        c.figures();
        c.cache.close();
    }

    interface Painting {
        void on(Graphics2D g);
    }

    private void sheet(String name, int w, int h, Palette pal, Painting painting) throws IOException {
        BufferedImage image = new BufferedImage((int) (w * scale), (int) (h * scale), BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        g.scale(scale, scale);
        g.setColor(pal.of(Ink.PANEL));
        g.fillRect(0, 0, w, h);
        painting.on(g);
        g.dispose();
        String suffix = (pal.isDark() ? "-dark" : "") + (scale > 1 ? "@2" : "");
        ImageIO.write(image, "png", new File(folder, name + suffix + ".png"));
    }

    static BoardPicture marked(Board board) {
        Mark side = new Mark(Mark.Kind.FACE_SIDE, Surface.FACE_1, Surface.EDGE_1, 1);
        Mark edge = new Mark(Mark.Kind.FACE_EDGE, Surface.EDGE_1, Surface.FACE_1, 2);
        BoardState state = new BoardState(
                board,
                List.of(side, edge),
                new BoardState.Named(3, "upright-right", new SurfacePoint(Surface.FACE_1, 240, 92)),
                null,
                null,
                List.of(),
                List.of(),
                List.of());
        List<BoardPicture.LaidCut> cuts =
                List.of(new BoardPicture.LaidCut(new Cut("h", List.of(Box.of(68, 0, 12, 86, 120, 18))), true));
        return BoardPicture.of(state, "Right upright")
                .cuts(cuts)
                .offcuts(List.of(new BoardPicture.Offcut(306, 312)))
                .callouts(List.of(new BoardPicture.Callout(
                        new SurfacePoint(Surface.FACE_1, 74, 62),
                        Verdict.WRONG,
                        "0.0 mm clear, 16 wanted",
                        "knot 1 meets the housing")));
    }

    private void iso(Palette pal) throws IOException {
        Board board = Samples.pine();
        BoardPicture p = marked(board);
        IsometricPainter iso = new IsometricPainter(painter);
        sheet("iso", 1000, 460, pal, g -> {
            Isometric view = Isometric.fit(board.size(), new Matrix3d(), new Rectangle2D.Double(40, 30, 920, 400));
            iso.paint(g, p, view, pal);
        });
        sheet("iso-poses", 1200, 700, pal, g -> {
            for (int i = 0; i < 6; i++) {
                Matrix3d pose = new Matrix3d().rotateX(i % 4 * Math.PI / 2);
                if (i == 4) pose.rotateZ(Math.PI);
                if (i == 5) pose.rotateX(0.6);
                Isometric view = Isometric.steady(
                        board.size(), pose, new Rectangle2D.Double(20 + 400 * (i % 3), 20 + 350 * (i / 3), 360, 310));
                iso.paint(g, p, view, pal);
            }
        });
    }

    private void unrolled(Palette pal) throws IOException {
        Board board = Samples.pine();
        BoardPicture p = marked(board)
                .struck(List.of(
                        new Struck.Line(
                                5,
                                new SurfacePoint(Surface.FACE_2, 68, 0),
                                new SurfacePoint(Surface.FACE_2, 68, 120),
                                Marker.KNIFE),
                        new Struck.Line(
                                6,
                                new SurfacePoint(Surface.FACE_2, 86, 0),
                                new SurfacePoint(Surface.FACE_2, 86, 120),
                                Marker.PENCIL),
                        new Struck.Waste(
                                7,
                                List.of(
                                        new SurfacePoint(Surface.FACE_2, 68, 0),
                                        new SurfacePoint(Surface.FACE_2, 68, 120),
                                        new SurfacePoint(Surface.FACE_2, 86, 120),
                                        new SurfacePoint(Surface.FACE_2, 86, 0)))))
                .rule(new BoardPicture.LaidRule(
                        new SurfacePoint(Surface.FACE_1, 0, 60), new SurfacePoint(Surface.FACE_1, 71.5, 60), "71.5 mm"))
                .evidence(
                        new Finding.Evidence(
                                List.of(Surface.EDGE_2),
                                List.of(new SurfacePoint(Surface.FACE_2, 226, 60)),
                                List.of("k2")),
                        Ink.WRONG)
                .ghost(new Mark(Mark.Kind.FACE_EDGE, Surface.EDGE_2, Surface.FACE_1, 9));
        sheet(
                "unrolled",
                900,
                420,
                pal,
                g -> Unrolled.in(new Rectangle2D.Double(16, 16, 868, 388), board, font)
                        .paint(g, p, painter, pal));
    }

    private void drawings(Palette pal) throws IOException {
        Drawing shelf = Samples.shelf();
        Drawing trellis = Samples.trellis();
        sheet("drawing", 1500, 820, pal, g -> {
            WorkingDrawing first = WorkingDrawing.of(shelf, WorkingDrawing.Method.FIRST_ANGLE);
            WorkingDrawing third = WorkingDrawing.of(shelf, WorkingDrawing.Method.THIRD_ANGLE);
            WorkingDrawing net = WorkingDrawing.of(trellis, WorkingDrawing.Method.THIRD_ANGLE);
            first.paint(g, new Rectangle2D.Double(10, 10, 280, 520), "upright-right", pal, font);
            third.paint(g, new Rectangle2D.Double(310, 10, 560, 400), "shelf", pal, font);
            net.paint(g, new Rectangle2D.Double(890, 10, 600, 420), "rail-low", pal, font);
            third.paint(g, new Rectangle2D.Double(10, 540, 240, 270), null, pal, font);
            net.paint(g, new Rectangle2D.Double(300, 430, 240, 380), null, pal, font);
            JobPicture.of(trellis)
                    .paint(
                            g,
                            new Rectangle2D.Double(600, 450, 420, 350),
                            new JobPicture.Style("post-left", Map.of("rail-high", Ink.WRONG, "rail-low", Ink.SOUND)),
                            pal);
            JobPicture.of(shelf).paint(g, new Rectangle2D.Double(1050, 450, 420, 350), JobPicture.Style.PLAIN, pal);
        });
    }

    private void species() throws IOException {
        sheet("species", 1560, 1400, Palette.LIGHT, g -> {
            for (int i = 0; i < Samples.SPECIES.size(); i++) {
                String id = Samples.SPECIES.get(i);
                Board pine = Samples.pine();
                Board b = Samples.board(
                        "X",
                        id,
                        pine.size(),
                        pine.pith().orElseThrow(),
                        2.4,
                        pine.knots(),
                        100 + i,
                        Set.of(Surface.values()));
                int x = 20 + 780 * (i % 2);
                int y = 20 + 275 * (i / 2);
                g.setColor(Palette.LIGHT.of(Ink.INK));
                g.drawString(id, x, y + 10);
                Unrolled.in(new Rectangle2D.Double(x, y + 14, 740, 250), b, font)
                        .paint(g, BoardPicture.of(b), painter, Palette.LIGHT);
            }
        });
    }

    private void randomBoards() throws IOException {
        sheet("random", 1560, 1400, Palette.LIGHT, g -> {
            for (int i = 0; i < 10; i++) {
                String id = Samples.SPECIES.get((i * 3) % 10);
                Board b = Samples.random(id, 900 + i);
                int x = 20 + 780 * (i % 2);
                int y = 20 + 275 * (i / 2);
                g.setColor(Palette.LIGHT.of(Ink.INK));
                g.drawString(id, x, y + 10);
                Unrolled.in(new Rectangle2D.Double(x, y + 14, 740, 250), b, font)
                        .paint(g, BoardPicture.of(b), painter, Palette.LIGHT);
            }
        });
    }

    /** Twenty boards as the rack gets them from a seed. */
    private void stockBoards() throws IOException {
        for (int sheet = 0; sheet < 2; sheet++) {
            int first = 5 * sheet;
            sheet("stock-" + (sheet + 1), 1560, 1400, Palette.LIGHT, g -> {
                for (int i = 0; i < 5; i++) {
                    Species species =
                            SpeciesTable.byId(Samples.SPECIES.get(first + i)).orElseThrow();
                    List<Board> rack =
                            Rack.fill(new Stock(70 + first + i, species, 0, 0.7), Samples.shelf(), Practice.DEFAULT);
                    for (int b = 0; b < 2; b++) one(g, species.id(), rack.get(b), 20 + 780 * b, 20 + 275 * i);
                }
            });
        }
    }

    private void one(Graphics2D g, String title, Board board, int x, int y) {
        g.setColor(Palette.LIGHT.of(Ink.INK));
        g.drawString(title, x, y + 10);
        Unrolled.in(new Rectangle2D.Double(x, y + 14, 740, 250), board, font)
                .paint(g, BoardPicture.of(board), painter, Palette.LIGHT);
    }

    /** Sawn all round, beside the planed ones of {@link #species()}. */
    private void sawnBoards() throws IOException {
        Board pine = Samples.pine();
        for (String id : List.of("scots-pine", "white-ash", "black-walnut")) {
            Board sawn = Samples.board("W", id, pine.size(), pine.pith().orElseThrow(), 2.4, pine.knots(), 3, Set.of());
            ImageIO.write(
                    WoodFigure.of(sawn).image(Surface.FACE_1, 3 * scale),
                    "png",
                    new File(folder, "sawn-" + id + ".png"));
            ImageIO.write(
                    WoodFigure.of(sawn).image(Surface.END_1, 6 * scale),
                    "png",
                    new File(folder, "sawn-end-" + id + ".png"));
        }
    }

    private void closeUps() throws IOException {
        for (int i = 0; i < 10; i++) {
            String id = Samples.SPECIES.get(i);
            Board b = Samples.random(id, 40 + i);
            BufferedImage face = WoodFigure.of(b).image(Surface.FACE_1, 3 * scale);
            ImageIO.write(face, "png", new File(folder, "close-" + id + ".png"));
        }
    }

    private void figures() throws IOException {
        Board board = Samples.pine();
        ImageIO.write(WoodFigure.of(board).image(Surface.FACE_1, 3 * scale), "png", new File(folder, "face1.png"));
        ImageIO.write(WoodFigure.of(board).image(Surface.FACE_2, 3 * scale), "png", new File(folder, "face2.png"));
        ImageIO.write(WoodFigure.of(board).image(Surface.END_1, 6 * scale), "png", new File(folder, "end1.png"));
        Board sheet = Samples.sheet();
        ImageIO.write(WoodFigure.of(sheet).image(Surface.FACE_1, 3 * scale), "png", new File(folder, "sheet.png"));
        ImageIO.write(WoodFigure.of(sheet).image(Surface.EDGE_1, 3 * scale), "png", new File(folder, "sheet-edge.png"));
    }
}
