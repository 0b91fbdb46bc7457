package org.manubrium.casefile;

import org.manubrium.examination.Item;

/**
 * What the author expects a manoeuvre to show.
 *
 * @param reading a code of its scale, a number in its unit, or "normal" or "abnormal"
 */
public record Expected(Item item, String reading) {
    static final String NORMAL = "normal";
    static final String ABNORMAL = "abnormal";
}
