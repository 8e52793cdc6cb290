package org.marktwice.rulebook;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.marktwice.rulebook.MarkSheet.Entry;

/** All rules, in the order of the stages. */
public final class RuleBook {
    private static final List<Rule> RULES = List.of(
            // faces
            new OnePairOfMarks(),
            new MarksShareArris(),
            new MarkedSurfaceTrue(),
            new ProvedBeforeMarked(),
            new ChoiceOfSurface(),
            new MarksAsDrawn(),
            new FaultNamed(),
            // names
            new EveryPartNamed(),
            new BoardFitsPart(),
            new HandedPair(),
            new NameSurvives(),
            // turns
            new KnotClearOfJoint(),
            new EndsAndArrisesSound(),
            new HeartSideAsSet(),
            new CupWithinLimit(),
            new MeasuredWhenNear(),
            new BestTurn(),
            new BestSet(),
            new RefusalJustified(),
            // setting-out
            new StockOnReference(),
            new OneDatum(),
            new PlaceAsDrawn(),
            new WidthFromMate(),
            new DepthAsSet(),
            new LinesMeet(),
            new WasteShown(),
            new KnifeAndPencil(),
            new PairAlike(),
            new CheckedBeforeHandIn(),
            new CutOnWasteSide(),
            new CutInOrder(),
            // fit
            new GoesTogether(),
            new Gaps(),
            new OverallSizes(),
            new Squareness());

    private RuleBook() {}

    public static List<Rule> rules() {
        return RULES;
    }

    public static Optional<Rule> rule(String id) {
        return RULES.stream().filter(r -> r.id().equals(id)).findFirst();
    }

    /** The situation judged by the rules of the scenario's stages. */
    public static MarkSheet judge(Situation situation) {
        List<Entry> entries = new ArrayList<>();
        List<String> notJudged = new ArrayList<>();
        for (Rule rule : RULES) {
            if (!rule.isAsked(situation)) continue;
            List<Finding> findings = rule.judge(situation);
            if (findings.isEmpty()) notJudged.add(rule.id());
            double share = worth(rule, situation) / findings.size();
            findings.forEach(f -> entries.add(new Entry(f, rule, share)));
        }
        return new MarkSheet(entries, notJudged);
    }

    private static double worth(Rule rule, Situation situation) {
        return situation.practice().worth().getOrDefault(rule.id(), rule.worth());
    }
}
