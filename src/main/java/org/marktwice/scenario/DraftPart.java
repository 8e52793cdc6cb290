package org.marktwice.scenario;

import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.joml.Vector3d;
import org.jspecify.annotations.Nullable;
import org.marktwice.drawing.Direction;
import org.marktwice.drawing.JobAxis;
import org.marktwice.drawing.Part;
import org.marktwice.drawing.PartStuff;
import org.marktwice.timber.Size;

/**
 * A part on a half-made drawing: any of its figures may not be known yet.
 *
 * @param id by which joints name it, whatever it comes to be called
 * @param name empty until it has one
 * @param figures in millimetres; one that is missing is not known yet
 */
public record DraftPart(
        String id,
        String name,
        PartStuff stuff,
        Map<Figure, Double> figures,
        JobAxis length,
        JobAxis width,
        List<Direction> faceSide,
        List<Direction> faceEdge) {
    /** What is written of a part in figures. */
    public enum Figure {
        LENGTH("length"),
        WIDTH("width"),
        THICKNESS("thickness"),
        FROM_LEFT("from the left"),
        FROM_FRONT("from the front"),
        FROM_BOTTOM("from the bottom");

        /** Farther than this nothing of a workshop's job lies, millimetres. */
        public static final double FAR = 100_000;

        private final String spoken;

        Figure(String spoken) {
            this.spoken = spoken;
        }

        public String spoken() {
            return spoken;
        }

        public boolean isSize() {
            return ordinal() <= THICKNESS.ordinal();
        }

        /** Whether a part can have this figure so large. */
        public boolean takes(double mm) {
            return isSize() ? mm > 0 && mm <= FAR : Math.abs(mm) <= FAR;
        }

        /** Where it lies along a job axis. */
        public static Figure at(JobAxis axis) {
            return values()[FROM_LEFT.ordinal() + axis.ordinal()];
        }
    }

    public DraftPart {
        EnumMap<Figure, Double> own = new EnumMap<>(Figure.class);
        own.putAll(figures);
        figures = Collections.unmodifiableMap(own);
        faceSide = List.copyOf(faceSide);
        faceEdge = List.copyOf(faceEdge);
    }

    /** Nothing known but where it begins: at the left, the front and the bottom, its length across. */
    public static DraftPart blank(String id) {
        return new DraftPart(
                id,
                "",
                PartStuff.TIMBER,
                Map.of(Figure.FROM_LEFT, 0.0, Figure.FROM_FRONT, 0.0, Figure.FROM_BOTTOM, 0.0),
                JobAxis.ACROSS,
                JobAxis.DEEP,
                List.of(),
                List.of());
    }

    public static DraftPart of(Part part) {
        Map<Figure, Double> figures = new EnumMap<>(Figure.class);
        figures.put(Figure.LENGTH, part.size().length());
        figures.put(Figure.WIDTH, part.size().width());
        figures.put(Figure.THICKNESS, part.size().thickness());
        for (JobAxis axis : JobAxis.values()) {
            figures.put(Figure.at(axis), part.at().get(axis.ordinal()));
        }
        return new DraftPart(
                part.id(),
                part.name(),
                part.stuff(),
                figures,
                part.length(),
                part.width(),
                part.faceSide(),
                part.faceEdge());
    }

    /** The part, where all its figures are known. */
    public Optional<Part> part() {
        if (figures.size() < Figure.values().length) return Optional.empty();
        Vector3d at = new Vector3d();
        for (JobAxis axis : JobAxis.values()) at.setComponent(axis.ordinal(), of(Figure.at(axis)));
        Size size = new Size(of(Figure.LENGTH), of(Figure.WIDTH), of(Figure.THICKNESS));
        return Optional.of(new Part(id, called(), stuff, size, at, length, width, faceSide, faceEdge));
    }

    private double of(Figure figure) {
        return figures.getOrDefault(figure, 0.0);
    }

    /** What messages call it. */
    public String called() {
        return name.isEmpty() ? "the part without a name" : name;
    }

    public DraftPart named(String other) {
        return new DraftPart(id, other, stuff, figures, length, width, faceSide, faceEdge);
    }

    public DraftPart withId(String other) {
        return new DraftPart(other, name, stuff, figures, length, width, faceSide, faceEdge);
    }

    /** Of another stuff; what takes no marks loses its marks. */
    public DraftPart of(PartStuff other) {
        boolean marks = other == PartStuff.TIMBER;
        return new DraftPart(
                id, name, other, figures, length, width, marks ? faceSide : List.of(), marks ? faceEdge : List.of());
    }

    /** @param mm null where it is not known */
    public DraftPart with(Figure figure, @Nullable Double mm) {
        Map<Figure, Double> others = new EnumMap<>(Figure.class);
        others.putAll(figures);
        if (mm == null) others.remove(figure);
        else others.put(figure, mm);
        return new DraftPart(id, name, stuff, others, length, width, faceSide, faceEdge);
    }

    /** Running otherwise. Marks that could not look so any more are taken off. */
    public DraftPart running(JobAxis lengthwise, JobAxis widthwise) {
        DraftPart turned = new DraftPart(id, name, stuff, figures, lengthwise, widthwise, faceSide, faceEdge);
        List<Direction> side =
                faceSide.stream().filter(turned.sides()::contains).toList();
        List<Direction> edge =
                faceEdge.stream().filter(turned.edges()::contains).toList();
        return turned.marked(side, edge);
    }

    public DraftPart marked(List<Direction> side, List<Direction> edge) {
        return new DraftPart(id, name, stuff, figures, length, width, side, edge);
    }

    /** Where its broad faces look; for square stock, its edges as well. */
    public List<Direction> sides() {
        return looking(false);
    }

    /** Where its edges look; for square stock, its faces as well. */
    public List<Direction> edges() {
        return looking(true);
    }

    private List<Direction> looking(boolean edge) {
        if (length == width) return List.of();
        JobAxis thickness = JobAxis.values()[3 - length.ordinal() - width.ordinal()];
        Double w = figures.get(Figure.WIDTH);
        Double t = figures.get(Figure.THICKNESS);
        boolean square =
                w != null && t != null && new Size(1, w, t).isSquare(org.marktwice.timber.Board.SIZE_TOLERANCE);
        return java.util.stream.Stream.of(Direction.values())
                .filter(d -> d.axis() == (edge ? width : thickness).ordinal()
                        || (square && d.axis() == (edge ? thickness : width).ordinal()))
                .toList();
    }
}
