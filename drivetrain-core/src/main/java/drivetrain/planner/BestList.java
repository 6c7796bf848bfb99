package drivetrain.planner;

import java.util.ArrayList;
import java.util.List;
import java.util.PriorityQueue;

/** The best picks so far, shared between threads. What it ends with does not depend on the order of the offers. */
final class BestList {

    private final int most;
    private final PriorityQueue<Pick> worstFirst = new PriorityQueue<>((a, b) -> b.compareTo(a));
    private volatile double worst;

    BestList(int most) {
        this.most = most;
        this.worst = most > 0 ? Double.POSITIVE_INFINITY : Double.NEGATIVE_INFINITY;
    }

    int most() {
        return most;
    }

    /** Returns the score above which nothing can be added any more. */
    double worst() {
        return worst;
    }

    /** Adds a pick if it is among the best; false if not, and then nothing that compares higher is either. */
    synchronized boolean offer(int[] choice, double score) {
        if (most == 0 || score > worst) {
            return false;
        }
        Pick pick = Pick.of(choice, score);
        if (worstFirst.size() == most) {
            if (pick.compareTo(worstFirst.element()) >= 0) {
                return false;
            }
            worstFirst.remove();
        }
        worstFirst.add(pick);
        if (worstFirst.size() == most) {
            worst = worstFirst.element().score();
        }
        return true;
    }

    synchronized List<Pick> best() {
        List<Pick> best = new ArrayList<>(worstFirst);
        best.sort(null);
        return best;
    }
}
