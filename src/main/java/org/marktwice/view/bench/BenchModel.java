package org.marktwice.view.bench;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.DoubleFunction;
import org.jspecify.annotations.Nullable;
import org.marktwice.bench.Action;
import org.marktwice.bench.BoardState;
import org.marktwice.bench.CannotDo;
import org.marktwice.bench.Marker;
import org.marktwice.drawing.Cut;
import org.marktwice.drawing.Part;
import org.marktwice.drawing.Placing;
import org.marktwice.fit.TrueLine;
import org.marktwice.fit.TrueLines;
import org.marktwice.picture.Lie;
import org.marktwice.scenario.Practice;
import org.marktwice.scenario.Stage;
import org.marktwice.timber.Surface;
import org.marktwice.timber.SurfacePoint;
import org.marktwice.view.Session;

/**
 * What is on the screen besides the attempt itself: which board lies there and how, the tool in hand, what is pointed at,
 * and what was last said. To be used from the event thread alone.
 */
public final class BenchModel {
    private static final Note BEGIN =
            Note.plain("Choose a tool by its word or its key, then point at the board. F1 lists every key.");

    private final Session session;
    private final List<Runnable> listeners = new ArrayList<>();
    private final Map<String, Lie> lies = new HashMap<>();
    private String boardId;
    private @Nullable BenchTool tool;
    private @Nullable TurnTrial trial;
    private @Nullable Aim aim;
    private SurfacePoint caret;
    private boolean byKeys;
    private boolean onUnrolled;
    private Note said = Note.SILENT;
    private @Nullable Callout callout;
    private Marker marker = Marker.KNIFE;
    private ShapeShown shape = ShapeShown.AS_IT_IS;

    public BenchModel(Session session) {
        this.session = session;
        this.boardId = session.scenario().boards().get(0).id();
        this.caret = Caret.middle(board().board(), lie().up());
    }

    public Session session() {
        return session;
    }

    public void addListener(Runnable listener) {
        listeners.add(listener);
    }

    void changed() {
        for (Runnable listener : List.copyOf(listeners)) listener.run();
    }

    // The board on the bench

    public BoardState board() {
        return session.bench().board(boardId);
    }

    public void select(String id) {
        if (id.equals(boardId)) return;
        boardId = id;
        callout = null;
        said = Note.SILENT;
        aim = null;
        caret = Caret.middle(board().board(), lie().up());
        BenchTool held = tool;
        if (held != null) held.takenUp();
        changed();
    }

    /** The next board on the rack (+1), or the one before (−1). */
    public void selectNext(int step) {
        List<BoardState> rack = session.bench().boards();
        int at = rack.indexOf(board());
        select(rack.get(Math.floorMod(at + step, rack.size())).board().id());
    }

    /** How the board lies before the learner: as it was left, else as it was settled in the job, else face 1 up. */
    public Lie lie() {
        TurnTrial trying = trial;
        if (trying != null) return Lie.of(trying.turn(), trying.part());
        Lie left = lies.get(boardId);
        if (left != null) return left;
        return session.bench()
                .placing(board())
                .map(p -> Lie.of(p.turn(), p.part()))
                .orElse(Lie.FIRST);
    }

    public void layAs(Lie lie) {
        lies.put(boardId, lie);
        changed();
    }

    /** Rolls the board, where needed, so that a surface can be seen in the upper view. */
    public void show(Surface surface) {
        if (trial == null && !lie().shows(surface)) layAs(lie().showing(surface));
    }

    /** The part that the board is named as, unless it is set aside. */
    public Optional<Part> part() {
        return session.situation().partOf(board());
    }

    /** The board in the job: as it is being tried, else as it was settled while it still lies so. */
    public Optional<Placing> placing() {
        TurnTrial trying = trial;
        if (trying != null) return Optional.of(trying.placing(session.scenario().drawing(), board().board()));
        return session.bench().placing(board()).filter(p -> board().setAside().isEmpty());
    }

    /** Whether the board lies before the learner as it is settled, or tried, in the job. */
    public boolean liesAsPlaced() {
        return placing().map(p -> Lie.of(p.turn(), p.part()).equals(lie())).orElse(false);
    }

    public boolean grants(Practice.Aid aid) {
        return session.scenario().grants(aid);
    }

    /** The cuts that lie on the board as a ghost; none where the scenario doesn't grant it. */
    public List<Cut> shownCuts() {
        if (!grants(Practice.Aid.CUT_GHOST)) return List.of();
        return placing().map(Placing::cuts).orElse(List.of());
    }

    /** What is struck on the board, as it really lies. */
    List<TrueLine> lines() {
        return TrueLines.of(session.bench(), board()).all();
    }

    // The tool in hand

    /** Whether joints are set out in this exercise. */
    boolean setsOut() {
        return session.scenario().stages().contains(Stage.SETTING_OUT);
    }

    /** What lines are struck with. */
    Marker marker() {
        return marker;
    }

    void takeOtherMarker() {
        marker = marker == Marker.KNIFE ? Marker.PENCIL : Marker.KNIFE;
        BenchTool held = tool;
        if (held != null && said.words().isEmpty()) said = Note.plain(held.hint());
        changed();
    }

    public Optional<BenchTool> tool() {
        return Optional.ofNullable(tool);
    }

    public void take(BenchTool next) {
        letGo();
        tool = next;
        callout = null;
        said = Note.SILENT;
        next.takenUp();
        if (tool == next && said.words().isEmpty()) said = Note.plain(next.hint());
        changed();
    }

    /** Lays the tool down. */
    public void putDown() {
        letGo();
        callout = null;
        said = Note.SILENT;
        changed();
    }

    /** What tools read is the board as it is now: the other room is left. */
    private void letGo() {
        shape = shape.in(null);
        tool = null;
        trial = null;
        byKeys = false;
    }

    Optional<TurnTrial> trial() {
        return Optional.ofNullable(trial);
    }

    void tryTurn(@Nullable TurnTrial next) {
        trial = next;
        if (next != null) lies.remove(boardId);
    }

    // The board's true shape

    /** How the views show the board's shape. */
    public ShapeShown shape() {
        return shape;
    }

    public void show(ShapeShown next) {
        if (next.room() != null && tool != null) letGo();
        shape = next;
        changed();
    }

    // Pointing

    public Optional<Aim> aim() {
        return Optional.ofNullable(aim);
    }

    /** The pointer moved over the board, or off it (null). */
    public void point(@Nullable Aim next) {
        aim = next;
        if (next != null) byKeys = false;
        BenchTool held = tool;
        if (held != null) held.point(next);
        changed();
    }

    /** Which of the two views is being worked on: what is said about a place stands in that one. */
    void workOn(boolean unrolled) {
        onUnrolled = unrolled;
    }

    boolean worksOnUnrolled() {
        return onUnrolled;
    }

    SurfacePoint caret() {
        return caret;
    }

    /** Whether the last thing done with the tool in hand was done by keys, so that the caret is shown. */
    boolean byKeys() {
        return byKeys;
    }

    void moveCaret(SurfacePoint to) {
        caret = to;
        byKeys = true;
        show(to.surface());
    }

    // Saying

    public Note said() {
        return said;
    }

    public Optional<Callout> callout() {
        return Optional.ofNullable(callout);
    }

    void say(Note note) {
        said = note;
        callout = null;
        changed();
    }

    /** Says why something can't be done, at the place where it was tried. */
    void refuse(SurfacePoint where, String why) {
        said = Note.refused(why);
        callout = new Callout(where, Note.Tone.REFUSED, why, "");
        changed();
    }

    void show(Callout next, Note line) {
        callout = next;
        said = line;
        changed();
    }

    /** What the bottom line reads: what was said last, or what is pointed at. */
    public Note line() {
        if (!said.words().isEmpty()) return said;
        return aim().map(a -> Note.plain(Words.capital(Words.pointed(board(), a))))
                .orElse(session.bench().steps() == 0 ? BEGIN : Note.SILENT);
    }

    /** Forgets what was said, so that the line names what is pointed at again. */
    void hush() {
        if (said.words().isEmpty() && callout == null) return;
        said = Note.SILENT;
        callout = null;
    }

    /**
     * Does an action, and says what came of it as far as the scenario lets the learner know.
     *
     * @param where the place that it was tried at
     * @return whether it was done
     */
    boolean perform(SurfacePoint where, DoubleFunction<Action> action) {
        try {
            session.perform(action);
        } catch (CannotDo e) {
            refuse(where, e.why());
            return false;
        }
        said = Note.SILENT;
        callout = null;
        Guidance.after(session, where).ifPresent(told -> show(told.callout(), told.line()));
        changed();
        return true;
    }

    /** As {@link #perform(SurfacePoint, DoubleFunction)}; where no guidance has more to say, says what was done. */
    boolean perform(SurfacePoint where, DoubleFunction<Action> action, String did) {
        boolean done = perform(where, action);
        if (done && callout == null) say(Note.read(Words.capital(did)));
        return done;
    }

    public void undo() {
        steps(Session::undo);
    }

    public void redo() {
        steps(Session::redo);
    }

    private interface Step {
        void take(Session session) throws CannotDo;
    }

    private void steps(Step step) {
        try {
            step.take(session);
            said = Note.SILENT;
            callout = null;
            BenchTool held = tool;
            if (held != null) held.takenUp();
            changed();
        } catch (CannotDo e) {
            say(Note.refused(e.why()));
        }
    }
}
