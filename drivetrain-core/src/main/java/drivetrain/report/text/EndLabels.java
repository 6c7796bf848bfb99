package drivetrain.report.text;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Finds a line of its own for each label beside a drawing, as near as can be to the line that it wants. */
final class EndLabels {

    private EndLabels() {}

    /** Labels that had to move together: the lines that they want, ascending. */
    private record Pool(List<Integer> members, double sumOfStarts) {

        double start() {
            return sumOfStarts / members.size();
        }

        Pool join(Pool next, List<Integer> wanted) {
            List<Integer> all = new ArrayList<>(members);
            all.addAll(next.members);
            double sum = 0.0;
            for (int place = 0; place < all.size(); place++) {
                sum += wanted.get(all.get(place)) - place;
            }
            return new Pool(all, sum);
        }
    }

    /**
     * Places labels.
     *
     * @param wanted the line that each label wants, 0 or more
     * @param lines the count of lines, at least as many as there are labels
     * @return for each label its line
     */
    static List<Integer> place(List<Integer> wanted, int lines) {
        List<Integer> order = new ArrayList<>();
        for (int label = 0; label < wanted.size(); label++) {
            order.add(label);
        }
        order.sort(Comparator.comparing(wanted::get));
        List<Pool> pools = new ArrayList<>();
        for (int label : order) {
            Pool pool = new Pool(List.of(label), wanted.get(label));
            while (!pools.isEmpty() && overlaps(pools.get(pools.size() - 1), pool)) {
                pool = pools.remove(pools.size() - 1).join(pool, wanted);
            }
            pools.add(pool);
        }
        return settle(pools, wanted.size(), lines);
    }

    private static boolean overlaps(Pool upper, Pool lower) {
        return Math.round(upper.start()) + upper.members().size() > Math.round(lower.start());
    }

    private static List<Integer> settle(List<Pool> pools, int count, int lines) {
        Integer[] placed = new Integer[count];
        int next = 0;
        int below = count;
        for (Pool pool : pools) {
            int line = (int) Math.max(next, Math.min(Math.round(pool.start()), lines - below));
            for (int label : pool.members()) {
                placed[label] = line++;
                below--;
            }
            next = line;
        }
        return List.of(placed);
    }
}
