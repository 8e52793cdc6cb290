package org.marktwice.view;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.geom.AffineTransform;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import javax.accessibility.AccessibleRole;
import org.jspecify.annotations.Nullable;
import org.marktwice.feedback.OutcomeModel;
import org.marktwice.picture.AssembledJob;
import org.marktwice.picture.AssembledPainter;
import org.marktwice.picture.FigureCache;
import org.marktwice.picture.Figures;
import org.marktwice.picture.Ink;
import org.marktwice.picture.SurfacePainter;
import org.marktwice.rulebook.OutcomeWords.Line;
import org.marktwice.rulebook.Verdict;
import org.marktwice.view.Look.Style;

/** The job put together from its boards, with a sign at whatever is amiss. */
final class AssembledPane extends Painted {
    private static final long serialVersionUID = 1L;
    private static final int SIGN = 14;
    /** Figures come one after the other: they are shown so many milliseconds later, together. */
    private static final int SETTLING = 120;

    private static final int MOST_FINER = 150;

    private final transient OutcomeModel model;
    private final transient List<AssembledJob.Piece> pieces;
    private final transient AssembledPainter painter;
    private transient AssembledJob job;
    private transient @Nullable Line chosen;
    private int corner;
    /** How often a figure of the wood has become finer; counted from another thread. */
    private final transient AtomicInteger finer = new AtomicInteger();

    private transient @Nullable BufferedImage wood;
    private transient @Nullable State painted;

    /** What the wood looks like hangs on. */
    private record State(int width, int height, int corner, boolean dark, int finer) {}

    AssembledPane(OutcomeModel model, FigureCache figures) {
        super(AccessibleRole.ICON, 700, 560);
        this.model = model;
        this.pieces = model.pieces();
        this.painter =
                new AssembledPainter(new SurfacePainter(Figures.live(figures, this::becomesFiner), Style.BODY.font()));
        this.job = AssembledJob.of(pieces, 0);
        setName("assembled");
    }

    private void becomesFiner() {
        // where more figures are needed than are kept, each new one drives out another: that must come to an end
        if (finer.incrementAndGet() <= MOST_FINER) repaint(SETTLING);
    }

    int corner() {
        return corner;
    }

    void walkTo(int next) {
        if (Math.floorMod(next, AssembledJob.CORNERS) == corner) return;
        corner = Math.floorMod(next, AssembledJob.CORNERS);
        finer.set(0);
        job = AssembledJob.of(pieces, corner);
        repaint();
    }

    void choose(Line line) {
        chosen = line;
        repaint();
    }

    private Rectangle2D area() {
        int margin = Look.px(20);
        return new Rectangle2D.Double(margin, margin, getWidth() - 2.0 * margin, getHeight() - 2.0 * margin);
    }

    @Override
    protected void draw(Graphics2D g) {
        Rectangle2D area = area();
        if (area.getWidth() <= 0 || area.getHeight() <= 0) return;
        Line line = chosen;
        g.drawImage(wood(g, area), 0, 0, getWidth(), getHeight(), null);
        if (line != null) painter.pick(g, job, model.picks(line), area, Look.palette());
        for (Line one : model.lines()) {
            if (one.joint() != null && (one.verdict() == Verdict.WRONG || one.verdict() == Verdict.CLOSE)) {
                sign(g, one, area);
            }
        }
    }

    /** The job without what is picked out; painted anew only when it looks otherwise, or its figure has become finer. */
    private BufferedImage wood(Graphics2D g, Rectangle2D area) {
        AffineTransform to = g.getTransform();
        int w = Math.max(1, (int) Math.round(getWidth() * to.getScaleX()));
        int h = Math.max(1, (int) Math.round(getHeight() * to.getScaleY()));
        State now = new State(w, h, corner, Look.isDark(), finer.get());
        BufferedImage known = wood;
        if (known != null && now.equals(painted)) return known;
        BufferedImage image = new BufferedImage(w, h, BufferedImage.TYPE_INT_ARGB_PRE);
        Graphics2D on = Look.smooth(image.createGraphics());
        on.scale((double) w / getWidth(), (double) h / getHeight());
        painter.paint(on, job, pieces, area, Look.palette());
        on.dispose();
        wood = image;
        painted = now;
        return image;
    }

    private void sign(Graphics2D g, Line line, Rectangle2D area) {
        Verdict verdict = line.verdict();
        String joint = line.joint();
        if (verdict == null || joint == null) return;
        double side = Look.px(SIGN);
        double r = side * 0.85;
        Rectangle2D place = job.outline(model.place(joint), area).getBounds2D();
        Point2D at = new Point2D.Double(place.getCenterX(), Math.max(area.getMinY(), place.getMinY() - r));
        Ellipse2D disc = new Ellipse2D.Double(at.getX() - r, at.getY() - r, 2 * r, 2 * r);
        g.setColor(Look.colour(Ink.PANEL));
        g.fill(disc);
        g.setColor(Look.colour(Ink.of(verdict)));
        g.setStroke(new BasicStroke(line.equals(chosen) ? Look.px(2) : Look.px(1)));
        g.draw(disc);
        double inner = side * 0.8;
        new Sign(verdict).paint(g, at.getX() - inner / 2, at.getY() - inner / 2, inner);
    }
}
