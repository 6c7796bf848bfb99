package drivetrain.road;

import drivetrain.finding.Outcome;
import drivetrain.quantity.Length;
import drivetrain.quantity.Mass;
import drivetrain.quantity.Speed;
import drivetrain.quantity.Time;
import drivetrain.road.SpeedRun.Gear;
import drivetrain.road.SpeedRun.Mark;
import drivetrain.road.SpeedRun.Phase;
import drivetrain.road.SpeedRun.Plan;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.apache.commons.math3.ode.FirstOrderDifferentialEquations;
import org.apache.commons.math3.ode.events.EventHandler;
import org.apache.commons.math3.ode.nonstiff.DormandPrince54Integrator;

/** Integrates the motion piece by piece; the state is speed, distance, work of the driving force and work of the resistance. */
final class SpeedRunIntegrator {

    /** The longest run, 300 s; what takes longer is not worth a figure. */
    private static final double LONGEST = 300.0;

    /** An acceleration below this, m/s2, counts as none. */
    private static final double NO_ACCELERATION = 0.005;

    private static final double[] ABSOLUTE = {1e-6, 1e-5, 1e-1, 1e-1};
    private static final double[] RELATIVE = {1e-8, 1e-8, 1e-8, 1e-8};
    private static final double LEAST_STEP = 1e-9;
    private static final double MOST_STEP = 5.0;
    private static final double CHECK_INTERVAL = 0.5;
    private static final double EVENT_TOLERANCE = 1e-7;
    private static final int MOST_ITERATIONS = 100;

    private final Plan plan;
    private final double targetSpeed;
    private final double targetDistance;
    private final List<Speed> wanted;
    private final List<Mark> marks = new ArrayList<>();
    private final List<Phase> phases = new ArrayList<>();
    private final double[] state = new double[4];
    private double time;

    SpeedRunIntegrator(Plan plan, double targetSpeed, double targetDistance, List<Speed> wanted) {
        this.plan = plan;
        this.targetSpeed = targetSpeed;
        this.targetDistance = targetDistance;
        this.wanted = wanted.stream().sorted().toList();
    }

    Outcome<SpeedRun> run() {
        List<Gear> gears = plan.gears();
        for (int i = 0; i < gears.size(); i++) {
            Gear gear = gears.get(i);
            boolean last = i + 1 == gears.size();
            double end = last
                    ? Math.min(targetSpeed, gear.curve().highest().si())
                    : gear.upshift().si();
            if (!last && state[0] >= end) {
                continue;
            }
            if (!pull(gear, Math.min(end, targetSpeed))) {
                return Outcome.notEvaluated("the vehicle does not get there: in "
                        + gear.curve().label() + " nothing accelerates it beyond "
                        + Speed.ofMetersPerSecond(state[0]).format(Speed.MILE_PER_HOUR, 1));
            }
            if (isThere()) {
                return Outcome.of(result());
            }
            if (!last && plan.shiftTime().si() > 0.0) {
                coast();
                if (isThere()) {
                    return Outcome.of(result());
                }
            }
        }
        return Outcome.notEvaluated(
                "the gearing ends at " + Speed.ofMetersPerSecond(state[0]).format(Speed.MILE_PER_HOUR, 1));
    }

    private boolean isThere() {
        return state[0] >= targetSpeed - 1e-6 || state[1] >= targetDistance - 1e-4;
    }

    private SpeedRun result() {
        marks.sort(Comparator.comparing(Mark::speed));
        return new SpeedRun(
                Time.ofSeconds(time), Speed.ofMetersPerSecond(state[0]), Length.ofMeters(state[1]), marks, phases);
    }

    /** Pulls in one gear up to a speed; false if the speed is never reached. */
    private boolean pull(Gear gear, double end) {
        DoubleUnaryOperator force =
                speed -> Math.min(gear.curve().newtonsAt(speed), plan.grip().si());
        if (acceleration(force, gear.effectiveMass(), state[0]) <= NO_ACCELERATION) {
            return false;
        }
        integrate(gear.curve().label(), force, gear.effectiveMass(), time + LONGEST, end);
        return state[0] >= end - 1e-6 || state[1] >= targetDistance - 1e-4;
    }

    private void coast() {
        integrate(
                "shift",
                speed -> 0.0,
                plan.coastingMass(),
                time + plan.shiftTime().si(),
                Double.POSITIVE_INFINITY);
    }

    private double acceleration(DoubleUnaryOperator force, Mass mass, double speed) {
        return (force.applyAsDouble(speed) - plan.resistance().totalNewtons(speed)) / mass.si();
    }

    private void integrate(String label, DoubleUnaryOperator force, Mass mass, double until, double end) {
        double start = time;
        double[] before = state.clone();
        DormandPrince54Integrator integrator = new DormandPrince54Integrator(LEAST_STEP, MOST_STEP, ABSOLUTE, RELATIVE);
        boolean driven = Double.isFinite(end);
        if (driven) {
            stopAt(integrator, y -> end - y[0]);
            stopAt(integrator, y -> acceleration(force, mass, y[0]) - NO_ACCELERATION);
            wanted.stream()
                    .filter(mark -> mark.si() > before[0] && mark.si() < end)
                    .forEach(mark -> noteAt(integrator, mark));
        }
        if (Double.isFinite(targetDistance)) {
            stopAt(integrator, y -> targetDistance - y[1]);
        }
        time = integrator.integrate(motion(force, mass), time, state, until, state);
        phases.add(new Phase(
                label,
                Time.ofSeconds(start),
                Time.ofSeconds(time),
                Speed.ofMetersPerSecond(before[0]),
                Speed.ofMetersPerSecond(state[0]),
                Length.ofMeters(state[1] - before[1]),
                mass,
                state[2] - before[2],
                state[3] - before[3]));
        if (driven && wanted.stream().anyMatch(mark -> mark.si() == end)) {
            mark(Speed.ofMetersPerSecond(end), time, state[1]);
        }
    }

    private FirstOrderDifferentialEquations motion(DoubleUnaryOperator force, Mass mass) {
        return new FirstOrderDifferentialEquations() {
            @Override
            public int getDimension() {
                return 4;
            }

            @Override
            public void computeDerivatives(double t, double[] y, double[] derivatives) {
                double driving = force.applyAsDouble(y[0]);
                double resisting = plan.resistance().totalNewtons(y[0]);
                derivatives[0] = (driving - resisting) / mass.si();
                derivatives[1] = y[0];
                derivatives[2] = driving * y[0];
                derivatives[3] = resisting * y[0];
            }
        };
    }

    /** A function of the state whose zero is an event. */
    @FunctionalInterface
    private interface Switch {
        double at(double[] y);
    }

    private static void stopAt(DormandPrince54Integrator integrator, Switch zero) {
        add(integrator, zero, (t, y) -> EventHandler.Action.STOP);
    }

    private void noteAt(DormandPrince54Integrator integrator, Speed mark) {
        add(integrator, y -> mark.si() - y[0], (t, y) -> {
            mark(mark, t, y[1]);
            return EventHandler.Action.CONTINUE;
        });
    }

    private void mark(Speed speed, double at, double distance) {
        if (marks.stream().noneMatch(known -> known.speed().equals(speed))) {
            marks.add(new Mark(speed, Time.ofSeconds(at), Length.ofMeters(distance)));
        }
    }

    /** What to do at an event. */
    @FunctionalInterface
    private interface Reaction {
        EventHandler.Action to(double t, double[] y);
    }

    private static void add(DormandPrince54Integrator integrator, Switch zero, Reaction reaction) {
        integrator.addEventHandler(
                new EventHandler() {
                    @Override
                    public void init(double t0, double[] y0, double t) {}

                    @Override
                    public double g(double t, double[] y) {
                        return zero.at(y);
                    }

                    @Override
                    public Action eventOccurred(double t, double[] y, boolean increasing) {
                        return reaction.to(t, y);
                    }

                    @Override
                    public void resetState(double t, double[] y) {}
                },
                CHECK_INTERVAL,
                EVENT_TOLERANCE,
                MOST_ITERATIONS);
    }
}
