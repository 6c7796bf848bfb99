package drivetrain.comparison;

import drivetrain.combination.Combination;
import drivetrain.combination.Slot;
import drivetrain.engine.Engine;
import drivetrain.engine.OperatingPoint;
import drivetrain.engine.TorqueCurve;
import drivetrain.engine.TorqueSource;
import drivetrain.finding.Outcome;
import drivetrain.quantity.Figure;
import drivetrain.quantity.UnitSystem;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The torque at the measured points of the engine's curve, each known within a fraction of itself.
 *
 * <p>At the extremes all points are off the same way, as by a brake that reads high or low, because every measure that uses the curve grows or falls with each of
 * them. Drawn by chance each point is off by itself.
 */
final class UncertainCurve extends Uncertain {

    static final String WORD = "torque curve";

    private final double fraction;

    UncertainCurve(double fraction) {
        this.fraction = fraction;
    }

    @Override
    public String word() {
        return WORD;
    }

    @Override
    public String text(UnitSystem units) {
        return "torque at each measured point within "
                + Figure.percent(fraction, 2).text(units);
    }

    @Override
    Optional<String> missing(Combination combination) {
        Outcome<Engine> engine = combination.needEngine();
        return engine.reason()
                .or(() -> engine.map(Engine::torque).orThrow() instanceof TorqueCurve
                        ? Optional.empty()
                        : Optional.of(
                                "the engine has no torque curve with measured points; peaks alone are an estimate"));
    }

    @Override
    int ends(Combination combination) {
        return 1;
    }

    @Override
    int draws(Combination combination) {
        TorqueSource torque = combination.needEngine().orThrow().torque();
        return torque instanceof TorqueCurve curve ? curve.points().size() : 1;
    }

    @Override
    void apply(Map<Slot, Object> items, double[] errors) {
        Engine engine = (Engine) items.get(Slot.ENGINE);
        if (engine != null && engine.torque() instanceof TorqueCurve curve) {
            List<OperatingPoint> points = new ArrayList<>();
            for (int i = 0; i < curve.points().size(); i++) {
                OperatingPoint point = curve.points().get(i);
                double error = errors[errors.length == 1 ? 0 : i];
                points.add(new OperatingPoint(point.speed(), point.torque().times(1.0 + fraction * error)));
            }
            items.put(Slot.ENGINE, engine.withTorque(TorqueCurve.of(points)));
        }
    }
}
