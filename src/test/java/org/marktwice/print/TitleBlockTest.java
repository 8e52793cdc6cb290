package org.marktwice.print;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.marktwice.files.ScenarioFile;
import org.marktwice.scenario.Scenario;

/** A drawing's title block has the fields that ISO 7200 asks for; what isn't known is left to be filled in by hand. */
class TitleBlockTest {
    private static Scenario shelf() throws Exception {
        return ScenarioFile.read(Path.of("scenarios/porch-shelf.scenario.json"));
    }

    @ParameterizedTest
    @EnumSource(
            value = SheetKind.class,
            names = {"DRAWING", "PARTS"})
    void aDrawingSaysWhoseItIsWhoDrewAndCheckedItAndWhen(SheetKind kind) throws Exception {
        String blank = text(kind, Issue.BLANK);
        assertThat(blank)
                .contains("title", "school or workshop", "drawn by", "checked by", "date of issue")
                .contains("drawing number", "porch-shelf", kind.spoken(), "sheet", "1 of ", "scale");

        assertThat(text(kind, new Issue("Riverside workshop", "A. Joiner", "2026-11-28")))
                .contains("Riverside workshop", "A. Joiner", "2026-11-28");
    }

    private static String text(SheetKind kind, Issue issue) throws Exception {
        return PdfRead.of(Pdf.of(Sheets.of(shelf(), Set.of(kind), Paper.A4, issue), "x"))
                .all();
    }

    @Test
    void nothingOnASheetHangsOnTheClock() throws Exception {
        byte[] once = Pdf.of(Sheets.of(shelf(), Set.of(SheetKind.DRAWING), Paper.A4), "x");
        byte[] again = Pdf.of(Sheets.of(shelf(), Set.of(SheetKind.DRAWING), Paper.A4), "x");
        assertThat(again).isEqualTo(once);
    }

    /** The block is 14 mm high, and its second row 9 mm more. */
    @ParameterizedTest
    @CsvSource({"true, 23", "false, 14"})
    void aSheetsContentEndsAboveTheBlock(boolean isSigned, double high) {
        TitleBlock plain = new TitleBlock("parts list", "Porch shelf", "level 3", "–");
        TitleBlock block = isSigned ? plain.signed(Issue.BLANK, "porch-shelf") : plain;
        for (boolean landscape : List.of(true, false)) {
            assertThat(block.room(Paper.A4, landscape).getMaxY())
                    .isLessThan(TitleBlock.frame(Paper.A4, landscape).getMaxY() - Paper.points(high));
        }
    }

    @Test
    void aLongTitleTakesTwoLinesBeforeAnythingOfItIsCut() {
        String title = "A bench for the porch with a shelf below, two drawers and a back of boards let into a rail";
        assertThat(title).hasSize(90);
        Page page = Leaf.bound(
                        List.of(new Leaf(
                                false,
                                new TitleBlock("working drawing", title, "level 6", "1 : 5").signed(Issue.BLANK, "x"),
                                (pen, place) -> {})),
                        Paper.A4)
                .get(0);
        assertThat(PdfRead.of(Pdf.of(List.of(page), "x")).all())
                .contains("let into a rail", "level 6")
                .doesNotContain("…");
    }
}
