package org.marktwice.quiz;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.marktwice.timber.Chance;

/** Makes questions, and quizzes of several. */
public final class Quiz {
    /** The hardest level. */
    public static final int HARDEST = 3;

    private static final Map<Kind, Maker> MAKERS = makers();

    private Quiz() {}

    private static Map<Kind, Maker> makers() {
        Map<Kind, Maker> all = new EnumMap<>(Kind.class);
        Stream.of(
                        new MarkTail(),
                        new ProperPair(),
                        new BarkSide(),
                        new ReadRule(),
                        new EndDown(),
                        new StockBears(),
                        new PartOfDrawing(),
                        new KnotFouls(),
                        new Hollow(),
                        new SetGauge(),
                        new WhichTurn(),
                        new HandedPairs(),
                        new Chained(),
                        new FindSlip(),
                        new WalkedRound(),
                        new TrueOrFalse())
                .forEach(m -> all.put(m.kind(), m));
        return all;
    }

    static Maker maker(Kind kind) {
        Maker maker = MAKERS.get(kind);
        if (maker == null) throw new IllegalStateException("nothing makes questions of the kind " + kind.id());
        return maker;
    }

    /**
     * One question.
     *
     * @param level 1 to {@link #HARDEST}
     */
    public static Question question(Kind kind, int level, long seed) {
        if (level < 1 || level > HARDEST) throw new IllegalArgumentException("level " + level);
        return maker(kind).make(level, Chance.of(seed).split()).of(kind, level, seed);
    }

    /**
     * A quiz: kinds in an order that comes from the seed, none again before all have been.
     *
     * @param level 1 to {@link #HARDEST}, of every question
     */
    public static List<Question> of(long seed, int questions, int level) {
        Chance chance = Chance.of(seed);
        List<Kind> left = new ArrayList<>();
        List<Question> all = new ArrayList<>();
        while (all.size() < questions) {
            if (left.isEmpty()) left.addAll(shuffled(chance));
            // seeds of questions are written into files as JSON numbers: kept small enough for every reader
            all.add(question(left.remove(0), level, chance.bits() >>> 16));
        }
        return List.copyOf(all);
    }

    private static List<Kind> shuffled(Chance chance) {
        List<Kind> kinds = new ArrayList<>(List.of(Kind.values()));
        for (int i = kinds.size() - 1; i > 0; i--) Collections.swap(kinds, i, chance.whole(0, i));
        return kinds;
    }
}
