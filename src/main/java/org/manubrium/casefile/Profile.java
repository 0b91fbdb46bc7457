package org.manubrium.casefile;

import org.manubrium.patient.Build;
import org.manubrium.patient.Person;
import org.manubrium.patient.Sex;
import org.manubrium.patient.SkinTone;
import org.manubrium.patient.Variation;

/**
 * Who the patient is. Name and town are only told; neither changes the body.
 *
 * @param age in years, 18 to 110
 * @param seed from which the natural variation is drawn; 0 for the average person
 */
public record Profile(String name, int age, Sex sex, long seed, String build, String skinTone, String town) {
    public Person person() {
        return new Person(
                age,
                sex,
                Variation.of(seed),
                SkinTone.of(skinTone).orElse(SkinTone.BROWN),
                Build.of(build).orElse(Build.AVERAGE));
    }
}
