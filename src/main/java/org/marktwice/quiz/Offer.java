package org.marktwice.quiz;

import org.jspecify.annotations.Nullable;
import org.marktwice.timber.Surface;

/**
 * One answer that can be given.
 *
 * @param text in words
 * @param because why it is wrong, and which slip leads to it; of the right one: why it is right, in a few words
 * @param drawn how it is drawn, where the answers are pictures to choose from
 * @param place where on the question's picture it is pointed at
 * @param figure its value, where the answer is a number
 */
public record Offer(
        String text,
        String because,
        @Nullable Picture drawn,
        @Nullable Place place,
        double figure) {

    /** Something on a picture to point at. */
    public sealed interface Place {
        record OnSurface(Surface surface) implements Place {}

        record OnPart(String part) implements Place {}
    }

    static Offer words(String text, String because) {
        return new Offer(text, because, null, null, 0);
    }

    static Offer drawn(String text, String because, Picture picture) {
        return new Offer(text, because, picture, null, 0);
    }

    static Offer at(Surface surface, String because) {
        return new Offer(surface.spoken(), because, null, new Place.OnSurface(surface), 0);
    }

    static Offer part(String id, String name, String because) {
        return new Offer(name, because, null, new Place.OnPart(id), 0);
    }

    static Offer figure(double value, String unit, String because) {
        return new Offer(Say.number(value) + " " + unit, because, null, null, value);
    }
}
