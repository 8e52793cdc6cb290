package org.marktwice.view.desk;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.joml.Vector3dc;
import org.marktwice.drawing.Joint;
import org.marktwice.scenario.Draft;
import org.marktwice.scenario.DraftPart;

/**
 * An exercise being set: the draft step by step, the part that is picked out, and a joint that is being pointed at. It
 * knows no component.
 */
final class SetModel {
    /** Nearer than this to flush a part that is moved is flush, millimetres. */
    private static final double FLUSH = 4;

    private final Steps<Draft> steps;
    private final List<Runnable> listeners = new ArrayList<>();
    private String picked = "";
    private boolean joining;
    private String joinIn = "";
    private String line = "";

    SetModel(Draft first) {
        steps = new Steps<>(first);
        steps.addListener(this::tell);
    }

    void addListener(Runnable listener) {
        listeners.add(listener);
    }

    private void tell() {
        for (Runnable listener : List.copyOf(listeners)) listener.run();
    }

    Steps<Draft> steps() {
        return steps;
    }

    Draft draft() {
        return steps.now();
    }

    void edit(Draft next) {
        line = "";
        steps.edit(next);
    }

    /** The part that is picked out, by its id; empty where none is. */
    Optional<String> picked() {
        return draft().parts().stream()
                .map(DraftPart::id)
                .filter(picked::equals)
                .findFirst();
    }

    void pick(String partId) {
        if (picked.equals(partId)) return;
        picked = partId;
        tell();
    }

    /** Picks the next part out, or the one before; the first where none is. */
    void pickBy(int by) {
        List<String> ids = draft().parts().stream().map(DraftPart::id).toList();
        if (ids.isEmpty()) return;
        int at = ids.indexOf(picked);
        pick(ids.get(at < 0 ? 0 : Math.floorMod(at + by, ids.size())));
    }

    /** What was done last, or why it couldn't be; empty where there is nothing to say. */
    String line() {
        return line;
    }

    void say(String words) {
        line = words;
        tell();
    }

    void addPart() {
        Draft draft = draft();
        String id = draft.freePartId("part-" + (draft.parts().size() + 1));
        edit(draft.plusPart(DraftPart.blank(id)));
        pick(id);
    }

    /** The part that lies opposite the one picked out: its mirror image from left to right. */
    void addOpposite() {
        Draft draft = draft();
        draft.parts().stream().filter(p -> p.id().equals(picked)).findFirst().ifPresent(part -> {
            DraftPart opposite = Moving.opposite(draft, part);
            edit(draft.plusPart(opposite));
            pick(opposite.id());
        });
    }

    /** Names a part; while no joint names it by its id, that follows from the name. */
    void rename(int index, String name) {
        Draft draft = draft();
        DraftPart part = draft.parts().get(index);
        DraftPart next = part.named(name);
        boolean joined = draft.joints().stream()
                .anyMatch(j -> j.in().equals(part.id()) || j.takes().equals(part.id()));
        if (!joined && !name.isEmpty() && isAfterItsName(part)) {
            next = next.withId(draft.withoutPart(index).freePartId(name));
            if (picked.equals(part.id())) picked = next.id();
        }
        edit(draft.withPart(index, next));
    }

    /** Whether a part's id came of itself. */
    private static boolean isAfterItsName(DraftPart part) {
        String base = Draft.idOf(part.name(), "part");
        return part.id().matches("part-\\d+")
                || part.id().equals(base)
                || part.id().matches(base + "-\\d+");
    }

    void removePicked() {
        Draft draft = draft();
        for (int i = 0; i < draft.parts().size(); i++) {
            if (!draft.parts().get(i).id().equals(picked)) continue;
            edit(draft.withoutPart(i));
            return;
        }
    }

    /** A part being dragged, or dropped. */
    void move(String partId, Draft from, Vector3dc by, boolean dropped) {
        Draft moved = Moving.moved(from, partId, by, FLUSH);
        if (dropped) steps.edit(moved);
        else steps.attempt(moved);
    }

    // Joining by pointing at two parts

    boolean isJoining() {
        return joining;
    }

    void beginJoining() {
        joining = true;
        joinIn = "";
        say("Point at the part that the joint is cut into, or go to it by the arrow keys and press Enter");
    }

    void stopJoining() {
        joining = false;
        joinIn = "";
        say("");
    }

    /** A part is pointed at: picked out, or made the next of the two to be joined. */
    void point(String partId) {
        if (!joining) {
            pick(partId);
            return;
        }
        if (joinIn.isEmpty()) {
            joinIn = partId;
            picked = partId;
            say("Cut into " + called(partId) + ": now point at the part that it takes, or go to it and press Enter");
            return;
        }
        join(joinIn, partId);
    }

    private void join(String in, String takes) {
        Draft draft = draft();
        boolean joinedAlready = draft.joints().stream()
                .anyMatch(j -> j.in().equals(in) && j.takes().equals(takes)
                        || j.in().equals(takes) && j.takes().equals(in));
        if (joinedAlready) {
            say(called(in) + " and " + called(takes) + " are joined already: point at another part, or press Esc");
            return;
        }
        List<Joint> possible = JointIdeas.possible(draft, draft.freeJointId(), in, takes);
        if (possible.isEmpty()) {
            say(JointIdeas.refusal(draft, in, takes) + ": point at another part, or press Esc");
            return;
        }
        joining = false;
        joinIn = "";
        steps.edit(draft.plusJoint(possible.get(0)));
        String others =
                possible.stream().skip(1).map(j -> JointIdeas.spoken(j.kind())).collect(Collectors.joining(", "));
        say("Joined by a " + JointIdeas.spoken(possible.get(0).kind())
                + (others.isEmpty() ? "; no other kind can be cut here" : "; it could be: " + others));
    }

    private String called(String partId) {
        return draft().parts().stream()
                .filter(p -> p.id().equals(partId))
                .map(DraftPart::called)
                .findFirst()
                .orElse(partId);
    }

    /** What is wrong or missing at a place such as {@code parts[1]} and below it. */
    List<Draft.Gap> gapsAt(List<Draft.Gap> gaps, String where) {
        return gaps.stream()
                .filter(g -> g.where().equals(where) || g.where().startsWith(where + "."))
                .toList();
    }

    /** How far the exercise is, in one line. */
    static String standing(List<Draft.Gap> gaps) {
        if (gaps.isEmpty()) return "Nothing is missing";
        String first = gaps.get(0).says();
        return gaps.size() == 1 ? first : first + ", and " + (gaps.size() - 1) + " more to do";
    }
}
