package org.marktwice.view;

import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javax.swing.DefaultListModel;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;
import javax.swing.JTextField;
import javax.swing.ListSelectionModel;
import javax.swing.ScrollPaneConstants;
import net.miginfocom.swing.MigLayout;
import org.marktwice.feedback.SheetModel;
import org.marktwice.picture.Ink;
import org.marktwice.rulebook.Cautions;
import org.marktwice.scenario.Practice;
import org.marktwice.scenario.Scenario;
import org.marktwice.scenario.Stage;
import org.marktwice.view.Commands.Command;
import org.marktwice.view.Commands.Deed;
import org.marktwice.view.Commands.Place;
import org.marktwice.view.Look.Style;

/** The exercises, who is learning, and the way into each exercise. */
final class StartScreen implements Screen {
    private static final String KEYS = "↑ and ↓ choose an exercise, Enter starts it or goes on with it.";

    static final Command ENTER = new Command(
            "enter-exercise", Place.START, "Go on or start", "ENTER", "Go on with the exercise, or start it");
    static final Command ANEW =
            new Command("start-anew", Place.START, "Start anew", "menu N", "Start the exercise from the beginning");
    static final Command SHEET = new Command(
            "best-sheet", Place.START, "Best mark sheet", "menu B", "Show the mark sheet of your best attempt");
    static final Command FAULT = new Command(
            "find-fault",
            Place.START,
            "Find the fault",
            "menu F",
            "Take over another hand's work at this exercise, name the slips in it and put them right");
    static final List<Command> ALL = List.of(ENTER, ANEW, FAULT, SHEET);

    /** What the page asks of the window. */
    interface Host {
        void begin(Scenario scenario);

        void goOn(Scenario scenario);

        /** Another hand's work at this exercise, to find the slips in it. */
        void findFault(Scenario scenario);

        void showBest(Scenario scenario);

        void learner(String name);

        void theme();

        void textSize(int up);

        void desk();

        void quiz();

        /** By what the work is judged in the exercise that is showing. */
        void practice();
    }

    private final Host host;
    private final Exercises exercises;
    private final DefaultListModel<Scenario> rows = new DefaultListModel<>();
    private final JList<Scenario> list = new JList<>(rows);
    private final JTextField learner = new JTextField(14);
    private final JLabel title = Look.label("", Style.TITLE);
    private final JLabel facts = Look.quiet("", Style.NOTE);
    private final JTextArea idea = Look.prose("", Style.STRONG, Ink.INK);
    private final JTextArea brief = Look.prose("", Style.BODY, Ink.INK);
    private final JTextArea notes = Look.prose("", Style.NOTE, Ink.QUIET);
    private final JLabel mark = Look.label("", Style.STRONG);
    private final JobPane picture = new JobPane();
    private final JButton enter = Look.primary(new JButton("Start"));
    private final JButton anew = new JButton();
    private final JButton fault = new JButton();
    private final JButton sheet = new JButton();
    private final JLabel line = Look.label(KEYS, Style.BODY);
    private final JLabel quizDue = Look.quiet("Five minutes at the kitchen table", Style.NOTE);
    private final List<Deed> deeds;
    private final JPanel page;

    StartScreen(Host host, Exercises exercises, String learnerName) {
        this.host = host;
        this.exercises = exercises;
        Deed entering = new Deed(ENTER, this::enterSelected, () -> selected().isPresent());
        Deed starting = new Deed(
                ANEW, () -> selected().ifPresent(host::begin), () -> selected().isPresent());
        Deed showing = new Deed(SHEET, () -> selected().ifPresent(host::showBest), this::hasBest);
        Deed finding = new Deed(
                FAULT, () -> selected().filter(StartScreen::canHaveFaults).ifPresent(host::findFault));
        deeds = List.of(entering, starting, finding, showing);
        fault.setAction(finding);
        anew.setAction(starting);
        sheet.setAction(showing);
        learner.setText(learnerName);
        line.setName("line");
        page = build();
        Commands.install(page, deeds);
        exercises.all().forEach(rows::addElement);
        list.setSelectedIndex(0);
    }

    private JPanel build() {
        JPanel whole = new JPanel(new MigLayout("insets 0, gap 0, wrap 1, fill", "[grow,fill]", "[][grow,fill][]"));
        whole.add(Bar.top("Marktwice", "Mark the timber, and see what comes of it", who()));
        JPanel body = new JPanel(
                new MigLayout("insets 20 20 20 20, gap 20, fill", "[400:440:520,fill][grow,fill]", "[grow,fill]"));
        body.add(exerciseList(), "growy, hmin 0");
        body.add(detail(), "growy, hmin 0");
        whole.add(body, "grow, hmin 0");
        whole.add(Bar.bottom(line, Look.quiet(Cautions.LINE, Style.NOTE)));
        return whole;
    }

    private JComponent who() {
        JPanel who = new JPanel(new MigLayout("insets 0, gapx 8", "[][]24[][][]"));
        who.setOpaque(false);
        JLabel label = Look.quiet("Who is learning", Style.NOTE);
        label.setLabelFor(learner);
        learner.setName("learner");
        learner.putClientProperty("JTextField.placeholderText", "name or number");
        learner.setToolTipText("Goes on your attempts, so that they can be told apart");
        learner.addActionListener(e -> list.requestFocusInWindow());
        learner.addFocusListener(new java.awt.event.FocusAdapter() {
            @Override
            public void focusLost(java.awt.event.FocusEvent event) {
                host.learner(learner.getText());
            }
        });
        who.add(label);
        who.add(learner);
        who.add(small(Look.isDark() ? "Light" : "Dark", WindowCommands.THEME, host::theme));
        who.add(small("Text −", WindowCommands.SMALLER, () -> host.textSize(-1)));
        who.add(small("Text +", WindowCommands.LARGER, () -> host.textSize(+1)));
        return who;
    }

    private static JButton small(String word, Command command, Runnable does) {
        JButton button = Look.plain(new JButton(word));
        button.setName(command.id());
        button.setToolTipText(Commands.Keys.tooltip(command));
        button.addActionListener(e -> does.run());
        return button;
    }

    private JComponent exerciseList() {
        list.setName("exercises");
        list.getAccessibleContext().setAccessibleName("Exercises");
        list.setOpaque(false);
        list.setCellRenderer(new ExerciseRow(exercises));
        list.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        list.addListSelectionListener(e -> showSelected());
        list.addMouseListener(new MouseAdapter() {
            @Override
            public void mouseClicked(MouseEvent event) {
                if (event.getClickCount() == 2) enterSelected();
            }
        });
        JScrollPane scroll = new JScrollPane(
                list, ScrollPaneConstants.VERTICAL_SCROLLBAR_AS_NEEDED, ScrollPaneConstants.HORIZONTAL_SCROLLBAR_NEVER);
        scroll.setOpaque(false);
        scroll.getViewport().setOpaque(false);
        scroll.getVerticalScrollBar().setUnitIncrement(Look.px(24));
        JPanel whole = new JPanel(new MigLayout("insets 0, gap 0 8, wrap 1, fill", "[grow,fill]", "[grow,fill][][]"));
        whole.setOpaque(false);
        whole.add(scroll, "grow, hmin 0");
        JButton quiz = new JButton(WindowCommands.QUIZ.word());
        quiz.setName("to-quiz");
        quiz.setToolTipText(Commands.Keys.tooltip(WindowCommands.QUIZ));
        quiz.addActionListener(e -> host.quiz());
        quizDue.setName("quiz-due");
        whole.add(quiz, "growx 0, split 2, sg door");
        whole.add(quizDue, "wmin 0");
        JButton door = new JButton(WindowCommands.DESK.word());
        door.setName("to-desk");
        door.setToolTipText(Commands.Keys.tooltip(WindowCommands.DESK));
        door.addActionListener(e -> host.desk());
        whole.add(door, "growx 0, split 2, sg door");
        whole.add(Look.quiet("Set exercises, hand them out, mark them", Style.NOTE), "wmin 0");
        return whole;
    }

    /** Says how many questions are due today. */
    void quizDue(int questions) {
        quizDue.setText(
                questions == 0
                        ? "Nothing is due today"
                        : Exercises.count(questions, "question") + " due today, five minutes");
    }

    private JComponent detail() {
        Card card = new Card(new MigLayout(
                "insets 24 28 24 28, gap 0, wrap 1, fill", "[grow,fill]", "[]2[]12[grow,fill]12[]6[]8[]20[]"));
        card.add(title, "split 2, growx, wmin 0");
        card.add(mark, "growx 0, gapleft push");
        card.add(facts);
        card.add(picture, "growy, hmin 0, w 200lp:680lp:680lp, alignx center, gapy 12 12");
        card.add(idea, "growx, wmin 0, wmax 720lp, hidemode 3");
        card.add(brief, "growx, wmin 0, wmax 720lp");
        card.add(notes, "split 2, growx, wmin 0, wmax 620lp");
        JButton practice = Look.link(new JButton("The workshop's practice →"));
        practice.setName("practice");
        practice.setToolTipText(Commands.Keys.tooltip(WindowCommands.PRACTICE));
        practice.addActionListener(e -> host.practice());
        card.add(practice, "growx 0, gapleft push, aligny top");
        JPanel buttons = new JPanel(new MigLayout("insets 0, gapx 12, hidemode 3"));
        buttons.setOpaque(false);
        enter.setName("enter");
        enter.setToolTipText(Commands.Keys.tooltip(ENTER));
        enter.addActionListener(e -> enterSelected());
        anew.setName("anew");
        sheet.setName("best-sheet");
        fault.setName("find-fault");
        buttons.add(enter);
        buttons.add(anew);
        buttons.add(fault);
        buttons.add(sheet);
        card.add(buttons, "growx 0");
        return card;
    }

    Optional<Scenario> selected() {
        return Optional.ofNullable(list.getSelectedValue());
    }

    /** An examination is one's own work; and slips can be made only where there are marks to make. */
    private static boolean canHaveFaults(Scenario scenario) {
        return scenario.practice().guidance() != Practice.Guidance.EXAMINATION
                && scenario.stages().contains(Stage.FACES);
    }

    private boolean hasBest() {
        return selected().flatMap(s -> exercises.standing(s).best()).isPresent();
    }

    private void enterSelected() {
        selected().ifPresent(s -> {
            if (exercises.standing(s).left().isPresent()) host.goOn(s);
            else host.begin(s);
        });
    }

    private void showSelected() {
        selected().ifPresent(s -> {
            LearnerFolder.Standing standing = exercises.standing(s);
            title.setText(s.title());
            facts.setText("Level " + s.level() + " · " + Exercises.stages(s) + " · " + Exercises.stuff(s));
            idea.setText(s.idea().isEmpty() ? "" : "New here: " + lower(s.idea()) + ".");
            idea.setVisible(!s.idea().isEmpty());
            brief.setText(s.brief());
            notes.setText(note(s, standing));
            picture.show(s);
            picture.getAccessibleContext().setAccessibleName("Picture of the finished job: " + s.title());
            mark.setText(marked(standing));
            boolean left = standing.left().isPresent();
            enter.setText(left ? "Go on" : "Start");
            anew.setVisible(left);
            fault.setVisible(canHaveFaults(s));
            sheet.setVisible(standing.best().isPresent());
        });
        deeds.forEach(Deed::refresh);
    }

    private static String lower(String words) {
        return words.substring(0, 1).toLowerCase(Locale.ROOT) + words.substring(1);
    }

    private static String note(Scenario scenario, LearnerFolder.Standing standing) {
        String refused = standing.refused().isEmpty() ? "" : "\nLeft aside: " + String.join("; ", standing.refused());
        return Exercises.told(scenario) + refused;
    }

    private static String marked(LearnerFolder.Standing standing) {
        return standing.best()
                .map(b -> "Best mark " + SheetModel.number(b.marks()) + " of " + SheetModel.number(b.outOf()) + " in "
                        + Exercises.count(standing.tries(), "try").replace("trys", "tries"))
                .orElse(
                        standing.left().isPresent()
                                ? "You left it part-way."
                                : standing.tries() > 0 ? "Handed in, and kept for your teacher." : "");
    }

    /** Shows the exercises and standings anew; the same one stays selected. */
    void refresh() {
        Scenario before = list.getSelectedValue();
        if (!exercises.all().equals(java.util.Collections.list(rows.elements()))) {
            rows.clear();
            exercises.all().forEach(rows::addElement);
        }
        list.setSelectedValue(before, true);
        if (list.getSelectedIndex() < 0) list.setSelectedIndex(0);
        showSelected();
        list.repaint();
    }

    void select(Scenario scenario) {
        list.setSelectedValue(scenario, true);
    }

    /** Says something in the bottom line; where there is nothing to say, which keys do what. */
    void say(String words) {
        line.setText(words.isEmpty() ? KEYS : words);
    }

    @Override
    public JComponent component() {
        return page;
    }

    @Override
    public String title() {
        return "Marktwice";
    }

    @Override
    public String menu() {
        return "Exercise";
    }

    @Override
    public List<Deed> deeds() {
        return deeds;
    }

    @Override
    public Optional<Workshop> workshop() {
        return selected().flatMap(Workshop::of);
    }

    @Override
    public void focus() {
        list.requestFocusInWindow();
    }
}
