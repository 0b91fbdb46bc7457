package org.manubrium.casefile;

/**
 * What is wrong with a case file.
 *
 * @param line from 1
 * @param rule a short word for the kind of problem, the same for every file
 */
public record Problem(String path, int line, String rule, String text) {
    @Override
    public String toString() {
        return path + ":" + line + ": " + text + " [" + rule + "]";
    }
}
