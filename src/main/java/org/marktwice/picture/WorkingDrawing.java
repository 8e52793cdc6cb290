package org.marktwice.picture;

import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.marktwice.drawing.Drawing;

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

    private WorkingDrawing(Drawing drawing, Method method) {
        this.drawing = drawing;
        this.method = method;
        List<PartSolid> solids = PartSolid.of(drawing);
        this.picture = JobPicture.of(solids);
        this.front = Linework.of(solids, JobView.FRONT);
        this.side = Linework.of(solids, sideView(method));
        this.plan = Linework.of(solids, JobView.PLAN);
        this.dimensions = Dimension.of(drawing);
    }

    public static WorkingDrawing of(Drawing drawing, Method method) {
        return new WorkingDrawing(drawing, method);
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
        return method == Method.FIRST_ANGLE ? JobView.FROM_LEFT : JobView.FROM_RIGHT;
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
        pen.view(front, layout.front(), JobView.FRONT.bounds(boxes()), picked);
        pen.view(side, layout.side(), sideView(method).bounds(boxes()), picked);
        pen.view(plan, layout.plan(), JobView.PLAN.bounds(boxes()), picked);
        for (Dimension d : layout.dimensions()) pen.dimension(d, layout);
        pen.symbol(method, layout.symbol());
        own.dispose();
    }

    /** The part whose isometric picture is at this point of the area. */
    public Optional<String> partAt(Point2D screen, Rectangle2D area, Font font) {
        return picture.partAt(screen, layout(area, font).picture());
    }

    SheetLayout layout(Rectangle2D area, Font font) {
        return SheetLayout.of(area, drawing.overall(), method, picture.aspect(), dimensions, font);
    }

    private List<org.marktwice.timber.Box> boxes() {
        return drawing.parts().stream().map(org.marktwice.drawing.Part::box).toList();
    }
}
