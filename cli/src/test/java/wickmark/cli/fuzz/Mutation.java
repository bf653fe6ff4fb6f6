package wickmark.cli.fuzz;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.util.Arrays;
import java.util.Random;
import java.util.zip.CRC32;

/** Damages files by chance, as bad cards, bad lines and bad people do. */
final class Mutation {
  private static final int[] TELLING = {
    0,
    1,
    -1,
    2,
    7,
    8,
    16,
    64,
    127,
    128,
    255,
    256,
    32767,
    32768,
    65535,
    65536,
    0x7fffffff,
    0x80000000
  };
  private static final int HEADER_BYTES = 300;

  private final Random random;

  Mutation(Random random) {
    this.random = random;
  }

  /** Returns a damaged copy of a file; some damage is spliced in from another. */
  byte[] of(byte[] whole, byte[] other) {
    byte[] bytes = whole.clone();
    for (int i = random.nextInt(4); i >= 0 && bytes.length > 16; i--) {
      bytes = once(bytes, other);
    }
    return random.nextBoolean() ? bytes : withChecksums(bytes);
  }

  private byte[] once(byte[] bytes, byte[] other) {
    int at = place(bytes);
    return switch (random.nextInt(9)) {
      case 0 -> flipped(bytes, 1 + random.nextInt(16));
      case 1 -> number(bytes, at, 1);
      case 2 -> number(bytes, at, 2);
      case 3, 4 -> number(bytes, at, 4);
      case 5 -> Arrays.copyOf(bytes, at);
      case 6 -> without(bytes, at, 1 + random.nextInt(200));
      case 7 -> joined(bytes, at, bytes, random.nextInt(bytes.length));
      default -> joined(bytes, at, other, random.nextInt(other.length));
    };
  }

  /** Headers decide more than pixels. */
  private int place(byte[] bytes) {
    int within = random.nextInt(3) > 0 ? Math.min(bytes.length, HEADER_BYTES) : bytes.length;
    return random.nextInt(within);
  }

  private byte[] flipped(byte[] bytes, int bits) {
    for (int i = 0; i < bits; i++) {
      bytes[place(bytes)] ^= (byte) (1 << random.nextInt(8));
    }
    return bytes;
  }

  private byte[] number(byte[] bytes, int at, int size) {
    int value = random.nextBoolean() ? TELLING[random.nextInt(TELLING.length)] : random.nextInt();
    ByteBuffer four = ByteBuffer.allocate(4);
    four.order(random.nextBoolean() ? ByteOrder.BIG_ENDIAN : ByteOrder.LITTLE_ENDIAN);
    four.putInt(value);
    int from = four.order() == ByteOrder.BIG_ENDIAN ? 4 - size : 0;
    System.arraycopy(four.array(), from, bytes, at, Math.min(size, bytes.length - at));
    return bytes;
  }

  private static byte[] without(byte[] bytes, int at, int count) {
    int end = Math.min(bytes.length, at + count);
    byte[] less = Arrays.copyOf(bytes, bytes.length - (end - at));
    System.arraycopy(bytes, end, less, at, bytes.length - end);
    return less;
  }

  private static byte[] joined(byte[] head, int headEnd, byte[] tail, int tailStart) {
    byte[] both = Arrays.copyOf(head, headEnd + tail.length - tailStart);
    System.arraycopy(tail, tailStart, both, headEnd, tail.length - tailStart);
    return both;
  }

  /** A PNG whose checksums fit again, so that the damage comes further in. */
  private static byte[] withChecksums(byte[] bytes) {
    if (bytes.length < 8 || bytes[1] != 'P' || bytes[2] != 'N' || bytes[3] != 'G') {
      return bytes;
    }
    int at = 8;
    while (at + 12 <= bytes.length) {
      long length = ByteBuffer.wrap(bytes, at, 4).getInt();
      if (length < 0 || at + 12 + length > bytes.length) {
        return bytes;
      }
      CRC32 sum = new CRC32();
      sum.update(bytes, at + 4, (int) length + 4);
      ByteBuffer.wrap(bytes, at + 8 + (int) length, 4).putInt((int) sum.getValue());
      at += 12 + (int) length;
    }
    return bytes;
  }
}
