package org.marktwice.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.marktwice.drawing.Drawing;
import org.marktwice.drawing.Part;
import org.marktwice.timber.Box;

class PartSolidTest {
    static List<Drawing> drawings() {
        return List.of(Samples.shelf(), Samples.trellis());
    }

    @ParameterizedTest
    @MethodSource("drawings")
    void aPartsBoxesAreThePartLessItsCuts(Drawing drawing) {
        for (Part part : drawing.parts()) {
            PartSolid solid = PartSolid.of(part, drawing.cuts(part));
            double gone = drawing.cuts(part).stream()
                    .flatMap(c -> c.boxes().stream())
                    .mapToDouble(Box::volume)
                    .sum();
            double left = solid.boxes().stream().mapToDouble(Box::volume).sum();
            assertThat(left).isCloseTo(part.box().volume() - gone, within(1e-6));
            for (Box a : solid.boxes()) {
                for (Box b : solid.boxes())
                    assertThat(a != b && a.overlap(b, 1e-6).isPresent()).isFalse();
            }
        }
    }

    @Test
    void aBoxHasTwelveEdges() {
        Part shelf = Samples.shelf().part("shelf").orElseThrow();
        assertThat(PartSolid.of(shelf, List.of()).edges()).hasSize(12);
    }

    /** Across the groove an upright is a prism over an outline of eight corners: 8 edges along it and 8 round either end. */
    @Test
    void aHousingsEdgesAreThoseOfTheSolidAndNotOfItsBoxes() {
        Drawing shelf = Samples.shelf();
        Part upright = shelf.part("upright-left").orElseThrow();
        PartSolid solid = PartSolid.of(upright, shelf.cuts(upright));
        assertThat(solid.boxes()).hasSize(3);
        assertThat(solid.edges()).hasSize(8 + 2 * 8);
    }
}
