package org.manubrium.cli;

/** How a command ended, as a shell sees it. */
public enum ExitCode {
    /** Done. */
    DONE(0),
    /** It ran and found problems. */
    PROBLEMS(1),
    /** It was not called rightly, and did nothing. */
    WRONG_USE(2);

    private final int number;

    ExitCode(int number) {
        this.number = number;
    }

    public int number() {
        return number;
    }
}
