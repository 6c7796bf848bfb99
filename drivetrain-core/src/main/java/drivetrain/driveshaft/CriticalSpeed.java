package drivetrain.driveshaft;

import drivetrain.finding.Outcome;
import drivetrain.finding.Working;
import drivetrain.quantity.AngularSpeed;
import drivetrain.quantity.Frequency;
import drivetrain.quantity.Length;
import java.util.List;
import java.util.Optional;

/**
 * The speeds at which a shaft whirls.
 *
 * @param beam the shaft as a beam
 * @param modes its three lowest modes
 * @param tubeAlone the critical speed of the longest piece by the closed form, as if it were its tube from joint to joint
 */
public record CriticalSpeed(BeamShaft beam, List<BeamMode> modes, AngularSpeed tubeAlone) {

    private static final int MODES = 3;

    /** Copies the list. */
    public CriticalSpeed {
        modes = List.copyOf(modes);
    }

    /**
     * Solves for the critical speed of a shaft.
     *
     * @param shaft the shaft
     * @param lengths the length of each piece from joint center to joint center
     * @return the critical speed, or what is missing
     * @throws drivetrain.refusal.RefusedException if the lengths leave no room for the tubes, or are not as many as the pieces
     */
    public static Outcome<CriticalSpeed> of(Driveshaft shaft, List<Length> lengths) {
        return BeamShaft.of(shaft, lengths).map(CriticalSpeed::of);
    }

    private static CriticalSpeed of(BeamShaft beam) {
        return new CriticalSpeed(beam, beam.line().modes(MODES), beam.tubeAlone());
    }

    /**
     * Returns the critical speed of a uniform tube between two joints by the closed form for a Timoshenko beam.
     *
     * @param tube the tube
     * @param material what it is made of
     * @param length from joint center to joint center, greater than zero
     * @return the speed
     * @throws drivetrain.refusal.RefusedException if the length is not greater than zero
     */
    public static AngularSpeed ofUniform(Tube tube, ShaftMaterial material, Length length) {
        length.requirePositive("shaft length");
        return AngularSpeed.ofRadiansPerSecond(BeamFormula.speed(BeamSection.of(tube, material), length.toMeters()));
    }

    /**
     * Returns the critical speed of a uniform slender tube between two joints: (pi / L)^2 sqrt(E I / (rho A)), without shear and rotary inertia. It is what
     * the trade's constants compute, and up to some 1 % too high for the shafts of road vehicles.
     *
     * @param tube the tube
     * @param material what it is made of
     * @param length from joint center to joint center, greater than zero
     * @return the speed
     * @throws drivetrain.refusal.RefusedException if the length is not greater than zero
     */
    public static AngularSpeed ofSlender(Tube tube, ShaftMaterial material, Length length) {
        length.requirePositive("shaft length");
        return AngularSpeed.ofRadiansPerSecond(
                BeamFormula.slenderSpeed(BeamSection.of(tube, material), length.toMeters()));
    }

    /**
     * Returns the lowest speed at which the shaft itself bends.
     *
     * @return the critical speed; that of the third mode if even that is a bounce on the mounts
     */
    public AngularSpeed speed() {
        return modes.stream()
                .filter(BeamMode::isBending)
                .findFirst()
                .orElse(modes.get(modes.size() - 1))
                .speed();
    }

    /**
     * Returns the natural frequency that belongs to the critical speed.
     *
     * @return the frequency of bending
     */
    public Frequency frequency() {
        return speed().toFrequency();
    }

    /**
     * Returns the lowest speed at which the shaft bounces on the mount of its center bearing, where that lies below the critical speed.
     *
     * @return the speed, or empty
     */
    public Optional<AngularSpeed> bounce() {
        BeamMode lowest = modes.get(0);
        return lowest.isBending() ? Optional.empty() : Optional.of(lowest.speed());
    }

    /**
     * Works the critical speed out.
     *
     * @return the working
     */
    public Working working() {
        return CriticalSpeedWorking.of(this);
    }
}
