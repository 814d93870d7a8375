import { Suspense, lazy, useState } from "react";
import type { BloomStrip } from "../panel/bloom/BloomStrip.tsx";
import * as texts from "./words.ts";

let there: typeof BloomStrip | null = null;

/** Asked for at once: the window waits for it a little, since the sheet gives it room. */
export const bloomStrip = import("../panel/bloom/BloomStrip.tsx").then((part) => {
  there = part.BloomStrip;
  return { default: part.BloomStrip };
});
const LateStrip = lazy(() => bloomStrip);

/** The bloom strip; drawn with the window where it has come by then, else a moment later. */
export function Bloom() {
  const [Here] = useState(() => there);
  if (Here) return <Here />;
  return (
    <Suspense fallback={<p role="status">{texts.loadingBloom}</p>}>
      <LateStrip />
    </Suspense>
  );
}
