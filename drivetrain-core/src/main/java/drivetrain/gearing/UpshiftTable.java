package drivetrain.gearing;

import drivetrain.finding.Working;
import drivetrain.quantity.AngularSpeed;
import java.util.ArrayList;
import java.util.List;

/**
 * The shifts from first gear to top in one range, each at the same engine speed.
 *
 * @param range the range
 * @param shiftSpeed the engine speed at which each shift is made
 * @param spread the ratio coverage, first gear over the last gear of the table
 * @param shifts the shifts in order; where an overdrive is fitted, the last one engages it in top gear
 */
public record UpshiftTable(Range range, AngularSpeed shiftSpeed, double spread, List<Upshift> shifts) {

    /** Copies the shifts. */
    public UpshiftTable {
        shifts = List.copyOf(shifts);
    }

    /**
     * Works out the shifts.
     *
     * @param train the gear train
     * @param range the range
     * @param shiftSpeed the engine speed at which each shift is made, greater than zero
     * @return the table, without shifts if there is one gear only or no such range
     * @throws drivetrain.refusal.RefusedException if the shift speed is not greater than zero
     */
    public static UpshiftTable of(GearTrain train, Range range, AngularSpeed shiftSpeed) {
        shiftSpeed.requirePositive("shift speed");
        List<DriveGear> ladder = new ArrayList<>();
        int top = train.transmission().forward().size();
        for (int number = 1; number <= top; number++) {
            train.gear(number, range).ifPresent(ladder::add);
        }
        if (train.overdrive().ratio().value() < 1.0) {
            train.gear(top, range, true).ifPresent(ladder::add);
        }
        List<Upshift> shifts = new ArrayList<>();
        for (int i = 1; i < ladder.size(); i++) {
            shifts.add(Upshift.between(ladder.get(i - 1), ladder.get(i), shiftSpeed));
        }
        double spread = ladder.isEmpty()
                ? 1.0
                : ladder.get(0).totalRatio() / ladder.get(ladder.size() - 1).totalRatio();
        return new UpshiftTable(range, shiftSpeed, spread, shifts);
    }

    /**
     * Shows how the engine speeds after the shifts are worked out.
     *
     * @return the working
     */
    public Working working() {
        Working.Builder working = Working.of("engine speed after each upshift in " + range.label() + " range")
                .input("shift speed", "n", GearWorkings.rotation(shiftSpeed), "given");
        for (Upshift shift : shifts) {
            String name = shift.from().label() + " to " + shift.to().label();
            working.input(
                            "total ratio, " + shift.from().label(),
                            "i_1",
                            GearWorkings.ratio(shift.from().totalRatio()),
                            shift.from().stages().gear().part())
                    .input(
                            "total ratio, " + shift.to().label(),
                            "i_2",
                            GearWorkings.ratio(shift.to().totalRatio()),
                            shift.to().stages().gear().part())
                    .step("step, " + name, "q = i_1 / i_2", GearWorkings.ratio(shift.step()))
                    .step("engine speed after " + name, "n / q", GearWorkings.rotation(shift.after()));
        }
        return working.source(GearWorkings.KINEMATICS).build();
    }
}
