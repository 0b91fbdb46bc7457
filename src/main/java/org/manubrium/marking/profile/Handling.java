package org.manubrium.marking.profile;

/**
 * How the patient was handled, beside the best plan for the same steps. Only steps and moves count, not questions.
 *
 * @param steps different steps that were done
 * @param changes how often the patient was moved
 * @param seconds bedside seconds of steps and moves
 * @param fewestChanges the changes of the best plan
 * @param fewestSeconds the seconds of the best plan
 */
public record Handling(int steps, int changes, int seconds, int fewestChanges, int fewestSeconds) {}
