package org.marktwice.view.bench;

import java.awt.Graphics2D;
import java.awt.Point;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.awt.geom.Rectangle2D;
import java.util.Optional;
import javax.accessibility.AccessibleRole;
import javax.swing.JLabel;
import net.miginfocom.swing.MigLayout;
import org.marktwice.drawing.Part;
import org.marktwice.drawing.Placing;
import org.marktwice.picture.BoardPicture;
import org.marktwice.picture.FigureCache;
import org.marktwice.picture.Figures;
import org.marktwice.picture.Isometric;
import org.marktwice.picture.IsometricPainter;
import org.marktwice.picture.JobPicture;
import org.marktwice.picture.JointDetail;
import org.marktwice.picture.JointDetail.Enlarging;
import org.marktwice.picture.SurfacePainter;
import org.marktwice.picture.WorkingDrawing;
import org.marktwice.scenario.Practice;
import org.marktwice.view.Look;
import org.marktwice.view.Look.Style;
import org.marktwice.view.Painted;

/**
 * The working drawing with the part that the board is, picked out. While a turn is tried, and where the scenario grants a
 * preview of it, the board stands below the job as it would stand in it.
 */
final class DrawingPanel extends Sheet {
    private static final long serialVersionUID = 1L;
    private final transient BenchModel model;
    private final transient WorkingDrawing drawing;
    private final transient IsometricPainter painter;
    private final WordButton joints;
    /** Which joint is shown larger; -1 for none, when the whole drawing is. */
    private int shown = -1;

    private final JLabel head = Look.quiet("WORKING DRAWING", Style.HEADING);
    private final Page page = new Page();

    /** @param onJoint what the word for the next joint does */
    DrawingPanel(BenchModel model, FigureCache cache, Runnable onJoint) {
        super(new MigLayout(
                "insets 8lp 16lp 12lp 16lp, gap 0 4lp, wrap 2, fill, hidemode 3",
                "[grow,fill][right]",
                "[24lp!,center][grow,fill]"));
        this.model = model;
        drawing = WorkingDrawing.of(model.session().scenario().drawing(), WorkingDrawing.Method.FIRST_ANGLE)
                .lettered();
        joints = new WordButton(BenchCommands.JOINT, onJoint);
        painter = new IsometricPainter(new SurfacePainter(Figures.live(cache, this::repaint), Style.BODY.font()));
        setName("drawing");
        // each in its own cell: where there is no joint to show, its word takes no room
        add(head, "cell 0 0, wmin 0");
        add(joints, "cell 1 0");
        add(page, "cell 0 1, span 2, hmin 0, wmin 0, grow");
        joints.setVisible(hasDetails());
        page.addMouseListener(new MouseAdapter() {
            @Override
            public void mousePressed(MouseEvent e) {
                page.pressed(e.getPoint());
            }
        });
        refresh();
    }

    boolean hasDetails() {
        return !drawing.details().isEmpty();
    }

    /** Shows the next joint larger; after the last one the whole drawing again. */
    void nextDetail() {
        shown = shown + 1 < drawing.details().size() ? shown + 1 : -1;
        refresh();
    }

    private String said() {
        int all = drawing.details().size();
        return all == 1 ? "JOINT" : "JOINT " + (shown + 1) + " OF " + all;
    }

    private Optional<JointDetail> detail() {
        return shown < 0 ? Optional.empty() : Optional.of(drawing.details().get(shown));
    }

    void refresh() {
        boolean preview = preview().isPresent();
        joints.setSelected(detail().isPresent() && !preview);
        head.setText(preview ? "IN THE JOB" : detail().isPresent() ? said() : "WORKING DRAWING");
        String picked =
                model.part().map(Part::name).map(n -> ", picked out: " + n).orElse("");
        page.readAs(detail().map(d -> "Joint " + d.letter() + ", " + d.title() + ": " + d.said())
                .orElse("Working drawing" + picked));
        page.repaint();
    }

    /** The board being turned, where it may be seen standing in the job. */
    private Optional<Placing> preview() {
        boolean trying = model.trial().isPresent() && model.grants(Practice.Aid.TURN_PREVIEW);
        return trying ? model.placing() : Optional.empty();
    }

    private final class Page extends Painted {
        private static final long serialVersionUID = 1L;

        Page() {
            super(AccessibleRole.CANVAS, 250, 300);
        }

        private Rectangle2D whole() {
            return new Rectangle2D.Double(0, 0, getWidth(), getHeight());
        }

        /** A ring opens its joint, and a joint gives way to the drawing again. */
        void pressed(Point at) {
            if (preview().isPresent()) return;
            if (detail().isPresent()) shown = -1;
            else
                drawing.detailAt(at, whole(), Style.NOTE.font())
                        .ifPresent(d -> shown = drawing.details().indexOf(d));
            refresh();
        }

        @Override
        protected void draw(Graphics2D g) {
            String picked = model.part().map(Part::id).orElse(null);
            Optional<Placing> placing = preview();
            if (placing.isPresent()) {
                double half = getHeight() * 0.5;
                double gap = Look.px(8);
                Rectangle2D upper = new Rectangle2D.Double(0, 0, getWidth(), half - gap);
                drawing.picture().paint(g, upper, JobPicture.Style.picking(picked), Look.palette());
                board(g, placing.get(), new Rectangle2D.Double(gap, half + gap, getWidth() - 9 * gap, half - 5 * gap));
            } else if (detail().isPresent()) {
                double views = drawing.scale(whole(), Style.NOTE.font());
                detail().get().paint(g, whole(), Enlarging.times(views), Look.palette(), Style.NOTE.font());
            } else {
                drawing.paint(g, whole(), picked, Look.palette(), Style.NOTE.font());
            }
        }

        private void board(Graphics2D g, Placing placing, Rectangle2D area) {
            BoardPicture picture = Scene.plain(model.session().bench(), model.board())
                    .offcutsOf(placing)
                    .cuts(Scene.cuts(model, placing));
            Isometric view =
                    Isometric.fit(placing.board().size(), placing.turn().rotation(), area);
            painter.paint(g, picture, view, Look.palette());
        }
    }
}
