package org.marktwice.files;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.marktwice.drawing.PartStuff;
import org.marktwice.scenario.Draft;
import org.marktwice.scenario.DraftPart;
import org.marktwice.scenario.DraftPart.Figure;
import org.marktwice.scenario.Scenario;
import org.marktwice.scenario.Stock;
import org.marktwice.timber.SpeciesTable;

/** A draft is written and read back as it was, however little of it is known. */
class DraftFileTest {
    private static void comesBack(Draft draft) throws FileRefused {
        byte[] bytes = DraftFile.bytes(draft);
        assertThat(SchemaTest.takes(SchemaTest.DRAFT, new String(bytes, StandardCharsets.UTF_8)))
                .isTrue();
        Draft again = DraftFile.read("x", bytes);
        assertThat(again).isEqualTo(draft);
        assertThat(DraftFile.bytes(again)).isEqualTo(bytes);
    }

    @Test
    void nothingComesBack() throws FileRefused {
        comesBack(Draft.BLANK);
    }

    @Test
    void halfAPartComesBack() throws FileRefused {
        DraftPart part = DraftPart.blank("seat")
                .of(PartStuff.SHEET)
                .with(Figure.WIDTH, 210.5)
                .with(Figure.FROM_LEFT, null)
                .with(Figure.FROM_BOTTOM, -3.0);
        comesBack(Draft.BLANK
                .plusPart(part)
                .titled("Half")
                .teaching("Halves that fit")
                .taking(OptionalInt.of(25)));
    }

    @Test
    void aWholeScenarioComesBackAndIsTheSameScenario() throws FileRefused {
        Scenario scenario = Samples.scenario();
        Draft draft = Draft.of(scenario);
        comesBack(draft);
        Scenario finished = DraftFile.finished(draft).orElseThrow();
        assertThat(finished.drawing()).isEqualTo(scenario.drawing());
        assertThat(finished.boards()).isEqualTo(scenario.boards());
        assertThat(finished.practice()).isEqualTo(scenario.practice());
    }

    @Test
    void aStockIsGrownOnlyWhenTheScenarioIsFinished() throws FileRefused {
        Draft draft = Draft.of(Samples.scenario())
                .grownFrom(new Stock(3, SpeciesTable.all().get(0), 1, 0.4))
                .taking(OptionalInt.of(40));
        comesBack(draft);
        Scenario finished = DraftFile.finished(draft).orElseThrow();
        assertThat(finished.boards()).hasSize(4);
        assertThat(finished.minutes()).hasValue(40);
        assertThat(finished.digest()).startsWith("sha256:");
    }

    @Test
    void withGapsThereIsNoScenario() throws FileRefused {
        assertThat(DraftFile.finished(Draft.BLANK)).isEmpty();
    }
}
