package org.marktwice.classroom;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.marktwice.classroom.Attempted.Score;
import org.marktwice.classroom.Results.Item;
import org.marktwice.classroom.Results.Reliability;
import org.marktwice.classroom.Results.Row;
import org.marktwice.rulebook.Rule;
import org.marktwice.rulebook.RuleBook;
import org.marktwice.rulebook.Texts;
import org.marktwice.scenario.Scenario;

/** Learners × items: what each reached, and what there was to reach. */
final class Table {
    private final List<String> ids;
    private final List<String> titles;
    private final double[][] marks;
    private final double[][] outOf;

    private Table(Map<String, String> titles, List<Map<String, Score>> rows) {
        this.ids = List.copyOf(titles.keySet());
        this.titles = List.copyOf(titles.values());
        this.marks = new double[rows.size()][ids.size()];
        this.outOf = new double[rows.size()][ids.size()];
        for (int i = 0; i < rows.size(); i++) {
            for (int j = 0; j < ids.size(); j++) {
                Score score = rows.get(i).get(ids.get(j));
                marks[i][j] = score == null ? Double.NaN : score.marks();
                outOf[i][j] = score == null ? 0 : score.outOf();
            }
        }
    }

    static Table ofRules(List<Row> rows) {
        Map<String, String> titles = new LinkedHashMap<>();
        for (Rule rule : RuleBook.rules()) {
            boolean judged = rows.stream().anyMatch(r -> r.scores().containsKey(rule.id()));
            if (judged) titles.put(rule.id(), Texts.of(rule.id()).title());
        }
        return new Table(titles, rows.stream().map(Row::scores).toList());
    }

    static Table ofExercises(List<Row> rows, ExerciseSet set) {
        Map<String, String> titles = new LinkedHashMap<>();
        for (Scenario scenario : set.scenarios()) {
            boolean worked = rows.stream()
                    .flatMap(r -> r.counted().stream())
                    .anyMatch(a -> a.scenario().equals(scenario.id()));
            if (worked) titles.put(scenario.id(), scenario.title());
        }
        List<Map<String, Score>> scores = new ArrayList<>();
        for (Row row : rows) {
            Map<String, Score> own = new LinkedHashMap<>();
            for (Attempted attempted : row.counted()) {
                own.put(attempted.scenario(), attempted.total());
            }
            scores.add(own);
        }
        return new Table(titles, scores);
    }

    List<Item> items() {
        List<Item> items = new ArrayList<>();
        for (int j = 0; j < ids.size(); j++) {
            Score all = Score.NONE;
            int learners = 0;
            for (int i = 0; i < marks.length; i++) {
                if (Double.isNaN(marks[i][j])) continue;
                all = all.plus(new Score(marks[i][j], outOf[i][j]));
                learners++;
            }
            items.add(new Item(
                    ids.get(j), titles.get(j), learners, all.share(), ItemStatistics.discrimination(marks, outOf, j)));
        }
        return items;
    }

    Reliability reliability() {
        return new Reliability(ItemStatistics.alpha(marks), ItemStatistics.complete(marks).length, marks.length);
    }
}
