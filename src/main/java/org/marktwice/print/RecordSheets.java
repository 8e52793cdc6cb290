package org.marktwice.print;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.marktwice.classroom.JobRecord;
import org.marktwice.classroom.JobRecord.Band;
import org.marktwice.classroom.JobRecord.Beside;
import org.marktwice.files.RecordFile;
import org.marktwice.fit.Tolerances;
import org.marktwice.rulebook.Verdict;

/**
 * The record of finished jobs on paper: a sheet for each learner, or one table for the class. Where nothing was measured yet
 * there is room to write it in, so that the same sheets serve at the bench and afterwards.
 */
public final class RecordSheets {
    private RecordSheets() {}

    /**
     * A sheet for each learner, each numbered by itself; one without a name where the record has no learners.
     *
     * @param file what was measured; {@code record} judges it
     * @param beside the practice marks to be set beside; null for none
     */
    public static List<Page> each(JobRecord record, RecordFile file, @Nullable Beside beside, Paper paper) {
        if (file.rows().isEmpty()) return Leaf.bound(RecordForm.blank(record).leaves(paper), paper);
        Map<String, Double> practice = practice(beside);
        List<Page> pages = new ArrayList<>();
        for (int i = 0; i < file.rows().size(); i++) {
            RecordFile.Row row = file.rows().get(i);
            RecordForm form = new RecordForm(record, row, record.jobs().get(i), practice.get(row.learner()));
            pages.addAll(Leaf.bound(form.leaves(paper), paper));
        }
        return List.copyOf(pages);
    }

    /** The class in one table: a line a learner, a column a measure, on as many pages as they need. */
    public static List<Page> table(JobRecord record, RecordFile file, @Nullable Beside beside, Paper paper) {
        return Leaf.bound(new RecordGrid(record, file, beside, paper).leaves(), paper);
    }

    static Map<String, Double> practice(@Nullable Beside beside) {
        Map<String, Double> shares = new HashMap<>();
        if (beside != null) beside.pairs().forEach(p -> shares.put(p.learner(), p.practice()));
        return shares;
    }

    /** By what it is judged: {@code Sizes within ± 1 mm, gaps within 0.5 mm.} */
    static String limits(JobRecord record) {
        boolean preset = Tolerances.preset(record.tolerances().id()).isPresent();
        String sizes = preset
                ? "by \"" + record.tolerances().title() + "\""
                : "within ± " + Figure.number(record.tolerances().plusMinus(0)) + " mm";
        return "Sizes, places and the difference of diagonals " + sizes + "; gaps within " + Figure.number(record.gap())
                + " mm.";
    }

    static Verdict verdict(Band band) {
        return switch (band) {
            case GOOD -> Verdict.SOUND;
            case FAIR -> Verdict.CLOSE;
            case POOR -> Verdict.WRONG;
        };
    }

    /** A reading, to a tenth at least, so that readings stand under one another. */
    static String reading(double mm) {
        String text = Figure.number(mm);
        return text.contains(".") ? text : text + ".0";
    }

    static String hundred(double share) {
        return String.format(Locale.ROOT, "%.0f", 100 * share);
    }

    /** With its sign: {@code +0.3}. */
    static String off(double mm) {
        String figure = reading(mm);
        return mm > 0 && !figure.equals("0.0") ? "+" + figure : figure.replace('-', '−');
    }
}
