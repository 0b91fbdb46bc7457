package org.manubrium;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class DataFolderTest {
    @Test
    void newFolderIsForItsOwnerAloneAndAnExistingOneStaysAsItIs(@TempDir Path home) throws Exception {
        Path made = DataFolder.ready(home.resolve("deep/manubrium"));
        assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(made)))
                .isEqualTo("rwx------");

        Files.setPosixFilePermissions(made, PosixFilePermissions.fromString("rwxr-x---"));
        DataFolder.ready(made);
        assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(made)))
                .isEqualTo("rwxr-x---");
    }
}
