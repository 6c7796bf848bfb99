package drivetrain.document;

import static org.assertj.core.api.Assertions.assertThat;

import drivetrain.combination.Specification;
import drivetrain.refusal.RefusedException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;

/**
 * Feeds mutated catalogs, orders and torque curves, in YAML and JSON, to the readers. Either a document is read, and then an order is written as a text
 * that reads back as the same order and the same text, or it is refused in one located line; nothing else may happen, and nothing may take long.
 */
class DocumentFuzz {

    private static final int CASES = Integer.getInteger("fuzz.cases", 1_000_000);
    private static final long SEED = Long.getLong("fuzz.seed", 1L);
    private static final int MOST_MUTATIONS = 4;
    private static final long MOST_NANOSECONDS = 5_000_000_000L;

    private static final String HEAD = "document: drivetrain-catalog\nversion: 1\ntitle: Shelf\n";
    private static final List<String> YAML_CATALOGS = List.of(
            HEAD + "axles:\n  - {name: rp-4.10, description: ring and pinion, ratio: 41/10, efficiency: 0.96}\n",
            HEAD
                    + "tires:\n  - name: at\n    size: 285/75R16 122/119Q\n    rollout: 2510 mm\n    revolutions: 645 rev/mile\n",
            HEAD + "transmissions:\n  - name: auto\n    gears: [4.03, 2.36, 34/20, \"1.15\"]\n    reverse: 3.06\n"
                    + "    coupling: converter\n    converter: {stallTorqueRatio: 2.0, lockUp: true, slip: 0.03}\n",
            HEAD + "engines:\n  - name: v8\n    aspiration: natural\n    ignition: spark\n    displacement: 6.2 L\n"
                    + "    rating: net\n    measuredAt: crank\n    idle: 650 rpm\n    maximumSpeed: 6600 rpm\n    torqueCurve:\n"
                    + "      - {speed: 1000 rpm, torque: 310 lb-ft}\n      - {speed: 3000 rpm, torque: 424 lb-ft}\n"
                    + "      - {speed: 5700 rpm, torque: 387 lb-ft}\n",
            HEAD
                    + "houseLimits: {cruiseLeastOverIdle: 2.2, criticalSpeedShareGood: 0.6, jointAngleMostDegrees: 4}\nvehicles:\n  - name: wagon\n    mass: 2150 kg\n"
                    + "    rearWheels: single\n    speedometer:\n      drive: driveshaft\n      calibratedTire: 255/70R18\n"
                    + "      calibratedAxle: 41/10\n      drivenTeeth: 21\n      drivingTeeth: 8\n",
            HEAD + "transferCases:\n  - {name: pt, high: 1.00, low: 2.72, drive: part-time}\noverdrives:\n"
                    + "  - {name: od, ratio: 0.78}\nhubReductions:\n  - {name: portal, ratio: 24/16}\n");
    private static final List<String> JSON_CATALOGS = List.of(
            "{\"document\": \"drivetrain-catalog\", \"version\": 1, \"title\": \"Shelf\",\n \"axles\": [{\"name\": \"a\", \"ratio\": 3.73}]}",
            "{\"document\":\"drivetrain-catalog\",\"version\":1,\"title\":\"Shelf\",\"engines\":[{\"name\":\"i6\",\"aspiration\":\"natural\","
                    + "\"ignition\":\"spark\",\"rating\":\"gross\",\"measuredAt\":\"crank\",\"maximumSpeed\":\"4800 rpm\",\"peaks\":{\"power\":"
                    + "{\"power\":\"135 hp\",\"speed\":\"4000 rpm\"},\"torque\":{\"torque\":\"210 lb-ft\",\"speed\":\"1800 rpm\"}}}]}");
    private static final List<String> YAML_ORDERS = List.of(
            "document: drivetrain-order\nversion: 1\ntitle: Coast tourer\nengine: v8-6.2\nrearAxle: 4.10\n"
                    + "tire: 285/75R16 122/119Q rollout 2510 mm\ncruise: 65 mph\nnotes: |-\n  two\n  lines\n",
            "document: drivetrain-order\nversion: 1\ntransmission: \"4.03 2.36 1.53\"\noverdrive: none\nnotes: 'it''s'\n");
    private static final List<String> JSON_ORDERS = List.of(
            "{\"document\": \"drivetrain-order\", \"version\": 1, \"title\": \"T\\u00e9st\", \"hubs\": 1.5, \"cruise\": \"65 mph\"}");
    private static final List<String> CURVES = List.of(
            "# bench\nspeed rpm,torque lb-ft\n1000,310\n2000,372.5\n3000,424\n",
            "rpm,Nm\r\n1000,200\r\n2000,220\r\n3000,210");
    private static final List<String> PIECES = List.of(
            "\n",
            "\n  ",
            "\n- ",
            ": ",
            "- ",
            "{",
            "}",
            "[",
            "]",
            ",",
            "\"",
            "'",
            "#",
            "&a ",
            "*a",
            "!!str ",
            "|\n",
            ">-\n",
            "? ",
            "---\n",
            "...\n",
            "%YAML 1.1\n",
            "\\",
            "\\u001b",
            "\\n",
            "\t",
            "\0",
            "\u001b[31m",
            "\u0085",
            "\u2028",
            "\uFEFF",
            "\uD83D",
            "\uD83D\uDE99",
            "\u00A0",
            "null",
            "true",
            "~",
            "NaN",
            ".inf",
            "1e999",
            "-1",
            "0x1F",
            "99999999999999999999",
            "4.10",
            "41/11",
            "none",
            "<<: ",
            "name: a\n",
            "version: 1\n",
            "ratio: 1",
            "xxxxxxxxxx",
            "torqueCurveFile: ../x.csv\n",
            "[[[[[[[[[[",
            "{a: {a: {a: {a: ");

    private final Random random = new Random(SEED);
    private int number;
    private int read;
    private int refused;
    private long longest;

    /** A kind of document: its samples and how one of its texts is read. */
    private record Target(List<String> samples, java.util.function.Consumer<String> reader) {}

    private final List<Target> targets = List.of(
            new Target(YAML_CATALOGS, text -> CatalogDocument.parse("f", text, DocumentFormat.YAML)),
            new Target(JSON_CATALOGS, text -> CatalogDocument.parse("f", text, DocumentFormat.JSON)),
            new Target(YAML_ORDERS, text -> order(text, DocumentFormat.YAML)),
            new Target(JSON_ORDERS, text -> order(text, DocumentFormat.JSON)),
            new Target(CURVES, text -> TorqueCurveCsv.parse("f", text)),
            new Target(YAML_CATALOGS, text -> bytes(text, DocumentFormat.YAML)),
            new Target(JSON_CATALOGS, text -> bytes(text, DocumentFormat.JSON)));

    @Test
    void readsOrRefusesWithAPlaceWhateverIsWritten() {
        for (number = 0; number < CASES; number++) {
            Target target = targets.get(number % targets.size());
            check(mutated(target.samples()), target);
        }
        System.out.println("document fuzz: seed " + SEED + ", " + CASES + " documents, " + read + " read, " + refused
                + " refused, longest " + longest / 1_000_000 + " ms");
        assertThat(read).as("documents read").isPositive();
        assertThat(refused).as("documents refused").isPositive();
        assertThat(longest).as("nanoseconds").isLessThan(MOST_NANOSECONDS);
    }

    private void check(String text, Target target) {
        long start = System.nanoTime();
        try {
            target.reader().accept(text);
            read++;
        } catch (RefusedException e) {
            refused++;
            requireReadable(text, e);
        } catch (RuntimeException | StackOverflowError e) {
            throw new AssertionError(where(text), e);
        }
        longest = Math.max(longest, System.nanoTime() - start);
    }

    private void requireReadable(String text, RefusedException e) {
        try {
            Refused.requireReadable(e);
        } catch (AssertionError unreadable) {
            throw new AssertionError(where(text), unreadable);
        }
    }

    private static void order(String text, DocumentFormat format) {
        Specification order = OrderDocument.parse("f", text, format);
        for (DocumentFormat other : DocumentFormat.values()) {
            String written = OrderDocument.text(order, other);
            Specification again = OrderDocument.parse("f", written, other);
            if (!again.equals(order) || !OrderDocument.text(again, other).equals(written)) {
                throw new IllegalStateException("reads back otherwise from " + written);
            }
        }
    }

    /** Through bytes, one of which may be damaged. */
    private void bytes(String text, DocumentFormat format) {
        byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
        if (bytes.length > 0 && random.nextInt(4) == 0) {
            bytes[random.nextInt(bytes.length)] = (byte) random.nextInt(256);
        }
        DocumentTree.read(SourceBytes.decode("f", bytes), format);
    }

    private String where(String text) {
        return "seed " + SEED + ", case " + number + ", document:\n" + JsonText.write(Map.of("text", text));
    }

    private String mutated(List<String> samples) {
        StringBuilder text = new StringBuilder(pick(samples));
        for (int i = random.nextInt(MOST_MUTATIONS + 1); i > 0; i--) {
            mutate(text, samples);
        }
        return text.toString();
    }

    private void mutate(StringBuilder text, List<String> samples) {
        int at = random.nextInt(text.length() + 1);
        int end = Math.min(text.length(), at + 1 + random.nextInt(12));
        switch (random.nextInt(8)) {
            case 0 -> text.insert(at, pick(PIECES));
            case 1 -> text.delete(at, end);
            case 2 -> text.replace(at, Math.min(text.length(), at + 1), pick(PIECES));
            case 3 -> text.insert(at, text.substring(at, end));
            case 4 -> swapLines(text);
            case 5 -> text.insert(at, (char) random.nextInt(random.nextBoolean() ? 128 : 65_536));
            case 6 -> text.setLength(random.nextInt(10) == 0 ? at : text.length());
            default -> text.insert(at, pick(PIECES).repeat(1 + random.nextInt(80)));
        }
        if (random.nextInt(50) == 0) {
            text.append(pick(samples));
        }
    }

    private void swapLines(StringBuilder text) {
        List<String> lines = new ArrayList<>(text.toString().lines().toList());
        if (lines.size() > 1) {
            lines.add(random.nextInt(lines.size()), lines.remove(random.nextInt(lines.size())));
            text.setLength(0);
            text.append(String.join("\n", lines)).append('\n');
        }
    }

    private String pick(List<String> texts) {
        return texts.get(random.nextInt(texts.size()));
    }
}
