package org.manubrium.patient.sign;

import org.manubrium.anatomy.Pathway;

/** A pathway that carries a sign and the part it plays in it (arc, control, upper, lower, feeling …). */
public record Strand(String role, Pathway pathway) {}
