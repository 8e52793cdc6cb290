package org.marktwice.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.marktwice.classroom.JobRecord;
import org.marktwice.classroom.JobRecord.Band;
import org.marktwice.classroom.JobRecord.Beside;
import org.marktwice.classroom.JobRecord.Job;
import org.marktwice.classroom.JobRecord.Judged;
import org.marktwice.fit.Tolerances;

/** The finished jobs for a terminal: by learner, over the class, beside the practice marks. */
final class RecordText {
    private final List<String> lines = new ArrayList<>();

    private RecordText() {}

    static String of(JobRecord record, @Nullable Beside beside) {
        RecordText text = new RecordText();
        text.jobs(record);
        text.columns(record);
        if (beside != null) text.beside(beside);
        return String.join("\n", text.lines);
    }

    private static String format(String form, Object... values) {
        return String.format(Locale.ROOT, form, values).stripTrailing();
    }

    private void head(String title, String right) {
        if (!lines.isEmpty()) lines.add("");
        lines.add(Text.ends(title, right));
        lines.add(Text.rule());
    }

    private void jobs(JobRecord record) {
        head(
                "Finished jobs: " + record.scenario().title(),
                "sizes " + sizes(record) + ", gaps " + Text.mm(record.gap()));
        lines.add(format("%-16s %6s %6s %6s %8s   %s", "learner", "good", "fair", "poor", "share", "beyond the limit"));
        for (Job job : record.jobs()) {
            String share = Double.isNaN(job.share()) ? "–" : format("%.0f %%", 100 * job.share());
            String lead = String.format(
                    Locale.ROOT,
                    "%-16s %6d %6d %6d %8s   ",
                    job.learner(),
                    job.count(Band.GOOD),
                    job.count(Band.FAIR),
                    job.count(Band.POOR),
                    share);
            List<String> poor = job.judged().stream()
                    .filter(j -> j.band() == Band.POOR)
                    .map(RecordText::out)
                    .toList();
            lines.add(Text.wrapped(lead, String.join(", ", poor)).stripTrailing());
        }
    }

    private static String sizes(JobRecord record) {
        boolean preset = Tolerances.preset(record.tolerances().id()).isPresent();
        return preset
                ? record.tolerances().title()
                : "± " + Text.mm(record.tolerances().plusMinus(0));
    }

    private static String out(Judged judged) {
        return judged.id() + format(" %+.1f", judged.off());
    }

    private void columns(JobRecord record) {
        if (record.columns().isEmpty()) return;
        head("The class", "good   fair   poor   out by (mean)");
        for (JobRecord.Column c : record.columns()) {
            lines.add(Text.ends(c.title(), format("%4d %6d %6d   %+10.2f mm", c.good(), c.fair(), c.poor(), c.mean())));
        }
    }

    private void beside(Beside beside) {
        head("Practice and bench", "practice    bench");
        for (JobRecord.Pair pair : beside.pairs()) {
            lines.add(
                    Text.ends(pair.learner(), format("%6.0f %%  %5.0f %%", 100 * pair.practice(), 100 * pair.bench())));
        }
        lines.add(
                beside.correlation().isPresent()
                        ? format(
                                "Correlation %.2f: near 1, who practised well built well; near 0, there is no telling.",
                                beside.correlation().getAsDouble())
                        : "Too few, or too much alike, to tell whether practice paid.");
        if (!beside.onlyPractice().isEmpty()) {
            lines.add(Text.wrapped("Not measured: ", String.join(", ", beside.onlyPractice())));
        }
        if (!beside.onlyBench().isEmpty()) {
            lines.add(Text.wrapped("Without practice: ", String.join(", ", beside.onlyBench())));
        }
    }
}
