package drivetrain.docs;

import java.util.ArrayList;
import java.util.List;

/**
 * One fenced block of a Markdown page.
 *
 * @param page name of the page
 * @param line number of the first line of the content, from 1
 * @param info what stands behind the opening fence
 * @param content lines between the fences, each ended by a newline
 */
record FencedBlock(String page, int line, String info, String content) {

    private static final String FENCE = "```";

    static List<FencedBlock> of(String page, String markdown) {
        List<FencedBlock> blocks = new ArrayList<>();
        List<String> lines = markdown.lines().toList();
        int at = 0;
        while (at < lines.size()) {
            if (lines.get(at).startsWith(FENCE)) {
                int close = closingFence(page, lines, at);
                String info = lines.get(at).substring(FENCE.length()).strip();
                String content = String.join("\n", lines.subList(at + 1, close)) + (close > at + 1 ? "\n" : "");
                blocks.add(new FencedBlock(page, at + 2, info, content));
                at = close;
            }
            at++;
        }
        return blocks;
    }

    private static int closingFence(String page, List<String> lines, int open) {
        for (int at = open + 1; at < lines.size(); at++) {
            if (lines.get(at).equals(FENCE)) {
                return at;
            }
        }
        throw new IllegalArgumentException(page + ":" + (open + 1) + ": fence is never closed");
    }

    String where() {
        return page + ":" + line;
    }
}
