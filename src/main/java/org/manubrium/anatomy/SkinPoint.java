package org.manubrium.anatomy;

import java.util.Optional;

/**
 * A point of the skin on which feeling is tested.
 *
 * @param kind "key" for a key sensory point of one dermatome, "patch" for the patch of a nerve
 * @param station the most distal station of the nerve that serves it
 * @param joint the joint nearest to it whose position can be tested, if there is one
 */
public record SkinPoint(
        String id,
        String name,
        String kind,
        String station,
        String area,
        Optional<String> joint,
        String source,
        String confidence) {}
