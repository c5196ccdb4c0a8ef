package shotwright.report;

import java.util.List;

/** What to mind at the mill (handbook of the project, machining 10). The makers' manuals and local rules come first. */
final class MillingCautions {
    static final List<String> ALL = List.of(
            "The mill maker's manual, local rules and your own eyes come first. A program is a proposal: whoever runs it checks program, cutters, zero and clamps.",
            "First run: spindle on, in the air, the zero raised above everything that stands on the table, block by block, rapids turned down, a hand on the stop. Then the first cut at half feed.",
            "Compare the first height the tip comes to with the sheet, to within 1 mm. After a power cut or a limit switch: home again, find the zero again.",
            "Wear eye protection, keep guards shut, tie back hair and sleeves, no gloves near the spindle. Never reach in while it turns. Try the emergency stop each day.",
            "Never past the highest speed of cutter and holder. Warm the spindle up for 10 min. Collets clean, the shank in at least two thirds of the collet, the nut to its maker's torque.",
            "Measure how far each cutter stands out: shorter than the sheet says, and the holder runs into the block.",
            "Check the clamping force before the first cut, and look for lifting when a cutter with much helix climbs.",
            "Aluminium chips: keep coarse ones and fines apart and dry, never water or carbon dioxide on burning fines, no steel grinding dust near them, no vacuum that is not made for it. Metal other than aluminium, magnesium above all, is outside these programs.",
            "Coolant and mist: ventilate, keep off the skin. Alcohol and neat oil burn: not near sparks, never unattended.",
            "Blow chips off with low pressure, 200 kPa at most at the nozzle, behind a guard, never towards a person.",
            "Never leave it alone with a cutter below 1 mm in the spindle.");

    private MillingCautions() {}
}
