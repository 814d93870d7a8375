/** What a page in a made-up language shows: its texts, what is drawn on the sheet, what is cut off. */
import type { Page } from "playwright-core";

export interface Seen {
  readonly texts: readonly string[];
  readonly clipped: readonly string[];
}

declare global {
  interface Window {
    /** Every text drawn on a canvas since it was last read. */
    drawnTexts?: Set<string>;
  }
}

/** From now on the texts drawn on canvases are written down. To be called before the page opens. */
export async function noteDrawnTexts(page: Page): Promise<void> {
  await page.addInitScript(() => {
    const drawn = new Set<string>();
    window.drawnTexts = drawn;
    const { prototype } = CanvasRenderingContext2D;
    for (const name of ["fillText", "strokeText"] as const) {
      const draw = prototype[name];
      prototype[name] = function noted(text: string, ...rest: [number, number, number?]) {
        drawn.add(text);
        draw.call(this, text, ...rest);
      };
    }
  });
}

/** What can be read or heard of the page, what its canvases drew, and what is cut off. */
export function seenOn(page: Page): Promise<Seen> {
  return page.evaluate(() => {
    const texts = new Set<string>(window.drawnTexts);
    window.drawnTexts?.clear();
    const clipped = new Set<string>();
    for (const element of document.querySelectorAll("body *")) {
      if (!element.checkVisibility() || element.closest("script, style, kbd, .code")) continue;
      for (const name of ["aria-label", "title", "placeholder", "aria-valuetext"]) {
        const text = element.getAttribute(name);
        if (text !== null) texts.add(text);
      }
      const own = [...element.childNodes]
        .filter((node) => node.nodeType === Node.TEXT_NODE)
        .map((node) => (node.textContent ?? "").trim())
        .filter((text) => text !== "");
      for (const text of own) texts.add(text);
      if (own.length === 0 || element.closest(".visually-hidden, svg, select")) continue;
      const { overflowX, textOverflow } = getComputedStyle(element);
      // A word that runs out of a button or a cell lies over its neighbour.
      const isBox = overflowX === "visible" && element.matches("button, a, label, th, td, h2, h3");
      const isCut = overflowX === "hidden" || overflowX === "clip" || isBox;
      const isOver = element.clientWidth > 0 && element.scrollWidth > element.clientWidth + 1;
      if (isCut && textOverflow !== "ellipsis" && isOver) {
        clipped.add(`${element.tagName.toLowerCase()}.${element.className}: ${own.join(" ")}`);
      }
    }
    return { texts: [...texts], clipped: [...clipped] };
  });
}
