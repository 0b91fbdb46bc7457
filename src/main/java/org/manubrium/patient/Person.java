package org.manubrium.patient;

/** Who the patient is, apart from what ails them; {@code age} in years. */
public record Person(int age, Sex sex, Variation variation) {
    public Person mirrored() {
        return new Person(age, sex, variation.mirrored());
    }
}
