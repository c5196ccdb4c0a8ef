package shotwright.checks.published;

import static shotwright.checks.published.Published.Mark.DERIVED;
import static shotwright.checks.published.Published.Mark.PUBLISHED;

import shotwright.quote.PartCost;

/** Cost of a part. */
class PartCostTest {
    @Published(id = "CV-19", source = "KAZ", where = "p. 53", mark = PUBLISHED)
    void goodParts() {
        Check.absolute(
                "0.152 + 0.082 + 0.347 at 98 % good",
                0.593, PartCost.perGoodPartMoney(0.152, 0.082, 0, 0.347, 0.98), 0.001, "money", "printed digits");
    }

    @Published(id = "F79", source = "KAZ", where = "p. 53, worked quote", mark = DERIVED)
    void workedQuote() {
        double material = PartCost.materialMoney(6, 1.5, 1, 0, 0.03, 3);
        double process = PartCost.processMoney(8, 45, 1, 60, 1, 0.8);
        Check.absolute("resin, 6 g and 1.5 g feed at 3 per kg", 0.02318, material, 5e-6, "money", "printed digits");
        Check.absolute("press and hand, 60 s", 1.104, process, 5e-4, "money", "printed digits");
        double cost = PartCost.perGoodPartMoney(material, process, 1.5 * 53 / 500, 900.0 / 500, 0.97);
        Check.absolute("cost with set-up and mold over 500", 3.182, cost, 5e-4, "money", "printed digits");
        Check.absolute(
                "price with 20 % margin", 3.977, PartCost.priceMoney(cost, 0.2), 1e-3, "money", "printed digits");
    }
}
