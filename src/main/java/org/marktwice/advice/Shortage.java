package org.marktwice.advice;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.marktwice.drawing.Part;
import org.marktwice.scenario.Scenario;
import org.marktwice.timber.Board;

/**
 * Why not every part can be supplied: these parts can be made of no other boards than these, and the boards are fewer.
 * Such a set exists whenever not every part can be supplied (P. Hall, On representatives of subsets, 1935), so it is a
 * proof that anyone can check.
 *
 * @param boards all boards that can serve any of the parts, one fewer than the parts
 * @param clear whether the parts are short of boards that are clear in them; else of boards that fit at all
 */
public record Shortage(List<Part> parts, List<Board> boards, boolean clear) {
    public Shortage {
        parts = List.copyOf(parts);
        boards = List.copyOf(boards);
    }

    /** The smallest that is found from a part left over; empty where every part can have its own board. */
    static Optional<Shortage> of(Scenario scenario, Allotment allotment, boolean clear) {
        List<Part> parts = scenario.drawing().parts();
        List<Board> boards = scenario.boards();
        Matching matching = new Matching(parts.size(), boards.size(), (p, b) -> allotment.serves(p, b, clear));
        return matching.left().stream()
                .map(matching::reach)
                .min(Comparator.comparingInt(r -> r.parts().size()))
                .map(r -> new Shortage(
                        r.parts().stream().map(parts::get).toList(),
                        r.boards().stream().map(boards::get).toList(),
                        clear));
    }

    private interface Serves {
        boolean test(int part, int board);
    }

    /** As many parts as can be, each with a board of its own; found by augmenting paths. */
    private static final class Matching {
        private final int parts;
        private final int boards;
        private final Serves serves;
        private final int[] partOf;

        Matching(int parts, int boards, Serves serves) {
            this.parts = parts;
            this.boards = boards;
            this.serves = serves;
            partOf = new int[boards];
            Arrays.fill(partOf, -1);
            for (int part = 0; part < parts; part++) augment(part, new boolean[boards]);
        }

        private boolean augment(int part, boolean[] seen) {
            for (int board = 0; board < boards; board++) {
                if (seen[board] || !serves.test(part, board)) continue;
                seen[board] = true;
                if (partOf[board] < 0 || augment(partOf[board], seen)) {
                    partOf[board] = part;
                    return true;
                }
            }
            return false;
        }

        List<Integer> left() {
            List<Integer> left =
                    new ArrayList<>(IntStream.range(0, parts).boxed().toList());
            for (int part : partOf) left.remove((Integer) part);
            return left;
        }

        record Reach(List<Integer> parts, List<Integer> boards) {}

        /** The parts that an exchange of boards could leave without instead of this one, and all boards that serve them. */
        Reach reach(int without) {
            boolean[] part = new boolean[parts];
            boolean[] board = new boolean[boards];
            Deque<Integer> next = new ArrayDeque<>(List.of(without));
            part[without] = true;
            while (!next.isEmpty()) {
                int p = next.remove();
                for (int b = 0; b < boards; b++) {
                    if (board[b] || !serves.test(p, b)) continue;
                    board[b] = true;
                    if (!part[partOf[b]]) next.add(partOf[b]);
                    part[partOf[b]] = true;
                }
            }
            return new Reach(marked(part), marked(board));
        }

        private static List<Integer> marked(boolean[] which) {
            return IntStream.range(0, which.length)
                    .filter(i -> which[i])
                    .boxed()
                    .toList();
        }
    }
}
