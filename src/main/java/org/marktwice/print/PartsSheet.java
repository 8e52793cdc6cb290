package org.marktwice.print;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.marktwice.drawing.Direction;
import org.marktwice.drawing.Joint;
import org.marktwice.drawing.Part;
import org.marktwice.drawing.PartStuff;
import org.marktwice.picture.Ink;
import org.marktwice.picture.JobPicture;
import org.marktwice.picture.JointDetail;
import org.marktwice.picture.WorkingDrawing;
import org.marktwice.scenario.Scenario;
import org.marktwice.timber.Board;
import org.marktwice.timber.Size;
import org.marktwice.timber.Species;
import org.marktwice.timber.Surface;

/** The parts to be made, their joints, and the boards on the rack. */
final class PartsSheet {
    private static final double PICTURE = Paper.points(62);

    private final Scenario scenario;
    private final Paper paper;
    private final Issue issue;
    private final List<JointDetail> details;

    PartsSheet(Scenario scenario, Paper paper, Issue issue) {
        this.scenario = scenario;
        this.details = JointDetail.of(scenario.drawing(), WorkingDrawing.Method.FIRST_ANGLE);
        this.paper = paper;
        this.issue = issue;
    }

    List<Leaf> leaves() {
        List<Block> blocks = new ArrayList<>();
        JobPicture picture = JobPicture.of(scenario.drawing());
        blocks.add(Blocks.picture(
                PICTURE, (pen, place) -> picture.paint(pen.g, place, JobPicture.Style.PLAIN, Pen.PALETTE), null));
        blocks.add(Blocks.text(scenario.brief(), Type.BODY, Ink.INK));
        blocks.addAll(Blocks.table(parts()));
        blocks.addAll(Blocks.table(joints()));
        blocks.addAll(Blocks.table(boards()));
        return Leaf.flowing(Sheets.signed(SheetKind.PARTS, scenario, "", issue), paper, blocks);
    }

    private List<Block> parts() {
        List<Block> all = new ArrayList<>();
        List<Part> parts = scenario.drawing().parts();
        all.add(Blocks.heading("Parts", parts.size() + (parts.size() == 1 ? " part" : " parts")));
        Blocks.Columns columns = Blocks.Columns.of("lllrrrll", 0.05, 0.24, 0.10, 0.09, 0.09, 0.10, 0.17, 0.16);
        all.add(Blocks.row(
                columns,
                List.of("no.", "part", "stuff", "length", "width", "thick", "face side looks", "face edge looks"),
                true));
        int number = 1;
        for (Part part : parts) {
            Size s = part.size();
            all.add(Blocks.row(
                    columns,
                    List.of(
                            String.valueOf(number++),
                            part.name(),
                            part.stuff().name().toLowerCase(Locale.ROOT),
                            Figure.number(s.length()),
                            Figure.number(s.width()),
                            Figure.number(s.thickness()),
                            looks(part, part.faceSide()),
                            looks(part, part.faceEdge())),
                    false));
        }
        return all;
    }

    private static String looks(Part part, List<Direction> directions) {
        if (!part.takesMarks()) return "–";
        return directions.stream().map(Direction::id).collect(Collectors.joining(" or "));
    }

    private List<Block> joints() {
        List<Block> all = new ArrayList<>();
        if (scenario.drawing().joints().isEmpty()) return all;
        all.add(Blocks.heading("Joints", ""));
        Blocks.Columns columns = Blocks.Columns.of("lll", 0.28, 0.36, 0.36);
        all.add(Blocks.row(columns, List.of("kind", "in", "takes"), true));
        for (Joint joint : scenario.drawing().joints()) {
            all.add(Blocks.row(columns, List.of(kind(joint), name(joint.in()), name(joint.takes())), false));
        }
        return all;
    }

    /** As the working drawing calls it. */
    private String kind(Joint joint) {
        return details.stream()
                .filter(d -> d.joints().contains(joint))
                .findFirst()
                .map(JointDetail::title)
                .orElseGet(joint::noun);
    }

    private String name(String part) {
        return scenario.drawing().part(part).map(Part::name).orElse(part);
    }

    private List<Block> boards() {
        List<Block> all = new ArrayList<>();
        all.add(Blocks.heading("On the rack", stuff()));
        Blocks.Columns columns = Blocks.Columns.of("llrrrrl", 0.08, 0.28, 0.10, 0.10, 0.10, 0.12, 0.22);
        all.add(Blocks.row(columns, List.of("board", "of", "length", "width", "thick", "moisture", "as sawn"), true));
        for (Board board : scenario.boards()) {
            Size s = board.size();
            all.add(Blocks.row(
                    columns,
                    List.of(
                            board.id(),
                            board.species().map(Species::name).orElse("sheet stuff"),
                            Figure.number(s.length()),
                            Figure.number(s.width()),
                            Figure.number(s.thickness()),
                            board.isSheet() ? "–" : Figure.percent(board.facts().moisture()),
                            sawn(board)),
                    false));
        }
        return all;
    }

    private static String sawn(Board board) {
        if (board.isSheet()) return "–";
        String sawn = Surface.LONG.stream()
                .filter(s -> !board.isDressed(s))
                .map(Surface::spoken)
                .collect(Collectors.joining(", "));
        return sawn.isEmpty() ? "the ends only" : sawn;
    }

    /** How much timber the parts themselves take. */
    private String stuff() {
        TreeMap<String, Double> cubic = new TreeMap<>();
        for (Part part : scenario.drawing().parts()) {
            Size s = part.size();
            String of = part.stuff() == PartStuff.SHEET ? "sheet" : "timber";
            cubic.merge(of, s.length() * s.width() * s.thickness() / 1e6, Double::sum);
        }
        return cubic.descendingMap().entrySet().stream()
                .map(e -> String.format(Locale.ROOT, "%.1f dm³ of %s", e.getValue(), e.getKey()))
                .collect(Collectors.joining(" and ", "the parts hold ", ""));
    }
}
