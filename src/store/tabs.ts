import type { LeasePort, TabMessage } from "./lease";

/**
 * Locks and messages of the browser. Where a page has no locks (opened over plain http from another machine) every request is granted;
 * the writer's token in the database then keeps the older tab from writing.
 */
export function browserTabs(scope: {
  readonly locks?: LockManager;
  readonly Channel?: typeof BroadcastChannel;
}): LeasePort & { close(): void } {
  const channel = scope.Channel ? new scope.Channel("batterboard") : null;
  return {
    hold: (name, wait_ms, force, lost) =>
      scope.locks ? holdLock(scope.locks, name, wait_ms, force, lost) : Promise.resolve(() => undefined),
    post: (message) => channel?.postMessage(message),
    listen(hear) {
      const onMessage = (event: MessageEvent<TabMessage>): void => hear(event.data);
      channel?.addEventListener("message", onMessage);
      return () => channel?.removeEventListener("message", onMessage);
    },
    close: () => channel?.close(),
  };
}

function holdLock(locks: LockManager, name: string, wait_ms: number, force: boolean, lost: () => void): Promise<(() => void) | null> {
  return new Promise((settle) => {
    let held = false;
    const options: LockOptions = force ? { steal: true } : wait_ms === 0 ? { ifAvailable: true } : { signal: AbortSignal.timeout(wait_ms) };
    locks
      .request(name, options, (lock) => {
        if (lock === null) return settle(null);
        held = true;
        return new Promise<void>((release) => settle(() => release()));
      })
      .catch(() => {
        // Rejected while held: another tab took it by force. Rejected before: the wait ran out.
        if (held) lost();
        else settle(null);
      });
  });
}
