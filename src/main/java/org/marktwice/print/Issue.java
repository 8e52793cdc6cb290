package org.marktwice.print;

/**
 * Who issues a drawing, and when: the fields of a title block after ISO 7200 that only its maker knows. What is empty is left
 * blank on the sheet, to be filled in by hand.
 *
 * @param owner the school or workshop
 * @param by who drew it
 * @param date of issue, as it is to be written; never taken from a clock here, so that the same call gives the same sheet
 */
public record Issue(String owner, String by, String date) {
    /** All blank. */
    public static final Issue BLANK = new Issue("", "", "");

    public Issue {
        owner = owner.strip();
        by = by.strip();
        date = date.strip();
    }
}
