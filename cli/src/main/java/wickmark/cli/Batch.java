package wickmark.cli;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Iterator;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.locks.ReentrantReadWriteLock;
import java.util.function.Consumer;
import java.util.function.Function;

/**
 * Pictures measured several at a time. What comes of them is told one by one, in the order in which
 * they were named, and does not depend on how many are measured at a time.
 *
 * <p>In memory there are the pictures being measured, one a thread, and the results that wait for
 * their turn, at most a few a thread.
 */
final class Batch {
  private static final int RESULTS_AHEAD = 4;

  private final int threads;
  private final ReentrantReadWriteLock company = new ReentrantReadWriteLock();

  Batch(int threads) {
    this.threads = threads;
  }

  /** Measures all pictures and tells what came of each. */
  <T> void run(
      List<T> pictures, Function<T, PictureResult> measuring, Consumer<PictureResult> told) {
    if (threads == 1 || pictures.size() < 2) {
      pictures.forEach(picture -> told.accept(measuring.apply(picture)));
      return;
    }
    ExecutorService workers = Executors.newFixedThreadPool(Math.min(threads, pictures.size()));
    try {
      Iterator<T> next = pictures.iterator();
      Deque<Future<PictureResult>> running = new ArrayDeque<>();
      while (next.hasNext() || !running.isEmpty()) {
        while (next.hasNext() && running.size() < RESULTS_AHEAD * threads) {
          T picture = next.next();
          running.add(workers.submit(() -> measured(picture, measuring)));
        }
        told.accept(resultOf(running.remove()));
      }
    } finally {
      workers.shutdownNow();
    }
  }

  /** A picture for which the memory did not suffice beside others is measured again alone. */
  private <T> PictureResult measured(T picture, Function<T, PictureResult> measuring) {
    PictureResult result;
    company.readLock().lock();
    try {
      result = measuring.apply(picture);
    } finally {
      company.readLock().unlock();
    }
    if (result.outcome() != PictureResult.Outcome.SHORT_OF_MEMORY) {
      return result;
    }
    company.writeLock().lock();
    try {
      return measuring.apply(picture);
    } finally {
      company.writeLock().unlock();
    }
  }

  private static PictureResult resultOf(Future<PictureResult> result) {
    try {
      return result.get();
    } catch (ExecutionException e) {
      throw new IllegalStateException("measuring a picture always answers", e.getCause());
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("nobody interrupts the main thread", e);
    }
  }
}
