package drivetrain.fuel;

import drivetrain.quantity.Density;
import drivetrain.quantity.KinematicViscosity;
import drivetrain.quantity.Length;
import drivetrain.quantity.Pressure;
import drivetrain.quantity.VolumeFlow;
import drivetrain.refusal.Refusal;

/** One piece of a fuel line. */
public sealed interface LinePiece {

    /**
     * Returns the pressure that the piece costs.
     *
     * @param flow the flow through it
     * @param density the density of the fuel
     * @param viscosity the kinematic viscosity of the fuel
     * @return the loss
     */
    Pressure loss(VolumeFlow flow, Density density, KinematicViscosity viscosity);

    /**
     * A length of tube or hose.
     *
     * @param conduit what it is made of
     * @param length its length, 0.01 to 30 m
     */
    record Run(Conduit conduit, Length length) implements LinePiece {

        static final Length LEAST = Length.ofMeters(0.01);
        static final Length MOST = Length.ofMeters(30.0);

        /**
         * Checks the length.
         *
         * @throws drivetrain.refusal.RefusedException if it is out of range
         */
        public Run {
            length.requireBetween("length of the line", LEAST, MOST, Length.METER);
        }

        @Override
        public Pressure loss(VolumeFlow flow, Density density, KinematicViscosity viscosity) {
            return PipeFlow.friction(flow, conduit.bore(), length, conduit.roughness(), density, viscosity);
        }
    }

    /**
     * A filter in the line.
     *
     * @param filter the filter
     */
    record Filtered(FuelFilter filter) implements LinePiece {
        @Override
        public Pressure loss(VolumeFlow flow, Density density, KinematicViscosity viscosity) {
            return filter.lossAt(flow);
        }
    }

    /**
     * Fittings of one kind.
     *
     * @param kind the kind
     * @param number how many, 1 to 40
     * @param bore the bore of the run that they belong to
     */
    record Fittings(FittingKind kind, int number, Length bore) implements LinePiece {

        static final int MOST_FITTINGS = 40;

        /**
         * Checks the number.
         *
         * @throws drivetrain.refusal.RefusedException if it is out of range
         */
        public Fittings {
            if (number < 1 || number > MOST_FITTINGS) {
                throw Refusal.of("number of fittings", Integer.toString(number), "is out of range")
                        .allowing("1 to " + MOST_FITTINGS)
                        .asException();
            }
        }

        @Override
        public Pressure loss(VolumeFlow flow, Density density, KinematicViscosity viscosity) {
            return PipeFlow.dynamic(PipeFlow.speed(flow, bore), density).times(number * kind.lossCoefficient());
        }
    }
}
