package org.marktwice.scenario;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalInt;
import org.marktwice.drawing.Drawing;
import org.marktwice.timber.Board;

/**
 * What is set: a drawing, the boards on the rack, the stages asked for and the workshop's practice.
 *
 * @param idea what is new in it, in a few words, for whoever chooses; empty where nobody said
 * @param stock what the boards were grown from; empty where they were given one by one
 * @param minutes about how long a learner should take; a hint, and never marked
 * @param digest {@code sha256:…} of the file as read; empty where the scenario was not read from a file
 */
public record Scenario(
        String id,
        String title,
        int level,
        String brief,
        String idea,
        List<Stage> stages,
        Practice practice,
        Drawing drawing,
        List<Board> boards,
        Optional<Stock> stock,
        OptionalInt minutes,
        String digest) {
    /** No exercise takes longer than a school day. */
    public static final int MOST_MINUTES = 600;

    /** What is new in an exercise goes on two short lines, in characters. */
    public static final int LONGEST_IDEA = 120;

    public Scenario {
        stages = List.copyOf(stages);
        if (!(boards instanceof Grown)) boards = List.copyOf(boards);
    }

    /** With boards given one by one. */
    public Scenario(
            String id,
            String title,
            int level,
            String brief,
            List<Stage> stages,
            Practice practice,
            Drawing drawing,
            List<Board> boards,
            String digest) {
        this(id, title, level, brief, stages, practice, drawing, boards, Optional.empty(), digest);
    }

    /** Without a hint of the time or of what is new in it. */
    public Scenario(
            String id,
            String title,
            int level,
            String brief,
            List<Stage> stages,
            Practice practice,
            Drawing drawing,
            List<Board> boards,
            Optional<Stock> stock,
            String digest) {
        this(id, title, level, brief, "", stages, practice, drawing, boards, stock, OptionalInt.empty(), digest);
    }

    /** The same exercise with other boards, given one by one; as long as it is not written, without a digest. */
    public Scenario withBoards(List<Board> others) {
        return new Scenario(
                id, title, level, brief, idea, stages, practice, drawing, others, Optional.empty(), minutes, "");
    }

    public Optional<Board> board(String boardId) {
        return boards.stream().filter(b -> b.id().equals(boardId)).findFirst();
    }

    public boolean grants(Practice.Aid aid) {
        return practice.aids().contains(aid);
    }

    /** Its boards need not be grown for a place in a table. */
    @Override
    public int hashCode() {
        return Objects.hash(id, title, drawing, digest);
    }
}
