package org.marktwice.picture;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.InputStream;
import java.util.Arrays;
import java.util.Objects;
import java.util.Set;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The wood looks as it looked; a change is meant, and looked at, before {@link Goldens} writes the pictures anew. */
class GoldenPicturesTest {
    static Set<String> names() {
        return Goldens.drawn().keySet();
    }

    @ParameterizedTest
    @MethodSource("names")
    void theWoodLooksAsItDid(String name) throws IOException {
        BufferedImage now = Objects.requireNonNull(Goldens.drawn().get(name));
        BufferedImage kept = kept(name);

        assertThat(now.getWidth()).isEqualTo(kept.getWidth());
        assertThat(now.getHeight()).isEqualTo(kept.getHeight());
        assertThat(Pictures.meanDifference(now, kept)).as("mean").isLessThan(1.0);
        assertThat(ninetyNineIn100(now, kept)).as("ninety-nine in a hundred").isLessThan(8.0);
    }

    @Test
    void otherWoodIsToldApart() throws IOException {
        for (String[] pair : new String[][] {{"scots-pine", "white-ash"}, {"white-ash", "black-walnut"}}) {
            assertThat(Pictures.meanDifference(kept(pair[0] + "-face"), kept(pair[1] + "-face")))
                    .isGreaterThan(5.0);
        }
    }

    private static BufferedImage kept(String name) throws IOException {
        try (InputStream in = GoldenPicturesTest.class.getResourceAsStream("/pictures/" + name + ".png")) {
            return ImageIO.read(Objects.requireNonNull(in, name));
        }
    }

    private static double ninetyNineIn100(BufferedImage a, BufferedImage b) {
        int[] one = Pictures.pixels(a);
        int[] other = Pictures.pixels(b);
        double[] apart = new double[one.length];
        for (int i = 0; i < one.length; i++) apart[i] = Pictures.difference(one[i], other[i]);
        Arrays.sort(apart);
        return apart[apart.length * 99 / 100];
    }
}
