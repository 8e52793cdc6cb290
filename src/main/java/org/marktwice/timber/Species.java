package org.marktwice.timber;

/**
 * A species and its total shrinkage from green to oven-dry.
 *
 * @param id the name in files
 * @param name the name in a sentence
 * @param radial percent
 * @param tangential percent
 * @param source where the two figures were published
 */
public record Species(String id, String name, double radial, double tangential, String source) {}
