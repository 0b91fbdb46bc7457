package org.manubrium.school.cohort;

import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.stream.Collectors;

/** Neutral names for a leaderboard: a bird and a number, the same for the same student in the same cohort. */
final class Pseudonyms {
    private static final List<String> BIRDS = List.of(
            "Avocet",
            "Bittern",
            "Bullfinch",
            "Bunting",
            "Chaffinch",
            "Chough",
            "Coot",
            "Cormorant",
            "Corncrake",
            "Curlew",
            "Dipper",
            "Dotterel",
            "Dunlin",
            "Dunnock",
            "Eider",
            "Fieldfare",
            "Finch",
            "Fulmar",
            "Gannet",
            "Garganey",
            "Godwit",
            "Goldcrest",
            "Grebe",
            "Greenshank",
            "Heron",
            "Kestrel",
            "Kingfisher",
            "Kittiwake",
            "Knot",
            "Lapwing",
            "Linnet",
            "Martin",
            "Merlin",
            "Moorhen",
            "Nightjar",
            "Nuthatch",
            "Oriole",
            "Osprey",
            "Petrel",
            "Pintail",
            "Pipit",
            "Plover",
            "Pochard",
            "Puffin",
            "Redshank",
            "Redstart",
            "Redwing",
            "Sanderling",
            "Sandpiper",
            "Shearwater",
            "Shoveler",
            "Siskin",
            "Skylark",
            "Snipe",
            "Starling",
            "Stonechat",
            "Swallow",
            "Swift",
            "Teal",
            "Tern",
            "Treecreeper",
            "Turnstone",
            "Wagtail",
            "Warbler",
            "Waxwing",
            "Wheatear",
            "Whimbrel",
            "Whinchat",
            "Wigeon",
            "Wren");
    private static final int LEAST_NUMBER = 10;
    private static final int BELOW_NUMBER = 1_000;

    private Pseudonyms() {}

    /** A pseudonym that is not among those taken; no two students are the same bird while there are birds left. */
    static String pick(long cohort, long account, Set<String> taken) {
        Set<String> seen = taken.stream().map(name -> name.split(" ", 2)[0]).collect(Collectors.toSet());
        List<String> free = BIRDS.stream().filter(bird -> !seen.contains(bird)).toList();
        List<String> birds = free.isEmpty() ? BIRDS : free;
        SplittableRandom random = new SplittableRandom(cohort * 1_000_003 + account);
        while (true) {
            String bird = birds.get(random.nextInt(birds.size()));
            String name = bird + " " + random.nextInt(LEAST_NUMBER, BELOW_NUMBER);
            if (!taken.contains(name)) {
                return name;
            }
        }
    }
}
