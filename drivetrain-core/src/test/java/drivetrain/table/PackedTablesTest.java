package drivetrain.table;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** Walks every file below {@code reference-tables/}. */
class PackedTablesTest {

    private static final Path ROOT = Path.of("..", "reference-tables");
    private static final String FILE_NAME = "[a-z0-9]+(-[a-z0-9]+)*\\.csv";

    private static List<Path> files() throws IOException {
        try (Stream<Path> walk = Files.walk(ROOT)) {
            return walk.filter(Files::isRegularFile)
                    .filter(file -> !file.getFileName().toString().equals(".gitkeep"))
                    .sorted()
                    .toList();
        }
    }

    private static String nameOf(Path file) {
        return ROOT.relativize(file).toString().replace('\\', '/');
    }

    @TestFactory
    Stream<DynamicTest> everyTableIsPackedAndWellFormed() throws IOException {
        return files().stream().map(file -> DynamicTest.dynamicTest(nameOf(file), () -> check(file)));
    }

    private static void check(Path file) throws IOException {
        String name = nameOf(file);
        ReferenceTable packed = ReferenceTable.load(name);

        assertThat(packed).isEqualTo(ReferenceTable.parse(name, Files.readString(file)));
        assertThat(packed.rows()).extracting(TableRow::cells).doesNotHaveDuplicates();
        assertThat(packed.header().get("title")).as("title of " + name).doesNotEndWith(".");
    }

    @Test
    void everyFileIsATableOfOneRoom() throws IOException {
        for (Path file : files()) {
            assertThat(ROOT.relativize(file).getNameCount()).as(nameOf(file)).isEqualTo(2);
            assertThat(file.getFileName().toString()).matches(FILE_NAME);
        }
    }
}
