package org.marktwice.print;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import org.marktwice.classroom.JobRecord;
import org.marktwice.classroom.JobRecord.Band;
import org.marktwice.classroom.JobRecord.Job;
import org.marktwice.classroom.JobRecord.Judged;
import org.marktwice.classroom.Measure;
import org.marktwice.files.RecordFile;
import org.marktwice.picture.Ink;
import org.marktwice.picture.JobPicture;
import org.marktwice.scenario.Scenario;

/**
 * The record sheet of one finished job: all that is to be measured with the drawing's size and the bands, and what it measured,
 * or room for it.
 *
 * @param row what was measured, by whom; null for a sheet that bears no name
 * @param job the same judged; null for none
 * @param practice the learner's share of the practice marks; null for none
 */
record RecordForm(
        JobRecord record,
        RecordFile.@Nullable Row row,
        @Nullable Job job,
        @Nullable Double practice) {
    /** How high the job's picture is, in millimetres: as high as the pages allow without one more for it, or none at all. */
    private static final double[] PICTURES = {40, 28, 20, 0};

    /** A table of four rows with its heads. */
    private static final int FEW = 6;

    private static final String BANDS = "Good: within half the limit. Fair: within the limit. Poor: beyond it.";

    static RecordForm blank(JobRecord record) {
        return new RecordForm(record, null, null, null);
    }

    List<Leaf> leaves(Paper paper) {
        List<Leaf> fewest = leaves(paper, PICTURES[0]);
        for (double high : PICTURES) {
            if (fewest.size() == 1) break;
            List<Leaf> other = leaves(paper, high);
            if (other.size() < fewest.size()) fewest = other;
        }
        return fewest;
    }

    /** @param high the picture, in millimetres */
    private List<Leaf> leaves(Paper paper, double high) {
        Scenario scenario = record.scenario();
        List<Block> blocks = new ArrayList<>();
        String learner = row == null ? "" : row.learner();
        if (learner.isEmpty()) {
            blocks.add(Blocks.blanks("name", 0.42, "class", 0.24, "date", 0.26));
        } else {
            blocks.add(Blocks.text(learner, Type.TITLE, Ink.INK));
            blocks.add(Blocks.blanks("measured by", 0.42, "class", 0.24, "date", 0.26));
        }
        JobPicture picture = JobPicture.of(scenario.drawing());
        if (high > 0) {
            blocks.add(Blocks.picture(
                    Paper.points(high),
                    (pen, place) -> picture.paint(pen.g, place, JobPicture.Style.PLAIN, Pen.PALETTE),
                    null));
        }
        blocks.add(Blocks.text(
                "Measure the finished job in millimetres, as near as the rule can be read. "
                        + RecordSheets.limits(record) + " " + BANDS,
                Type.BODY,
                Ink.INK));
        for (Measure.Kind kind : Measure.Kind.values()) blocks.addAll(table(kind));
        blocks.add(Blocks.together(foot()));
        String about = "level " + scenario.level() + " · " + (learner.isEmpty() ? scenario.id() : learner);
        return Leaf.flowing(new TitleBlock(SheetKind.RECORD.spoken(), scenario.title(), about, ""), paper, blocks);
    }

    private List<Block> table(Measure.Kind kind) {
        List<Block> all = new ArrayList<>();
        for (Measure measure : record.measures()) {
            if (measure.kind() != kind) continue;
            all.add(RecordRow.of(
                    measure,
                    kind == Measure.Kind.DIAGONAL ? null : band(measure, record.limit(measure)),
                    figure(measure),
                    out(measure.id())));
            if (kind == Measure.Kind.DIAGONAL && measure.id().endsWith("-b")) all.add(difference(measure));
        }
        if (all.isEmpty()) return all;
        all.add(0, RecordRow.captions());
        all.add(0, Blocks.heading(title(kind), ""));
        return Blocks.table(all, FEW);
    }

    private static String title(Measure.Kind kind) {
        return switch (kind) {
            case SIZE -> "Overall sizes";
            case PLACE -> "Places of parts";
            case DIAGONAL -> "Diagonals";
            case GAP -> "Widest gap at each joint";
        };
    }

    private RecordRow.Band band(Measure measure, double limit) {
        return measure.kind() == Measure.Kind.GAP
                ? RecordRow.Band.upTo(limit)
                : RecordRow.Band.about(measure.drawn(), limit);
    }

    private Block difference(Measure of) {
        String id = of.id().substring(0, of.id().length() - 2);
        String title = of.title().replaceFirst("Other diagonal of", "How the two differ:");
        return RecordRow.reckoned(title, RecordRow.Band.upTo(record.limit(of)), out(id));
    }

    private String figure(Measure measure) {
        OptionalDouble read = row == null ? OptionalDouble.empty() : row.of(measure.id());
        return read.isPresent() ? RecordSheets.reading(read.getAsDouble()) : "";
    }

    private Optional<Judged> out(String id) {
        return job == null
                ? Optional.empty()
                : job.judged().stream().filter(j -> j.id().equals(id)).findFirst();
    }

    private List<Block> foot() {
        boolean measured = job != null && !Double.isNaN(job.share());
        List<Block> foot = new ArrayList<>();
        foot.add(Blocks.heading("The job", measured ? "" : "a good one counts 1, a fair one half, a poor one nothing"));
        if (job != null && measured) {
            String counts = job.count(Band.GOOD) + " good, " + job.count(Band.FAIR) + " fair, " + job.count(Band.POOR)
                    + " poor: job " + RecordSheets.hundred(job.share()) + " of 100.";
            String beside = practice == null ? "" : " Practice " + RecordSheets.hundred(practice) + " of 100.";
            foot.add(Blocks.text(counts + beside, Type.STRONG, Ink.INK));
        } else {
            foot.add(Blocks.blanks(
                    "good", 0.12, "fair", 0.12, "poor", 0.12, "job of 100", 0.18, "practice of 100", 0.18));
        }
        foot.add(Blocks.blanks("what to do otherwise next time", 0.62, "checked by", 0.34));
        return foot;
    }
}
