/** Colours and faces of type of the sheet, read from the window's styles. */
import { useEffect, useState } from "react";

export interface Colours {
  readonly theme: "light" | "dark";
  readonly sheet: string;
  readonly ink: string;
  readonly inkSoft: string;
  readonly hairline: string;
  readonly held: string;
  readonly conflict: string;
  readonly caution: string;
  readonly clear: string;
  readonly bed: string;
  readonly sans: string;
  readonly serif: string;
  readonly mono: string;
  /** The system's own few colours are in force: hatches give up their tints. */
  readonly isForced: boolean;
}

const DARK = "(prefers-color-scheme: dark)";
const FORCED = "(forced-colors: active)";
const QUERIES = [DARK, FORCED];

function readColours(): Colours {
  const root = document.documentElement;
  const styles = getComputedStyle(root);
  const read = (name: string, fallback: string) => styles.getPropertyValue(name).trim() || fallback;
  const isForced = matchMedia(FORCED).matches;
  // A canvas does not follow forced colours: what the system's names stand for is asked for.
  const named = (name: string, fallback: string) => {
    const value = read(name, fallback);
    return isForced ? systemColour(value) : value;
  };
  const chosen = root.dataset.theme;
  const isDark = chosen === undefined ? matchMedia(DARK).matches : chosen === "dark";
  return {
    theme: isDark ? "dark" : "light",
    sheet: named("--sheet", "#FBFAF4"),
    ink: named("--ink", "#22302E"),
    inkSoft: named("--ink-soft", "#5D6B66"),
    hairline: named("--hairline", "#C9C5B5"),
    held: named("--held", "#1F5C7A"),
    conflict: named("--conflict", "#B23A2E"),
    caution: named("--caution", "#8A6000"),
    clear: named("--clear", "#3E6B4A"),
    bed: named("--bed", "#EFE9DA"),
    sans: read("--sans", "sans-serif"),
    serif: read("--serif", "serif"),
    mono: read("--mono", "monospace"),
    isForced,
  };
}

/** What a system colour's name, such as `CanvasText`, stands for at this moment. */
function systemColour(name: string): string {
  const probe = document.createElement("span");
  probe.style.color = name;
  document.body.append(probe);
  const { color } = getComputedStyle(probe);
  probe.remove();
  return color;
}

function isSame(one: Colours, other: Colours): boolean {
  return JSON.stringify(one) === JSON.stringify(other);
}

/** The colours of now; read again when the theme, contrast or the system's colours change. */
export function useColours(): Colours {
  const [colours, setColours] = useState(readColours);
  useEffect(() => {
    const reread = () => setColours(readColours());
    const rereadIfOther = () => {
      const now = readColours();
      setColours((before) => (isSame(before, now) ? before : now));
    };
    const observer = new MutationObserver(reread);
    observer.observe(document.documentElement, {
      attributeFilter: ["data-theme", "data-contrast"],
    });
    const queries = QUERIES.map((query) => matchMedia(query));
    for (const query of queries) query.addEventListener("change", reread);
    // Faces of type come after the first picture; what is drawn by then is drawn again.
    document.fonts.addEventListener("loadingdone", reread);
    // What stands as it was read at first is not drawn and measured once more.
    rereadIfOther();
    return () => {
      observer.disconnect();
      for (const query of queries) query.removeEventListener("change", reread);
      document.fonts.removeEventListener("loadingdone", reread);
    };
  }, []);
  return colours;
}
