package org.marktwice.bench;

import org.marktwice.timber.Arris;
import org.marktwice.timber.Surface;

/**
 * A face mark in pencil.
 *
 * @param towards the adjoining surface whose arris the mark points at
 * @param step the action that made it
 */
public record Mark(Kind kind, Surface on, Surface towards, int step) {
    /** Face side (a loop with a tail) or face edge (a V). */
    public enum Kind {
        FACE_SIDE,
        FACE_EDGE;

        public String spoken() {
            return this == FACE_SIDE ? "face side" : "face edge";
        }
    }

    public Arris arris() {
        return new Arris(on, towards);
    }
}
