package org.marktwice.quiz;

import java.util.ArrayList;
import java.util.List;
import org.marktwice.drawing.Cut;
import org.marktwice.drawing.Drawing;
import org.marktwice.drawing.Joint;
import org.marktwice.drawing.Part;
import org.marktwice.drawing.Placing;
import org.marktwice.picture.BoardPicture;
import org.marktwice.timber.Board;
import org.marktwice.timber.Box;
import org.marktwice.timber.Chance;
import org.marktwice.timber.Surface;

/** A joint of the drawing: what is the gauge set to? Slips: another proportion, what is left instead of what goes, from the back. */
final class SetGauge implements Maker {
    private static final double TOLERANCE = 0.25;

    @Override
    public Kind kind() {
        return Kind.SET_GAUGE;
    }

    @Override
    public Question.Draft make(int level, Chance chance) {
        int pick = level == 1 ? chance.whole(0, 1) : chance.whole(0, 3);
        Drawing drawing = pick == 0 ? Jobs.shelves(chance, 1) : Jobs.frame(chance, Jobs.Corner.values()[pick - 1]);
        Joint joint = drawing.joints().get(chance.whole(0, 1));
        Part part = drawing.part(joint.in()).orElseThrow();
        Board board = Boards.of(chance, part.size(), 0.2).next();
        Boards.Pair pair = Boards.pair(Surface.FACE_1, Surface.EDGE_1);
        Placing placing = PartOfDrawing.placed(drawing, part, board, pair);
        Cut cut = placing.cuts().stream()
                .filter(c -> c.joint().equals(joint.id()))
                .findFirst()
                .orElseThrow();
        double thick = part.size().thickness();
        double right = setting(cut, thick);
        List<Offer> slips = slips(joint, right, part, cut);
        String word = words(joint);
        BoardPicture cutOut = KnotFouls.laid(BoardPicture.of(pair.on(board), null), List.of(cut), null);
        Part takes = drawing.part(joint.takes()).orElseThrow();
        return new Question.Draft(
                Say.of(
                        "A %s of the %s and the %s, both %s mm thick%s.",
                        joint.noun(), lower(part), lower(takes), Say.number(thick), known(joint, drawing, part, takes)),
                Say.of("The gauge's fence is on the face side. What is it set to for %s?", word),
                Answers.figure(
                        chance,
                        Offer.figure(right, "mm", "From the face side, as the joint's proportion has it."),
                        TOLERANCE,
                        "mm",
                        slips),
                new Picture.Job(drawing, part.id()),
                new Question.Reason(why(joint, right, part), new Picture.Unrolled(cutOut)));
    }

    /** The setting nearest to the face side, face 1, that a side of the cut lies at. */
    private static double setting(Cut cut, double thick) {
        double least = Double.POSITIVE_INFINITY;
        for (Box box : cut.boxes()) {
            for (double z : new double[] {box.min(2), box.max(2)}) {
                double from = thick - z;
                if (from > 0.01 && from < thick - 0.01) least = Math.min(least, from);
            }
        }
        return Math.round(least * 100) / 100.0;
    }

    private static String lower(Part part) {
        return part.name().toLowerCase(java.util.Locale.ROOT);
    }

    private static String words(Joint joint) {
        if (joint instanceof Joint.ThroughHousing) return "the depth of the housing";
        if (joint instanceof Joint.MortiseTenon) return "the nearer side of the mortise";
        if (joint instanceof Joint.Bridle) return "the nearer side of the slot";
        return "the depth of the halving";
    }

    private static String known(Joint joint, Drawing drawing, Part part, Part takes) {
        if (joint instanceof Joint.ThroughHousing) {
            double clear = drawing.overall().across() - 2 * part.size().thickness();
            return Say.of(
                    ". The shelf is %s mm long, and between the uprights there are %s mm",
                    Say.number(takes.size().length()), Say.number(clear));
        }
        if (joint instanceof Joint.MortiseTenon tenoned) {
            return Say.of(
                    ". The tenon is %s mm thick and stands in the middle",
                    Say.number(tenoned.tenon().thickness()));
        }
        if (joint instanceof Joint.Bridle) return ". The bridle is divided in equal thirds";
        return ". Each loses the half";
    }

    private static List<Offer> slips(Joint joint, double right, Part part, Cut cut) {
        double thick = part.size().thickness();
        List<Offer> slips = new ArrayList<>();
        slips.add(slip(thick - right, "Set from the back, or to what stays instead of what goes."));
        if (joint instanceof Joint.ThroughHousing) {
            slips.add(slip(2 * right, "The shelf enters at both ends: each housing takes half of the difference."));
            slips.add(slip(thick / 2, "Half the thickness is a halving's depth, not this housing's."));
        } else if (joint instanceof Joint.MortiseTenon tenoned) {
            slips.add(slip(
                    tenoned.tenon().thickness(), "That is the tenon's own thickness, the distance of the two spurs."));
            slips.add(
                    slip(thick - tenoned.tenon().thickness(), "What is left beside the tenon lies half on each side."));
        } else if (joint instanceof Joint.Bridle) {
            slips.add(slip(thick / 2, "Half is a halving; a bridle has thirds."));
            slips.add(slip(thick / 4, "A quarter leaves the slot too wide."));
        } else {
            slips.add(slip(thick / 3, "A third is a housing's or a bridle's; two halves make a halving flush."));
            slips.add(slip(thick / 4, "A quarter leaves the two proud of each other."));
        }
        slips.add(slip(cut.boxes().get(0).extent(0) / 2, "That is taken along the grain, not from the face side."));
        return slips;
    }

    private static Offer slip(double mm, String because) {
        return Offer.figure(Math.round(mm * 100) / 100.0, "mm", because);
    }

    private static String why(Joint joint, double right, Part part) {
        String thick = Say.number(part.size().thickness());
        String to = Say.mm(right);
        if (joint instanceof Joint.ThroughHousing) {
            return Say.of(
                    "The shelf is longer than the clear width by what enters on both sides; half of that is %s, a third of"
                            + " the %s mm. Both housings are gauged at one setting, from the face sides.",
                    to, thick);
        }
        if (joint instanceof Joint.MortiseTenon tenoned) {
            return Say.of(
                    "(%s − %s) ÷ 2 = %s. All parts are gauged from the face side at one setting, so the frame comes flush"
                            + " there.",
                    thick, Say.number(tenoned.tenon().thickness()), to);
        }
        if (joint instanceof Joint.Bridle) return Say.of("A third of %s is %s, gauged from the face side.", thick, to);
        return Say.of("Half of %s is %s. Gauged from both face sides the two come flush, whatever is left.", thick, to);
    }
}
