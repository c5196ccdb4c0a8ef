package shotwright.machining.channel;

import java.util.List;
import shotwright.machining.workpiece.Channel;
import shotwright.machining.workpiece.Task;

/**
 * How a channel is made.
 *
 * @param channel the channel
 * @param tasks what the mill does
 * @param notes what a person should know
 */
public record ChannelWay(Channel channel, List<Task> tasks, List<String> notes) {
    public ChannelWay {
        tasks = List.copyOf(tasks);
        notes = List.copyOf(notes);
    }
}
