package org.marktwice.scenario;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import org.marktwice.drawing.Drawing;
import org.marktwice.drawing.DrawingRefused;
import org.marktwice.drawing.Joint;
import org.marktwice.drawing.Overall;
import org.marktwice.drawing.Part;
import org.marktwice.drawing.Sketch;
import org.marktwice.timber.Board;

/**
 * A scenario in the making. Immutable: an edit gives another draft, so that going back is keeping the one before. It may
 * contradict itself and lack whatever it likes; {@link #gaps} says what stands between it and a scenario.
 *
 * @param id empty until one is given; then it follows from the title
 * @param idea what is new in it, in a few words
 * @param stock what boards are grown from; empty where they are given one by one
 * @param boards given one by one; those that a stock would grow are not among them
 */
public record Draft(
        String id,
        String title,
        int level,
        String brief,
        String idea,
        List<Stage> stages,
        OptionalInt minutes,
        Practice practice,
        List<DraftPart> parts,
        List<Joint> joints,
        Optional<Stock> stock,
        List<Board> boards) {

    /** Nothing known: the first three stages, the workshop's usual practice, no boards. */
    public static final Draft BLANK = new Draft(
            "",
            "",
            1,
            "",
            "",
            List.of(Stage.FACES, Stage.NAMES, Stage.TURNS),
            OptionalInt.empty(),
            Practice.DEFAULT,
            List.of(),
            List.of(),
            Optional.empty(),
            List.of());

    private static final int LONGEST_ID = 60;

    public Draft {
        stages = List.copyOf(stages);
        parts = List.copyOf(parts);
        joints = List.copyOf(joints);
        boards = List.copyOf(boards);
    }

    /**
     * Something that is missing or can't be so.
     *
     * @param where {@code title}, {@code parts[1].length}, {@code joints[0]}, {@code boards}, {@code stages} …
     */
    public record Gap(String where, String says) {}

    public static Draft of(Scenario scenario) {
        return new Draft(
                scenario.id(),
                scenario.title(),
                scenario.level(),
                scenario.brief(),
                scenario.idea(),
                scenario.stages(),
                scenario.minutes(),
                scenario.practice(),
                scenario.drawing().parts().stream().map(DraftPart::of).toList(),
                scenario.drawing().joints(),
                scenario.stock(),
                scenario.stock().isPresent() ? List.of() : scenario.boards());
    }

    /** What stands in the way of a scenario, in the order in which one fills it in; empty where nothing does. */
    public List<Gap> gaps() {
        List<Gap> gaps = new ArrayList<>();
        if (title.isEmpty()) gaps.add(new Gap("title", "It has no title yet"));
        if (parts.isEmpty()) gaps.add(new Gap("parts", "It has no parts yet"));
        for (int i = 0; i < parts.size(); i++) {
            partGaps(parts.get(i), "parts[" + i + "]", gaps);
            if (isNamedBefore(i)) {
                gaps.add(new Gap(
                        "parts[" + i + "]",
                        "Two parts are called " + parts.get(i).name() + ": a learner tells parts by their names"));
            }
        }
        for (DrawingRefused refused : refusals())
            gaps.add(new Gap(refused.where(), String.valueOf(refused.getMessage())));
        if (stages.isEmpty()) gaps.add(new Gap("stages", "No stage is asked for yet"));
        if (stock.isEmpty() && boards.isEmpty()) gaps.add(new Gap("boards", "It has no boards yet"));
        for (int i = 0; i < boards.size(); i++) boardGaps(boards.get(i), "boards[" + i + "]", gaps);
        Optional<Drawing> drawing = drawing();
        if (stock.isPresent() && drawing.isPresent()) {
            Rack.refusal(drawing.get()).ifPresent(why -> gaps.add(new Gap("boards", capital(why))));
        }
        return List.copyOf(gaps);
    }

    private boolean isNamedBefore(int index) {
        String name = parts.get(index).name();
        return !name.isEmpty()
                && parts.subList(0, index).stream().anyMatch(p -> p.name().equalsIgnoreCase(name));
    }

    private static void partGaps(DraftPart part, String where, List<Gap> gaps) {
        if (part.name().isEmpty()) gaps.add(new Gap(where + ".name", "A part has no name yet"));
        for (DraftPart.Figure figure : DraftPart.Figure.values()) {
            if (part.figures().containsKey(figure)) continue;
            String what = figure.isSize() ? figure.spoken() : "place " + figure.spoken();
            gaps.add(new Gap(
                    where + "." + figure.name().toLowerCase(Locale.ROOT),
                    capital(part.called()) + ": its " + what + " is missing"));
        }
    }

    private static void boardGaps(Board board, String where, List<Gap> gaps) {
        board.bodies().stream()
                .filter(b -> b.isEmpty())
                .forEach(b -> gaps.add(new Gap(
                        where, "Board " + board.id() + ": knot " + b.knot().id() + " lies wholly outside it")));
    }

    /** What contradicts itself among the parts whose figures are all known, with the places as in this draft. */
    private List<DrawingRefused> refusals() {
        List<Integer> known = new ArrayList<>();
        List<Part> all = new ArrayList<>();
        for (int i = 0; i < parts.size(); i++) {
            Optional<Part> part = parts.get(i).part();
            if (part.isEmpty()) continue;
            known.add(i);
            all.add(part.get());
        }
        List<DrawingRefused> placed = new ArrayList<>();
        for (DrawingRefused refused : Sketch.of(all, joints).refusals()) {
            placed.add(new DrawingRefused(placed(refused.where(), known), String.valueOf(refused.getMessage())));
        }
        return placed;
    }

    private static String placed(String where, List<Integer> known) {
        if (!where.startsWith("parts[")) return where;
        int end = where.indexOf(']');
        return "parts[" + known.get(Integer.parseInt(where.substring(6, end))) + where.substring(end);
    }

    private static String capital(String words) {
        return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }

    /** As much of the job as can be drawn. */
    public Optional<Drawing> drawn() {
        return Sketch.of(known(), joints).drawing();
    }

    /** The drawing, where it is whole and doesn't contradict itself. */
    public Optional<Drawing> drawing() {
        List<Part> known = known();
        if (known.isEmpty() || known.size() < parts.size()) return Optional.empty();
        try {
            return Optional.of(Drawing.of(Overall.around(known), known, joints));
        } catch (DrawingRefused e) {
            return Optional.empty();
        }
    }

    private List<Part> known() {
        return parts.stream().flatMap(p -> p.part().stream()).toList();
    }

    /**
     * The scenario without its grown boards: as it is written to a file, and read from there with them. Empty while there
     * are gaps.
     */
    public Optional<Scenario> bare() {
        if (!gaps().isEmpty()) return Optional.empty();
        return drawing()
                .map(d -> new Scenario(
                        named(), title, level, brief, idea, stages, practice, d, boards, stock, minutes, ""));
    }

    /** Its id, or what follows from its title. */
    public String named() {
        return id.isEmpty() ? idOf(title, "exercise") : id;
    }

    /** Small letters, digits and hyphens, as ids have them. */
    public static String idOf(String words, String otherwise) {
        String plain = java.text.Normalizer.normalize(words, java.text.Normalizer.Form.NFD)
                .toLowerCase(Locale.ROOT)
                .replaceAll("\\p{M}+", "")
                .replaceAll("[^a-z0-9]+", "-")
                .replaceAll("^-|-$", "");
        String cut = plain.length() > LONGEST_ID ? plain.substring(0, LONGEST_ID) : plain;
        return cut.isEmpty() ? otherwise : cut;
    }

    public Draft withId(String other) {
        return new Draft(other, title, level, brief, idea, stages, minutes, practice, parts, joints, stock, boards);
    }

    public Draft titled(String other) {
        return new Draft(id, other, level, brief, idea, stages, minutes, practice, parts, joints, stock, boards);
    }

    public Draft atLevel(int other) {
        return new Draft(id, title, other, brief, idea, stages, minutes, practice, parts, joints, stock, boards);
    }

    public Draft teaching(String other) {
        return new Draft(id, title, level, brief, other, stages, minutes, practice, parts, joints, stock, boards);
    }

    public Draft saying(String other) {
        return new Draft(id, title, level, other, idea, stages, minutes, practice, parts, joints, stock, boards);
    }

    /** In the order of the job, whatever the order they come in. */
    public Draft asking(List<Stage> other) {
        List<Stage> sorted = other.stream().distinct().sorted().toList();
        return new Draft(id, title, level, brief, idea, sorted, minutes, practice, parts, joints, stock, boards);
    }

    public Draft taking(OptionalInt other) {
        return new Draft(id, title, level, brief, idea, stages, other, practice, parts, joints, stock, boards);
    }

    public Draft by(Practice other) {
        return new Draft(id, title, level, brief, idea, stages, minutes, other, parts, joints, stock, boards);
    }

    public Draft ofParts(List<DraftPart> other) {
        return new Draft(id, title, level, brief, idea, stages, minutes, practice, other, joints, stock, boards);
    }

    public Draft joined(List<Joint> other) {
        return new Draft(id, title, level, brief, idea, stages, minutes, practice, parts, other, stock, boards);
    }

    /** Boards grown from this, instead of any that were given. */
    public Draft grownFrom(Stock other) {
        return new Draft(
                id, title, level, brief, idea, stages, minutes, practice, parts, joints, Optional.of(other), List.of());
    }

    /** Boards given one by one. */
    public Draft onBoards(List<Board> other) {
        return new Draft(
                id, title, level, brief, idea, stages, minutes, practice, parts, joints, Optional.empty(), other);
    }

    /** With a part in the place of the one at this index. */
    public Draft withPart(int index, DraftPart part) {
        List<DraftPart> others = new ArrayList<>(parts);
        others.set(index, part);
        return ofParts(others);
    }

    public Draft plusPart(DraftPart part) {
        List<DraftPart> others = new ArrayList<>(parts);
        others.add(part);
        return ofParts(others);
    }

    /** Without a part and the joints that it had. */
    public Draft withoutPart(int index) {
        List<DraftPart> others = new ArrayList<>(parts);
        String gone = others.remove(index).id();
        List<Joint> kept = joints.stream()
                .filter(j -> !j.in().equals(gone) && !j.takes().equals(gone))
                .toList();
        return ofParts(others).joined(kept);
    }

    public Draft plusJoint(Joint joint) {
        List<Joint> others = new ArrayList<>(joints);
        others.add(joint);
        return joined(others);
    }

    public Draft withJoint(int index, Joint joint) {
        List<Joint> others = new ArrayList<>(joints);
        others.set(index, joint);
        return joined(others);
    }

    public Draft withoutJoint(int index) {
        List<Joint> others = new ArrayList<>(joints);
        others.remove(index);
        return joined(others);
    }

    /** An id that no part has yet, after these words. */
    public String freePartId(String words) {
        String base = idOf(words, "part");
        String free = base;
        for (int i = 2; hasPart(free); i++) free = base + "-" + i;
        return free;
    }

    private boolean hasPart(String partId) {
        return parts.stream().anyMatch(p -> p.id().equals(partId));
    }

    /** An id that no joint has yet. */
    public String freeJointId() {
        for (int i = 1; ; i++) {
            String free = "joint-" + i;
            if (joints.stream().noneMatch(j -> j.id().equals(free))) return free;
        }
    }
}
