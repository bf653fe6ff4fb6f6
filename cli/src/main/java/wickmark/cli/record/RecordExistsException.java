package wickmark.cli.record;

import java.io.IOException;
import java.nio.file.Path;

/** There is a record already, and it was not to be replaced. */
public final class RecordExistsException extends IOException {
  private static final long serialVersionUID = 1L;

  private final transient Path folder;

  public RecordExistsException(Path folder) {
    super("there is a record in " + folder);
    this.folder = folder;
  }

  public Path folder() {
    return folder;
  }
}
