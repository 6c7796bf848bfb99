package drivetrain.gearing;

import drivetrain.finding.Assumption;
import drivetrain.quantity.DecimalText;
import drivetrain.refusal.Refusal;
import drivetrain.table.ReferenceTable;
import drivetrain.table.TableRow;
import java.util.EnumMap;
import java.util.Map;

/**
 * A stage of the drivetrain whose efficiency has a default, for parts that state none. The values stand in {@code
 * reference-tables/gearing/mesh-efficiency.csv}, each with its source.
 */
public enum MeshStage {
    /** A manual transmission in the gear whose ratio is exactly 1, taken to be direct. */
    MANUAL_DIRECT("manual-direct"),
    /** A manual transmission in any other gear. */
    MANUAL_GEAR("manual-gear"),
    /** An automatic transmission, its converter not counted, in the gear whose ratio is exactly 1. */
    AUTOMATIC_DIRECT("automatic-direct"),
    /** An automatic transmission, its converter not counted, in any other gear. */
    AUTOMATIC_GEAR("automatic-gear"),
    /** An auxiliary unit that is not engaged and turns as one. */
    AUXILIARY_DIRECT("auxiliary-direct"),
    /** An auxiliary unit that is engaged. */
    AUXILIARY_GEAR("auxiliary-gear"),
    /** A transfer case range whose ratio is exactly 1. */
    TRANSFER_DIRECT("transfer-direct"),
    /** A transfer case range of any other ratio. */
    TRANSFER_GEAR("transfer-gear"),
    /** Hypoid ring gear and pinion with bearings. */
    HYPOID_AXLE("hypoid-axle"),
    /** One gear pair or planetary set in a wheel hub. */
    HUB("hub-reduction");

    private final String key;

    MeshStage(String key) {
        this.key = key;
    }

    /**
     * Returns the default efficiency.
     *
     * @return more than 0, at most 1
     */
    public Efficiency efficiency() {
        return entry().efficiency;
    }

    /**
     * Returns the statement that the default was taken.
     *
     * @return the assumption, flagged whatever the source, because the part itself may differ
     */
    public Assumption assumption() {
        return entry().assumption;
    }

    private Entry entry() {
        Entry entry = Defaults.ENTRIES.get(this);
        if (entry == null) {
            throw Refusal.of("mesh efficiency", key, "has no row in the reference table")
                    .asException();
        }
        return entry;
    }

    private record Entry(Efficiency efficiency, Assumption assumption) {}

    /** Loads the table when the first default is asked for. */
    private static final class Defaults {
        static final Map<MeshStage, Entry> ENTRIES = load();

        private static Map<MeshStage, Entry> load() {
            Map<MeshStage, Entry> entries = new EnumMap<>(MeshStage.class);
            for (TableRow row :
                    ReferenceTable.load("gearing/mesh-efficiency.csv").rows()) {
                for (MeshStage stage : values()) {
                    if (stage.key.equals(row.text("stage"))) {
                        entries.put(stage, entry(row));
                    }
                }
            }
            return entries;
        }

        private static Entry entry(TableRow row) {
            Efficiency efficiency = Efficiency.of(row.number("efficiency"));
            String statement = row.text("description") + ": efficiency " + DecimalText.shortest(efficiency.value())
                    + " by default (" + row.text("from") + " to " + row.text("to") + "), the part states none";
            return new Entry(
                    efficiency, Assumption.flagged("efficiency of " + row.text("stage"), statement, row.source()));
        }
    }
}
