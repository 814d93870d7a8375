/**
 * What tabs tell each other. A courtesy only: the lock and the revision check keep plans safe
 * where messages do not arrive.
 */
export type TabMessage =
  | { readonly kind: "saved"; readonly planId: string }
  /** Asks the tab that writes a plan to save it and let go. */
  | { readonly kind: "hand-over"; readonly planId: string }
  | { readonly kind: "handed-over"; readonly planId: string };

const NAME = "wideberth";

let channel: BroadcastChannel | null = null;
const listeners = new Set<(message: TabMessage) => void>();

/** Hears the other tabs; gives back a function that stops. */
export function listenToTabs(listener: (message: TabMessage) => void): () => void {
  if (channel === null && typeof BroadcastChannel !== "undefined") {
    channel = new BroadcastChannel(NAME);
    channel.addEventListener("message", ({ data }: MessageEvent<unknown>) => {
      if (isTabMessage(data)) for (const listen of listeners) listen(data);
    });
  }
  listeners.add(listener);
  return () => {
    listeners.delete(listener);
    if (listeners.size > 0) return;
    channel?.close();
    channel = null;
  };
}

export function tellTabs(message: TabMessage): void {
  channel?.postMessage(message);
}

function isTabMessage(value: unknown): value is TabMessage {
  return (
    typeof value === "object" &&
    value !== null &&
    "kind" in value &&
    (value.kind === "saved" || value.kind === "hand-over" || value.kind === "handed-over") &&
    "planId" in value &&
    typeof value.planId === "string"
  );
}
