package org.marktwice.view;

import java.awt.Point;
import java.util.Objects;
import org.assertj.swing.core.MouseButton;
import org.marktwice.view.desk.DeskPixels;

/** A teacher's hand at the desk's pictures. */
final class AtTheDesk {
    private final AtTheWindow at;

    AtTheDesk(AtTheWindow at) {
        this.at = at;
    }

    /** Points at a part in the job drawing. */
    void point(String part) {
        var sheet = Objects.requireNonNull(at.robot.finder().findByName("job-sheet", true));
        Point place = AtTheWindow.onScreen(() -> DeskPixels.ofPart(sheet, part));
        at.robot.click(sheet, place, MouseButton.LEFT_BUTTON, 1);
        at.robot.waitForIdle();
    }
}
