package org.manubrium.school.bedside;

import java.util.Map;
import org.manubrium.patient.Body;

/** A case version made flesh: what is known beforehand, what the patient answers when asked, and the body. */
record PatientCase(Known known, Map<String, String> answers, Body body) {}
