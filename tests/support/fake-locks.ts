/** The browser's locks, as far as tabs use them: one holder, a queue, taking away, giving up. */

interface Waiter {
  readonly grant: () => void;
}

export class FakeLocks {
  private readonly holders = new Map<string, { readonly takeAway: () => void }>();
  private readonly queues = new Map<string, Waiter[]>();

  request(
    name: string,
    options: LockOptions,
    callback: (lock: Lock | null) => Promise<unknown> | undefined,
  ): Promise<unknown> {
    return new Promise((resolve, reject) => {
      const grant = () => {
        let isTakenAway = false;
        const takeAway = () => {
          isTakenAway = true;
          reject(new DOMException("The lock was taken away", "AbortError"));
        };
        const holder = { takeAway };
        this.holders.set(name, holder);
        const hold = async () => {
          const value = await callback({ name, mode: "exclusive" });
          if (isTakenAway) return;
          resolve(value);
          this.holders.delete(name);
          this.queues.get(name)?.shift()?.grant();
        };
        void hold();
      };
      if (options.steal) {
        this.holders.get(name)?.takeAway();
        grant();
      } else if (!this.holders.has(name)) grant();
      else if (options.ifAvailable) resolve(callback(null));
      else this.enqueue(name, grant, options.signal, reject);
    });
  }

  private enqueue(
    name: string,
    grant: () => void,
    signal: AbortSignal | undefined,
    reject: (reason: unknown) => void,
  ): void {
    const queue = this.queues.get(name) ?? [];
    this.queues.set(name, queue);
    const waiter = { grant };
    queue.push(waiter);
    signal?.addEventListener("abort", () => {
      const place = queue.indexOf(waiter);
      if (place < 0) return;
      queue.splice(place, 1);
      reject(signal.reason);
    });
  }
}
