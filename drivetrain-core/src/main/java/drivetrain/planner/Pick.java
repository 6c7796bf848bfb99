package drivetrain.planner;

import java.util.List;

/**
 * One combination that was picked.
 *
 * @param choice the index of the choice in each dimension
 * @param score its score, better the lower it is
 */
public record Pick(List<Integer> choice, double score) implements Comparable<Pick> {

    /** Copies the list. */
    public Pick {
        choice = List.copyOf(choice);
    }

    static Pick of(int[] choice, double score) {
        Integer[] boxed = new Integer[choice.length];
        for (int i = 0; i < boxed.length; i++) {
            boxed[i] = choice[i];
        }
        return new Pick(List.of(boxed), score);
    }

    /**
     * Compares by score, then by the choices in the order of the dimensions, so that no two combinations are alike.
     *
     * @param other another pick of the same query
     * @return a negative number, zero or a positive number
     */
    @Override
    public int compareTo(Pick other) {
        int byScore = Double.compare(score, other.score);
        for (int i = 0; byScore == 0 && i < choice.size(); i++) {
            int byChoice = Integer.compare(choice.get(i), other.choice.get(i));
            if (byChoice != 0) {
                return byChoice;
            }
        }
        return byScore;
    }

    int[] indices() {
        return choice.stream().mapToInt(Integer::intValue).toArray();
    }
}
