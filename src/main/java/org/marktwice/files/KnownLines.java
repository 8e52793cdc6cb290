package org.marktwice.files;

import java.lang.invoke.MethodHandles;
import java.lang.invoke.VarHandle;
import java.nio.ByteOrder;
import java.util.Arrays;
import org.jspecify.annotations.Nullable;
import org.marktwice.bench.Action;
import org.marktwice.bench.Kept;

/**
 * Lines of attempts that were read before. Learners at one exercise write the same lines over and over but for their
 * times, so that a line is known by what stands behind its time, byte for byte, and isn't read again. Only what was read
 * without fault is kept, so that a damaged line is always refused by its reader. Safe for several threads.
 */
public final class KnownLines {
    private static final byte[] BEFORE = {'{', '"', 't', '"', ':'};
    private static final int MOST = 16_384;
    private static final VarHandle LONGS = MethodHandles.byteArrayViewVarHandle(long[].class, ByteOrder.LITTLE_ENDIAN);

    private final Kept<Rest, ActionReader.Timed> known = new Kept<>(MOST);

    /** What stands behind a line's time. */
    private static final class Rest {
        private final byte[] bytes;
        private final int from;
        private final int to;
        private final int hash;

        Rest(byte[] bytes, int from, int to) {
            this.bytes = bytes;
            this.from = from;
            this.to = to;
            this.hash = hash(bytes, from, to);
        }

        private static int hash(byte[] bytes, int from, int to) {
            long sum = to - from;
            int i = from;
            for (; i + Long.BYTES <= to; i += Long.BYTES) {
                sum = (Long.rotateLeft(sum, 23) ^ (long) LONGS.get(bytes, i)) * 0x9E3779B97F4A7C15L;
            }
            for (; i < to; i++) sum = (Long.rotateLeft(sum, 9) ^ bytes[i]) * 0x9E3779B97F4A7C15L;
            return (int) (sum >>> 32);
        }

        /** The same, in an array of its own. */
        Rest copied() {
            byte[] own = Arrays.copyOfRange(bytes, from, to);
            return new Rest(own, 0, own.length);
        }

        @Override
        public boolean equals(@Nullable Object other) {
            return other instanceof Rest o && hash == o.hash && Arrays.equals(bytes, from, to, o.bytes, o.from, o.to);
        }

        @Override
        public int hashCode() {
            return hash;
        }
    }

    /** The action that a line holds; null where such a line was not read before, or is laid out otherwise. */
    @Nullable
    Action find(byte[] bytes, int from, int to) {
        int comma = endOfTime(bytes, from, to);
        if (comma < 0) return null;
        ActionReader.Timed what = known.find(new Rest(bytes, comma, to));
        if (what == null) return null;
        double t = time(bytes, from + BEFORE.length, comma);
        return Range.TIME.contains(t) ? what.at(t) : null;
    }

    /** Keeps what such a line was read as. */
    void keep(byte[] bytes, int from, int to, ActionReader.Timed what) {
        int comma = known.isFull() ? -1 : endOfTime(bytes, from, to);
        if (comma >= 0) known.keep(new Rest(bytes, comma, to).copied(), what);
    }

    /** Where the comma stands after a time that begins the line and is written plainly; −1 where it is otherwise. */
    private static int endOfTime(byte[] bytes, int from, int to) {
        int digits = from + BEFORE.length;
        if (digits >= to || !Arrays.equals(bytes, from, digits, BEFORE, 0, BEFORE.length)) return -1;
        int point = -1;
        int at = digits;
        for (; at < to && bytes[at] != ','; at++) {
            if (bytes[at] == '.' && point < 0 && at > digits) point = at;
            else if (bytes[at] < '0' || bytes[at] > '9') return -1;
        }
        boolean none = at == to || at == digits || point == at - 1 || at - digits > JsonScan.EXACT_DIGITS;
        boolean leadingZero = !none && bytes[digits] == '0' && at - digits > 1 && point != digits + 1;
        return none || leadingZero ? -1 : at;
    }

    /** Of digits that are known to be plain; both whole numbers are exact, so that their quotient is the nearest double. */
    private static double time(byte[] bytes, int from, int to) {
        long digits = 0;
        int decimals = 0;
        for (int i = from; i < to; i++) {
            if (bytes[i] == '.') decimals = to - i - 1;
            else digits = digits * 10 + (bytes[i] - '0');
        }
        return digits / JsonScan.TENS[decimals];
    }
}
