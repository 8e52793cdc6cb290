package org.marktwice.timber;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.EnumSet;
import java.util.List;
import java.util.Objects;
import java.util.stream.StreamSupport;

/**
 * The ten boards of {@code published/reference-cases.json}: figures by an independent implementation in another
 * language (dense sampling and convex programming), see {@code published/SOURCES.md}.
 */
final class PublishedBoards {
    record Case(Board board, JsonNode cuts, JsonNode expect) {
        Box cut(String id) {
            for (JsonNode cut : cuts) {
                if (!cut.path("id").asText().equals(id)) continue;
                JsonNode from = cut.path("from");
                JsonNode to = cut.path("to");
                return Box.of(at(from, 0), at(from, 1), at(from, 2), at(to, 0), at(to, 1), at(to, 2));
            }
            throw new AssertionError("no cut " + id);
        }

        KnotBody knot(String id) {
            return board.bodies().stream()
                    .filter(b -> b.knot().id().equals(id))
                    .findFirst()
                    .orElseThrow();
        }

        private static double at(JsonNode point, int axis) {
            return point.path(axis).asDouble();
        }

        @Override
        public String toString() {
            return board.toString();
        }
    }

    private PublishedBoards() {}

    static List<Case> all() {
        try (InputStream in = PublishedBoards.class.getResourceAsStream("/published/reference-cases.json")) {
            JsonNode file = new ObjectMapper().readTree(Objects.requireNonNull(in));
            return StreamSupport.stream(file.path("cases").spliterator(), false)
                    .map(c -> new Case(board(c.path("board")), c.path("board").path("cuts"), c.path("expect")))
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Board board(JsonNode json) {
        JsonNode size = json.path("size");
        return Board.of(new Board.Facts(
                json.path("id").asText(),
                Stuff.TIMBER,
                SpeciesTable.byId(json.path("species").asText()).orElseThrow(),
                new Size(number(size, "length"), number(size, "width"), number(size, "thickness")),
                number(json, "planedAt"),
                number(json, "moisture"),
                EnumSet.of(Surface.FACE_1, Surface.FACE_2, Surface.EDGE_1, Surface.EDGE_2),
                new Pith(number(json.path("pith"), "y"), number(json.path("pith"), "z")),
                number(json, "ringWidth"),
                StreamSupport.stream(json.path("knots").spliterator(), false)
                        .map(PublishedBoards::knot)
                        .toList(),
                Shape.TRUE,
                1));
    }

    private static Knot knot(JsonNode json) {
        return new Knot(
                json.path("id").asText(),
                number(json, "x"),
                number(json, "azimuth"),
                number(json, "lean"),
                number(json, "halfAngle"),
                number(json, "maxRadius"),
                number(json, "deadFrom"),
                json.has("endsAt") ? number(json, "endsAt") : Double.POSITIVE_INFINITY);
    }

    static double number(JsonNode json, String field) {
        JsonNode value = json.path(field);
        if (!value.isNumber()) throw new AssertionError("no number " + field + " in " + json);
        return value.asDouble();
    }
}
