package shotwright.quote;

/**
 * Cost of one good part: c = (c_mat + c_proc + c_setup + c_tool)/y.
 *
 * <p>c_mat = (m_part + (1 − ρ)·m_feed/n)·(1 + loss)·price/1000; c_proc = (R_m + R_l·a)·t_cyc/(3600·n·OEE). Symbols: masses g, price per kg,
 * ρ share of feed ground and used again, n cavities, R_m press and R_l labour per hour, a share of the cycle a person stands there, t_cyc
 * s, OEE share of the hour that makes parts, y share of good parts. Source: KAZ p. 53.
 */
public final class PartCost {
    private PartCost() {}

    /** Resin in one part with its share of the feed. */
    public static double materialMoney(
            double partG,
            double feedG,
            int cavityCount,
            double regrindShare,
            double lossShare,
            double priceMoneyPerKg) {
        return (partG + (1 - regrindShare) * feedG / cavityCount) * (1 + lossShare) * priceMoneyPerKg / 1000;
    }

    /** Press and hand time in one part. */
    public static double processMoney(
            double pressMoneyPerH,
            double labourMoneyPerH,
            double attendanceShare,
            double cycleS,
            int cavityCount,
            double upTimeShare) {
        return (pressMoneyPerH + labourMoneyPerH * attendanceShare) * cycleS / 3600 / cavityCount / upTimeShare;
    }

    /** Cost of one good part from its pieces. */
    public static double perGoodPartMoney(
            double materialMoney, double processMoney, double setupMoney, double toolMoney, double goodShare) {
        if (!(goodShare > 0 && goodShare <= 1))
            throw new IllegalArgumentException("good share: " + goodShare + " is not between 0 and 1");
        return (materialMoney + processMoney + setupMoney + toolMoney) / goodShare;
    }

    /** Price that keeps a margin of itself: cost/(1 − margin). */
    public static double priceMoney(double costMoney, double marginShare) {
        if (!(marginShare >= 0 && marginShare < 1))
            throw new IllegalArgumentException("margin: " + marginShare + " is not between 0 and 1");
        return costMoney / (1 - marginShare);
    }
}
