package org.marktwice.print;

import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.marktwice.picture.BoardPicture;
import org.marktwice.picture.Section;
import org.marktwice.picture.SurfacePainter;
import org.marktwice.picture.Unrolled;
import org.marktwice.timber.Board;
import org.marktwice.timber.Seasoned;
import org.marktwice.timber.Species;
import org.marktwice.timber.Surface;

/** Lays a board's report out: the board unrolled to the largest scale at which its figures find room beside or below it. */
final class BoardSheet {
    private static final double GAP = 16;
    private static final double LEAST_COLUMN = 225;
    /** Smaller than this, figures go to another sheet instead. */
    private static final double SMALLEST = 5;

    private final BoardReport report;
    private final Board board;
    private final Paper paper;
    private final SurfacePainter painter = new SurfacePainter(new Wood(), Type.BODY.font());
    private final List<Block> blocks;

    BoardSheet(BoardReport report, Paper paper) {
        this.report = report;
        this.board = report.board();
        this.paper = paper;
        this.blocks = new ArrayList<>();
        if (!board.isSheet() && !report.now().boxedHeart()) {
            blocks.add(section(report.now(), "now"));
            report.later().ifPresent(s -> blocks.add(section(s, "then")));
        }
        blocks.addAll(new BoardTables(report).all());
    }

    /**
     * Where things go.
     *
     * @param columns where the figures stand
     */
    private record Arrangement(boolean landscape, double reduction, Rectangle2D unrolled, List<Rectangle2D> columns) {}

    List<Page> pages() {
        Arrangement best = arranged();
        List<List<Block>> split = Columns.even(blocks, best.columns());
        TitleBlock block = new TitleBlock(
                "board report",
                "Board " + board.id(),
                board.species().map(Species::name).orElse("sheet stuff") + " · "
                        + Figure.number(board.size().length()) + " × "
                        + Figure.number(board.size().width()) + " × "
                        + Figure.number(board.size().thickness()) + " mm",
                Figure.scaleText(best.reduction()));
        List<Leaf> leaves = new ArrayList<>();
        int shown = Math.min(split.size(), best.columns().size());
        leaves.add(new Leaf(best.landscape(), block, (pen, place) -> {
            unrolled(best.unrolled(), best.reduction(), pen);
            for (int i = 0; i < shown; i++) Columns.draw(pen, best.columns().get(i), split.get(i));
        }));
        List<Block> rest = new ArrayList<>();
        for (List<Block> column : split.subList(shown, split.size())) rest.addAll(column);
        if (!rest.isEmpty()) {
            leaves.addAll(Leaf.flowing(new TitleBlock(block.kind(), block.title(), block.about(), ""), paper, rest));
        }
        return Leaf.bound(leaves, paper);
    }

    private Arrangement arranged() {
        for (double reduction : Figure.scales()) {
            if (reduction > SMALLEST) break;
            for (boolean landscape : new boolean[] {false, true}) {
                for (boolean beside : new boolean[] {false, true}) {
                    Arrangement one = arranged(landscape, beside, reduction);
                    if (one != null
                            && Columns.fill(blocks, one.columns()).size()
                                    <= one.columns().size()) return one;
                }
            }
        }
        return spread();
    }

    /** Over more sheets than one: the board as large as it goes on half of the first. */
    private Arrangement spread() {
        Rectangle2D room = TitleBlock.inside(paper, false);
        double[] scales = Figure.scales();
        for (double reduction : scales) {
            Arrangement one = arranged(false, false, reduction);
            if (one != null && one.unrolled().getHeight() <= 0.55 * room.getHeight()) return one;
        }
        Rectangle2D half = new Rectangle2D.Double(room.getX(), room.getY(), room.getWidth(), room.getHeight() / 2);
        Unrolled free = Unrolled.in(half, board, Type.BODY.font());
        return new Arrangement(false, Paper.points(1) / free.scale(), half, below(room, half.getMaxY() + GAP));
    }

    private @Nullable Arrangement arranged(boolean landscape, boolean beside, double reduction) {
        Rectangle2D room = TitleBlock.inside(paper, landscape);
        double scale = Paper.points(1) / reduction;
        Rectangle2D vast = new Rectangle2D.Double(0, 0, 1e5, 1e5);
        Rectangle2D needs =
                Unrolled.scaled(vast, board, Type.BODY.font(), scale).bounds();
        double wide = needs.getWidth() + 4;
        double high = needs.getHeight() + 2;
        if (wide > room.getWidth() || high > room.getHeight() * 0.8) return null;
        double used = beside ? wide : room.getWidth();
        Rectangle2D place = new Rectangle2D.Double(room.getX(), room.getY(), used, beside ? room.getHeight() : high);
        if (!beside) return new Arrangement(landscape, reduction, place, below(room, room.getY() + high + GAP));
        double left = room.getWidth() - wide - GAP * 1.5;
        if (left < LEAST_COLUMN) return null;
        Rectangle2D column = new Rectangle2D.Double(room.getMaxX() - left, room.getY(), left, room.getHeight());
        return new Arrangement(landscape, reduction, place, List.of(column));
    }

    private static List<Rectangle2D> below(Rectangle2D room, double y) {
        int n = (int) Math.max(1, Math.floor((room.getWidth() + GAP) / (LEAST_COLUMN + GAP)));
        double wide = (room.getWidth() - (n - 1) * GAP) / n;
        List<Rectangle2D> columns = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            columns.add(new Rectangle2D.Double(room.getX() + i * (wide + GAP), y, wide, room.getMaxY() - y));
        }
        return columns;
    }

    private void unrolled(Rectangle2D place, double reduction, Pen pen) {
        Unrolled unrolled = Unrolled.scaled(place, board, Type.BODY.font(), Paper.points(1) / reduction + 1e-9);
        unrolled.paint(pen.g, BoardPicture.of(board), painter, Pen.PALETTE);
        KnotTags.draw(pen, unrolled);
    }

    /** The end grain with its cup drawn larger, and how much larger. */
    private Block section(Seasoned state, String when) {
        double most =
                Math.max(cup(report.now()), report.later().map(BoardSheet::cup).orElse(0.0));
        double times = Section.times(board, most);
        double reduction = Figure.scale((LEAST_COLUMN - 16) / board.size().width());
        Section section = Section.of(board, state.moisture(), times, Paper.points(1) / reduction);
        String hollow = hollow(state)
                .map(f -> BoardTables.cup(state, f) + " on " + f.spoken())
                .orElse("flat");
        String caption = "end 1, " + when + ", " + Figure.scaleText(reduction) + ", cup drawn ×" + Figure.number(times)
                + ": " + hollow;
        return Blocks.picture(
                section.bounds().getHeight() + 8,
                (pen, place) -> section.paint(pen.g, place.getX() + 7, place.getY() + 4, painter, Pen.PALETTE),
                caption);
    }

    private static double cup(Seasoned state) {
        return Math.abs(state.cup(Surface.FACE_1).orElse(0));
    }

    private static Optional<Surface> hollow(Seasoned state) {
        return List.of(Surface.FACE_1, Surface.FACE_2).stream()
                .filter(f -> state.cup(f).orElse(0) > 0.005)
                .findFirst();
    }
}
