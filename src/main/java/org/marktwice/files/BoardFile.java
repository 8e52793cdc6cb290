package org.marktwice.files;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.marktwice.drawing.Cut;
import org.marktwice.timber.Board;
import org.marktwice.timber.Box;

/**
 * A board on its own, with the cuts that it is to be judged against.
 *
 * @param cuts in the board's frame, millimetres; {@link Cut#joint()} is the cut's id
 */
public record BoardFile(Board board, List<Cut> cuts) {
    private static final List<String> KNOWN = Stream.concat(Stream.of("format", "cuts"), BoardReader.KNOWN.stream())
            .toList();

    public BoardFile {
        cuts = List.copyOf(cuts);
    }

    public static BoardFile read(Path file) throws FileRefused {
        return read(file.toString(), Bytes.read(file));
    }

    /** @param name what messages call the file */
    public static BoardFile read(String name, byte[] bytes) throws FileRefused {
        Json root = JsonTree.parse(name, Bytes.text(name, bytes), 1);
        // a board object as it stands in a scenario is a board file too, hence "format" may be absent
        if (Fields.object(root, "a board (an object)").members().containsKey("format")) Format.BOARD.check(root);
        Fields in = Fields.of(root, "a board (an object)", KNOWN);
        Board board = BoardReader.read(in, "");
        Set<String> ids = new HashSet<>();
        List<Cut> cuts = new ArrayList<>();
        if (in.has("cuts")) {
            for (Json item : Values.items(in.need("cuts"), "a list of cuts", 0)) {
                Cut cut = cut(item, board);
                Values.once(ids, cut.joint(), item, "cuts");
                cuts.add(cut);
            }
        }
        return new BoardFile(board, cuts);
    }

    private static Cut cut(Json json, Board board) throws FileRefused {
        Fields in = Fields.of(json, "a cut (an object)", List.of("id", "from", "to"));
        String id = Id.KNOT.read(in.need("id"));
        Box box = Box.between(Values.point(in.need("from")), Values.point(in.need("to")));
        if (isOutside(box, board.size().box())) {
            throw json.place().refuse("cut " + id + " lies wholly outside board " + board.id());
        }
        return new Cut(id, List.of(box));
    }

    private static boolean isOutside(Box box, Box board) {
        return IntStream.range(0, 3).anyMatch(axis -> box.max(axis) < 0 || box.min(axis) > board.max(axis));
    }
}
