package org.marktwice.files;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class JsonScanTest {
    private static final Path SHIPPED = Path.of("scenarios");

    @Test
    void readsEveryShippedFileAsTheGeneralParserDoes() throws IOException, FileRefused {
        int plain = 0;
        List<String> texts = texts();
        for (String text : texts) {
            if (agrees(text)) plain++;
        }
        assertThat(texts).hasSizeGreaterThan(1000);
        assertThat(plain).as("texts of the plain kind").isGreaterThan(texts.size() * 9 / 10);
    }

    @Test
    void leavesAloneOrReadsAlikeWhateverIsSpoilt() throws IOException, FileRefused {
        SplittableRandom random = new SplittableRandom(41);
        List<String> texts = texts();
        String odd = "{}[],:\"\\ \n\t0123456789.-eE+truefalsn\u00e9\u0007";
        int read = 0;
        for (int i = 0; i < 20_000; i++) {
            StringBuilder text = new StringBuilder(texts.get(random.nextInt(texts.size())));
            if (text.length() > 3000) continue;
            for (int times = random.nextInt(3); times >= 0; times--) {
                int at = random.nextInt(text.length());
                char c = odd.charAt(random.nextInt(odd.length()));
                switch (random.nextInt(3)) {
                    case 0 -> text.setCharAt(at, c);
                    case 1 -> text.insert(at, c);
                    default -> text.deleteCharAt(at);
                }
                if (text.isEmpty()) text.append(c);
            }
            if (agrees(text.toString())) read++;
        }
        assertThat(read).isGreaterThan(1000);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "0",
                "-0",
                "-0.0",
                "10",
                "0.1",
                "123456789012345",
                "12345678.1234567",
                "0.00000000000001",
                "-17.25",
                "[]",
                "{}",
                " [ 1 , -2.5 ,\n true ]\n",
                "{\"a\":{\"b\":[null,false,\"\"]}}",
                "\"x\""
            })
    void readsPlainValues(String text) throws FileRefused {
        assertThat(agrees(text)).isTrue();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                " ",
                "01",
                "-",
                "1.",
                ".5",
                "1e3",
                "1234567890123456",
                "[1,]",
                "{\"a\":1,}",
                "{\"a\":1,\"a\":2}",
                "\"a\\n\"",
                "[1] x",
                "truex",
                "nul",
                "1\r",
                "{a:1}",
                "[1 2]",
                "{\"a\" 1}",
                "\"open"
            })
    void leavesTheRestToTheGeneralParser(String text) {
        assertThat(JsonScan.parse("f", text, 1)).isNull();
    }

    /** Whether the text is of the plain kind; fails where the two read it differently. */
    private static boolean agrees(String text) throws FileRefused {
        Json plain = JsonScan.parse("f", text, 7);
        if (plain == null) return false;
        assertThat(told(plain)).as(text).isEqualTo(told(JsonTree.parseAny("f", text, 7)));
        return true;
    }

    /** Everything about a value and what is in it, places included. */
    private static String told(Json json) {
        if (json instanceof Json.Obj object) {
            return object.members().entrySet().stream()
                    .map(e -> e.getKey()
                            + at(e.getValue().name())
                            + told(e.getValue().value()))
                    .collect(Collectors.joining(", ", at(json.place()) + "{", "}"));
        }
        if (json instanceof Json.Arr list) {
            return list.items().stream()
                    .map(JsonScanTest::told)
                    .collect(Collectors.joining(", ", at(json.place()) + "[", "]"));
        }
        return at(json.place()) + json.getClass().getSimpleName() + " " + json.found()
                + (json instanceof Json.Num n ? " " + Double.doubleToLongBits(n.value()) : "");
    }

    private static String at(Place place) {
        return " " + place.line() + ":" + place.column() + " " + place.path() + " ";
    }

    private static List<String> texts() throws IOException {
        List<Path> files;
        try (Stream<Path> all = Files.walk(SHIPPED)) {
            files = all.filter(f -> f.toString().contains(".json")).sorted().toList();
        }
        List<String> texts = new ArrayList<>();
        for (Path file : files) {
            String text = Files.readString(file);
            if (file.toString().endsWith(".jsonl"))
                texts.addAll(text.lines().filter(l -> !l.isBlank()).toList());
            else texts.add(text);
        }
        return texts;
    }
}
