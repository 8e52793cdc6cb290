package org.marktwice.view;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.marktwice.bench.Action;
import org.marktwice.bench.Attempt;
import org.marktwice.bench.CannotDo;
import org.marktwice.bench.Mark;
import org.marktwice.timber.Surface;

class SessionTest {
    private static final Attempt NEW = new Attempt("one-board", "", "P07", "2026-01-12T09:30:00Z", List.of());

    private final List<Action> disk = new ArrayList<>();
    private long now;
    private boolean full;

    private Session session(Attempt attempt) throws CannotDo {
        Session.Sink sink = action -> {
            if (full) throw new IOException("no space left");
            disk.add(action);
        };
        return Session.of(Jobs.oneBoard(), attempt, sink, () -> now);
    }

    private static Action faceSide(double t) {
        return new Action.FaceSide(t, "A", Surface.FACE_1, Surface.EDGE_1);
    }

    private static Action faceEdge(double t) {
        return new Action.FaceEdge(t, "A", Surface.EDGE_1, Surface.FACE_1);
    }

    private void seconds(double later) {
        now += (long) (later * TimeUnit.SECONDS.toNanos(1));
    }

    @Test
    void anActionIsOnTheBenchOnDiskAndSeen() throws CannotDo {
        Session session = session(NEW);
        List<Integer> seen = new ArrayList<>();
        session.addListener(() -> seen.add(session.bench().steps()));
        seconds(4.12);
        session.perform(SessionTest::faceSide);

        assertThat(session.bench().board("A").marks())
                .containsExactly(new Mark(Mark.Kind.FACE_SIDE, Surface.FACE_1, Surface.EDGE_1, 1));
        assertThat(disk).containsExactly(faceSide(4.1));
        assertThat(session.attempt().actions()).isEqualTo(disk);
        assertThat(session.situation().bench()).isSameAs(session.bench());
        assertThat(seen).containsExactly(1);
    }

    @Test
    void whatCannotBeDoneLeavesNoTrace() throws CannotDo {
        Session session = session(NEW);
        List<String> seen = new ArrayList<>();
        session.addListener(() -> seen.add("!"));

        assertThatThrownBy(() -> session.perform(t -> new Action.RubOut(t, 3))).isInstanceOf(CannotDo.class);
        assertThat(session.bench().steps()).isZero();
        assertThat(session.attempt()).isEqualTo(NEW);
        assertThat(disk).isEmpty();
        assertThat(seen).isEmpty();
    }

    @Test
    void onAFullDiskNothingIsLostAndItIsSaid() throws CannotDo {
        Session session = session(NEW);
        full = true;
        session.perform(SessionTest::faceSide);
        assertThat(session.bench().steps()).isEqualTo(1);
        assertThat(session.trouble()).hasValueSatisfying(t -> assertThat(t).contains("no space left"));

        full = false;
        session.perform(SessionTest::faceEdge);
        assertThat(session.trouble()).isEmpty();
        assertThat(disk).isEqualTo(session.attempt().actions()).hasSize(2);
    }

    @Test
    void timeRunsOnFromTheLastActionAndNeverBack() throws CannotDo {
        Session session = session(NEW.with(faceSide(33.3)));
        session.perform(SessionTest::faceEdge);
        seconds(2);
        session.undo();
        now = -TimeUnit.HOURS.toNanos(1);
        session.redo();

        assertThat(session.attempt().actions()).extracting(Action::t).containsExactly(33.3, 33.3, 35.3, 35.3);
    }

    @Test
    void undoAndRedoAreActionsToo() throws CannotDo {
        Session session = session(NEW);
        assertThat(session.canUndo()).isFalse();
        session.perform(SessionTest::faceSide);
        assertThat(session.canUndo()).isTrue();
        session.undo();
        assertThat(session.bench().board("A").marks()).isEmpty();
        assertThat(session.canRedo()).isTrue();
        session.redo();
        assertThat(session.bench().board("A").marks()).hasSize(1);
        assertThat(disk).hasSize(3);
    }
}
