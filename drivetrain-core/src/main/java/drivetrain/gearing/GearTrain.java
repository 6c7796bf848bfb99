package drivetrain.gearing;

import drivetrain.finding.Assumption;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * The gearing from the engine to the wheels of the rear axle, with every gear of it worked out once.
 *
 * <p>Forward gears come in both ranges and, where an auxiliary unit is fitted, with it engaged and not. The auxiliary unit stands
 * ahead of the transfer case, so that it can be engaged in low range too. Reverse is given only with the unit disengaged: overdrive units with a
 * roller clutch must not be driven backward.
 */
public final class GearTrain {

    private static final Comparator<DriveGear> SHORTEST_FIRST =
            (a, b) -> Double.compare(b.totalRatio(), a.totalRatio());
    private static final Comparator<DriveGear> TALLEST_FIRST = SHORTEST_FIRST.reversed();

    private final Transmission transmission;
    private final Overdrive overdrive;
    private final TransferCase transferCase;
    private final AxleRatio rear;
    private final HubReduction hubs;
    private final List<DriveGear> gears;

    /**
     * Works out every gear.
     *
     * @param transmission the transmission
     * @param overdrive the auxiliary unit, or {@link Overdrive#none()}
     * @param transferCase the transfer case, or {@link TransferCase#none()}
     * @param rear the rear axle
     * @param hubs the hub reduction, or {@link HubReduction#none()}
     */
    public GearTrain(
            Transmission transmission,
            Overdrive overdrive,
            TransferCase transferCase,
            AxleRatio rear,
            HubReduction hubs) {
        this.transmission = transmission;
        this.overdrive = overdrive;
        this.transferCase = transferCase;
        this.rear = rear;
        this.hubs = hubs;
        this.gears = List.copyOf(build());
    }

    private List<DriveGear> build() {
        List<DriveGear> built = new ArrayList<>();
        Stage axle = Stage.axle(rear);
        Stage hub = Stage.hub(hubs);
        List<Stage> forward = transmission.forward().stream()
                .map(ratio -> Stage.forward(transmission, ratio))
                .toList();
        Optional<Stage> reverse = transmission.reverse().map(ratio -> Stage.reverse(transmission, ratio));
        boolean twoRanges = transferCase.low().isPresent();
        for (Range range : twoRanges ? Range.values() : new Range[] {Range.HIGH}) {
            Ratio ratio = range == Range.HIGH
                    ? transferCase.high()
                    : transferCase.low().orElseThrow();
            Stage transfer = Stage.range(transferCase, ratio);
            for (boolean engaged : overdrive.isFitted() ? new boolean[] {false, true} : new boolean[] {false}) {
                Stage auxiliary = Stage.auxiliary(overdrive, engaged);
                String suffix =
                        engaged ? (overdrive.ratio().value() < 1.0 ? " with overdrive" : " with underdrive") : "";
                for (int i = 0; i < forward.size(); i++) {
                    String label = GearLabel.of(i + 1, twoRanges, range, suffix);
                    Stages stages = new Stages(forward.get(i), auxiliary, transfer, axle, hub);
                    built.add(new DriveGear(label, i + 1, range, engaged, stages));
                }
            }
            Stage straight = Stage.auxiliary(overdrive, false);
            reverse.ifPresent(gear -> built.add(new DriveGear(
                    GearLabel.of(0, twoRanges, range, ""),
                    0,
                    range,
                    false,
                    new Stages(gear, straight, transfer, axle, hub))));
        }
        return built;
    }

    /**
     * Returns the transmission.
     *
     * @return the transmission
     */
    public Transmission transmission() {
        return transmission;
    }

    /**
     * Returns the auxiliary unit.
     *
     * @return the unit, or {@link Overdrive#none()}
     */
    public Overdrive overdrive() {
        return overdrive;
    }

    /**
     * Returns the transfer case.
     *
     * @return the transfer case, or {@link TransferCase#none()}
     */
    public TransferCase transferCase() {
        return transferCase;
    }

    /**
     * Returns the rear axle.
     *
     * @return the rear axle
     */
    public AxleRatio rear() {
        return rear;
    }

    /**
     * Returns the hub reduction.
     *
     * @return the hub reduction, or {@link HubReduction#none()}
     */
    public HubReduction hubs() {
        return hubs;
    }

    /**
     * Returns every gear: high range before low; in each range the forward gears from first to top with the auxiliary unit disengaged,
     * then engaged, then reverse.
     *
     * @return the gears
     */
    public List<DriveGear> gears() {
        return gears;
    }

    /**
     * Returns the forward gears of both ranges, shortest first.
     *
     * @return the gears, by falling total ratio
     */
    public List<DriveGear> byTotalRatio() {
        return gears.stream()
                .filter(gear -> !gear.reverse())
                .sorted(SHORTEST_FIRST)
                .toList();
    }

    /**
     * Returns the tallest gear, with an overdrive engaged.
     *
     * @return the forward gear with the smallest total ratio
     */
    public DriveGear top() {
        return forward(TALLEST_FIRST);
    }

    /**
     * Returns the shortest gear: first in the lowest range with an overdrive disengaged, or with an underdrive engaged.
     *
     * @return the forward gear with the greatest total ratio
     */
    public DriveGear lowest() {
        return forward(SHORTEST_FIRST);
    }

    /** The first forward gear in an order; the list of all gears begins with one. */
    private DriveGear forward(Comparator<DriveGear> order) {
        DriveGear first = gears.get(0);
        for (DriveGear gear : gears) {
            if (!gear.reverse() && order.compare(gear, first) < 0) {
                first = gear;
            }
        }
        return first;
    }

    /**
     * Finds a gear with the auxiliary unit disengaged.
     *
     * @param number the number of the forward gear, or 0 for reverse
     * @param range the range
     * @return the gear, or empty if there is no such gear or range
     */
    public Optional<DriveGear> gear(int number, Range range) {
        return gear(number, range, false);
    }

    /**
     * Finds a gear.
     *
     * @param number the number of the forward gear, or 0 for reverse
     * @param range the range
     * @param auxiliaryEngaged true to ask for it with the auxiliary unit engaged
     * @return the gear, or empty if there is no such gear, range or unit
     */
    public Optional<DriveGear> gear(int number, Range range, boolean auxiliaryEngaged) {
        return gears.stream()
                .filter(gear ->
                        gear.number() == number && gear.range() == range && gear.auxiliaryEngaged() == auxiliaryEngaged)
                .findFirst();
    }

    /**
     * Returns what the road speeds rest on, apart from the tire.
     *
     * @return what a decimal axle ratio leaves open, and the state of a converter
     */
    public List<Assumption> speedAssumptions() {
        List<Assumption> assumptions = new ArrayList<>(transmission.coupling().speedAssumptions());
        rear.decimalAssumption().ifPresent(assumptions::add);
        return List.copyOf(assumptions);
    }

    /**
     * Tells whether the other object is a gear train of the same parts.
     *
     * @param other any object
     * @return true if equal
     */
    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof GearTrain that && parts().equals(that.parts());
    }

    /**
     * Returns a hash of the parts.
     *
     * @return the hash
     */
    @Override
    public int hashCode() {
        return parts().hashCode();
    }

    private List<Object> parts() {
        return List.of(transmission, overdrive, transferCase, rear, hubs);
    }

    /**
     * Names the parts.
     *
     * @return the literals of the parts, engine side first
     */
    @Override
    public String toString() {
        return "transmission " + transmission.text() + ", overdrive " + overdrive.text() + ", transfer case "
                + transferCase.text() + ", axle " + rear.text() + ", hubs " + hubs.text();
    }
}
