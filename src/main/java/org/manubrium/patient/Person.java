package org.manubrium.patient;

/** Who the patient is, apart from what ails them; {@code age} in years. */
public record Person(int age, Sex sex, Variation variation, SkinTone tone) {
    /** A person of brown skin. */
    public Person(int age, Sex sex, Variation variation) {
        this(age, sex, variation, SkinTone.BROWN);
    }

    public Person mirrored() {
        return varied(variation.mirrored());
    }

    /** Another person of this age, sex and skin. */
    public Person varied(Variation other) {
        return new Person(age, sex, other, tone);
    }
}
