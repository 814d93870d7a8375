import { useEffect, useRef } from "react";

/**
 * What a filter hides leaves the selection: acting on what cannot be seen is how things get lost.
 * Nothing is taken out where the rows changed for another reason.
 * @param asked the filter, as a text
 * @param shown ids the filter leaves
 * @param prune told which ids may stay
 */
export function usePruned(
  asked: string,
  shown: ReadonlySet<string>,
  prune: (shown: ReadonlySet<string>) => void,
): void {
  const last = useRef(asked);
  useEffect(() => {
    if (last.current === asked) return;
    last.current = asked;
    prune(shown);
  }, [asked, shown, prune]);
}
