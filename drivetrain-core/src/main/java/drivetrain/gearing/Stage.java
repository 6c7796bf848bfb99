package drivetrain.gearing;

import java.util.Optional;

/**
 * One stage of the drivetrain in one gear.
 *
 * @param name what it is, such as {@code axle ratio}
 * @param part the part that it belongs to, such as {@code axle 41/10}
 * @param symbol the symbol of its ratio in workings
 * @param ratio its ratio in this gear; 1 where the part is not engaged
 * @param efficiency its efficiency in this gear
 * @param defaulted the default from which the efficiency was taken, or empty where the part states it
 */
public record Stage(
        String name, String part, String symbol, Ratio ratio, Efficiency efficiency, Optional<MeshStage> defaulted) {

    private static final Ratio ONE = Ratio.of(1.0);

    static Stage of(
            String name, String part, String symbol, Ratio ratio, Optional<Efficiency> stated, MeshStage fallback) {
        return stated.isPresent()
                ? new Stage(name, part, symbol, ratio, stated.get(), Optional.empty())
                : new Stage(name, part, symbol, ratio, fallback.efficiency(), Optional.of(fallback));
    }

    static Stage forward(Transmission transmission, Ratio ratio) {
        boolean direct = ratio.value() == 1.0;
        MeshStage fallback = transmission.coupling() instanceof Converter
                ? (direct ? MeshStage.AUTOMATIC_DIRECT : MeshStage.AUTOMATIC_GEAR)
                : (direct ? MeshStage.MANUAL_DIRECT : MeshStage.MANUAL_GEAR);
        return of(
                "gear ratio", "transmission " + transmission.name(), "i_g", ratio, transmission.efficiency(), fallback);
    }

    /** A reverse gear turns the output round, so that it is never direct. */
    static Stage reverse(Transmission transmission, Ratio ratio) {
        MeshStage fallback =
                transmission.coupling() instanceof Converter ? MeshStage.AUTOMATIC_GEAR : MeshStage.MANUAL_GEAR;
        return of(
                "gear ratio", "transmission " + transmission.name(), "i_g", ratio, transmission.efficiency(), fallback);
    }

    static Stage auxiliary(Overdrive overdrive, boolean engaged) {
        String part = "overdrive " + overdrive.name();
        if (engaged) {
            return of(
                    "auxiliary ratio",
                    part,
                    "i_a",
                    overdrive.ratio(),
                    overdrive.efficiency(),
                    MeshStage.AUXILIARY_GEAR);
        }
        Optional<Efficiency> lossless = overdrive.isFitted() ? Optional.empty() : overdrive.efficiency();
        return of("auxiliary ratio", part, "i_a", ONE, lossless, MeshStage.AUXILIARY_DIRECT);
    }

    static Stage range(TransferCase transfer, Ratio ratio) {
        MeshStage fallback = ratio.value() == 1.0 ? MeshStage.TRANSFER_DIRECT : MeshStage.TRANSFER_GEAR;
        return of("range ratio", "transfer case " + transfer.name(), "i_r", ratio, transfer.efficiency(), fallback);
    }

    static Stage axle(AxleRatio axle) {
        return of("axle ratio", "axle " + axle.name(), "i_x", axle.ratio(), axle.efficiency(), MeshStage.HYPOID_AXLE);
    }

    static Stage hub(HubReduction hubs) {
        return of("hub reduction", "hubs " + hubs.name(), "i_h", hubs.ratio(), hubs.efficiency(), MeshStage.HUB);
    }

    /** Tells whether the stage can be left out of a working: nothing is fitted there. */
    boolean isAbsent() {
        return ratio.value() == 1.0 && efficiency.value() == 1.0;
    }
}
