/**
 * Contrast of what is painted on the sheet, which no scanner sees: WCAG 2.2, 1.4.3 (text, 4.5:1)
 * and 1.4.11 (graphics, 3:1), with the relative luminance and contrast ratio as WCAG defines them.
 * Colours are read from the window's styles; with forced colours the system's own are used.
 */
import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { FIRST_OPACITY } from "../../../src/core/edits/picture-edits.ts";
import { hatches } from "../../../src/core/page/hatch.ts";

const css = readFileSync(new URL("../../../src/app/theme.css", import.meta.url), "utf8");

type Rgb = readonly [number, number, number];

function rgb(hex: string): Rgb {
  const digits = hex.length === 4 ? hex.replace(/[0-9a-f]/gi, "$&$&") : hex;
  const [red = 0, green = 0, blue = 0] = [1, 3, 5].map((at) =>
    parseInt(digits.slice(at, at + 2), 16),
  );
  return [red, green, blue];
}

/** WCAG 2.2, relative luminance. */
function luminance(colour: Rgb): number {
  const [r = 0, g = 0, b = 0] = colour.map((part) => {
    const share = part / 255;
    return share <= 0.040_45 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
  });
  return 0.2126 * r + 0.7152 * g + 0.0722 * b;
}

function contrast(one: string, two: string): number {
  const [light = 0, dark = 0] = [luminance(rgb(one)), luminance(rgb(two))].sort((a, b) => b - a);
  return (light + 0.05) / (dark + 0.05);
}

/** Custom properties of the first rule with this selector after a place in the styles. */
function colours(selector: string, after = 0): Readonly<Record<string, string>> {
  const start = css.indexOf(`${selector} {`, after);
  const body = css.slice(start, css.indexOf("}", start));
  return Object.fromEntries(
    [...body.matchAll(/--([a-z-]+):\s*(#[0-9a-f]{3,6});/gi)].map(([, name = "", value = ""]) => [
      name,
      value,
    ]),
  );
}

const light = colours(":root");
const dark = { ...light, ...colours(':root[data-theme="dark"]') };
const themes = [
  ["light", light, "light"],
  ["dark", dark, "dark"],
] as const;

const more = colours(':root[data-contrast="more"]');
const darkMore = colours(':root[data-theme="dark"][data-contrast="more"]');
/** For bright sun: WCAG 2.2, 1.4.6, contrast (enhanced). */
const strong = [
  ["bright sun", { ...light, ...more }, "light"],
  ["strong dark", { ...dark, ...more, ...darkMore }, "dark"],
] as const;

/** Every ink that words are written in; all stand on the sheet or have a halo or box of it. */
const WORDS = ["ink", "ink-soft", "held", "conflict", "caution", "clear"];
/** Lines and signs, and the grounds they are drawn on. */
const LINES = [...WORDS, "edge"];
const GROUNDS = ["sheet", "bed"];

test("the formula gives what WCAG says: 21 for black on white, 1 for the same twice", () => {
  expect(contrast("#000", "#fff")).toBeCloseTo(21, 9);
  expect(contrast("#777", "#777")).toBe(1);
  // The familiar limit for grey text on white.
  expect(contrast("#767676", "#ffffff")).toBeGreaterThanOrEqual(4.5);
  expect(contrast("#777777", "#ffffff")).toBeLessThan(4.5);
});

test.each(strong)(
  "%s has words at 7:1 on paper, sheet and beds, and edges at 4.5:1",
  (_, theme) => {
    const ratio = (one: string, two: string) => contrast(theme[one] ?? "", theme[two] ?? "");
    for (const under of ["sheet", "paper", "bed"]) {
      for (const ink of WORDS)
        expect(ratio(ink, under), `${ink} on ${under}`).toBeGreaterThanOrEqual(7);
      expect(ratio("edge", under)).toBeGreaterThanOrEqual(4.5);
    }
    // White on what is held or foremost.
    for (const ground of ["ink", "held", "conflict"]) {
      expect(ratio("on-ink", ground), ground).toBeGreaterThanOrEqual(7);
    }
    // Every colour is its own: none is left from the usual theme.
    expect(Object.keys(more).sort()).toEqual(Object.keys(darkMore).sort());
  },
);

describe.each([...themes, ...strong])("%s", (_, theme, ground) => {
  const colourOf = (name: string) => {
    const colour = theme[name];
    if (colour === undefined) throw new Error(`no --${name}`);
    return colour;
  };

  test.each(WORDS)("words in %s are read at 4.5:1 on the sheet and on paper", (ink) => {
    for (const under of ["sheet", "paper"]) {
      expect(contrast(colourOf(ink), colourOf(under))).toBeGreaterThanOrEqual(4.5);
    }
  });

  test.each(LINES.flatMap((line) => GROUNDS.map((under) => [line, under] as const)))(
    "lines in %s are seen at 3:1 on %s",
    (line, under) => {
      expect(contrast(colourOf(line), colourOf(under))).toBeGreaterThanOrEqual(3);
    },
  );

  test("ink is seen at 3:1 on any photo as strong as it is laid at first", () => {
    const sheet = rgb(colourOf("sheet"));
    for (const dot of ["#000", "#fff"]) {
      const mixed = rgb(dot).map((part, index) =>
        Math.round(part * FIRST_OPACITY + (sheet[index] ?? 0) * (1 - FIRST_OPACITY)),
      );
      const hex = `#${mixed.map((part) => part.toString(16).padStart(2, "0")).join("")}`;
      expect(contrast(colourOf("ink"), hex)).toBeGreaterThanOrEqual(3);
    }
  });

  test("a building's edge is seen on its ground", () => {
    expect(contrast(colourOf("ink"), colourOf("hairline"))).toBeGreaterThanOrEqual(3);
  });

  test.each(hatches.map((hatch) => [hatch.id, hatch] as const))(
    "the hatch %s is seen at 3:1 on its tint, and the outline on the tint",
    (__, { tint, ink }) => {
      expect(contrast(ink[ground], tint[ground])).toBeGreaterThanOrEqual(3);
      for (const edge of ["ink", "ink-soft", "held", "conflict"]) {
        expect(contrast(colourOf(edge), tint[ground])).toBeGreaterThanOrEqual(3);
      }
    },
  );
});
