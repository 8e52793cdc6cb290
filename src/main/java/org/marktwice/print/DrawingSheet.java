package org.marktwice.print;

import java.awt.geom.Rectangle2D;
import java.util.List;
import org.marktwice.picture.WorkingDrawing;
import org.marktwice.scenario.Scenario;

/** The job's views and sizes, to a scale that a rule can read; upright or lying, whichever gives the larger. */
final class DrawingSheet {
    private final Scenario scenario;
    private final Paper paper;
    private final WorkingDrawing drawing;

    DrawingSheet(Scenario scenario, Paper paper) {
        this.scenario = scenario;
        this.paper = paper;
        // first angle where the paper is ISO's, third where it is North America's
        WorkingDrawing.Method method =
                paper == Paper.LETTER ? WorkingDrawing.Method.THIRD_ANGLE : WorkingDrawing.Method.FIRST_ANGLE;
        this.drawing = WorkingDrawing.toScale(scenario.drawing(), method, room -> Paper.points(1) / Figure.scale(room));
    }

    List<Leaf> leaves() {
        boolean landscape = scale(true) >= scale(false);
        String scale = Figure.scaleText(Paper.points(1) / scale(landscape));
        return List.of(new Leaf(
                landscape,
                Sheets.block(SheetKind.DRAWING, scenario, scale),
                (pen, place) -> drawing.paint(pen.g, place, null, Pen.PALETTE, Type.BODY.font())));
    }

    private double scale(boolean landscape) {
        Rectangle2D room = TitleBlock.inside(paper, landscape);
        return drawing.scale(room, Type.BODY.font());
    }
}
