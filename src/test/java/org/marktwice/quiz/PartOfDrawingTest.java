package org.marktwice.quiz;

import java.util.List;
import org.joml.Vector3d;
import org.marktwice.bench.Mark;
import org.marktwice.drawing.Part;
import org.marktwice.drawing.Placing;
import org.marktwice.drawing.Trim;
import org.marktwice.drawing.Turn;
import org.marktwice.picture.BoardPicture;
import org.marktwice.timber.Box;

class PartOfDrawingTest extends MakerLaws {
    @Override
    Kind kind() {
        return Kind.PART_OF_DRAWING;
    }

    /** Laid in the part with its marks as drawn, the board has just the cuts that are laid on it. */
    @Override
    boolean isRight(Question question, Offer offer) {
        BoardPicture picture = board(question.picture());
        Picture.Job job =
                (Picture.Job) ((Picture.Beside) question.picture()).pictures().get(0);
        String id = ((Offer.Place.OnPart) java.util.Objects.requireNonNull(offer.place())).part();
        Part part = job.drawing().part(id).orElseThrow();
        if (!part.size().equals(picture.board().size())) return false;
        Mark side = mark(picture, Mark.Kind.FACE_SIDE);
        Mark edge = mark(picture, Mark.Kind.FACE_EDGE);
        Turn turn = Turn.facing(
                        side.on(),
                        part.faceSide().get(0),
                        edge.on(),
                        part.faceEdge().get(0))
                .orElseThrow();
        Placing placing = new Placing(job.drawing(), part, picture.board(), turn, Trim.ALL_OFF_END_2);
        List<Box> would =
                placing.cuts().stream().flatMap(c -> c.boxes().stream()).toList();
        List<Box> laid =
                picture.cuts().stream().flatMap(c -> c.cut().boxes().stream()).toList();
        return would.size() == laid.size()
                && would.stream().allMatch(w -> laid.stream().anyMatch(l -> isSame(w, l)));
    }

    private static boolean isSame(Box one, Box other) {
        return one.min().distance(new Vector3d(other.min())) < 0.01
                && one.max().distance(new Vector3d(other.max())) < 0.01;
    }
}
