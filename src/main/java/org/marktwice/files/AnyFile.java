package org.marktwice.files;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.marktwice.scenario.Draft;
import org.marktwice.scenario.Scenario;

/** A file of any kind that the program has, told by what it says it is. */
public sealed interface AnyFile {
    record OfScenario(Scenario scenario) implements AnyFile {}

    record OfAttempt(AttemptFile attempt) implements AnyFile {}

    record OfBoard(BoardFile board) implements AnyFile {}

    record OfDraft(Draft draft) implements AnyFile {}

    record OfRack(RackFile rack) implements AnyFile {}

    record OfRecord(RecordFile record) implements AnyFile {}

    record OfQuiz(QuizFile quiz) implements AnyFile {}

    static AnyFile read(Path file) throws FileRefused {
        String name = file.toString();
        byte[] bytes = Bytes.read(file);
        if (name.toLowerCase(Locale.ROOT).endsWith(".csv")) return table(name, bytes);
        return switch (kind(name, bytes)) {
            case SCENARIO -> new OfScenario(ScenarioFile.read(name, bytes));
            case ATTEMPT -> new OfAttempt(AttemptFile.read(name, bytes));
            case BOARD -> new OfBoard(BoardFile.read(name, bytes));
            case RECORD -> new OfRecord(RecordFile.read(name, bytes));
            case QUIZ -> new OfQuiz(QuizFile.read(name, bytes));
            case RACK -> new OfRack(RackFile.read(name, bytes));
            case DRAFT -> new OfDraft(DraftFile.read(name, bytes));
        };
    }

    /** A table is told by the titles of its columns, whatever it is called. */
    private static AnyFile table(String name, byte[] bytes) throws FileRefused {
        List<Tables.Line> lines = Tables.read(name, bytes);
        List<String> head = new ArrayList<>();
        for (int i = 0; !lines.isEmpty() && i < lines.get(0).size(); i++) {
            head.add(lines.get(0).cell(i).toLowerCase(Locale.ROOT));
        }
        String measure = "across|deep|high|(place|diagonal|gap)-.+";
        Format named = byName(name);
        if (named == Format.RACK || head.contains("board")) return new OfRack(RackFile.read(name, bytes));
        boolean record = head.indexOf("learner") == 0 && head.stream().anyMatch(t -> t.matches(measure));
        if (named == Format.RECORD || record) return new OfRecord(RecordFile.read(name, bytes));
        String reason =
                "expected the table of a rack (with a column \"board\") or of finished jobs (\"learner\", and then"
                        + " measures); no other is checked";
        throw new FileRefused(name, 1, 0, "", reason);
    }

    /** By the word in {@code format}; a board may go without. What says nothing goes by its name. */
    static Format kind(String name, byte[] bytes) {
        int start = Bytes.bomLength(bytes);
        try (JsonParser parser = JsonTree.FACTORY.createParser(bytes, start, bytes.length - start)) {
            boolean size = false;
            if (parser.nextToken() == JsonToken.START_OBJECT) {
                while (parser.nextToken() == JsonToken.FIELD_NAME) {
                    String field = parser.currentName();
                    parser.nextToken();
                    if (field.equals("format")) return named(parser.getText(), name);
                    size |= field.equals("size");
                    parser.skipChildren();
                }
            }
            if (size) return Format.BOARD;
        } catch (IOException e) {
            // the reader of the kind that its name says will tell what is wrong
        }
        return byName(name);
    }

    private static Format named(String word, String name) {
        for (Format format : Format.values()) {
            if (word.startsWith(format.word() + "/")) return format;
        }
        return byName(name);
    }

    private static Format byName(String name) {
        if (name.endsWith(QuizFile.ENDING)) return Format.QUIZ;
        if (name.endsWith(".jsonl")) return Format.ATTEMPT;
        if (name.endsWith(DraftFile.ENDING)) return Format.DRAFT;
        if (name.endsWith(".rack.json") || name.endsWith(".rack.csv")) return Format.RACK;
        if (name.endsWith(".record.json") || name.endsWith(".record.csv")) return Format.RECORD;
        return name.endsWith(".board.json") ? Format.BOARD : Format.SCENARIO;
    }
}
