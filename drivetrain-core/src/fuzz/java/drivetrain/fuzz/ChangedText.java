package drivetrain.fuzz;

import java.util.List;
import java.util.Random;
import java.util.SplittableRandom;

/** Texts that were valid before they were changed at random. The same generator gives the same changes, so that a recorded run can be repeated. */
public final class ChangedText {

    private ChangedText() {}

    /**
     * Inserts pieces, strange characters and digits, and deletes.
     *
     * @param start the text to be changed
     * @param random what picks the changes
     * @param fewer one more than the most changes
     * @param pieces what may be inserted
     * @return the changed text
     */
    public static String byPieces(String start, Random random, int fewer, String[] pieces) {
        StringBuilder text = new StringBuilder(start);
        int edits = random.nextInt(fewer);
        for (int i = 0; i < edits; i++) {
            int at = random.nextInt(text.length() + 1);
            switch (random.nextInt(4)) {
                case 0 -> text.insert(at, pieces[random.nextInt(pieces.length)]);
                case 1 -> text.delete(at, Math.min(text.length(), at + 1 + random.nextInt(4)));
                case 2 -> text.insert(at, (char) random.nextInt(0x2100));
                default -> {
                    if (at < text.length()) {
                        text.setCharAt(at, (char) ('0' + random.nextInt(10)));
                    }
                }
            }
        }
        return text.toString();
    }

    /**
     * Inserts signs, words, numbers and copies of what stands before, and deletes; at most four times.
     *
     * @param start the text to be changed
     * @param random what picks the changes
     * @param alphabet the signs that may be inserted
     * @param words the words that may be inserted
     * @return the changed text
     */
    public static String byWords(String start, SplittableRandom random, String alphabet, List<String> words) {
        StringBuilder text = new StringBuilder(start);
        int edits = random.nextInt(5);
        for (int i = 0; i < edits; i++) {
            int at = random.nextInt(text.length() + 1);
            switch (random.nextInt(6)) {
                case 0 -> text.insert(at, alphabet.charAt(random.nextInt(alphabet.length())));
                case 1 -> text.delete(at, Math.min(text.length(), at + 1 + random.nextInt(3)));
                case 2 -> text.insert(at, " " + words.get(random.nextInt(words.size())) + " ");
                case 3 -> text.insert(at, random.nextInt(100));
                case 4 -> text.insert(at, text.substring(at / 2, at));
                default -> text.insert(at, random.nextDouble());
            }
        }
        return text.toString();
    }
}
