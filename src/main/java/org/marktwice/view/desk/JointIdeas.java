package org.marktwice.view.desk;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.marktwice.drawing.Direction;
import org.marktwice.drawing.Drawing;
import org.marktwice.drawing.Joint;
import org.marktwice.drawing.Part;
import org.marktwice.drawing.Sketch;
import org.marktwice.scenario.Draft;
import org.marktwice.scenario.DraftPart;
import org.marktwice.timber.Box;

/** How two parts could be joined where they lie: each kind that can be cut there, with figures to begin with. */
final class JointIdeas {
    private final String id;
    private final Part in;
    private final Part takes;

    private JointIdeas(String id, Part in, Part takes) {
        this.id = id;
        this.in = in;
        this.takes = takes;
    }

    /** The kinds of joint, by the names they have in files, the likeliest first. */
    static final List<String> KINDS = List.of(
            "through-housing", "stopped-housing", "mortise-tenon", "bridle", "halving", "rebate", "dowelled", "butt");

    static String spoken(String kind) {
        return kind.equals("mortise-tenon") ? "mortise and tenon" : kind.replace('-', ' ');
    }

    /** One joint of each kind that can be cut between these parts; empty where a part isn't fully known. */
    static List<Joint> possible(Draft draft, String id, String in, String takes) {
        Optional<Part> one = part(draft, in);
        Optional<Part> other = part(draft, takes);
        if (one.isEmpty() || other.isEmpty() || in.equals(takes)) return List.of();
        JointIdeas ideas = new JointIdeas(id, one.get(), other.get());
        List<Joint> found = new ArrayList<>();
        for (String kind : KINDS) ideas.first(kind).ifPresent(found::add);
        return List.copyOf(found);
    }

    /** Why these two can't be joined in any way, in one line. */
    static String refusal(Draft draft, String in, String takes) {
        Optional<Part> one = part(draft, in);
        Optional<Part> other = part(draft, takes);
        if (in.equals(takes)) return "A part can't be joined to itself: point at another";
        if (one.isEmpty() || other.isEmpty()) return "Both parts need all their figures before they can be joined";
        return new JointIdeas("", one.get(), other.get()).why();
    }

    private String why() {
        boolean overlap = in.box().overlap(takes.box(), Drawing.TOLERANCE).isPresent();
        Joint plain =
                overlap ? new Joint.ThroughHousing(id, in.id(), takes.id()) : new Joint.Butt(id, in.id(), takes.id());
        return Sketch.refusal(plain, in, takes).orElse("They can't be joined as they lie");
    }

    private static Optional<Part> part(Draft draft, String id) {
        return draft.parts().stream().filter(p -> p.id().equals(id)).findFirst().flatMap(DraftPart::part);
    }

    private Optional<Joint> first(String kind) {
        return candidates(kind).stream()
                .filter(j -> Sketch.refusal(j, in, takes).isEmpty())
                .findFirst();
    }

    private List<Joint> candidates(String kind) {
        String a = in.id();
        String b = takes.id();
        List<Joint> all = new ArrayList<>();
        switch (kind) {
            case "through-housing" -> all.add(new Joint.ThroughHousing(id, a, b));
            case "rebate" -> all.add(new Joint.Rebate(id, a, b));
            case "bridle" -> all.add(new Joint.Bridle(id, a, b));
            case "butt" -> all.add(new Joint.Butt(id, a, b));
            case "halving" -> {
                for (Direction d : List.of(
                        Direction.TOP,
                        Direction.FRONT,
                        Direction.RIGHT,
                        Direction.BOTTOM,
                        Direction.BACK,
                        Direction.LEFT)) all.add(new Joint.Halving(id, a, b, d));
            }
            case "stopped-housing" -> {
                for (double mm : new double[] {10, 6, 20}) {
                    for (Direction d : List.of(
                            Direction.FRONT,
                            Direction.BACK,
                            Direction.TOP,
                            Direction.BOTTOM,
                            Direction.LEFT,
                            Direction.RIGHT)) all.add(new Joint.StoppedHousing(id, a, b, d, mm));
                }
            }
            case "dowelled" -> {
                for (Joint.Dowels d : List.of(
                        new Joint.Dowels(2, 8, 40),
                        new Joint.Dowels(2, 6, 30),
                        new Joint.Dowels(2, 6, 20),
                        new Joint.Dowels(1, 6, 20))) all.add(new Joint.Dowelled(id, a, b, d));
            }
            default -> tenons(all);
        }
        return all;
    }

    /** A third of the thickness; as wide as the part, or set in by a third of that from the mortised part's end. */
    private void tenons(List<Joint> all) {
        Optional<Box> overlap = in.box().overlap(takes.box(), Drawing.TOLERANCE);
        if (overlap.isEmpty()) return;
        double thick = Math.max(1, Math.rint(takes.size().thickness() / 3));
        double wide = overlap.get().extent(in.length().ordinal());
        double third = Math.rint(wide / 3);
        for (Joint.Tenon tenon : List.of(
                new Joint.Tenon(thick, wide, null),
                new Joint.Tenon(thick, wide - third, null),
                new Joint.Tenon(thick, wide - third, third))) {
            all.add(new Joint.MortiseTenon(id, in.id(), takes.id(), tenon, null));
        }
    }
}
