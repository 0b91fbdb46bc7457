package org.manubrium.reasoning.weigh;

import java.util.List;

/**
 * What a step can show and what it shows in each body; the patient comes last.
 *
 * @param names of what can be seen
 * @param shown for each body the place of what it shows
 * @param apart for each two outcomes how many levels lie between them
 */
@SuppressWarnings("ArrayRecordComponent") // made once, walked in the innermost loop, never compared
record Outcomes(List<String> names, int[] shown, int[][] apart) {
    boolean allAlike() {
        for (int one : shown) {
            if (one != shown[0]) {
                return false;
            }
        }
        return true;
    }
}
