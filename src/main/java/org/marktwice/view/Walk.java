package org.marktwice.view;

import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.DoubleFunction;
import java.util.function.LongSupplier;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import org.marktwice.bench.Action;
import org.marktwice.bench.Attempt;
import org.marktwice.bench.Bench;
import org.marktwice.bench.CannotDo;
import org.marktwice.feedback.OutcomeModel;
import org.marktwice.feedback.ReplayModel;
import org.marktwice.feedback.SheetModel;
import org.marktwice.files.FileRefused;
import org.marktwice.picture.FigureCache;
import org.marktwice.rulebook.Faulty;
import org.marktwice.rulebook.Finding;
import org.marktwice.rulebook.Outcome;
import org.marktwice.rulebook.PracticeWords;
import org.marktwice.rulebook.Situation;
import org.marktwice.scenario.Practice;
import org.marktwice.scenario.Scenario;
import org.marktwice.view.Commands.Deed;
import org.marktwice.view.bench.BenchScreen;
import org.marktwice.view.desk.Desk;
import org.marktwice.view.dryfit.FitScreen;
import org.marktwice.view.quiz.QuizRoom;

/** What leads from screen to screen: exercises, bench, hand-in, mark sheet, replay. Keeps the attempt being made. */
final class Walk
        implements StartScreen.Host, HandInScreen.Host, SheetScreen.Host, ReplayScreen.Host, Desk.Host, QuizRoom.Host {
    private final LearnerFolder folder;
    private final Exercises exercises;
    private final Clock clock;
    private final LongSupplier nanos;
    private final FigureCache figures = new FigureCache();
    private Settings settings;
    private @Nullable MainWindow window;
    private final Running running;
    private final LookedUp lookedUp;
    private final Opening opening;
    private @Nullable StartScreen start;
    private @Nullable Desk desk;
    /** Whether what is on the bench or in the replay is only looked at from the teacher's desk. */
    private boolean fromDesk;

    private final List<Deed> deeds;

    /** @param nanos a clock in nanoseconds that never runs backwards */
    Walk(LearnerFolder folder, List<Scenario> shelf, Clock clock, LongSupplier nanos) {
        this.folder = folder;
        this.exercises = new Exercises(shelf);
        this.clock = clock;
        this.nanos = nanos;
        this.running = new Running(folder, this::window);
        this.lookedUp = new LookedUp(folder, exercises, clock);
        this.opening = new Opening(this, folder, exercises);
        this.settings = folder.settings();
        this.deeds = List.of(
                new Deed(WindowCommands.OPEN, () -> ToOpen.ask(window()).ifPresent(this::open)),
                new Deed(WindowCommands.EXERCISES, this::exercises, () -> !(screen() instanceof StartScreen)),
                new Deed(WindowCommands.QUIZ, this::quiz),
                new Deed(WindowCommands.DESK, this::desk),
                new Deed(WindowCommands.CLOSE, this::close),
                new Deed(WindowCommands.THEME, this::theme),
                new Deed(WindowCommands.LARGER, () -> textSize(+1)),
                new Deed(WindowCommands.SMALLER, () -> textSize(-1)),
                new Deed(WindowCommands.MOVEMENT, this::movement),
                new Deed(
                        WindowCommands.PRACTICE,
                        this::practice,
                        () -> workshop().isPresent()),
                new Deed(WindowCommands.KEYS, () -> KeySheet.keys(window()).setVisible(true)),
                new Deed(
                        WindowCommands.CAUTIONS,
                        () -> KeySheet.cautions(window()).setVisible(true)));
    }

    List<Deed> deeds() {
        return deeds;
    }

    /** Begins to walk in this window. */
    void into(MainWindow of) {
        window = of;
        exercises();
    }

    private MainWindow window() {
        MainWindow w = window;
        if (w == null) throw new IllegalStateException("no window yet");
        return w;
    }

    private Optional<Screen.Workshop> workshop() {
        Screen showing = screen();
        return showing == null ? Optional.empty() : showing.workshop();
    }

    /** Every setting of the exercise that is showing, on a page. */
    @Override
    public void practice() {
        workshop().ifPresent(w -> PracticeSheet.of(window(), w).setVisible(true));
    }

    private @Nullable Screen screen() {
        MainWindow w = window;
        return w == null ? null : w.screen();
    }

    Optional<Session> session() {
        return running.session();
    }

    /** The page of exercises, where that is showing. */
    Optional<StartScreen> startPage() {
        return screen() instanceof StartScreen page ? Optional.of(page) : Optional.empty();
    }

    /** Lets go of what is on the bench, wherever one came to it from; false where the learner would rather stay. */
    boolean leave() {
        if (!running.leave()) return false;
        fromDesk = false;
        return true;
    }

    // The exercises

    @Override
    public void exercises() {
        if (fromDesk) {
            desk();
            return;
        }
        if (!running.leave()) return;
        StartScreen before = start;
        StartScreen page = new StartScreen(this, exercises, settings.learner());
        if (before != null) before.selected().ifPresent(page::select);
        start = page;
        window().show(page);
        lookUp();
    }

    private void lookUp() {
        StartScreen page = start;
        if (page == null) return;
        String who = settings.learner();
        lookedUp.quiz(page, quizzed(), () -> page == start && who.equals(settings.learner()));
        lookedUp.standings(page, who, () -> page == start && who.equals(settings.learner()));
    }

    @Override
    public void begin(Scenario scenario) {
        Attempt header = LearnerFolder.header(scenario, settings.learner(), clock.instant());
        run(scenario, header, Keeper.beginning(folder, scenario, settings.learner(), clock.instant()), List.of());
    }

    @Override
    public void findFault(Scenario scenario) {
        int seed = (int) (clock.instant().getEpochSecond() & Integer.MAX_VALUE);
        Faulty other = Situation.of(Bench.of(scenario)).faulty(seed);
        if (other.slips().isEmpty()) {
            complain("No slip can be made in this exercise.");
            return;
        }
        begin(scenario);
        for (Action action : other.given()) perform(t -> action);
        perform(t -> new Action.TakeOver(t, seed));
        showBench();
        int n = other.slips().size();
        window().notice("Another hand did this work, with " + (n == 1 ? "a slip" : n + " slips")
                + " in it. Take up each board, name what is wrong on it (F7), then put it right and hand in.");
    }

    /** Puts an attempt on the bench. */
    void run(Scenario scenario, Attempt attempt, Keeper keeper, List<String> notices) {
        try {
            Session session = Session.of(scenario, attempt, keeper, nanos);
            running.take(session, keeper);
            showBench();
            if (!notices.isEmpty()) window().notice(String.join(" ", notices));
        } catch (CannotDo e) {
            keeper.close();
            complain(e.getMessage());
        }
    }

    @Override
    public void goOn(Scenario scenario) {
        exercises.standing(scenario).left().ifPresent(left -> opening.goOn(scenario, left));
    }

    @Override
    public void showBest(Scenario scenario) {
        opening.showBest(scenario);
    }

    /** Opens an exercise or an attempt from a file, or says in one line why it isn't taken. */
    void open(Path file) {
        opening.open(file);
    }

    /** An attempt that was handed in, as it was marked. */
    void showDone(Scenario scenario, Attempt attempt) {
        try {
            Session done = Session.of(scenario, attempt, Session.Sink.none(), nanos);
            window().show(new SheetScreen(this, done, figures, settings.movement()));
        } catch (CannotDo e) {
            complain(e.getMessage());
        }
    }

    // The quiz

    /** Asks what is due today, or shows how far the learner is. */
    @Override
    public void quiz() {
        if (!leave()) return;
        String who = quizzed();
        try {
            QuizRoom.open(this, who, folder.quizJournal(who), clock, figures, exercises::all, settings.movement())
                    .enter();
        } catch (FileRefused e) {
            complain(e.getMessage());
        }
    }

    @Override
    public void exercise(Scenario scenario) {
        exercises();
        if (start != null) start.select(scenario);
    }

    private String quizzed() {
        return settings.learner().isBlank() ? "unnamed" : settings.learner().strip();
    }

    // The teacher's desk

    /** Goes to the desk, or back to where one was at it. */
    @Override
    public void desk() {
        if (!running.leave()) return;
        boolean back = fromDesk;
        fromDesk = false;
        Desk known = desk;
        if (known == null) {
            known = new Desk(this, folder.folder().resolve("Desk"), exercises.all(), figures);
            desk = known;
        }
        if (back) known.resume();
        else known.home();
    }

    @Override
    public void show(Screen screen) {
        window().show(screen);
    }

    @Override
    public void notice(String words) {
        window().notice(words);
    }

    @Override
    public void titled() {
        window().retitle();
    }

    @Override
    public void tryOut(Scenario scenario) {
        if (!running.leave()) return;
        fromDesk = true;
        Attempt header = LearnerFolder.header(scenario, "try", clock.instant());
        run(scenario, header, Keeper.ofNothing(), List.of());
        window().notice("You are trying this exercise, and nothing is kept. " + WindowCommands.DESK.keyText()
                + " goes back to the teacher's desk.");
    }

    @Override
    public void replay(Scenario scenario, Attempt attempt, Predicate<Finding> sought) {
        if (!running.leave()) return;
        try {
            Session done = Session.of(scenario, attempt, Session.Sink.none(), nanos);
            fromDesk = true;
            SheetModel sheet = SheetModel.of(done.situation());
            showReplay(done, sheet, sheet.decidedAt(sought).orElse(0));
        } catch (CannotDo e) {
            complain(e.getMessage());
        }
    }

    // The attempt

    private void showBench() {
        session()
                .ifPresent(s -> window().show(new BenchCard(
                        s,
                        figures,
                        settings.movement(),
                        new BenchScreen.Doors(this::toHandIn, this::seeJob, this::seeDryFit))));
    }

    /** The job as it would come out so far; the same board is in hand afterwards. */
    private void seeJob() {
        Screen bench = screen();
        session()
                .ifPresent(s -> showJob(
                        s, Outcome.shown(s.bench()), "as it stands now", "Back to the bench", () -> backTo(bench)));
    }

    @Override
    public void showJob(Session session) {
        showJob(session, Outcome.Shown.TOLD, "as handed in", "Back to the mark sheet", () -> showSheet(session));
    }

    private void showJob(Session session, Outcome.Shown shown, String how, String back, Runnable leave) {
        OutcomeModel outcome = OutcomeModel.of(session.situation(), shown);
        window().show(new JobScreen(session.scenario(), how, outcome, figures, back, leave));
    }

    /** The job put together dry from what is set out so far; the same board is in hand afterwards. */
    private void seeDryFit() {
        Screen bench = screen();
        session().ifPresent(s -> dryFit(s, s.bench(), "Back to the bench", () -> backTo(bench)));
    }

    private void backTo(@Nullable Screen bench) {
        showBench();
        if (bench instanceof BenchCard before && screen() instanceof BenchCard card) card.take(before.board());
    }

    private void dryFit(Session session, Bench bench, String back, Runnable leave) {
        window().show(new FitScreen(bench, session.attempt().learner(), figures, settings.movement(), back, leave));
    }

    @Override
    public void dryFit(Session session) {
        dryFit(session, session.bench(), "Back to the mark sheet", () -> showSheet(session));
    }

    @Override
    public void dryFit(Session session, Bench then, int step) {
        Runnable back = () -> showReplay(session, SheetModel.of(session.situation()), step);
        dryFit(session, then, "Back to the replay", back);
    }

    void toHandIn() {
        session().ifPresent(s -> window().show(new HandInScreen(this, s.scenario())));
    }

    @Override
    public void backToBench() {
        showBench();
    }

    @Override
    public void handIn(Set<String> expects, Set<String> parts) {
        if (perform(t -> new Action.Estimate(t, expects, parts))) handInWithoutEstimate();
    }

    @Override
    public void handInWithoutEstimate() {
        if (!perform(Action.HandIn::new)) return;
        session().ifPresent(s -> {
            if (s.bench().guidance() != Practice.Guidance.EXAMINATION) showSheet(s);
            else window().show(new KeptScreen(s.scenario(), s.attempt().learner(), running.file(), this::exercises));
        });
    }

    @Override
    public void beginWithLess(Scenario scenario, Practice.Guidance guidance) {
        if (!running.leave()) return;
        begin(scenario);
        perform(t -> new Action.LessHelp(t, guidance));
        window().notice("You are told " + PracticeWords.told(guidance) + " this time.");
    }

    @Override
    public Calibration calibration(String learner) {
        return folder.calibration(exercises.all(), learner);
    }

    private boolean perform(DoubleFunction<Action> action) {
        Session session = session().orElse(null);
        if (session == null) return false;
        try {
            session.perform(action);
            return true;
        } catch (CannotDo e) {
            complain(e.getMessage());
            return false;
        }
    }

    @Override
    public void showSheet(Session session) {
        window().show(new SheetScreen(this, session, figures, settings.movement()));
    }

    @Override
    public void showReplay(Session session, SheetModel sheet, int step) {
        try {
            ReplayModel replay = ReplayModel.of(session.scenario(), session.attempt(), sheet);
            window().show(new ReplayScreen(this, session, replay, step, figures, settings.movement()));
        } catch (CannotDo e) {
            complain(e.getMessage());
        }
    }

    /** Lets a folder be chosen that attempts are kept in from now on. */
    void keepElsewhere() {
        running.keepElsewhere();
    }

    /** Closes the window; what is on the bench is there next time. */
    void close() {
        Screen showing = screen();
        if (showing != null && !showing.mayClose()) return;
        if (!running.leave()) return;
        if (showing != null) showing.left();
        window().dispose();
    }

    // Settings

    @Override
    public void learner(String name) {
        if (name.strip().equals(settings.learner())) return;
        change(settings.withLearner(name));
        lookUp();
        StartScreen page = start;
        if (page != null) page.refresh();
    }

    @Override
    public void theme() {
        change(settings.withDark(!settings.dark()));
        relook();
    }

    private void movement() {
        change(settings.withMovement(!settings.movement()));
        Screen showing = screen();
        if (showing != null) showing.setMovement(settings.movement());
        boolean moving = settings.movement();
        window().notice(moving ? "Boards are shown turning." : "Boards turn at once.");
    }

    @Override
    public void textSize(int up) {
        change(settings.stepped(up));
        relook();
    }

    private void relook() {
        Look.install(settings.dark(), settings.textSize());
        if (screen() instanceof StartScreen) exercises();
    }

    private void change(Settings next) {
        settings = next;
        try {
            folder.save(next);
        } catch (FileRefused e) {
            complain("The settings could not be saved: " + e.getMessage());
        }
    }

    /** One clear line, where the learner looks: at the foot of the start page, or else above the screen. */
    void complain(@Nullable String why) {
        String words = why == null ? "It could not be done." : why;
        if (screen() instanceof StartScreen page) page.say(words);
        else window().notice(words);
    }

    /** The figures of the wood that its screens draw. */
    FigureCache figures() {
        return figures;
    }
}
