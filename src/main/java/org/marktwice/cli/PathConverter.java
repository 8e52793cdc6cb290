package org.marktwice.cli;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** The name of a file or a folder; a shell's empty variable is none. */
final class PathConverter implements ITypeConverter<Path> {
    @Override
    public Path convert(String value) {
        try {
            if (!value.isBlank()) return Path.of(value);
        } catch (InvalidPathException e) {
            // said below
        }
        throw new TypeConversionException("expected the name of a file or folder, found \"" + value + "\"");
    }
}
