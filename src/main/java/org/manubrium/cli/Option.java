package org.manubrium.cli;

import java.util.Locale;

/**
 * An option of a command.
 *
 * @param name without the leading dashes
 * @param operand what follows it, as help shows it, such as {@code DIR}; "" for a switch that stands alone
 * @param help one line
 * @param fallback what holds when it is not given, as text; "" for nothing
 */
public record Option(String name, String operand, String help, String fallback) {
    /** A switch that is off unless given. */
    public static Option onOff(String name, String help) {
        return new Option(name, "", help, "");
    }

    public boolean isSwitch() {
        return operand.isEmpty();
    }

    public String flag() {
        return "--" + name;
    }

    /** The environment variable that stands for it: MANUBRIUM_ and the name in capitals. */
    public String variable() {
        return "MANUBRIUM_" + name.replace('-', '_').toUpperCase(Locale.ROOT);
    }
}
