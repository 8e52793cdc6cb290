package org.marktwice.view.bench;

import java.util.function.Consumer;
import javax.swing.JPanel;
import javax.swing.JSpinner;
import javax.swing.JTextArea;
import javax.swing.SpinnerNumberModel;
import net.miginfocom.swing.MigLayout;
import org.jspecify.annotations.Nullable;
import org.marktwice.picture.Ink;
import org.marktwice.timber.Climate;
import org.marktwice.view.Look;
import org.marktwice.view.Look.Style;

/** Asks for a room, or for a moisture straight away, and tells what the board comes to once it has settled there. */
final class RoomPanel extends JPanel {
    private static final long serialVersionUID = 1L;
    private static final double MOST_MOISTURE = 30;

    private final transient BenchModel model;
    private final JSpinner celsius = spinner("room-celsius", "Temperature in degrees Celsius", 21, -1, 60, 1, "0.#");
    private final JSpinner humidity = spinner("room-humidity", "Relative humidity in percent", 40, 0, 100, 5, "0.#");
    private final JSpinner moisture =
            spinner("room-moisture", "Moisture of the wood in percent", 8, 0, MOST_MOISTURE, 0.5, "0.0");
    private final JTextArea says = Look.prose("", Style.NOTE, Ink.INK);
    private final JTextArea only = Look.prose(RoomWords.ONLY, Style.NOTE, Ink.QUIET);
    private boolean setting;

    RoomPanel(BenchModel model) {
        super(new MigLayout("insets 0, gap 0 5lp, wrap 1, hidemode 3", "[grow,fill]", "[][][][][grow,top]"));
        this.model = model;
        setOpaque(false);
        setName("room-panel");
        says.setName("room-says");
        add(Look.label("Once settled in a room", Style.STRONG), "wmin 0");
        add(row(celsius, "°C", humidity, "%"));
        add(row(moisture, "% moisture", null, ""));
        add(says, "wmin 0");
        add(only, "wmin 0");
        onChange(celsius, s -> byRoom());
        onChange(humidity, s -> byRoom());
        onChange(moisture, s -> byMoisture());
        setVisible(false);
    }

    private static JPanel row(JSpinner first, String unit, @Nullable JSpinner second, String next) {
        JPanel row = new JPanel(new MigLayout("insets 0, gap 4lp 0, novisualpadding"));
        row.setOpaque(false);
        if (second == null) row.add(Look.quiet("or", Style.NOTE), "");
        row.add(first, "w 58lp!");
        row.add(Look.quiet(unit, Style.NOTE), "wmin 0");
        if (second == null) return row;
        row.add(second, "w 58lp!");
        row.add(Look.quiet(next, Style.NOTE), "wmin 0");
        return row;
    }

    private static JSpinner spinner(
            String name, String says, double at, double least, double most, double step, String format) {
        JSpinner spinner = new JSpinner(new SpinnerNumberModel(at, least, most, step));
        spinner.setEditor(new JSpinner.NumberEditor(spinner, format));
        spinner.setName(name);
        spinner.setFont(Style.NOTE.font());
        spinner.setToolTipText(says);
        spinner.getAccessibleContext().setAccessibleName(says);
        return spinner;
    }

    private void onChange(JSpinner spinner, Consumer<JSpinner> does) {
        spinner.addChangeListener(e -> {
            if (!setting) does.accept(spinner);
        });
    }

    private static double value(JSpinner spinner) {
        return ((Number) spinner.getValue()).doubleValue();
    }

    /** Shows the board as it settles in the room that was last asked for. */
    void open() {
        byRoom();
    }

    private void byRoom() {
        double settled = new Climate(value(celsius), value(humidity)).settledMoisture();
        String name = Reading.number(value(celsius)) + " °C, " + Reading.number(value(humidity)) + " %";
        model.show(model.shape().in(new ShapeShown.Room(name, settled)));
    }

    private void byMoisture() {
        model.show(model.shape().in(new ShapeShown.Room("", value(moisture))));
    }

    void refresh() {
        ShapeShown.@Nullable Room room = model.shape().room();
        setVisible(room != null);
        if (room == null) return;
        setting = true;
        moisture.setValue(Math.min(MOST_MOISTURE, Math.round(room.moisture() * 10) / 10.0));
        setting = false;
        String text = RoomWords.of(model.board().board(), room);
        if (!says.getText().equals(text)) says.setText(text);
    }
}
