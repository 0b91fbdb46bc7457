package org.manubrium;

/** Entry point: wires the parts and hands over to a command. */
public final class Main {
    private Main() {}

    public static void main(String[] args) {
        System.exit(args.length == 0 ? 2 : 0);
    }
}
