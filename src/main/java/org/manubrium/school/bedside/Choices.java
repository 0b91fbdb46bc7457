package org.manubrium.school.bedside;

import java.util.List;
import java.util.Map;
import org.manubrium.examination.Examination;
import org.manubrium.examination.Scale;

/**
 * Everything that can be done and answered; the same for every patient.
 *
 * @param scales the scale in force for each manoeuvre that is read on one, by manoeuvre
 * @param terms the terms that complete what is typed: means, sites, diagnoses, next
 */
public record Choices(Examination examination, Map<String, Scale> scales, Map<String, List<Term>> terms) {}
