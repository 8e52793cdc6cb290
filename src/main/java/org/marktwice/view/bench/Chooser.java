package org.marktwice.view.bench;

import java.util.List;
import java.util.function.Consumer;
import java.util.function.DoubleConsumer;
import org.marktwice.bench.CutAt;
import org.marktwice.bench.Reason;
import org.marktwice.drawing.Joint;
import org.marktwice.drawing.Part;
import org.marktwice.rulebook.Slip;
import org.marktwice.timber.SurfacePoint;

/** Asks the learner to choose one of a few. Nothing happens where nothing is chosen. */
public interface Chooser {
    /** @param at the place on the board that it is about */
    void part(SurfacePoint at, List<Part> parts, Consumer<Part> chosen);

    /** @param at the place on the board that it is about */
    void joint(SurfacePoint at, List<Joint> joints, Consumer<Joint> chosen);

    /** @param at the place on the board that it is about */
    void side(SurfacePoint at, Consumer<CutAt> chosen);

    void reason(Consumer<Reason> chosen);

    /** Which clearance the learner expects, millimetres. */
    void clearance(DoubleConsumer chosen);

    /** Which slip of the trade's list. */
    void slip(Consumer<Slip> chosen);
}
