package org.marktwice.print;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.marktwice.Fixtures;
import org.marktwice.timber.Board;
import org.marktwice.timber.GradedKnot;
import org.marktwice.timber.Knot;
import org.marktwice.timber.Seasoned;
import org.marktwice.timber.Size;
import org.marktwice.timber.Surface;
import org.marktwice.timber.Trace;
import org.w3c.dom.Document;

class BoardReportTest {
    private static final Board BOARD = Fixtures.porchShelfBoards().get(0);

    private static BoardReport report(Board board) {
        return new BoardReport(
                board,
                Seasoned.of(board, 6),
                "20 °C, 31 % relative humidity",
                List.of(
                        new BoardReport.Clearance("k1", "left-housing", 0),
                        new BoardReport.Clearance("k1", "slot", 12.34)));
    }

    private static byte[] pdf(Board board, Paper paper) {
        return Pdf.of(report(board).pages(paper), "Board " + board.id());
    }

    /** Every figure that the table of a report must hold. */
    private static List<String> figures(Board board) {
        List<String> all = new ArrayList<>(List.of(
                "Board " + board.id(),
                "board report",
                "1 of 1",
                "Sizes",
                "Knots",
                "Surfaces",
                "Knots from cuts",
                "20 °C, 31 % relative humidity",
                "left-housing they meet",
                "slot 12.3",
                "now",
                "then"));
        Seasoned now = Seasoned.now(board);
        Seasoned then = Seasoned.of(board, 6);
        all.add("moisture " + Figure.percent(now.moisture()) + " 6 %");
        all.add("width " + Figure.number(now.width().orElseThrow()) + " "
                + Figure.number(then.width().orElseThrow()));
        for (Surface face : List.of(Surface.FACE_1, Surface.FACE_2)) {
            all.add(face.spoken() + " " + BoardTables.cup(now, face) + " " + BoardTables.cup(then, face));
        }
        for (Trace trace : board.traces()) {
            GradedKnot knot = GradedKnot.of(board, trace);
            all.add(trace.surface().spoken() + " " + knot.spoken().replace(" knot", "") + " "
                    + Figure.tenth(knot.size()));
        }
        all.add("cup drawn ×");
        return all;
    }

    @ParameterizedTest
    @EnumSource(Paper.class)
    void aReportSaysEverythingOnOneSheetOfThePaper(Paper paper) {
        PdfRead read = PdfRead.of(pdf(BOARD, paper));

        assertThat(read.texts()).hasSize(1);
        assertThat(read.all()).contains(figures(BOARD));
        assertThat(Math.min(read.sizes().get(0).getWidth(), read.sizes().get(0).getHeight()))
                .isCloseTo((float) paper.width(false), within(0.01f));
        assertThat(Math.max(read.sizes().get(0).getWidth(), read.sizes().get(0).getHeight()))
                .isCloseTo((float) paper.height(false), within(0.01f));
    }

    /** ISO 216: 210 × 297 mm; a point is a 72nd of an inch. */
    @Test
    void a4IsA4() {
        assertThat(Paper.A4.width(false)).isCloseTo(595.276, within(0.001));
        assertThat(Paper.A4.height(false)).isCloseTo(841.890, within(0.001));
        assertThat(Paper.LETTER.width(true)).isCloseTo(11 * 72, within(1e-9));
    }

    @ParameterizedTest
    @CsvSource({"312, 120, 18", "2400, 300, 45", "180, 22, 22", "900, 44, 19", "150, 300, 12"})
    void noLetterStandsOutsideTheBorder(double length, double width, double thickness) {
        PdfRead read = PdfRead.of(pdf(sized(length, width, thickness, BOARD.knots()), Paper.A4));
        for (int i = 0; i < read.texts().size(); i++) {
            boolean landscape =
                    read.sizes().get(i).getWidth() > read.sizes().get(i).getHeight();
            Rectangle2D frame = TitleBlock.frame(Paper.A4, landscape);
            assertThat(read.places().get(i))
                    .isNotEmpty()
                    .allSatisfy(letter ->
                            assertThat(frame.contains(letter)).as("%s", letter).isTrue());
        }
    }

    private static Board sized(double length, double width, double thickness, List<Knot> knots) {
        Board.Facts f = BOARD.facts();
        return Board.of(new Board.Facts(
                "Z",
                f.stuff(),
                f.species(),
                new Size(length, width, thickness),
                f.planedAt(),
                f.moisture(),
                f.dressed(),
                f.pith(),
                f.ringWidth(),
                knots,
                f.shape(),
                f.seed()));
    }

    @Test
    void aBoardWithMoreKnotsThanOneSheetHoldsGoesOnOnTheNext() {
        List<Knot> knots = new ArrayList<>();
        for (int i = 0; i < 60; i++) {
            knots.add(new Knot("k" + (i + 1), 20 + i * 38, 90, 80, 5, 6, 500, Double.POSITIVE_INFINITY));
        }
        Board board = sized(2400, 120, 18, knots);
        PdfRead read = PdfRead.of(pdf(board, Paper.A4));

        assertThat(read.texts()).hasSizeGreaterThan(1);
        assertThat(read.texts().get(0)).contains("1 of " + read.texts().size());
        assertThat(board.traces()).hasSizeGreaterThan(100);
        for (Trace trace : board.traces()) {
            String line = Figure.knot(trace.knot()) + " " + trace.surface().spoken() + " ";
            assertThat(read.all()).contains(line);
        }
    }

    @Test
    void anSvgReportIsWellFormedAndSaysTheSame() throws Exception {
        byte[] svg = SheetFile.SVG.bytes(report(BOARD).pages(Paper.A4), "Board A");
        DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
        factory.setNamespaceAware(true);
        Document document = factory.newDocumentBuilder().parse(new ByteArrayInputStream(svg));

        assertThat(document.getDocumentElement().getAttribute("width")).isEqualTo("210.000mm");
        assertThat(document.getDocumentElement().getAttribute("height")).isEqualTo("297.000mm");
        List<String> said = new ArrayList<>();
        var texts = document.getElementsByTagNameNS("*", "text");
        for (int i = 0; i < texts.getLength(); i++) said.add(texts.item(i).getTextContent());
        String all = String.join(" ", said).replaceAll("\\s+", " ");
        assertThat(all)
                .contains("Board A", "board report", "Sizes", "Surfaces", "they meet", "joinery class by EN 942");
        for (Trace trace : BOARD.traces()) {
            GradedKnot knot = GradedKnot.of(BOARD, trace);
            assertThat(said).contains(knot.spoken().replace(" knot", ""), Figure.tenth(knot.size()));
        }
    }

    /** The letters within the file are a font that can show all that is written. */
    @Test
    void anSvgReportBringsItsLetters() throws Exception {
        String svg = new String(SheetFile.SVG.bytes(report(BOARD).pages(Paper.A4), "Board A"), "UTF-8");
        Matcher face = Pattern.compile("base64,([A-Za-z0-9+/=]+)\\)").matcher(svg);
        int found = 0;
        while (face.find()) {
            byte[] font = Base64.getDecoder().decode(face.group(1));
            java.awt.Font letters =
                    java.awt.Font.createFont(java.awt.Font.TRUETYPE_FONT, new ByteArrayInputStream(font));
            assertThat(letters.canDisplayUpTo("Board A 312 × 120 · hollow")).isEqualTo(-1);
            found++;
        }
        assertThat(found).isEqualTo(2);
    }

    @Test
    void pdfAndPngShowTheSameSheet() throws IOException {
        List<Page> pages = report(BOARD).pages(Paper.A4);
        BufferedImage png = Png.image(pages.get(0), 72);
        BufferedImage pdf = Rendered.pdf(Pdf.of(pages, "Board A"), 72).get(0);
        BufferedImage svg = Rendered.svg(SheetFile.SVG.bytes(pages, "Board A"), 72);

        assertThat(apart(png, pdf)).isLessThan(6.0);
        assertThat(apart(png, svg)).isLessThan(12.0);
        BufferedImage other =
                Png.image(report(sized(500, 90, 18, List.of())).pages(Paper.A4).get(0), 72);
        assertThat(apart(png, other)).as("another board's").isGreaterThan(20.0);
    }

    /** The greatest difference of two pictures' cells of 24 × 24 points, nineteen in twenty, of 255. */
    private static double apart(BufferedImage a, BufferedImage b) {
        List<Double> all = new ArrayList<>();
        for (int y = 0; y + 24 <= Math.min(a.getHeight(), b.getHeight()); y += 24) {
            for (int x = 0; x + 24 <= Math.min(a.getWidth(), b.getWidth()); x += 24) {
                all.add(Math.abs(grey(a, x, y) - grey(b, x, y)));
            }
        }
        all.sort(Double::compare);
        return all.get(all.size() * 95 / 100);
    }

    private static double grey(BufferedImage image, int x0, int y0) {
        double sum = 0;
        for (int y = y0; y < y0 + 24; y++) {
            for (int x = x0; x < x0 + 24; x++) {
                int c = image.getRGB(x, y);
                sum += ((c >> 16) & 255) + ((c >> 8) & 255) + (c & 255);
            }
        }
        return sum / (3 * 24 * 24);
    }

    @Test
    void theSameReportIsTheSameFileAndBearsNoDate() {
        byte[] once = pdf(BOARD, Paper.A4);
        assertThat(pdf(BOARD, Paper.A4)).isEqualTo(once);
        assertThat(new String(once, java.nio.charset.StandardCharsets.ISO_8859_1))
                .doesNotContain("CreationDate", "ModDate");
    }

    @Test
    void sheetStuffHasAReportToo() {
        Board sheet = Board.of(new Board.Facts(
                "S",
                org.marktwice.timber.Stuff.SHEET,
                null,
                new Size(400, 300, 9),
                0,
                0,
                java.util.Set.of(),
                null,
                0,
                List.of(),
                org.marktwice.timber.Shape.TRUE,
                1));
        String text = PdfRead.of(Pdf.of(new BoardReport(sheet, null, "", List.of()).pages(Paper.A4), "S"))
                .all();

        assertThat(text)
                .contains("sheet stuff", "length 400", "width 300", "none shows")
                .doesNotContain("EN 942", "then");
    }
}
