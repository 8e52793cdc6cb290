package org.marktwice.view.bench;

import org.marktwice.timber.SurfacePoint;

/**
 * A few words in a small box beside a place on the board.
 *
 * @param at the place
 * @param lead the line that matters, after its sign
 * @param more a quieter second line; empty where there is none
 */
public record Callout(SurfacePoint at, Note.Tone tone, String lead, String more) {}
