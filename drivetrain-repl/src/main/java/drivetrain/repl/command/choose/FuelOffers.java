package drivetrain.repl.command.choose;

import drivetrain.combination.PartKind;
import drivetrain.combination.Slot;
import drivetrain.fuel.Fuel;
import drivetrain.fuel.FuelSystem;
import drivetrain.repl.command.Offer;
import drivetrain.repl.session.Session;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** What can stand next inside the text of a part of a fuel supply. */
final class FuelOffers {

    private static final String[] FITTINGS = {"elbows", "bends", "tees", "check-valves"};
    private static final String[] PRESSURES = {"psi", "kPa", "bar"};
    private static final String[] LENGTHS = {"m", "ft", "mm", "in"};
    private static final String[] DEGREES = {"degC", "degF"};
    private static final String[] FLOWS = {"L/h", "US gal/h"};

    /** What starts a clause of each part behind a comma. */
    private static final Map<Slot, String[]> CLAUSES = Map.of(
            Slot.FUEL,
            Fuel.words().toArray(String[]::new),
            Slot.FEED_LINE,
            new String[] {"filter", "pump"},
            Slot.RETURN_LINE,
            new String[] {"filter"},
            Slot.INJECTORS,
            new String[] {"tested"},
            Slot.FUEL_SYSTEM,
            FuelSystem.words().toArray(String[]::new),
            Slot.TANK,
            new String[] {"usable", "canister", "fill", "day"});

    /** The units of a number behind the word that starts its clause. */
    private static final Map<String, String[]> UNITS = Map.ofEntries(
            Map.entry("ethanol", new String[] {"%"}),
            Map.entry("fill", new String[] {"%"}),
            Map.entry("margin", new String[] {"%"}),
            Map.entry("duty", new String[] {"%"}),
            Map.entry("viscosity", new String[] {"mm2/s"}),
            Map.entry("reid", PRESSURES),
            Map.entry("filter", PRESSURES),
            Map.entry("return", PRESSURES),
            Map.entry("returnless", PRESSURES),
            Map.entry("boost", PRESSURES),
            Map.entry("lift", LENGTHS),
            Map.entry("suction-lift", LENGTHS),
            Map.entry("elevation", new String[] {"m", "ft"}),
            Map.entry("wire", new String[] {"m", "ft"}),
            Map.entry("low", new String[] {"V"}),
            Map.entry("fuel", DEGREES),
            Map.entry("day", DEGREES),
            Map.entry("burns", new String[] {"lb/(hp-h)", "g/kWh"}),
            Map.entry("blower", new String[] {"hp", "kW"}),
            Map.entry("tested", new String[] {"kg/m3", "kg/L"}),
            Map.entry("usable", new String[] {"L", "US gal", "imp gal"}),
            Map.entry("canister", new String[] {"g"}));

    private FuelOffers() {}

    /** Offers what fits behind whole words of a part's text. */
    static List<Offer> of(Session session, Slot slot, List<String> before) {
        String last = before.get(before.size() - 1).toLowerCase(Locale.ROOT);
        List<String> clause = clause(before);
        if (clause.isEmpty()) {
            return Offer.of(CLAUSES.getOrDefault(slot, new String[0]));
        }
        boolean line = slot == Slot.FEED_LINE || slot == Slot.RETURN_LINE;
        if (isNumber(last)) {
            return Offer.of(units(slot, clause, line));
        }
        if (last.equals("x") || last.equals("+")) {
            return Shelves.offers(session, slot.kind());
        }
        if (line) {
            return behindWordOfLine(session, clause, last);
        }
        return behindWord(slot, clause, last);
    }

    private static List<Offer> behindWordOfLine(Session session, List<String> clause, String last) {
        if (last.equals("of")) {
            return Shelves.offers(session, PartKind.FUEL_HOSE);
        }
        if (last.equals("filter")) {
            return Shelves.offers(session, PartKind.FUEL_FILTER);
        }
        boolean measured = clause.size() > 1 && isNumber(clause.get(clause.size() - 2));
        if (!measured) {
            return List.of();
        }
        if (clause.get(0).equals("filter")) {
            return clause.contains("at") ? List.of() : Offer.of("at");
        }
        return clause.contains("of") ? Offer.of("tube", "hose") : Offer.of("of");
    }

    private static List<Offer> behindWord(Slot slot, List<String> clause, String last) {
        boolean measured = clause.size() > 1 && isNumber(clause.get(clause.size() - 2));
        String first = clause.get(0);
        if (first.equals("wire")) {
            return measured ? Offer.of("of") : last.equals("of") ? Offer.of("AWG") : List.of();
        }
        if (first.equals("day") && measured && !clause.contains("to")) {
            return Offer.of("to");
        }
        if (last.equals("fuel") || last.equals("tested")) {
            return Offer.of("at");
        }
        boolean flows = slot == Slot.FUEL_PUMP || slot == Slot.INJECTORS;
        return flows && measured && !clause.contains("at") && !last.equals("v") ? Offer.of("at") : List.of();
    }

    private static String[] units(Slot slot, List<String> clause, boolean line) {
        String first = clause.get(0);
        boolean at = clause.size() > 1 && clause.get(clause.size() - 2).equals("at");
        if (line) {
            return unitsOfLine(clause, first, at);
        }
        String[] units = UNITS.get(first);
        if (units != null) {
            return units;
        }
        return switch (slot) {
            case FUEL -> new String[] {"kg/m3"};
            case FUEL_PUMP -> at ? PRESSURES : new String[] {"V", "L/h", "US gal/h", "A", "x"};
            case INJECTORS -> at ? PRESSURES : new String[] {"x", "lb/h", "cc/min"};
            case FUEL_SYSTEM -> new String[] {"V"};
            default -> new String[] {"L", "US gal", "imp gal"};
        };
    }

    private static String[] unitsOfLine(List<String> clause, String first, boolean at) {
        if (first.equals("filter")) {
            return at ? FLOWS : PRESSURES;
        }
        if (clause.size() > 1) {
            return LENGTHS;
        }
        List<String> either = new ArrayList<>(List.of(LENGTHS));
        either.addAll(List.of(FITTINGS));
        return either.toArray(String[]::new);
    }

    /** The words behind the last comma or semicolon, in lower case; empty right behind one. */
    private static List<String> clause(List<String> before) {
        List<String> clause = new ArrayList<>();
        for (String word : before) {
            boolean ends = word.endsWith(",") || word.endsWith(";");
            if (ends) {
                clause.clear();
            } else {
                clause.add(word.toLowerCase(Locale.ROOT));
            }
        }
        return clause;
    }

    private static boolean isNumber(String word) {
        return !word.isEmpty()
                && word.chars().allMatch(c -> (c >= '0' && c <= '9') || c == '.' || c == '/' || c == '-');
    }
}
