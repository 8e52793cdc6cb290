package org.marktwice.print;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.marktwice.files.FileRefused;
import org.marktwice.files.ScenarioFile;
import org.marktwice.picture.Figures;
import org.marktwice.scenario.Scenario;

/**
 * Every kind of sheet of every shipped exercise on A4, and of every third one and one with long and foreign names on letter
 * paper too; on plain wood, which is quick.
 */
class EverySheetTest {
    private static final Figures PLAIN = (board, surface, scale) -> new BufferedImage(2, 2, BufferedImage.TYPE_INT_RGB);
    private static final String ODD = "with odd names";
    /** More than its cells hold. */
    private static final Issue LONG = new Issue(
            "The school of joinery and of the building crafts by the old bridge over the river, workshop 3",
            "Alexandra Featherstone-Haugh",
            "Saturday, 28 November 2026");
    /** Half of the wide line, points. */
    private static final double LINE = 0.8;

    static List<Arguments> everyExercise() throws IOException {
        List<Arguments> all = new ArrayList<>();
        List<String> ids = ids();
        for (int i = 0; i < ids.size(); i++) {
            String id = ids.get(i);
            all.add(Arguments.of(id, Paper.A4));
            if (i % 3 == 0 || id.equals(ODD)) all.add(Arguments.of(id, Paper.LETTER));
        }
        return all;
    }

    /** The rule book is the same for all. */
    private static Set<SheetKind> kinds(String id) {
        return id.equals("porch-shelf")
                ? EnumSet.allOf(SheetKind.class)
                : EnumSet.complementOf(EnumSet.of(SheetKind.RULES));
    }

    private static List<String> ids() throws IOException {
        try (Stream<Path> files = Files.list(Path.of("scenarios"))) {
            List<String> ids = new ArrayList<>(files.map(f -> String.valueOf(f.getFileName()))
                    .filter(f -> f.endsWith(".scenario.json"))
                    .map(f -> f.replace(".scenario.json", ""))
                    .sorted()
                    .toList());
            ids.add(ODD);
            return ids;
        }
    }

    private static Scenario scenario(String id) throws IOException, FileRefused {
        Path file = Path.of("scenarios", (id.equals(ODD) ? "porch-shelf" : id) + ".scenario.json");
        if (!id.equals(ODD)) return ScenarioFile.read(file);
        String odd = Files.readString(file)
                .replaceFirst(
                        "\"Porch shelf\"",
                        "\"A bench for the porch with a shelf below, two drawers and a back of boards let into a rail\"")
                .replace("\"Left upright\"", "\"左侧板 upright of the long porch bench 40\"")
                .replace("\"Right upright\"", "\"Ορθοστάτης δεξιός, Стойка правая ßøŽ\"")
                .replace("\"Shelf\"", "\"رف Shelf with a very long name of 40 lett\"");
        return ScenarioFile.read(file.toString(), odd.getBytes(StandardCharsets.UTF_8));
    }

    /** The border leaves 20 mm for filing and 10 on the other sides, as ISO 5457 has it. */
    @ParameterizedTest(name = "{0} on {1}")
    @MethodSource("everyExercise")
    void nothingLeavesTheBorderOrLiesOnAnything(String id, Paper paper) throws Exception {
        byte[] file = Pdf.of(Sheets.of(scenario(id), kinds(id), paper, id.equals(ODD) ? LONG : Issue.BLANK, PLAIN), id);
        PdfRead read = PdfRead.of(file);
        List<List<Rectangle2D>> marks = PdfMarks.of(file);

        Set<SheetKind> met = EnumSet.noneOf(SheetKind.class);
        for (int i = 0; i < read.texts().size(); i++) {
            String text = read.texts().get(i);
            for (SheetKind kind : SheetKind.values()) if (text.contains(" " + kind.spoken())) met.add(kind);
            boolean landscape =
                    read.sizes().get(i).getWidth() > read.sizes().get(i).getHeight();
            Rectangle2D frame = new Rectangle2D.Double(
                    Paper.points(20),
                    Paper.points(10),
                    paper.width(landscape) - Paper.points(30),
                    paper.height(landscape) - Paper.points(20));
            assertThat(read.places().get(i))
                    .as("letters of page %d", i + 1)
                    .isNotEmpty()
                    .allMatch(frame::contains);
            Rectangle2D line = new Rectangle2D.Double(
                    frame.getX() - LINE,
                    frame.getY() - LINE,
                    frame.getWidth() + 2 * LINE,
                    frame.getHeight() + 2 * LINE);
            assertThat(marks.get(i)).as("lines of page %d", i + 1).isNotEmpty().allMatch(m -> contains(line, m));
            assertThat(overlapping(read.places().get(i))).as("page %d", i + 1).isEmpty();
            assertThat(text).contains((i + 1) + " of " + read.texts().size());
        }
        assertThat(met).containsAll(kinds(id));
        // a box for what the font lacks would leave no trace in a file's text
        if (id.equals(ODD)) assertThat(String.join(" ", read.texts())).contains("[3 Han", "[2 Arabic");
    }

    private static boolean contains(Rectangle2D frame, Rectangle2D mark) {
        return mark.getMinX() >= frame.getMinX()
                && mark.getMaxX() <= frame.getMaxX()
                && mark.getMinY() >= frame.getMinY()
                && mark.getMaxY() <= frame.getMaxY();
    }

    /** Letters that share more than a sliver. */
    private static List<String> overlapping(List<Rectangle2D> letters) {
        List<Rectangle2D> down = new ArrayList<>(letters);
        down.sort(Comparator.comparingDouble(Rectangle2D::getMinY));
        List<String> over = new ArrayList<>();
        for (int i = 0; i < down.size(); i++) {
            for (int j = i + 1;
                    j < down.size() && down.get(j).getMinY() < down.get(i).getMaxY() - 1.2;
                    j++) {
                Rectangle2D both = down.get(i).createIntersection(down.get(j));
                if (both.getWidth() >= 1.2 && both.getHeight() >= 1.2) over.add(down.get(i) + " and " + down.get(j));
            }
        }
        return over;
    }
}
