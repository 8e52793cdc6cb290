package org.marktwice.rulebook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.marktwice.advice.Option;
import org.marktwice.drawing.Direction;
import org.marktwice.drawing.Part;
import org.marktwice.drawing.Placing;
import org.marktwice.drawing.Trim;
import org.marktwice.drawing.Turn;
import org.marktwice.rulebook.FindingsTour.Met;
import org.marktwice.timber.Board;
import org.marktwice.timber.Surface;

/** What a finding calls better is done, and gives the clearance that was told. */
class BetterIsBetterTest {
    private static Option done(Met met, Map<String, Object> told) {
        Board board = met.scenario().board((String) get(told, "board")).orElseThrow();
        String named = (String) get(told, "part");
        Part part = met.scenario().drawing().part(named).orElseThrow();
        Turn turn = Turn.facing(
                        (Surface) get(told, "one"),
                        (Direction) get(told, "oneLooks"),
                        (Surface) get(told, "other"),
                        (Direction) get(told, "otherLooks"))
                .orElseThrow();
        Surface end = (Surface) get(told, "end");
        double off = ((Number) get(told, "off")).doubleValue();
        return met.situation().judged(new Placing(met.scenario().drawing(), part, board, turn, new Trim(end, off)));
    }

    private static Object get(Map<String, Object> told, String key) {
        return java.util.Objects.requireNonNull(told.get(key), key);
    }

    @Test
    void everyRemedyKeepsTheClearanceThatItPromises() {
        List<String> kinds = new ArrayList<>();
        FindingsTour.all().forEach(met -> {
            Finding.Phrase better = met.finding().instead();
            if (better == null
                    || !Remedy.isOne(better.key())
                    || !better.values().containsKey("oneLooks")) return;
            Option option = done(met, better.values());
            assertThat(option.clear()).as(met.instead()).isTrue();
            double promised = ((Number) get(better.values(), "clearance")).doubleValue();
            double kept = option.nearest().map(Option.Nearest::clearance).orElse(option.clearance());
            assertThat(kept).as(met.instead()).isCloseTo(promised, within(0.05));
            kinds.add(better.key());
        });
        assertThat(kinds).contains("remedy.slide", "remedy.other-board").hasSizeGreaterThan(20);
    }

    @Test
    void anotherTurnOfTheBoardIsBetterThanTheOneChosen() {
        List<String> met = new ArrayList<>();
        FindingsTour.all()
                .filter(m -> m.finding().rule().equals("knot-clear-of-joint"))
                .forEach(m -> {
                    Finding.Phrase better = m.finding().instead();
                    Finding.Measured measured = m.finding().measured();
                    if (better == null || measured == null || !better.values().containsKey("oneLooks")) return;
                    if (m.finding().verdict() == Verdict.SOUND) return;
                    Option option = done(m, better.values());
                    assertThat(option.clearance()).as(m.instead()).isGreaterThan(measured.value());
                    met.add(m.exercise());
                });
        assertThat(met).hasSizeGreaterThan(10);
    }
}
