package wickmark.cli.photo;

import java.io.IOException;
import javax.imageio.stream.ImageInputStreamImpl;

/**
 * The bytes of a file as the stream that readers want.
 *
 * <p>Some readers take the end of the data for zeros and never stop. Here the end may be met a
 * thousand times, more than any sound file does, and is then an error that no reader expects and
 * swallows.
 */
final class PictureStream extends ImageInputStreamImpl {
  private static final int MOST_ENDS = 1000;

  private final byte[] bytes;
  private int ends;

  PictureStream(byte[] bytes) {
    this.bytes = bytes;
  }

  @Override
  public int read() throws IOException {
    checkClosed();
    bitOffset = 0;
    if (streamPos >= bytes.length) {
      return end();
    }
    return bytes[(int) streamPos++] & 0xff;
  }

  @Override
  public int read(byte[] into, int offset, int length) throws IOException {
    checkClosed();
    bitOffset = 0;
    if (length == 0) {
      return 0;
    }
    if (streamPos >= bytes.length) {
      return end();
    }
    int count = (int) Math.min(length, bytes.length - streamPos);
    System.arraycopy(bytes, (int) streamPos, into, offset, count);
    streamPos += count;
    return count;
  }

  private int end() {
    ends++;
    if (ends > MOST_ENDS) {
      throw new IllegalStateException("the data end before the picture does");
    }
    return -1;
  }

  @Override
  public long length() {
    return bytes.length;
  }
}
