package org.marktwice.picture;

import java.awt.image.BufferedImage;
import java.io.File;
import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import javax.imageio.ImageIO;
import org.marktwice.timber.Board;
import org.marktwice.timber.Surface;

/** Small pictures of wood that are kept to compare with: {@code Goldens FOLDER} writes them anew, to be looked at first. */
final class Goldens {
    private static final double SCALE = 0.7;

    private Goldens() {}

    public static void main(String[] args) throws IOException {
        for (Map.Entry<String, BufferedImage> one : drawn().entrySet()) {
            ImageIO.write(one.getValue(), "png", new File(args[0], one.getKey() + ".png"));
        }
    }

    /** By name. */
    static Map<String, BufferedImage> drawn() {
        Map<String, BufferedImage> all = new LinkedHashMap<>();
        for (String species : List.of("scots-pine", "white-ash", "black-walnut")) {
            WoodFigure planed = WoodFigure.of(board(species, Set.of(Surface.values())));
            all.put(species + "-face", planed.image(Surface.FACE_1, SCALE));
            all.put(species + "-end", planed.image(Surface.END_1, 2 * SCALE));
            all.put(species + "-sawn", WoodFigure.of(board(species, Set.of())).image(Surface.FACE_2, SCALE));
        }
        return all;
    }

    private static Board board(String species, Set<Surface> dressed) {
        Board pine = Samples.pine();
        return Samples.board("G", species, pine.size(), pine.pith().orElseThrow(), 2.4, pine.knots(), 77, dressed);
    }
}
