package org.marktwice.cli;

import java.util.Locale;
import org.marktwice.print.Paper;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** {@code a4} or {@code letter}, in capitals or not. */
final class PaperConverter implements ITypeConverter<Paper> {
    @Override
    public Paper convert(String text) {
        for (Paper paper : Paper.values()) if (paper.id().equals(text.toLowerCase(Locale.ROOT))) return paper;
        throw new TypeConversionException("expected a4 or letter, found \"" + text + "\"");
    }
}
