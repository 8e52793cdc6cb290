package org.marktwice.quiz;

import org.marktwice.picture.BoardPicture;
import org.marktwice.picture.Pointed;
import org.marktwice.timber.Surface;

class StockBearsTest extends MakerLaws {
    @Override
    Kind kind() {
        return Kind.STOCK_BEARS;
    }

    /** Stock and fence bear on a marked surface that adjoins the one worked on. */
    @Override
    boolean isRight(Question question, Offer offer) {
        BoardPicture picture = board(question.picture());
        Surface worked = ((Pointed.AtSurface) java.util.Objects.requireNonNull(picture.pointed())).surface();
        Surface on = surface(offer);
        boolean marked = picture.state().marks().stream().anyMatch(m -> m.on() == on);
        return marked && on.adjoins(worked) && question.given().endsWith(worked.spoken() + ", which is outlined.");
    }
}
