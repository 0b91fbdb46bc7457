package org.manubrium.patient;

/** Who the patient is, apart from what ails them; {@code age} in years. */
public record Person(int age, Sex sex, Variation variation, SkinTone tone, Build build) {
    /** A person of brown skin and average build. */
    public Person(int age, Sex sex, Variation variation) {
        this(age, sex, variation, SkinTone.BROWN);
    }

    /** A person of average build. */
    public Person(int age, Sex sex, Variation variation, SkinTone tone) {
        this(age, sex, variation, tone, Build.AVERAGE);
    }

    public Person mirrored() {
        return varied(variation.mirrored());
    }

    /** Another person of this age, sex, skin and build. */
    public Person varied(Variation other) {
        return new Person(age, sex, other, tone, build);
    }
}
