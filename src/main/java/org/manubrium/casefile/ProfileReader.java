package org.manubrium.casefile;

import java.util.List;
import java.util.Optional;
import org.manubrium.patient.Build;
import org.manubrium.patient.Sex;
import org.manubrium.patient.SkinTone;

/** Reads who the patient is. */
final class ProfileReader {
    static final List<String> KEYS = List.of("name", "age", "sex", "seed", "build", "skin-tone", "town");

    private static final int YOUNGEST = 18;
    private static final int OLDEST = 110;
    private static final long LAST_SEED = 999_999_999_999L;

    private final Problems problems;

    ProfileReader(Problems problems) {
        this.problems = problems;
    }

    Optional<Profile> read(Mapping file) {
        Optional<Mapping> patient = file.mapping("patient", KEYS);
        if (patient.isEmpty()) {
            problems.add(
                    file.lineOf("patient"),
                    "missing",
                    "expected \"patient: {age: 47, sex: female}\", found no patient");
        }
        return patient.flatMap(this::profile);
    }

    private Optional<Profile> profile(Mapping patient) {
        patient.needed("age", "years, from " + YOUNGEST + " to " + OLDEST);
        Optional<Long> age = patient.whole("age", YOUNGEST, OLDEST);
        Optional<Sex> sex = sex(patient);
        long seed = patient.whole("seed", 0, LAST_SEED).orElse(0L);
        String build = one(patient, "build", Build.words());
        String skinTone = one(patient, "skin-tone", SkinTone.words());
        String name = told(patient, "name");
        String town = told(patient, "town");
        return age.flatMap(years -> sex.map(s -> new Profile(name, years.intValue(), s, seed, build, skinTone, town)));
    }

    private Optional<Sex> sex(Mapping patient) {
        Optional<Text> text = patient.needed("sex", "female or male");
        Optional<Sex> sex = text.flatMap(t -> Sex.of(t.words()));
        if (text.isPresent() && sex.isEmpty()) {
            problems.add(
                    text.get().line(),
                    "wrong-type",
                    "patient.sex: expected female or male, found \""
                            + text.get().words() + "\"");
        }
        return sex;
    }

    private static String told(Mapping patient, String key) {
        return patient.text(key).map(Text::words).orElse("");
    }

    /** One of a few words, the middle one if none is given. */
    private String one(Mapping patient, String key, List<String> words) {
        Optional<Text> text = patient.text(key);
        if (text.isPresent() && !words.contains(text.get().words())) {
            problems.add(
                    text.get().line(),
                    "wrong-type",
                    "patient." + key + ": expected " + String.join(", ", words) + ", found \""
                            + text.get().words() + "\"");
        }
        return text.map(Text::words).orElse(words.get(1));
    }
}
