package org.marktwice.view.bench;

import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.Optional;
import javax.swing.JComponent;
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
import org.marktwice.picture.SurfacePainter;
import org.marktwice.picture.WorkingDrawing;
import org.marktwice.scenario.Practice;
import org.marktwice.view.Look;
import org.marktwice.view.Look.Style;

/**
 * The working drawing with the part that the board is, picked out. While a turn is tried, and where the scenario grants a
 * preview of it, the board stands below the job as it would stand in it.
 */
final class DrawingPanel extends Sheet {
    private static final long serialVersionUID = 1L;
    private final transient BenchModel model;
    private final transient WorkingDrawing drawing;
    private final transient IsometricPainter painter;
    private final JLabel head = Look.quiet("WORKING DRAWING", Style.HEADING);
    private final Page page = new Page();

    DrawingPanel(BenchModel model, FigureCache cache) {
        super(new MigLayout("insets 12lp 16lp 12lp 16lp, gap 0 8lp, wrap 1, fill", "[grow,fill]", "[][grow,fill]"));
        this.model = model;
        drawing = WorkingDrawing.of(model.session().scenario().drawing(), WorkingDrawing.Method.FIRST_ANGLE);
        painter = new IsometricPainter(new SurfacePainter(Figures.live(cache, this::repaint), Style.BODY.font()));
        setName("drawing");
        add(head);
        add(page, "hmin 0, wmin 0, grow");
        refresh();
    }

    void refresh() {
        head.setText(preview().isPresent() ? "IN THE JOB" : "WORKING DRAWING");
        String picked =
                model.part().map(Part::name).map(n -> ", picked out: " + n).orElse("");
        page.getAccessibleContext().setAccessibleName("Working drawing" + picked);
        page.repaint();
    }

    /** The board being turned, where it may be seen standing in the job. */
    private Optional<Placing> preview() {
        boolean trying = model.trial().isPresent() && model.grants(Practice.Aid.TURN_PREVIEW);
        return trying ? model.placing() : Optional.empty();
    }

    private final class Page extends JComponent {
        private static final long serialVersionUID = 1L;

        @Override
        public Dimension getPreferredSize() {
            return new Dimension(Look.px(250), Look.px(300));
        }

        @Override
        public javax.accessibility.AccessibleContext getAccessibleContext() {
            if (accessibleContext == null) {
                accessibleContext = new AccessibleJComponent() {
                    private static final long serialVersionUID = 1L;
                };
            }
            return accessibleContext;
        }

        @Override
        protected void paintComponent(Graphics graphics) {
            Graphics2D g = Look.smooth((Graphics2D) graphics.create());
            String picked = model.part().map(Part::id).orElse(null);
            Optional<Placing> placing = preview();
            if (placing.isPresent()) {
                double half = getHeight() * 0.5;
                double gap = Look.px(8);
                Rectangle2D upper = new Rectangle2D.Double(0, 0, getWidth(), half - gap);
                drawing.picture().paint(g, upper, JobPicture.Style.picking(picked), Look.palette());
                board(g, placing.get(), new Rectangle2D.Double(gap, half + gap, getWidth() - 9 * gap, half - 5 * gap));
            } else {
                Rectangle2D all = new Rectangle2D.Double(0, 0, getWidth(), getHeight());
                drawing.paint(g, all, picked, Look.palette(), Style.NOTE.font());
            }
            g.dispose();
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
