package drivetrain.planner;

import drivetrain.refusal.Refusal;
import java.util.List;

/**
 * The least or the greatest of several products, such as a speed that whichever of two limits comes first allows.
 *
 * @param least true for the least, false for the greatest
 * @param products the products, at least one
 */
public record Extreme(boolean least, List<Product> products) implements Figure {

    /**
     * Checks that there is a product.
     *
     * @throws drivetrain.refusal.RefusedException if there is none
     */
    public Extreme {
        products = List.copyOf(products);
        if (products.isEmpty()) {
            throw Refusal.of("extreme", "", "has no products")
                    .allowing("at least one product")
                    .asException();
        }
    }

    /**
     * Takes the least.
     *
     * @param products the products
     * @return their least
     * @throws drivetrain.refusal.RefusedException if there is none
     */
    public static Extreme least(Product... products) {
        return new Extreme(true, List.of(products));
    }

    /**
     * Takes the greatest.
     *
     * @param products the products
     * @return their greatest
     * @throws drivetrain.refusal.RefusedException if there is none
     */
    public static Extreme greatest(Product... products) {
        return new Extreme(false, List.of(products));
    }

    @Override
    public double at(int[] choice) {
        double extreme = products.get(0).at(choice);
        for (int i = 1; i < products.size(); i++) {
            double value = products.get(i).at(choice);
            extreme = least ? Math.min(extreme, value) : Math.max(extreme, value);
        }
        return extreme;
    }

    @Override
    public List<Column> columns() {
        return products.stream()
                .flatMap(product -> product.columns().stream())
                .distinct()
                .toList();
    }
}
