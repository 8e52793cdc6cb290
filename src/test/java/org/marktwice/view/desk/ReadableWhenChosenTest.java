package org.marktwice.view.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import javax.swing.JTable;
import org.assertj.swing.edt.GuiActionRunner;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.marktwice.files.FileRefused;
import org.marktwice.files.RecordFile;
import org.marktwice.files.ScenarioFile;
import org.marktwice.picture.Contrast;
import org.marktwice.view.Look;

/** What stands in a cell of the desk's tables can be read, chosen or not, by any light. */
class ReadableWhenChosenTest {
    private static final List<String> SAID = List.of("✓ whole", "~ unfinished", "× unreadable", "○ to come", "P01");

    /** A table with every sign, and marks lost from none to all. */
    private static JTable sheet() {
        Rows<Integer> rows = new Rows<>(List.of(
                Rows.words("Said", 1, SAID::get),
                Rows.upright("Lost", "", i -> (double) i, i -> i / (SAID.size() - 1.0))));
        JTable table = new Sheet<>("said", "What is said", rows).table();
        rows.show(List.of(0, 1, 2, 3, 4));
        return table;
    }

    /** A figure of each band. */
    private static JTable record() throws FileRefused {
        RecordModel model = new RecordModel(
                ScenarioFile.read(Path.of("scenarios/porch-shelf.scenario.json")),
                RecordFile.blank("porch-shelf", List.of("P01", "P02", "P03")));
        double drawn = model.measures().get(0).drawn();
        for (int i = 0; i < 3; i++) model.type(i, model.measures().get(0), String.valueOf(drawn + 0.8 * i));
        return new RecordTable(model, said -> {});
    }

    private static JTable rack() {
        RackModel model = new RackModel();
        RackTableView table = new RackTableView(model);
        model.steps().addListener(table::refresh);
        table.setValueAt("R1", 0, 0);
        table.setValueAt("an oak", 0, 1);
        return table;
    }

    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    void itsInkStandsOutFromItsGround(boolean dark) {
        List<String> faint = new ArrayList<>();
        int[] cells = new int[1];
        GuiActionRunner.execute(() -> {
            Look.install(dark, 1);
            try {
                for (JTable table : List.of(sheet(), record(), rack())) cells[0] += look(table, faint);
            } finally {
                Look.install(false, 1);
            }
        });
        assertThat(faint).isEmpty();
        assertThat(cells[0]).isGreaterThan(30);
    }

    private static int look(JTable table, List<String> faint) {
        int cells = 0;
        for (int row = 0; row < table.getRowCount(); row++) {
            for (int column = 0; column < table.getColumnCount(); column++) {
                for (boolean chosen : new boolean[] {false, true}) {
                    Component cell = table.getCellRenderer(row, column)
                            .getTableCellRendererComponent(
                                    table, table.getValueAt(row, column), chosen, chosen, row, column);
                    double contrast = Contrast.of(
                            Objects.requireNonNull(cell.getForeground()), Objects.requireNonNull(cell.getBackground()));
                    if (contrast < Contrast.LEAST)
                        faint.add(table.getName() + " " + row + "," + column + " chosen " + chosen + ": " + contrast);
                    cells++;
                }
            }
        }
        return cells;
    }
}
