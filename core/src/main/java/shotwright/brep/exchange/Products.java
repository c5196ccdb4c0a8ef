package shotwright.brep.exchange;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import shotwright.geom.Vec3;

/**
 * The products of a STEP file and how they are put together.
 *
 * @param products by the number of their product definition
 * @param uses one for each place where one product sits in another
 * @param externalFiles names of other files the product structure points to
 * @param solidNames names of the closed bodies, in the order of the file; empty texts where they have none
 */
public record Products(
        Map<Integer, Product> products, List<Use> uses, List<String> externalFiles, List<String> solidNames) {
    /** Types of closed bodies. */
    static final List<String> SOLIDS = List.of("MANIFOLD_SOLID_BREP", "BREP_WITH_VOIDS");

    private static final int DEEPEST = 64;

    /**
     * One product.
     *
     * @param definition number of its product definition
     * @param name its name
     * @param vouched sizes the exporter vouches for, in mm
     */
    public record Product(int definition, String name, Vouched vouched) {}

    /**
     * What an exporter wrote down about a shape for the reader to check; null where it wrote nothing.
     *
     * @param volumeMm3 volume
     * @param areaMm2 surface
     * @param centroidMm centre of volume
     */
    public record Vouched(
            @Nullable Double volumeMm3,
            @Nullable Double areaMm2,
            @Nullable Vec3 centroidMm) {
        static final Vouched NOTHING = new Vouched(null, null, null);
    }

    /**
     * One product sitting in another.
     *
     * @param parent definition of the assembly
     * @param child definition of what sits in it
     */
    public record Use(int parent, int child) {}

    public static Products of(ExchangeFile file) {
        Map<Integer, Product> products = new LinkedHashMap<>();
        Map<Integer, Vouched> vouched = ValidationProperties.of(file);
        file.entities().values().stream()
                .filter(e -> definition(e).isPresent())
                .forEach(e -> products.put(
                        e.number(),
                        new Product(e.number(), name(file, e), vouched.getOrDefault(e.number(), Vouched.NOTHING))));
        List<Use> uses = new ArrayList<>();
        file.of("NEXT_ASSEMBLY_USAGE_OCCURRENCE").forEach(e -> {
            List<Value> v = e.as("NEXT_ASSEMBLY_USAGE_OCCURRENCE").orElseThrow();
            if (v.size() > 4 && v.get(3) instanceof Value.Reference p && v.get(4) instanceof Value.Reference c)
                uses.add(new Use(p.number(), c.number()));
        });
        List<String> files = file.of("DOCUMENT_FILE")
                .flatMap(e ->
                        ExchangeFile.texts(e.as("DOCUMENT_FILE").orElseThrow().subList(0, 1)))
                .filter(n -> n.toLowerCase(Locale.ROOT).matches(".*\\.(stp|step|p21)"))
                .toList();
        List<String> solids = file.entities().values().stream()
                .flatMap(e -> e.parts().stream())
                .filter(p -> SOLIDS.contains(p.type()))
                .map(p -> ExchangeFile.texts(p.values()).findFirst().orElse("").strip())
                .toList();
        return new Products(products, List.copyOf(uses), files, solids);
    }

    private static Optional<List<Value>> definition(Entity e) {
        return e.as("PRODUCT_DEFINITION").or(() -> e.as("PRODUCT_DEFINITION_WITH_ASSOCIATED_DOCUMENTS"));
    }

    /** Definition → formation → product; its name, or its own number where the name is empty. */
    private static String name(ExchangeFile file, Entity definition) {
        List<Value> d = definition(definition).orElseThrow();
        return (d.size() < 3 ? Optional.<Entity>empty() : file.follow(d.get(2)))
                .flatMap(f -> f.parts().getFirst().values().stream()
                        .flatMap(v -> file.follow(v).stream())
                        .filter(p -> p.as("PRODUCT").isPresent())
                        .findFirst())
                .flatMap(p -> ExchangeFile.texts(p.as("PRODUCT").orElseThrow())
                        .filter(t -> !t.isBlank())
                        .findFirst())
                .orElse("#" + definition.number())
                .strip();
    }

    /** Products that sit in no other. */
    public List<Product> roots() {
        return products.values().stream()
                .filter(p -> uses.stream().noneMatch(u -> u.child() == p.definition()))
                .toList();
    }

    /** What sits directly in an assembly, once for each place. */
    public List<Product> childrenOf(int definition) {
        return uses.stream()
                .filter(u -> u.parent() == definition)
                .flatMap(u -> Optional.ofNullable(products.get(u.child())).stream())
                .toList();
    }

    /** Every place a product without children has in the whole, from the roots down, in the order of the file. */
    public List<Product> leaves() {
        List<Product> out = new ArrayList<>();
        for (Product root : roots()) collect(root, out, 0);
        return out;
    }

    private void collect(Product p, List<Product> out, int depth) {
        if (depth > DEEPEST) return;
        List<Product> inside = childrenOf(p.definition());
        if (inside.isEmpty()) out.add(p);
        for (Product c : inside) collect(c, out, depth + 1);
    }

    /** Names for so many solids in the order of the file; empty texts where the file does not tell them apart. */
    public List<String> namesFor(int solids) {
        List<Product> leaves = leaves();
        if (leaves.size() == solids) return leaves.stream().map(Product::name).toList();
        if (solidNames.size() == solids) return solidNames;
        return java.util.Collections.nCopies(solids, "");
    }
}
