package org.marktwice.quiz;

import java.util.List;
import org.marktwice.bench.Action;
import org.marktwice.picture.Struck;
import org.marktwice.timber.Box;
import org.marktwice.timber.Chance;
import org.marktwice.timber.Surface;

class FindSlipTest extends MakerLaws {
    @Override
    Kind kind() {
        return Kind.FIND_SLIP;
    }

    /** A step is a slip where stock, place, way, setting or shading is not what the board, its marks and its cut want. */
    @Override
    boolean isRight(Question question, Offer offer) {
        FindSlip.Work work =
                FindSlip.work(question.level(), Chance.of(question.seed()).split());
        return isSlip(work, question.answers().offers().indexOf(offer));
    }

    private static boolean isSlip(FindSlip.Work work, int step) {
        Box cut = work.placing().cuts().get(0).boxes().get(0);
        List<Struck> struck = FindSlip.struck(work);
        boolean fromOne = work.bottom() == Surface.END_1;
        double lower = fromOne ? cut.min(0) : cut.max(0);
        double first = u(struck.get(0));
        double up = fromOne ? 1 : -1;
        Action.OnBoard action = work.actions().get(step);
        List<Surface> marked = List.of(work.side(), work.edge());
        if (action instanceof Action.Line line) {
            if (!marked.contains(line.square()) || !line.square().adjoins(line.on())) return true;
            double should = step == 0 ? lower : first + up * work.shelf();
            return Math.abs(u(struck.get(step)) - should) > 0.25;
        }
        if (action instanceof Action.Gauge gauge) {
            double depth = cut.extent(2);
            return !marked.contains(gauge.fence()) || Math.abs(gauge.set() - depth) > 0.1;
        }
        Struck.Waste waste = (Struck.Waste) struck.get(step);
        double low = Math.min(first, u(struck.get(1)));
        double high = Math.max(first, u(struck.get(1)));
        return Math.abs(waste.outline().get(0).u() - low) > 0.1
                || Math.abs(waste.outline().get(2).u() - high) > 0.1;
    }

    private static double u(Struck line) {
        return ((Struck.Line) line).from().u();
    }
}
