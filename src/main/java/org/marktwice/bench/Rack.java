package org.marktwice.bench;

import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import org.marktwice.timber.Board;

/** The boards in the rack's order, by their ids. A bench copies it before it changes one: a few references, nothing hashed. */
final class Rack {
    private final Map<String, Integer> places;
    private final BoardState[] boards;

    private Rack(Map<String, Integer> places, BoardState[] boards) {
        this.places = places;
        this.boards = boards;
    }

    static Rack fresh(List<Board> boards) {
        Map<String, Integer> places = IntStream.range(0, boards.size())
                .boxed()
                .collect(Collectors.toUnmodifiableMap(i -> boards.get(i).id(), i -> i));
        return new Rack(places, boards.stream().map(BoardState::fresh).toArray(BoardState[]::new));
    }

    /** The same boards, to be changed without changing these. */
    Rack copied() {
        return new Rack(places, boards.clone());
    }

    @Nullable
    BoardState find(String id) {
        Integer place = places.get(id);
        return place == null ? null : boards[place];
    }

    /** A board that is known to be on the rack. */
    BoardState get(String id) {
        return boards[place(id)];
    }

    /** Puts a board, changed, where it was. */
    void put(BoardState board) {
        boards[place(board.board().id())] = board;
    }

    private int place(String id) {
        Integer place = places.get(id);
        if (place == null) throw new IllegalArgumentException("board " + id + " is not on the rack");
        return place;
    }

    void replaceAll(UnaryOperator<BoardState> by) {
        for (int i = 0; i < boards.length; i++) boards[i] = by.apply(boards[i]);
    }

    List<BoardState> all() {
        return List.of(boards);
    }
}
