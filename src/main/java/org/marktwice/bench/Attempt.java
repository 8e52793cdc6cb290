package org.marktwice.bench;

import java.util.ArrayList;
import java.util.List;

/**
 * A learner's attempt: who, at what, and everything that was done, in order. Marks are never part of it.
 *
 * @param scenario the scenario's id
 * @param digest {@code sha256:…} of the scenario file as handed out; empty where it is not to be compared
 * @param learner whatever the teacher goes by: a number or initials
 * @param started an ISO 8601 instant
 * @param actions step 1 is the first of them
 */
public record Attempt(String scenario, String digest, String learner, String started, List<Action> actions) {
    public Attempt {
        actions = List.copyOf(actions);
    }

    public Attempt with(Action next) {
        List<Action> more = new ArrayList<>(actions);
        more.add(next);
        return new Attempt(scenario, digest, learner, started, more);
    }

    public boolean handedIn() {
        return !actions.isEmpty() && actions.get(actions.size() - 1) instanceof Action.HandIn;
    }

    /** The attempt as it stood after so many steps. */
    public Attempt upTo(int steps) {
        return new Attempt(scenario, digest, learner, started, actions.subList(0, steps));
    }
}
