package wickmark.imaging;

/**
 * Is told when a stage of reading begins, in the thread that reads; the stage before has then
 * ended. What is read does not depend on who watches.
 */
@FunctionalInterface
public interface StageWatch {
  void enters(ReadingStage stage);

  /** Nobody watches. */
  static StageWatch nobody() {
    return stage -> {};
  }
}
