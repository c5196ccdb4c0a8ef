package shotwright.sheet;

import java.util.ArrayList;
import java.util.List;
import shotwright.press.Press;
import shotwright.resin.Resin;

/** The cautions that stand on every press sheet; they defer to local rules, the makers' manuals and licensed practice. Source: common practice */
final class Cautions {
    private static final List<String> ALWAYS = List.of(
            "Local rules, the safety data sheet and the makers' manuals come first; work on mains wiring, gas and pressure is for licensed people.",
            "Hot melt: face shield, gloves to the forearm, long cotton sleeves. Nobody in line with the nozzle; never look into a blocked one, it may let go.",
            "Purge behind the guard at low speed into a metal tray, never a plastic bucket; lumps stay above 150 °C inside for minutes.",
            "Clamp: guard and interlock shut and never bridged; no hand between the plates while they can move; both hands on the control; power off and locked before reaching in; check mold bolts before the first close; keep the face out of a lever's way.",
            "Take parts out with brass or aluminium tools, only with the pressure at zero and the ram not armed; cut gates away from the body, cut gloves on.",
            "Fumes: draw them off at the nozzle; stop on a sharp smell and leave.",
            "Hot mold and heated plates: gloves; lift more than 15 kg with an aid.",
            "Compressed air for cleaning no more than 0.207 MPa (30 psi) with a chip guard, never on skin or clothes; hearing protection.",
            "Heater bands: earth and a residual-current breaker, a cut-out when a thermocouple fails, an over-temperature limiter of its own.",
            "Drying: no food oven; never above the temperature on this sheet; never two resins that must not meet.");

    private Cautions() {}

    static List<String> of(Resin resin, Press press, double moldC) {
        List<String> out = new ArrayList<>(resin.hazards());
        out.addAll(ALWAYS);
        out.addAll(press.cautions());
        if (resin.id().contains("gf"))
            out.add(
                    "Glass fibre: dust mask of class P2 or N95 at trimming and grinding; it wears aluminium gates quickly.");
        if (resin.id().startsWith("pa")) out.add("Nylon: never dry above 90 °C in air.");
        if (moldC > 90)
            out.add("Water on or in a mold this hot flashes to steam; let pressure off before a mold change.");
        return out.stream().distinct().toList();
    }
}
