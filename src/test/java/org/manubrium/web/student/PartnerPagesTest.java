package org.manubrium.web.student;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Base64;
import java.util.Map;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.manubrium.Chromium;
import org.manubrium.TestBrowser;
import org.manubrium.TestSchool;
import org.manubrium.TestServer;
import org.manubrium.examination.PartnerExercise;
import org.manubrium.security.Role;
import org.openqa.selenium.By;

class PartnerPagesTest {
    private static final TestServer SERVER = TestServer.start();
    private static final TestBrowser STUDENT = SERVER.signInAs(Role.STUDENT);
    private static final Chromium CHROMIUM = signedIn();

    @AfterAll
    static void close() {
        CHROMIUM.close();
        SERVER.close();
    }

    private static Chromium signedIn() {
        Chromium chromium = Chromium.open(390, 844);
        String name = SERVER.account("mo", Role.STUDENT).loginName();
        chromium.driver().get(SERVER.address("/sign-in").toString());
        chromium.driver().findElement(By.name("name")).sendKeys(name);
        chromium.driver().findElement(By.name("password")).sendKeys(TestServer.PASSWORD + "\n");
        Hands.withMouse(chromium.driver()).see("Your patients");
        return chromium;
    }

    static Iterable<PartnerExercise> exercises() {
        return TestSchool.REFERENCE.examination().partnerExercises();
    }

    @Test
    void onlySignsThatAreFeltHaveAnExercise() {
        assertThat(STUDENT.page("/partner/pulse").statusCode()).isEqualTo(200);
        assertThat(STUDENT.page("/partner/visual-field").statusCode()).isEqualTo(404);
        assertThat(SERVER.browser().page("/partner/pulse").statusCode()).isNotEqualTo(200);
    }

    /** Content, consent and cautions; a row that nobody checked against a text says so. */
    @ParameterizedTest
    @MethodSource("exercises")
    void sheetHoldsTheRowOfItsTableAndAsksForConsent(PartnerExercise exercise) {
        assertThat(exercise.signs()).isNotEmpty().allSatisfy(sign -> {
            String page = STUDENT.page("/partner/" + sign).body();
            assertThat(page)
                    .contains("A screen does not teach touch", "ask for consent", "What a healthy partner feels like");
            assertThat(page).contains(exercise.confidence());
        });
        assertThat(exercise.steps()).hasSizeBetween(3, 7);
        assertThat(exercise.cautions())
                .contains("consent")
                .allSatisfy(
                        caution -> assertThat(TestSchool.REFERENCE.examination().caution(caution))
                                .isPresent());
    }

    @ParameterizedTest
    @MethodSource("exercises")
    void sheetIsOnePageOfA4AndNoWiderThanAPhone(PartnerExercise exercise) {
        CHROMIUM.driver()
                .get(SERVER.address("/partner/" + exercise.signs().get(0)).toString());
        assertThat(CHROMIUM.driver().executeScript("return document.documentElement.scrollWidth <= innerWidth"))
                .isEqualTo(true);

        Map<String, Object> printed =
                CHROMIUM.driver().executeCdpCommand("Page.printToPDF", Map.of("preferCSSPageSize", true));
        String pdf = new String(
                Base64.getDecoder().decode(String.valueOf(printed.get("data"))),
                java.nio.charset.StandardCharsets.ISO_8859_1);

        assertThat(pdf.split("/Type\\s*/Page[^s]", -1)).as(exercise.id()).hasSize(2);
    }
}
