import { Suspense, lazy, useState } from "react";
import type { Planting } from "../../core/model/plan.ts";
import * as texts from "./dialog-words.ts";

// Worked out only for what is opened, and fetched then.
const CrossingShare = lazy(async () => {
  const { CrossingShare: Loaded } = await import("./CrossingShare.tsx");
  return { default: Loaded };
});

/** How much of a planting's seed would be crossed, once it is opened. */
export function CrossingShareFold({ planting }: { readonly planting: Planting }) {
  const [isOpen, setOpen] = useState(false);
  return (
    <details
      className="crossing-share"
      onToggle={({ currentTarget }) => setOpen(currentTarget.open)}
    >
      <summary>{texts.howMuchWouldCross}</summary>
      {isOpen && (
        <Suspense fallback={<p role="status">{texts.estimating}</p>}>
          <CrossingShare planting={planting} />
        </Suspense>
      )}
    </details>
  );
}
