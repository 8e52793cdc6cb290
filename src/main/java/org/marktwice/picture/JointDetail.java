package org.marktwice.picture;

import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.AffineTransform;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.DoubleFunction;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.Collectors;
import org.joml.Vector3d;
import org.marktwice.drawing.Drawing;
import org.marktwice.drawing.JobAxis;
import org.marktwice.drawing.Joint;
import org.marktwice.drawing.Part;
import org.marktwice.timber.Box;

/**
 * A joint drawn larger beside the views: where its parts meet, in as many views as its sizes need, and the parts pulled apart
 * in a picture. Joints that are alike in all their sizes have one detail, with one letter.
 */
public final class JointDetail {
    /** Least that is shown round a joint, millimetres. */
    private static final double ROUND = 10;
    /** Less than this, millimetres, is not broken off: it is shown. */
    private static final double STUMP = 16;

    private final String letter;
    private final Drawing drawing;
    private final List<Joint> joints;
    private final WorkingDrawing.Method method;
    private final Box overlap;
    private final Box focus;
    private final JobAxis looking;
    private final List<Closeup> views;
    private final PulledApart picture;

    private JointDetail(
            String letter, Drawing drawing, List<Joint> joints, List<JointSize> sizes, WorkingDrawing.Method method) {
        this.letter = letter;
        this.drawing = drawing;
        this.joints = List.copyOf(joints);
        this.method = method;
        Joint joint = joints.get(0);
        Part in = drawing.part(joint.in()).orElseThrow();
        Part takes = drawing.part(joint.takes()).orElseThrow();
        this.overlap = meeting(in.box(), takes.box());
        this.looking = sizes.get(0).looking();
        this.focus = measured(overlap, sizes);
        Box window = window(in, takes, focus);
        this.views = shown(sizes).stream()
                .map(looking -> Closeup.of(drawing, List.of(in, takes), window, looking, method, sizes))
                .toList();
        this.picture = PulledApart.of(drawing, joint, window);
    }

    /** How large a detail may be drawn, in pixels a millimetre for the largest there is room for, and how that is said. */
    public record Enlarging(DoubleUnaryOperator scales, DoubleFunction<String> said) {
        private static final double[] TIMES = {20, 15, 12, 10, 8, 6, 5, 4, 3, 2.5, 2, 1.5, 1};

        /** So many times as large as views that are drawn to a scale. */
        public static Enlarging times(double views) {
            return new Enlarging(
                    room -> {
                        for (double t : TIMES) if (t * views <= room) return t * views;
                        return room;
                    },
                    scale -> {
                        double times = scale / views;
                        return times < 1 ? "" : Dimension.millimetres(times) + " times as large as in the views";
                    });
        }
    }

    /** The joints that anything is cut for, those that are alike together, in the drawing's order. */
    public static List<JointDetail> of(Drawing drawing, WorkingDrawing.Method method) {
        Map<String, List<Joint>> alike = new LinkedHashMap<>();
        Map<String, List<JointSize>> sizes = new LinkedHashMap<>();
        for (Joint joint : drawing.joints()) {
            List<JointSize> own = JointSizes.of(drawing, joint, method);
            if (own.isEmpty()) continue;
            String key = joint.kind()
                    + own.stream().map(s -> " " + s.axis() + s.text()).sorted().collect(Collectors.joining());
            alike.computeIfAbsent(key, k -> new ArrayList<>()).add(joint);
            sizes.putIfAbsent(key, own);
        }
        List<JointDetail> out = new ArrayList<>();
        alike.forEach((key, joints) -> out.add(
                new JointDetail(letter(out.size()), drawing, joints, sizes.getOrDefault(key, List.of()), method)));
        return List.copyOf(out);
    }

    private static String letter(int n) {
        String own = String.valueOf((char) ('A' + n % 26));
        return n < 26 ? own : own + (n / 26 + 1);
    }

    /** What tells it from the others. */
    public String letter() {
        return letter;
    }

    /** Those that it shows: the first is drawn. */
    public List<Joint> joints() {
        return joints;
    }

    /** The kind of joint, as it is spoken of. */
    public String title() {
        Joint joint = joints.get(0);
        if (joint instanceof Joint.ThroughHousing) return "through housing";
        if (joint instanceof Joint.Halving) return ends() + " halving";
        if (joint instanceof Joint.MortiseTenon m) {
            Part in = parts().get(0);
            int entering = parts().get(1).length().ordinal();
            boolean stub = in.box().extent(entering) - overlap.extent(entering) > 0.05;
            return (m.haunch() != null ? "haunched " : stub ? "stub " : "") + joint.noun();
        }
        return joint.noun();
    }

    /** By how many of a halving's parts end in it. */
    private String ends() {
        int ends = 0;
        for (Part part : parts()) {
            int axis = part.length().ordinal();
            Box box = part.box();
            if (overlap.min(axis) - box.min(axis) < 0.05 || box.max(axis) - overlap.max(axis) < 0.05) ends++;
        }
        return ends == 2 ? "corner" : ends == 1 ? "T" : "cross";
    }

    /** The names of its parts, and how many joints more are like it. */
    public String where() {
        String names = parts().stream().map(Part::name).collect(Collectors.joining(", "));
        int more = joints.size() - 1;
        return more == 0 ? names : names + String.format(Locale.ROOT, "; and %d more alike", more);
    }

    /** Its sizes in words, for one who doesn't see it: {@code 18 high, 6 across}. */
    public String said() {
        return views.stream()
                .flatMap(v -> v.sizes().stream())
                .map(s -> s.text() + " " + s.axis().id())
                .collect(Collectors.joining(", "));
    }

    private List<Part> parts() {
        Joint joint = joints.get(0);
        return List.of(
                drawing.part(joint.in()).orElseThrow(),
                drawing.part(joint.takes()).orElseThrow());
    }

    WorkingDrawing.Method method() {
        return method;
    }

    /** The axis along which one looks in the view that shows most of it. */
    JobAxis looking() {
        return looking;
    }

    List<Closeup> views() {
        return views;
    }

    /** What it is about: all that it measures. */
    Box focus() {
        return focus;
    }

    PulledApart picture() {
        return picture;
    }

    private static Box meeting(Box a, Box b) {
        Vector3d low = a.min().max(b.min(), new Vector3d());
        Vector3d high = a.max().min(b.max(), new Vector3d());
        return Box.between(low, high);
    }

    /** What is measured along each axis, and where nothing is, all of where the parts meet. */
    private static Box measured(Box overlap, List<JointSize> sizes) {
        Box focus = overlap;
        for (JobAxis axis : JobAxis.values()) {
            List<JointSize> along = sizes.stream().filter(s -> s.axis() == axis).toList();
            if (along.isEmpty()) continue;
            double from = along.stream().mapToDouble(JointSize::from).min().orElseThrow();
            double to = along.stream().mapToDouble(JointSize::to).max().orElseThrow();
            focus = focus.with(axis.ordinal(), from, to);
        }
        return focus;
    }

    /** Round what is measured, with some of the wood beside it. */
    private static Box window(Part in, Part takes, Box focus) {
        Box both = new Box(
                in.box().min().min(takes.box().min(), new Vector3d()),
                in.box().max().max(takes.box().max(), new Vector3d()));
        Box window = both;
        for (int a = 0; a < 3; a++) {
            double margin = Math.max(ROUND, 0.6 * focus.extent(a));
            double low = focus.min(a) - margin - both.min(a) < STUMP ? both.min(a) : focus.min(a) - margin;
            double high = both.max(a) - focus.max(a) - margin < STUMP ? both.max(a) : focus.max(a) + margin;
            window = window.with(a, low, high);
        }
        return window;
    }

    /** The views that its sizes stand in; between a view from the side and a plan the front view must stand. */
    private static Set<JobAxis> shown(List<JointSize> sizes) {
        Set<JobAxis> looking = EnumSet.noneOf(JobAxis.class);
        for (JointSize s : sizes) looking.add(s.looking());
        if (looking.contains(JobAxis.ACROSS) && looking.contains(JobAxis.HIGH)) looking.add(JobAxis.DEEP);
        return looking;
    }

    /** Pixels a millimetre of its views in an area; 0 without room. */
    public double scale(Rectangle2D area, Enlarging enlarging, Font font) {
        return DetailLayout.fitting(this, area, enlarging.scales(), font)
                .map(DetailLayout::scale)
                .orElse(0.0);
    }

    /** Draws it as large as the area holds it; nothing where it holds none. */
    public void paint(Graphics2D g, Rectangle2D area, Enlarging enlarging, Palette palette, Font font) {
        Optional<DetailLayout> fitting = DetailLayout.fitting(this, area, enlarging.scales(), font);
        if (fitting.isEmpty()) return;
        DetailLayout layout = fitting.get();
        Graphics2D own = (Graphics2D) g.create();
        own.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        own.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        own.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        Draughtsman pen = new Draughtsman(own, palette, font);
        pen.caption(letter, title(), List.of(enlarging.said().apply(layout.scale()), where()), layout.caption());
        for (Closeup view : views) pen.closeup(view, layout.of(view.looking()), layout);
        picture.paint(own, layout.picture(), palette);
        own.dispose();
    }

    /** From a view's millimetres to its place. */
    static AffineTransform to(Rectangle2D place, Rectangle2D extent) {
        AffineTransform to = AffineTransform.getTranslateInstance(place.getX(), place.getY());
        to.scale(place.getWidth() / extent.getWidth(), place.getHeight() / extent.getHeight());
        to.translate(-extent.getX(), -extent.getY());
        return to;
    }
}
