package org.manubrium.anatomy;

import java.util.List;

/**
 * A named part of the nervous system on which a lesion can lie.
 *
 * @param segments whether it is said with a spinal segment
 * @param sided whether it has a right and a left
 * @param levels the named levels of a nerve or an area, from the centre out; empty if it has none
 * @param division what kind of part it is, the word in which its lesion is explained: brain, brainstem, cord, root,
 *     plexus, nerve, junction, muscle, eye
 */
public record Structure(
        String name,
        boolean segments,
        boolean sided,
        List<String> levels,
        String division,
        String source,
        String confidence) {}
