import { useEffect, useRef, useState } from "react";

export type Making<Made> =
  | { readonly kind: "idle" }
  | { readonly kind: "making"; readonly done: number; readonly total: number }
  | { readonly kind: "made"; readonly made: Made }
  | { readonly kind: "failed"; readonly reason: string };

/** Makes something; null when the signal told it to stop. */
type Maker<Made> = (
  onProgress: (done: number, total: number) => void,
  signal: AbortSignal,
) => Promise<Made | null>;

/** One thing at a time that takes a while, with progress and cancel; leaving the place stops it. */
export function useMaking<Made>() {
  const [state, setState] = useState<Making<Made>>({ kind: "idle" });
  const running = useRef<AbortController | null>(null);
  useEffect(() => () => running.current?.abort(), []);
  const start = async (make: Maker<Made>) => {
    const controller = new AbortController();
    const { signal } = controller;
    running.current?.abort();
    running.current = controller;
    const say = (next: Making<Made>) => {
      if (!signal.aborted) setState(next);
    };
    say({ kind: "making", done: 0, total: 0 });
    try {
      const made = await make((done, total) => say({ kind: "making", done, total }), signal);
      if (made !== null) say({ kind: "made", made });
    } catch (error) {
      say({ kind: "failed", reason: error instanceof Error ? error.message : String(error) });
    }
  };
  const cancel = () => {
    running.current?.abort();
    setState({ kind: "idle" });
  };
  return { state, start, cancel };
}
