package org.marktwice.view.desk;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.function.Consumer;
import javax.swing.JComponent;
import javax.swing.JMenu;
import javax.swing.JPopupMenu;
import org.jspecify.annotations.Nullable;
import org.marktwice.classroom.JobRecord;
import org.marktwice.classroom.JobRecord.Beside;
import org.marktwice.files.FileRefused;
import org.marktwice.files.RecordFile;
import org.marktwice.print.Page;
import org.marktwice.print.Paper;
import org.marktwice.print.RecordSheets;
import org.marktwice.scenario.Scenario;

/** Saving the record of finished jobs for the printer: as it is, or with room to write in at the bench. */
final class RecordPrinting {
    /** What can be printed of a record. */
    enum Kind {
        TABLE("Table of the class", false),
        EACH("Sheet for each learner", false),
        BLANK_TABLE("Blank table for the bench", true),
        BLANK_EACH("Blank sheet for each learner", true);

        private final String spoken;
        private final boolean blank;

        Kind(String spoken, boolean blank) {
            this.spoken = spoken;
            this.blank = blank;
        }
    }

    private final JComponent over;
    private final Scenario scenario;
    private final RecordModel model;
    private final Consumer<String> say;

    RecordPrinting(JComponent over, Scenario scenario, RecordModel model, Consumer<String> say) {
        this.over = over;
        this.scenario = scenario;
        this.model = model;
        this.say = say;
    }

    /** What there is to print now, on A4 or on letter paper; before anything was measured, blanks only. */
    JPopupMenu menu() {
        JPopupMenu menu = Printing.onA4();
        JMenu letter = new JMenu("On letter paper");
        for (Paper paper : List.of(Paper.A4, Paper.LETTER)) {
            JComponent into = paper == Paper.A4 ? menu : letter;
            for (Kind kind : Kind.values()) {
                if (!kind.blank && model.isBlank()) continue;
                String name = scenario.id() + "-"
                        + kind.name().toLowerCase(Locale.ROOT).replace('_', '-') + ".pdf";
                into.add(Printing.item(kind.spoken, () -> Printing.ask(over, name, to -> save(to, kind, paper))));
            }
        }
        menu.addSeparator();
        menu.add(letter);
        return menu;
    }

    /** Of the kind of file that the name says. */
    void save(Path to, Kind kind, Paper paper) {
        RecordFile now = model.steps().now();
        Beside beside = model.beside();
        Printing.save(
                to,
                () -> new Printing.Bound(pages(kind, now, beside, paper), "Finished jobs: " + scenario.title()),
                say);
    }

    private List<Page> pages(Kind kind, RecordFile now, @Nullable Beside beside, Paper paper) throws FileRefused {
        RecordFile file = kind.blank
                ? RecordFile.blank(
                                scenario.id(),
                                now.rows().stream().map(RecordFile.Row::learner).toList())
                        .judgedBy(now.tolerance(), now.gap())
                : now;
        JobRecord record = JobRecord.of(scenario, file, "the record");
        Beside shown = kind.blank ? null : beside;
        boolean table = kind == Kind.TABLE || kind == Kind.BLANK_TABLE;
        return table ? RecordSheets.table(record, file, shown, paper) : RecordSheets.each(record, file, shown, paper);
    }
}
