package org.marktwice.picture;

import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.AffineTransform;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import org.jspecify.annotations.Nullable;
import org.marktwice.drawing.Drawing;
import org.marktwice.drawing.JobAxis;

/**
 * The working drawing of a job: front view, side view and plan to one scale in their places, dimensioned, and an isometric
 * picture. Views are placed as ISO 5456-2 has it, with the symbol of the method.
 */
public final class WorkingDrawing {
    /** Where the other views stand about the front view. */
    public enum Method {
        /** Plan below; the view from the left stands on the right. */
        FIRST_ANGLE,
        /** Plan above; the view from the right stands on the right. */
        THIRD_ANGLE
    }

    private final Drawing drawing;
    private final Method method;
    private final JobPicture picture;
    private final Linework front;
    private final Linework side;
    private final Linework plan;
    private final List<Dimension> dimensions;
    private final List<JointDetail> details;

    private final @Nullable DoubleUnaryOperator scales;
    /** Where all stood the last time: it is painted and pointed at over and over in the same place. */
    private volatile @Nullable Laid laid;

    private record Laid(Rectangle2D area, Font font, SheetLayout layout) {}

    private WorkingDrawing(
            Drawing drawing, Method method, @Nullable DoubleUnaryOperator scales, List<JointDetail> details) {
        this.scales = scales;
        this.details = details;
        this.drawing = drawing;
        this.method = method;
        List<PartSolid> solids = PartSolid.unbored(drawing);
        this.picture = JobPicture.of(solids);
        this.front = Linework.of(solids, JobView.FRONT);
        this.side = Linework.of(solids, sideView(method));
        this.plan = Linework.of(solids, JobView.PLAN);
        this.dimensions = Dimension.of(drawing);
    }

    public static WorkingDrawing of(Drawing drawing, Method method) {
        return new WorkingDrawing(drawing, method, null, List.of());
    }

    /**
     * Its views drawn to one of certain scales, and all their sizes with them.
     *
     * @param scales gives the scale to be used, in pixels a millimetre, for the largest that there is room for
     */
    public static WorkingDrawing toScale(Drawing drawing, Method method, DoubleUnaryOperator scales) {
        return new WorkingDrawing(drawing, method, scales, List.of());
    }

    /** The same with a ring and a letter round each joint that has a detail. */
    public WorkingDrawing lettered() {
        return new WorkingDrawing(drawing, method, scales, JointDetail.of(drawing, method));
    }

    /** The details that its letters stand for; none without letters. */
    public List<JointDetail> details() {
        return details;
    }

    /** Pixels a millimetre of the views in an area. */
    public double scale(Rectangle2D area, Font font) {
        return layout(area, font).scale();
    }

    public Drawing drawing() {
        return drawing;
    }

    public Method method() {
        return method;
    }

    /** The job's isometric picture, as it stands in this drawing. */
    public JobPicture picture() {
        return picture;
    }

    private static JobView sideView(Method method) {
        return JobView.along(JobAxis.ACROSS, method);
    }

    /** Draws it as large as the area holds it. @param picked the part picked out; null for none */
    public void paint(Graphics2D g, Rectangle2D area, @Nullable String picked, Palette palette, Font font) {
        Graphics2D own = (Graphics2D) g.create();
        own.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        own.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        own.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        SheetLayout layout = layout(area, font);
        picture.paint(own, layout.picture(), JobPicture.Style.picking(picked), palette);
        Draughtsman pen = new Draughtsman(own, palette, font);
        for (JobAxis looking : JobAxis.values()) {
            Rectangle2D place = place(looking, layout);
            Rectangle2D extent = extent(looking);
            pen.view(lines(looking), place, extent, picked);
            pen.bores(Bores.of(drawing, JobView.along(looking, method)), JointDetail.to(place, extent));
        }
        for (Dimension d : layout.dimensions()) pen.dimension(d, layout);
        rings(layout, font).forEach(pen::ring);
        pen.symbol(method, layout.symbol());
        own.dispose();
    }

    private Linework lines(JobAxis looking) {
        return looking == JobAxis.DEEP ? front : looking == JobAxis.HIGH ? plan : side;
    }

    private static Rectangle2D place(JobAxis looking, SheetLayout layout) {
        return looking == JobAxis.DEEP ? layout.front() : looking == JobAxis.HIGH ? layout.plan() : layout.side();
    }

    private Rectangle2D extent(JobAxis looking) {
        return JobView.along(looking, method).bounds(boxes());
    }

    private List<Ring> rings(SheetLayout layout, Font font) {
        List<Ring> rings = new ArrayList<>();
        for (JointDetail detail : details) {
            JobAxis looking = detail.looking();
            AffineTransform to = JointDetail.to(place(looking, layout), extent(looking));
            Rectangle2D joint = JobView.along(looking, method).bounds(List.of(detail.focus()));
            Rectangle2D drawn = to.createTransformedShape(joint).getBounds2D();
            rings.add(Ring.round(drawn, detail.letter(), font, lines(looking), to, rings, layout.measured()));
        }
        return rings;
    }

    /** The detail whose ring or letter is at this point of the area. */
    public Optional<JointDetail> detailAt(Point2D screen, Rectangle2D area, Font font) {
        List<Ring> rings = rings(layout(area, font), font);
        for (int i = 0; i < rings.size(); i++) {
            if (rings.get(i).holds(screen)) return Optional.of(details.get(i));
        }
        return Optional.empty();
    }

    /** The part whose isometric picture is at this point of the area. */
    public Optional<String> partAt(Point2D screen, Rectangle2D area, Font font) {
        return picture.partAt(screen, layout(area, font).picture());
    }

    /**
     * A part as it is seen at a place of one of the three views.
     *
     * @param right the job's axis that runs across the page there
     * @param rightSign +1 where it runs to the right
     * @param up the job's axis that runs up the page
     * @param mmPerPixel millimetres of the job to a pixel
     */
    public record Handle(String part, JobAxis right, int rightSign, JobAxis up, double mmPerPixel) {}

    /** The part nearest to the eye at this point of one of the three views; empty beside them, and on the picture. */
    public Optional<Handle> handle(Point2D screen, Rectangle2D area, Font font) {
        SheetLayout layout = layout(area, font);
        return handle(screen, layout.front(), JobView.FRONT, layout.scale())
                .or(() -> handle(screen, layout.side(), sideView(method), layout.scale()))
                .or(() -> handle(screen, layout.plan(), JobView.PLAN, layout.scale()));
    }

    private Optional<Handle> handle(Point2D screen, Rectangle2D place, JobView view, double scale) {
        Rectangle2D all = view.bounds(boxes());
        double x = all.getX() + (screen.getX() - place.getX()) / scale;
        double y = all.getY() + (screen.getY() - place.getY()) / scale;
        double slack = 2 / scale;
        return drawing.parts().stream()
                .filter(p -> {
                    Rectangle2D seen = view.bounds(List.of(p.box()));
                    return x >= seen.getMinX() - slack
                            && x <= seen.getMaxX() + slack
                            && y >= seen.getMinY() - slack
                            && y <= seen.getMaxY() + slack;
                })
                .max(Comparator.comparingDouble(p -> nearness(p.box(), view)))
                .map(p -> {
                    int right = view.right().maxComponent();
                    int up = view.up().maxComponent();
                    int sign = view.right().get(right) < 0 ? -1 : 1;
                    return new Handle(p.id(), JobAxis.values()[right], sign, JobAxis.values()[up], 1 / scale);
                });
    }

    /** How near a box comes to the eye. */
    private static double nearness(org.marktwice.timber.Box box, JobView view) {
        return Math.max(view.towards().dot(box.min()), view.towards().dot(box.max()));
    }

    SheetLayout layout(Rectangle2D area, Font font) {
        Laid before = laid;
        if (before != null && before.area().equals(area) && before.font().equals(font)) return before.layout();
        SheetLayout layout =
                SheetLayout.of(area, drawing.overall(), method, picture.aspect(), dimensions, font, scales);
        laid = new Laid((Rectangle2D) area.clone(), font, layout);
        return layout;
    }

    private List<org.marktwice.timber.Box> boxes() {
        return drawing.parts().stream().map(org.marktwice.drawing.Part::box).toList();
    }
}
