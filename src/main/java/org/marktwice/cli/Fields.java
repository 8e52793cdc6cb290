package org.marktwice.cli;

import java.util.LinkedHashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.marktwice.drawing.Placing;
import org.marktwice.timber.Surface;

/** The fields of a JSON answer, in order. */
final class Fields {
    private final Map<String, @Nullable Object> fields = new LinkedHashMap<>();

    static Fields with(String name, Object value) {
        return new Fields().and(name, value);
    }

    Fields and(String name, Object value) {
        fields.put(name, value);
        return this;
    }

    /** Left out where there is none. */
    Fields maybe(String name, @Nullable Object value) {
        if (value != null) fields.put(name, value);
        return this;
    }

    /** There in any case, null where there is none. */
    Fields orNull(String name, @Nullable Object value) {
        fields.put(name, value);
        return this;
    }

    Map<String, @Nullable Object> map() {
        return fields;
    }

    /** Where face-1 and edge-1 look. */
    static Map<String, @Nullable Object> facing(Placing placing) {
        return with("face-1", placing.turn().of(Surface.FACE_1).id())
                .and("edge-1", placing.turn().of(Surface.EDGE_1).id())
                .map();
    }
}
