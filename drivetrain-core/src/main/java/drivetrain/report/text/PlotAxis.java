package drivetrain.report.text;

import drivetrain.quantity.DecimalText;
import java.util.ArrayList;
import java.util.DoubleSummaryStatistics;
import java.util.List;

/**
 * The scale of one axis of a drawing.
 *
 * @param low the number at its start
 * @param high the number at its end, greater
 */
record PlotAxis(double low, double high) {

    private static final int MOST_DECIMALS = 15;

    /**
     * A number written beside the axis.
     *
     * @param value the number
     * @param label how it is written
     */
    record Tick(double value, String label) {}

    /** Spans all numbers; starts at zero where that costs no more than half of the axis. */
    static PlotAxis spanning(DoubleSummaryStatistics numbers) {
        double least = numbers.getMin();
        double most = numbers.getMax();
        if (least >= 0.0 && least <= 0.5 * most) {
            least = 0.0;
        }
        return least < most ? new PlotAxis(least, most) : new PlotAxis(least - 1.0, most + 1.0);
    }

    /** Returns where a number stands, from 0 at the start to 1 at the end. */
    double position(double number) {
        return (number - low) / (high - low);
    }

    /** Returns which of a count of places a number falls into, counted from 0 at the start. */
    int place(double number, int places) {
        return (int) Math.round(position(number) * (places - 1));
    }

    /** Returns at most so many round numbers: steps of 1, 2 or 5 times a power of ten. */
    List<Tick> ticks(int most) {
        double step = step((high - low) / most);
        int decimals = Math.min(MOST_DECIMALS, Math.max(0, (int) -Math.floor(Math.log10(step) + 1e-9)));
        List<Tick> ticks = new ArrayList<>();
        double first = Math.ceil(low / step - 1e-9);
        for (int index = 0; (first + index) * step <= high + 1e-9 * step; index++) {
            double value = (first + index) * step;
            ticks.add(new Tick(value, DecimalText.fixed(value, decimals)));
        }
        return ticks;
    }

    private static double step(double least) {
        double power = Math.pow(10.0, Math.floor(Math.log10(least)));
        for (double factor : new double[] {1.0, 2.0, 5.0}) {
            if (factor * power >= least) {
                return factor * power;
            }
        }
        return 10.0 * power;
    }
}
