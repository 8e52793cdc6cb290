package org.marktwice.cli;

/** Where the program starts. */
public final class Main {
    private Main() {}

    public static void main(String[] args) {
        throw new UnsupportedOperationException();
    }
}
