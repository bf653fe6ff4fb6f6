package wickmark.cli.bench;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.opencv.core.Core;
import wickmark.cli.ProgramInProcess;
import wickmark.cli.photo.PhotoFile;

/**
 * One 12-megapixel photo in a warm process on one thread: all that {@code measure} does, decoding
 * alone, and the seven steps by native code.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 15)
@Measurement(iterations = 3, time = 15)
@Fork(
    value = 1,
    jvmArgsAppend = {
      "-Xmx1g",
      "-XX:+UseSerialGC",
      "-Djava.awt.headless=true",
      "-Djava.util.concurrent.ForkJoinPool.common.parallelism=0"
    })
public class PhotoBenchmark {
  private DrawnPhoto photo;
  private byte[] bytes;
  private Path out;

  /** Loads OpenCV, on one thread. */
  @Setup
  public void draw() throws IOException {
    nu.pattern.OpenCV.loadLocally();
    Core.setNumThreads(1);
    boofcv.concurrency.BoofConcurrency.USE_CONCURRENT = false;
    photo = DrawnPhoto.of(1);
    bytes = Files.readAllBytes(photo.file());
    out = Path.of("target", "bench", "records");
  }

  /** The whole command: file to record, table, report and straightened picture. */
  @Benchmark
  public int measure() {
    int exit =
        ProgramInProcess.run(
            new PrintWriter(Writer.nullWriter()),
            "measure",
            photo.file().toString(),
            "--replace",
            "--out",
            out.toString());
    if (exit != 0) {
      throw new IllegalStateException("measuring ended with " + exit);
    }
    return exit;
  }

  /** Decoding alone. */
  @Benchmark
  public PhotoFile decode() throws Exception {
    return PhotoFile.read(photo.file());
  }

  /** The seven steps by OpenCV. */
  @Benchmark
  public int sevenSteps() {
    return SevenSteps.components(bytes, photo.corners());
  }
}
