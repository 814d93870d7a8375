import { useEffect, useState } from "react";
import { useWindowStore } from "../../store/window/window-store.ts";
import { countWords } from "../findings/findings-words.ts";
import { useCounted } from "../state/followed-plan.ts";
import * as texts from "./words.ts";

/** How long the counts must rest before they are said: never on every frame of a drag. */
const REST_MS = 700;

/** Speaks what happened, and the counts of findings once they rest. */
export function Announcer() {
  const announcement = useWindowStore((state) => state.announcement);
  const counts = useCounted((state) => countWords(state.counts));
  const [spoken, setSpoken] = useState({ counts, text: "" });
  useEffect(() => {
    if (counts === spoken.counts) return;
    const timer = setTimeout(() => setSpoken({ counts, text: texts.findingsAre(counts) }), REST_MS);
    return () => clearTimeout(timer);
  }, [counts, spoken.counts]);
  return (
    <div className="visually-hidden">
      <div role="status" aria-atomic="true">
        {announcement}
      </div>
      <div role="status" aria-atomic="true">
        {spoken.text}
      </div>
    </div>
  );
}

/** What happened, for the eye, for some seconds; a new key starts the time anew. */
export function StatusLine() {
  const announcement = useWindowStore((state) => state.announcement);
  if (announcement === "") return null;
  return (
    <p key={announcement} className="status-line" aria-hidden="true">
      {announcement}
    </p>
  );
}
