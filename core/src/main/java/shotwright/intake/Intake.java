package shotwright.intake;

import java.io.IOException;
import java.lang.foreign.Arena;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import shotwright.brep.ExactEngine;
import shotwright.progress.Progress;

/** The door of the intake station: a part file in, an accepted part or the reasons against it out. */
public final class Intake {
    private Intake() {}

    /** Reads a mesh file; STEP needs an engine and is refused here with a clear word. */
    public static IntakeResult read(Path file, IntakeOptions options, Progress progress) {
        return read(file, options, ExactEngine.NONE, progress);
    }

    /**
     * Reads a part file.
     *
     * @param file STL (binary or ASCII), OBJ, 3MF or STEP, told apart by content
     * @param options the owner's choices and the limits
     * @param engine what reads exact solids out of STEP
     * @param progress told how far it is; may stop the work
     * @return the part when one closed solid was found, and in any case the facts and the findings
     * @throws IntakeException when the file cannot be read; a solid that can be read but not molded is a finding instead
     */
    public static IntakeResult read(Path file, IntakeOptions options, ExactEngine engine, Progress progress) {
        Path last = file.getFileName();
        String name = last == null ? file.toString() : last.toString();
        ReadGuard guard = new ReadGuard(name, options.limits(), progress);
        guard.at("opening the file", 0);
        if (Files.isDirectory(file))
            throw guard.fault("", "this is a folder, not a file", "Name the part file inside it");
        try (FileChannel channel = FileChannel.open(file, StandardOpenOption.READ);
                Arena arena = Arena.ofConfined()) {
            long size = channel.size();
            if (size > options.limits().maxByteCount()) throw tooLarge(guard, size);
            ByteBuffer bytes =
                    channel.map(FileChannel.MapMode.READ_ONLY, 0, size, arena).asByteBuffer();
            RawModel model = model(bytes, file, guard, engine);
            return new Assembly(model, size, options, guard).result();
        } catch (NoSuchFileException e) {
            throw guard.fault("", "there is no such file", "Check the name and the folder");
        } catch (AccessDeniedException e) {
            throw guard.fault("", "the file may not be read by this user", "Change the file's permissions");
        } catch (IOException e) {
            throw guard.fault(
                    "", "the disk did not give the file out (" + e.getMessage() + ")", "Copy it to a local disk");
        }
    }

    private static IntakeException tooLarge(ReadGuard guard, long size) {
        return guard.fault(
                "",
                "the file has " + (size >> 20) + " MiB, the most that is read is "
                        + (guard.limits().maxByteCount() >> 20) + " MiB",
                "Export the part coarser, or in a binary format");
    }

    private static RawModel model(ByteBuffer bytes, Path file, ReadGuard guard, ExactEngine engine) throws IOException {
        return switch (Recognition.of(bytes, guard)) {
            case STL_BINARY -> StlBinaryReader.read(bytes, guard);
            case STL_ASCII -> StlAsciiReader.read(bytes, guard);
            case OBJ -> ObjReader.read(bytes, guard);
            case THREE_MF -> ThreeMfReader.read(file, guard);
            case STEP -> StepReader.read(bytes, guard, engine);
        };
    }
}
