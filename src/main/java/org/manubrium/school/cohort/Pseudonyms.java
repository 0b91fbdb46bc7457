package org.manubrium.school.cohort;

import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;

/** Neutral names for a leaderboard: a tree or a bird and a number, the same for the same student in the same cohort. */
final class Pseudonyms {
    private static final List<String> WORDS = List.of(
            "Alder",
            "Ash",
            "Aspen",
            "Beech",
            "Birch",
            "Cedar",
            "Elm",
            "Hazel",
            "Holly",
            "Juniper",
            "Larch",
            "Linden",
            "Maple",
            "Oak",
            "Pine",
            "Poplar",
            "Spruce",
            "Willow",
            "Yew",
            "Avocet",
            "Curlew",
            "Dunlin",
            "Finch",
            "Heron",
            "Kestrel",
            "Lapwing",
            "Martin",
            "Merlin",
            "Osprey",
            "Pipit",
            "Plover",
            "Redstart",
            "Siskin",
            "Swift",
            "Tern",
            "Wagtail",
            "Warbler",
            "Wren");
    private static final int LEAST_NUMBER = 10;
    private static final int BELOW_NUMBER = 1_000;

    private Pseudonyms() {}

    /** A pseudonym that is not among those taken; there are some 37,000. */
    static String pick(long cohort, long account, Set<String> taken) {
        SplittableRandom random = new SplittableRandom(cohort * 1_000_003 + account);
        while (true) {
            String word = WORDS.get(random.nextInt(WORDS.size()));
            String name = word + " " + random.nextInt(LEAST_NUMBER, BELOW_NUMBER);
            if (!taken.contains(name)) {
                return name;
            }
        }
    }
}
