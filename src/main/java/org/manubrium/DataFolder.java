package org.manubrium;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;

/** The folder of the embedded database: students' work, for nobody else on the machine. */
final class DataFolder {
    private DataFolder() {}

    /** Makes the folder, if it is not there, for its owner alone where the file system knows owners. */
    static Path ready(Path folder) {
        try {
            if (FileSystems.getDefault().supportedFileAttributeViews().contains("posix")) {
                return Files.createDirectories(
                        folder, PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString("rwx------")));
            }
            return Files.createDirectories(folder);
        } catch (IOException e) {
            throw new UncheckedIOException("the data folder " + folder + " cannot be made", e);
        }
    }
}
