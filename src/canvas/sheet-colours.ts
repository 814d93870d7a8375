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
const QUERIES = [DARK, FORCED, "(prefers-contrast: more)"];

function readColours(): Colours {
  const root = document.documentElement;
  const styles = getComputedStyle(root);
  const read = (name: string, fallback: string) => styles.getPropertyValue(name).trim() || fallback;
  const chosen = root.dataset.theme;
  const isDark = chosen === undefined ? matchMedia(DARK).matches : chosen === "dark";
  return {
    theme: isDark ? "dark" : "light",
    sheet: read("--sheet", "#FBFAF4"),
    ink: read("--ink", "#22302E"),
    inkSoft: read("--ink-soft", "#5D6B66"),
    hairline: read("--hairline", "#C9C5B5"),
    held: read("--held", "#1F5C7A"),
    conflict: read("--conflict", "#B23A2E"),
    caution: read("--caution", "#9A6B00"),
    clear: read("--clear", "#3E6B4A"),
    bed: read("--bed", "#EFE9DA"),
    sans: read("--sans", "sans-serif"),
    serif: read("--serif", "serif"),
    mono: read("--mono", "monospace"),
    isForced: matchMedia(FORCED).matches,
  };
}

/** The colours of now; read again when the theme, contrast or the system's colours change. */
export function useColours(): Colours {
  const [colours, setColours] = useState(readColours);
  useEffect(() => {
    const reread = () => setColours(readColours());
    const observer = new MutationObserver(reread);
    observer.observe(document.documentElement, { attributeFilter: ["data-theme"] });
    const queries = QUERIES.map((query) => matchMedia(query));
    for (const query of queries) query.addEventListener("change", reread);
    reread();
    return () => {
      observer.disconnect();
      for (const query of queries) query.removeEventListener("change", reread);
    };
  }, []);
  return colours;
}
