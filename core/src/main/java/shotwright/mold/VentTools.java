package shotwright.mold;

import java.util.ArrayList;
import java.util.List;
import shotwright.geom.Vec3;
import shotwright.layout.Vent;

/** Vents as cut-outs: the shallow land, begun a little inside the cavity, and the channel to the open air. */
final class VentTools {
    private static final double INSIDE_MM = 0.3;

    private VentTools() {}

    static List<ConvexTool> of(List<Vent> vents) {
        List<ConvexTool> tools = new ArrayList<>();
        for (int i = 0; i < vents.size(); i++) {
            Vent v = vents.get(i);
            Vec3 out = v.out().unit().atZ(0);
            Vec3 end = v.atMm().plus(out.times(v.landMm()));
            add(
                    tools,
                    "vent " + (i + 1) + ", land",
                    Purpose.VENT_LAND,
                    ChannelShape.box(v.half(), v.atMm(), end, v.widthMm(), v.depthMm(), INSIDE_MM, 0));
            if (v.channelLengthMm() > 0 && v.channelDepthMm() > 0)
                add(
                        tools,
                        "vent " + (i + 1) + ", channel",
                        Purpose.VENT_CHANNEL,
                        ChannelShape.box(
                                v.half(),
                                end,
                                end.plus(out.times(v.channelLengthMm())),
                                v.widthMm(),
                                v.channelDepthMm(),
                                0,
                                ChannelShape.STAND_OUT_MM + v.widthMm()));
        }
        return tools;
    }

    private static void add(List<ConvexTool> tools, String name, Purpose purpose, ChannelShape s) {
        tools.add(new ConvexTool(name, purpose, s.half(), s, s.volumeMm3(), List.of()));
    }
}
