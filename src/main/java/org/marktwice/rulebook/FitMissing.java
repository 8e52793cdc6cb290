package org.marktwice.rulebook;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.marktwice.bench.Bench;
import org.marktwice.bench.BoardState;
import org.marktwice.drawing.Direction;
import org.marktwice.drawing.Part;
import org.marktwice.fit.DryFit;
import org.marktwice.fit.SetOut;
import org.marktwice.fit.SetOut.Marked;

/** Says what is missing before a job can be put together. */
final class FitMissing {
    private final Bench bench;
    private final DryFit fit;

    FitMissing(Bench bench, DryFit fit) {
        this.bench = bench;
        this.fit = fit;
    }

    List<String> all() {
        List<String> all = new ArrayList<>();
        for (Part part : fit.drawing().parts()) {
            Optional<SetOut> out = fit.setOut(part.id());
            if (out.isEmpty()) all.add(part.name() + ": " + board(part));
            else lines(part, out.get()).ifPresent(all::add);
        }
        return List.copyOf(all);
    }

    private String board(Part part) {
        List<BoardState> named = bench.namedAs(part);
        if (named.isEmpty()) return "no board is named for it.";
        return "board " + named.get(0).board().id() + " is named for it, and has still to be turned as it will lie.";
    }

    private Optional<String> lines(Part part, SetOut out) {
        List<Marked> open = out.marked().stream().filter(m -> m.line() == null).toList();
        if (open.isEmpty()) return Optional.empty();
        Words words = new Words(fit.drawing(), part.id());
        Stream<String> joints = open.stream()
                .flatMap(m -> Stream.ofNullable(m.side().joint()))
                .distinct()
                .map(j -> count(open.stream().filter(m -> m.isFor(j)).count()) + " for " + words.of(j, "joint"));
        Stream<String> ends = open.stream().filter(m -> m.side().isEnd()).map(m -> {
            Direction end = out.placing().turn().along(0);
            boolean far = m.side().waste() * end.sign() > 0;
            return "where it is cut to length at the "
                    + Direction.on(end.axis(), far ? +1 : -1).id();
        });
        List<String> wanted = Stream.concat(ends, joints).toList();
        String last = wanted.get(wanted.size() - 1);
        String list =
                wanted.size() == 1 ? last : String.join(", ", wanted.subList(0, wanted.size() - 1)) + " and " + last;
        return Optional.of(part.name() + ", board " + out.state().board().id() + ": still to be struck, " + list + ".");
    }

    private static String count(long n) {
        return n + (n == 1 ? " line" : " lines");
    }
}
