package shotwright.brep.exchange;

import java.util.Optional;

/**
 * What in a STEP file that follows the encoding cannot be meant so.
 *
 * @param entity where
 * @param text what is wrong with it, a sentence without its full stop that names the entity
 */
public record Misfit(Entity entity, String text) {
    /** The first entity with values it cannot have; when there is none, edges and corners that do not meet. */
    public static Optional<Misfit> likeliest(ExchangeFile file) {
        return new EntityRules(file).first().or(() -> new Seams(file).worst());
    }

    /** The same, and when nothing is found the closed body, or the entity where one should be, itself. */
    public static Optional<Misfit> whyNoSolid(ExchangeFile file) {
        return likeliest(file).or(() -> body(file));
    }

    private static Optional<Misfit> body(ExchangeFile file) {
        for (String type : Products.SOLIDS) {
            Optional<Entity> e = file.of(type).findFirst();
            if (e.isPresent()) return Optional.of(of(e.get(), "is a closed body whose faces do not make a solid"));
        }
        return file.of("SHAPE_DEFINITION_REPRESENTATION")
                .findFirst()
                .or(() -> file.of("PRODUCT_DEFINITION").findFirst())
                .or(() -> file.entities().values().stream().findFirst())
                .map(e -> of(e, "and all others describe no closed body"));
    }

    static Misfit of(Entity e, String what) {
        return new Misfit(
                e, "entity #" + e.number() + " (" + e.parts().getFirst().type() + ") " + what);
    }
}
