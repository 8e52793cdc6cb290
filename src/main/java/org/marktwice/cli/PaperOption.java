package org.marktwice.cli;

import org.marktwice.print.Paper;
import picocli.CommandLine.Option;

/** The paper that is printed on. */
final class PaperOption {
    @Option(
            names = "--paper",
            paramLabel = "PAPER",
            converter = PaperConverter.class,
            description = "a4 (if nothing is said) or letter")
    private Paper paper = Paper.A4;

    Paper paper() {
        return paper;
    }
}
