package org.marktwice.fit;

/**
 * The tools that lines are struck with.
 *
 * @param square by how much the try-square's blade is out, millimetres a millimetre; + where the angle between blade and
 *     stock is more than 90
 */
public record Tools(double square) {
    public static final Tools TRUE = new Tools(0);
}
