package org.marktwice.view;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.event.KeyEvent;
import java.awt.geom.Point2D;
import java.util.List;
import org.assertj.core.groups.Tuple;
import org.junit.jupiter.api.Test;
import org.marktwice.bench.Action;
import org.marktwice.bench.Mark;
import org.marktwice.picture.FaceMarks;
import org.marktwice.picture.SurfaceFrame;
import org.marktwice.rulebook.Faulty;
import org.marktwice.rulebook.Slip;
import org.marktwice.rulebook.SlipWords;
import org.marktwice.timber.Surface;
import org.marktwice.timber.SurfacePoint;

/**
 * Another hand's work taken over from the start page, its slip named and mended, and the whole handed in: the face edge
 * stands on the sawn edge of the rail.
 */
class FindTheFaultTest extends BeforeAWindow {
    private static List<Mark> marks(Session session) {
        return AtTheWindow.onScreen(() -> session.bench().board("A").marks());
    }

    private static List<String> named(Session session) {
        return AtTheWindow.onScreen(() -> session.bench().faults().stream()
                .map(f -> f.board() + " " + f.slip())
                .toList());
    }

    /** Another hand's work, whose one slip is known. */
    private Session takenOver() {
        Session session = at.session();
        int seed = session.attempt().actions().stream()
                .filter(Action.TakeOver.class::isInstance)
                .map(a -> ((Action.TakeOver) a).seed())
                .findFirst()
                .orElseThrow();
        Faulty other = Faulty.of(session.scenario(), seed);
        assertThat(session.attempt().actions()).startsWith(other.given().toArray(new Action[0]));
        assertThat(other.slips()).singleElement().satisfies(s -> {
            assertThat(s.slip()).isEqualTo(Slip.UNSOUND_SURFACE_MARKED);
            assertThat(s.board()).isEqualTo("A");
        });
        assertThat(at.text("notice")).startsWith("Another hand did this work, with a slip in it.");
        return session;
    }

    /** A place on the pencil of a mark, near where it touches its arris. */
    private static SurfacePoint on(Session session, Mark mark) {
        var board = session.bench().board("A").board();
        Point2D touch = FaceMarks.touch(mark, marks(session), board);
        SurfacePoint there = SurfaceFrame.of(mark.on(), board).toSurface(touch);
        double in = mark.towards().sign() > 0 ? -2 : 2;
        return mark.towards().axis() == mark.on().vAxis()
                ? new SurfacePoint(mark.on(), there.u(), there.v() + in)
                : new SurfacePoint(mark.on(), there.u() + in, there.v());
    }

    private static void mended(Session session) {
        assertThat(marks(session))
                .extracting(Mark::kind, Mark::on, Mark::towards)
                .containsExactlyInAnyOrder(
                        Tuple.tuple(Mark.Kind.FACE_SIDE, Surface.FACE_1, Surface.EDGE_1),
                        Tuple.tuple(Mark.Kind.FACE_EDGE, Surface.EDGE_1, Surface.FACE_1));
    }

    private static double lost(Session session) {
        return AtTheWindow.onScreen(() -> {
            var sheet = org.marktwice.rulebook.RuleBook.judge(session.situation());
            return sheet.outOf() - sheet.marks();
        });
    }

    @Test
    void byMouse() {
        at.exercise("Peg rail");
        at.click("find-fault");
        Session session = takenOver();
        at.click("name-slip");
        at.pick("choose-slip-unsound-surface-marked");
        assertThat(named(session)).containsExactly("A unsound-surface-marked");

        at.tool("rub-out");
        for (Mark mark : marks(session)) {
            SurfacePoint there = on(session, mark);
            at.clickBoard(there.surface(), there.u(), there.v());
        }
        assertThat(marks(session)).isEmpty();
        at.tool("straight-edge");
        at.clickBoard(Surface.EDGE_1, 210, 10);
        at.tool("try-square");
        at.clickBoard(Surface.EDGE_1, 210, 10);
        at.tool("face-side");
        at.clickBoard(Surface.FACE_1, 210, 20);
        at.tool("face-edge");
        at.clickBoard(Surface.EDGE_1, 210, 16);
        mended(session);

        at.click("hand-in");
        at.click("skip");
        assertThat(lost(session)).isZero();
        at.click("finding-fault-named-A");
        assertThat(at.readable()).anyMatch(t -> t.startsWith("Rightly named on board A"));
        at.click("replay");
        at.click("step-on");
        assertThat(at.text("step")).startsWith("ANOTHER HAND");
    }

    @Test
    void byKeys() {
        at.ctrl(KeyEvent.VK_F);
        Session session = takenOver();
        at.key(KeyEvent.VK_F7);
        at.key(KeyEvent.VK_1 + SlipWords.toBeNamed().indexOf(Slip.UNSOUND_SURFACE_MARKED));
        assertThat(named(session)).containsExactly("A unsound-surface-marked");

        at.keys(KeyEvent.VK_R, KeyEvent.VK_RIGHT, KeyEvent.VK_ENTER, KeyEvent.VK_RIGHT, KeyEvent.VK_ENTER);
        assertThat(marks(session)).isEmpty();
        at.keys(KeyEvent.VK_F, KeyEvent.VK_DOWN, KeyEvent.VK_DOWN);
        at.key(KeyEvent.VK_DOWN, KeyEvent.VK_SHIFT);
        at.key(KeyEvent.VK_ENTER);
        at.keys(KeyEvent.VK_E, KeyEvent.VK_DOWN, KeyEvent.VK_DOWN, KeyEvent.VK_DOWN);
        at.key(KeyEvent.VK_UP, KeyEvent.VK_SHIFT);
        at.key(KeyEvent.VK_ENTER);
        mended(session);

        at.ctrl(KeyEvent.VK_ENTER);
        at.ctrl(KeyEvent.VK_K);
        assertThat(at.title()).isEqualTo("Peg rail: mark sheet");
        assertThat(at.showing("finding-fault-named-A")).isTrue();
        assertThat(AtTheWindow.onScreen(() -> session.situation().bench().handedIn()))
                .isTrue();
    }

    @Test
    void aSlipThatWasNotMadeIsToldAndSoIsTheOneMissed() {
        at.exercise("Peg rail");
        at.click("find-fault");
        Session session = takenOver();
        at.key(KeyEvent.VK_F7);
        at.keys(KeyEvent.VK_DOWN, KeyEvent.VK_ENTER);
        assertThat(named(session)).containsExactly("A mark-to-wrong-arris");
        at.click("hand-in");
        at.click("skip");
        assertThat(lost(session)).isPositive();
        List<String> told = told(session);
        assertThat(at.readable()).anyMatch(told::contains);
        assertThat(told)
                .anyMatch(t -> t.startsWith("Not named, on board A: marked on a surface not proved"))
                .anyMatch(t ->
                        t.equals("Named on board A: a mark points to the wrong arris. Nobody made that slip there."));
    }

    private static List<String> told(Session session) {
        return org.marktwice.feedback.SheetModel.of(session.situation()).groups().stream()
                .flatMap(g -> g.lines().stream())
                .filter(l -> l.finding().rule().equals("fault-named"))
                .map(l -> l.says())
                .toList();
    }

    @Test
    void itCountsForNoBestMark() {
        at.click("find-fault");
        at.click("hand-in");
        at.click("skip");
        at.click("exercises-button");
        at.until("tried", () -> at.showing("find-fault"));
        assertThat(at.showing("best-sheet")).isFalse();
    }
}
