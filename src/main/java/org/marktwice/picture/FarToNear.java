package org.marktwice.picture;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import org.marktwice.timber.Box;

/**
 * Orders disjoint boxes for painting in the isometric view from the left, the front and above: whatever hides another comes
 * after it.
 *
 * <p>Two disjoint boxes are parted along some axis, and if they overlap on the page, every axis that parts them agrees on
 * which is in front. A ring of boxes that each hide the next is cut up by each other's planes; on one grid no ring is left.
 */
final class FarToNear {
    private static final double TOUCH = 1e-6;

    /** A box and whatever it belongs to. */
    record Item<T>(Box box, T of) {}

    private FarToNear() {}

    static <T> List<Item<T>> sorted(List<Item<T>> items) {
        List<Item<T>> out = new ArrayList<>();
        List<Item<T>> ring = sort(items, out);
        if (ring.isEmpty()) return out;
        List<Item<T>> still = sort(cutUp(ring), out);
        out.addAll(still);
        return out;
    }

    /** Adds what can be sorted to {@code out} and returns what can't. */
    private static <T> List<Item<T>> sort(List<Item<T>> items, List<Item<T>> out) {
        int n = items.size();
        List<List<Integer>> hides = new ArrayList<>();
        int[] behind = new int[n];
        for (int i = 0; i < n; i++) hides.add(new ArrayList<>());
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n; j++) {
                if (i != j && inFront(items.get(i).box(), items.get(j).box())) {
                    hides.get(j).add(i);
                    behind[i]++;
                }
            }
        }
        Deque<Integer> free = new ArrayDeque<>();
        for (int i = 0; i < n; i++) if (behind[i] == 0) free.add(i);
        boolean[] done = new boolean[n];
        while (!free.isEmpty()) {
            int i = free.removeFirst();
            done[i] = true;
            out.add(items.get(i));
            for (int j : hides.get(i)) if (--behind[j] == 0) free.add(j);
        }
        List<Item<T>> left = new ArrayList<>();
        for (int i = 0; i < n; i++) if (!done[i]) left.add(items.get(i));
        return left;
    }

    /** Whether a hides some of b. */
    static boolean inFront(Box a, Box b) {
        boolean nearer = a.max(0) <= b.min(0) + TOUCH || a.max(1) <= b.min(1) + TOUCH || a.min(2) >= b.max(2) - TOUCH;
        return nearer && overlapOnPage(a, b);
    }

    /** The drawn outlines are hexagons with sides along the drawn axes, so three directions settle it. */
    private static boolean overlapOnPage(Box a, Box b) {
        return meet(a.min(0) - a.max(1), a.max(0) - a.min(1), b.min(0) - b.max(1), b.max(0) - b.min(1))
                && meet(a.min(0) + a.min(2), a.max(0) + a.max(2), b.min(0) + b.min(2), b.max(0) + b.max(2))
                && meet(a.min(1) + a.min(2), a.max(1) + a.max(2), b.min(1) + b.min(2), b.max(1) + b.max(2));
    }

    private static boolean meet(double a0, double a1, double b0, double b1) {
        return Math.min(a1, b1) - Math.max(a0, b0) > TOUCH;
    }

    private static <T> List<Item<T>> cutUp(List<Item<T>> items) {
        List<Box> boxes = items.stream().map(Item::box).toList();
        List<Item<T>> pieces = items;
        for (int axis = 0; axis < 3; axis++) {
            double[] planes = PartSolid.coordinates(boxes, axis);
            List<Item<T>> next = new ArrayList<>();
            for (Item<T> item : pieces) {
                double from = item.box().min(axis);
                for (double plane : planes) {
                    if (plane <= from + TOUCH || plane >= item.box().max(axis) - TOUCH) continue;
                    next.add(new Item<>(item.box().with(axis, from, plane), item.of()));
                    from = plane;
                }
                next.add(new Item<>(item.box().with(axis, from, item.box().max(axis)), item.of()));
            }
            pieces = next;
        }
        return pieces;
    }
}
