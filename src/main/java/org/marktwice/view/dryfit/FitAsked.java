package org.marktwice.view.dryfit;

import javax.swing.DefaultComboBoxModel;
import javax.swing.JButton;
import javax.swing.JCheckBox;
import javax.swing.JComboBox;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JSpinner;
import javax.swing.SpinnerNumberModel;
import net.miginfocom.swing.MigLayout;
import org.marktwice.rulebook.FitLimits;
import org.marktwice.timber.Climate;
import org.marktwice.view.Card;
import org.marktwice.view.Look;
import org.marktwice.view.Look.Style;

/** What is asked of the dry fit: by which tolerances, in which room, by whose hand. */
final class FitAsked extends Card {
    private static final long serialVersionUID = 1L;

    private final transient FitModel model;
    private final JComboBox<String> limits = new JComboBox<>();
    private final JCheckBox heated = new JCheckBox("Settled in a room");
    private final JSpinner celsius = spinner("fit-celsius", "Temperature in degrees Celsius", 21, -1, 60, 1);
    private final JSpinner humidity = spinner("fit-humidity", "Relative humidity in percent", 40, 0, 100, 5);
    private final JCheckBox careful = new JCheckBox("By a careful hand");
    private final JButton another = Look.link(new JButton("Another hand"));
    private final JLabel hand = Look.quiet(" ", Style.NOTE);
    private boolean following;

    FitAsked(FitModel model) {
        super(new MigLayout("insets 14 18 14 18, gap 8 6, fillx", "[150lp!][grow,fill]", "[][][]"));
        this.model = model;
        name(limits, "fit-limits", "What it is judged by");
        name(heated, "fit-room", "The job once it has settled in a room");
        name(careful, "fit-hand", "As struck by a careful hand");
        name(another, "fit-another-hand", "Another careful hand");
        limits.setModel(new DefaultComboBoxModel<>(
                model.choices().stream().map(FitLimits::title).toArray(String[]::new)));
        add(Look.label("Judged by", Style.BODY));
        add(limits, "growx, wmin 0, wrap");
        add(heated);
        add(row(celsius, "°C", humidity, "%"), "wrap");
        add(careful);
        JPanel by = row();
        by.add(hand, "wmin 0");
        by.add(another, "hidemode 3, gapleft 4lp");
        add(by, "wmin 0");
        limits.addActionListener(e -> {
            if (!following) model.judgeBy(model.choices().get(limits.getSelectedIndex()));
        });
        heated.addActionListener(e -> toggleRoom());
        celsius.addChangeListener(e -> otherRoom());
        humidity.addChangeListener(e -> otherRoom());
        careful.addActionListener(e -> toggleHand());
        another.addActionListener(e -> anotherHand());
        model.addListener(this::follow);
        follow();
    }

    private static void name(javax.swing.JComponent c, String name, String says) {
        c.setName(name);
        c.setToolTipText(says);
        c.getAccessibleContext().setAccessibleName(says);
    }

    private static JPanel row() {
        JPanel row = new JPanel(new MigLayout("insets 0, gap 6 0, hidemode 3, novisualpadding", "", "[24lp!]"));
        row.setOpaque(false);
        return row;
    }

    private JPanel row(JSpinner first, String unit, JSpinner second, String next) {
        JPanel row = row();
        row.add(first, "w 62lp!");
        row.add(Look.quiet(unit, Style.NOTE));
        row.add(second, "w 62lp!");
        row.add(Look.quiet(next, Style.NOTE));
        return row;
    }

    private static JSpinner spinner(String name, String says, double at, double least, double most, double step) {
        JSpinner spinner = new JSpinner(new SpinnerNumberModel(at, least, most, step));
        spinner.setEditor(new JSpinner.NumberEditor(spinner, "0.#"));
        spinner.setFont(Style.NOTE.font());
        name(spinner, name, says);
        return spinner;
    }

    private static double value(JSpinner spinner) {
        return ((Number) spinner.getValue()).doubleValue();
    }

    private Climate room() {
        return new Climate(value(celsius), value(humidity));
    }

    void toggleRoom() {
        model.in(model.room().isPresent() ? null : room());
    }

    private void otherRoom() {
        if (model.room().isPresent()) model.in(room());
    }

    void toggleHand() {
        model.byCarefulHand(!model.isCareful(), model.seed());
    }

    void anotherHand() {
        model.byCarefulHand(true, model.seed() + 1);
    }

    private void follow() {
        following = true;
        limits.setSelectedIndex(model.choices().indexOf(model.limits()));
        heated.setSelected(model.room().isPresent());
        celsius.setEnabled(model.room().isPresent());
        humidity.setEnabled(model.room().isPresent());
        careful.setSelected(model.isCareful());
        another.setVisible(model.isCareful());
        revalidate();
        hand.setText(model.isCareful() ? "no. " + model.seed() : "reads and strikes a little amiss");
        following = false;
    }
}
