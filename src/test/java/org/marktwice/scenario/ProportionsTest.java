package org.marktwice.scenario;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.marktwice.Fixtures;
import org.marktwice.drawing.Direction;
import org.marktwice.drawing.Drawing;
import org.marktwice.drawing.JobAxis;
import org.marktwice.drawing.Joint;
import org.marktwice.drawing.Overall;
import org.marktwice.drawing.Part;
import org.marktwice.scenario.Proportions.Of;
import org.marktwice.scenario.Proportions.Proportion;

/** What is usual in a joint of a given stuff: common practice. */
class ProportionsTest {
    @Test
    void aHousingIsAThirdDeep() {
        Drawing drawing = Fixtures.porchShelfDrawing();

        assertThat(Proportions.USUAL.of(drawing, drawing.joints().get(0)))
                .singleElement()
                .satisfies(p -> {
                    assertThat(p.of()).isEqualTo(Of.HOUSING_DEPTH);
                    assertThat(p.drawn()).isEqualTo(6);
                    assertThat(p.usual().usual()).isEqualTo(6, within(1e-9));
                    assertThat(p.usual().least()).isEqualTo(4.5, within(1e-9));
                    assertThat(p.usual().most()).isEqualTo(9, within(1e-9));
                    assertThat(p.isUsual()).isTrue();
                });
    }

    /** A third of the thickness, then the nearest chisel. */
    @ParameterizedTest
    @CsvSource({"18, 6", "22, 8", "27, 8", "30, 10", "35, 12", "40, 13", "60, 16"})
    void aTenonIsAsThickAsTheNearestChisel(double thick, double chisel) {
        assertThat(Proportions.USUAL.chisel(thick / 3)).isEqualTo(chisel);
    }

    @ParameterizedTest
    @CsvSource({"6, 40, true", "12, 40, false", "6, 20, false"})
    void aTenonIsHeldAgainstChiselAndWidth(double tenon, double deep, boolean usual) {
        Part stile = Fixtures.timber("stile", "Stile")
                .size(300, 50, 18)
                .runs(JobAxis.HIGH, JobAxis.ACROSS)
                .marks(List.of(Direction.FRONT), List.of(Direction.RIGHT))
                .part();
        Part rail = Fixtures.timber("rail", "Rail")
                .size(300, 60, 18)
                .at(50 - deep, 0, 100)
                .runs(JobAxis.ACROSS, JobAxis.HIGH)
                .marks(List.of(Direction.FRONT), List.of(Direction.TOP))
                .part();
        Drawing drawing = Fixtures.drawing(
                new Overall(350 - deep, 18, 300),
                List.of(stile, rail),
                new Joint.MortiseTenon("j", "stile", "rail", new Joint.Tenon(tenon, 40, null), null));

        assertThat(Proportions.USUAL.of(drawing, drawing.joints().get(0)).stream()
                        .allMatch(Proportion::isUsual))
                .isEqualTo(usual);
    }
}
