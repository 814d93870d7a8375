/**
 * The style sheets space and set type by one scale (`src/app/theme.css`): paddings, margins, gaps and
 * sizes of type are steps of it, so that every dialog and list breathes alike. Borders, widths and
 * heights are what they have to be. The few lengths that are no spacing stand in `EXCEPTIONS`.
 */
import { expect, test } from "vitest";
import { filesUnder, textOf } from "./source-files.ts";

/** A length that is no step of the scale, where it stands and why. */
const EXCEPTIONS: ReadonlyMap<string, string> = new Map([
  ["src/app/base.css: margin: -1px", "words for screen readers alone: no room at all"],
  ["src/app/print.css: margin: 2cm", "paper has its own measures"],
  ["src/app/print.css: font-size: 14pt", "paper has its own measures"],
  ["src/app/base.css: font-size: 100%", "what the reader has set is what all sizes count from"],
  ["src/app/narrow.css: padding-bottom: var(--drawer-height)", "the room a drawer takes"],
  ["src/app/lying.css: padding-right: var(--drawer-width)", "the room a drawer takes"],
  [
    "src/app/narrow.css: padding-bottom: calc(50dvh - var(--drawer-bar))",
    "the room a dialog at the foot takes",
  ],
  ["src/panel/form/fields.css: margin: 3rem var(--space-2) auto auto", "below the head"],
  ["src/panel/walk/walk.css: padding-bottom: env(safe-area-inset-bottom)", "a phone's own edge"],
  // The days of the bloom strip are laid out in pixels: knob, axis and bars meet on the day.
  ["src/panel/bloom/bloom.css: padding-right: 8px", "half the slider's knob"],
  ["src/panel/bloom/bloom.css: margin: 0 -8px", "half the slider's knob"],
  ["src/panel/bloom/bloom.css: margin-top: -8px", "half the slider's knob"],
  ["src/panel/bloom/bloom.css: margin-left: var(--codes)", "the column of codes"],
  ["src/panel/bloom/bloom.css: margin-left: -1px", "half the cursor's line"],
  ["src/panel/bloom/bloom.css: margin-left: 8px", "half the slider's knob"],
  ["src/panel/bloom/bloom.css: margin-top: 10px", "bars amid a row made higher for a finger"],
]);

const SPACING = /(?<![\w-])(?:padding|margin|gap|row-gap|column-gap)(?:-[a-z-]+)?: [^;}]+/g;
const TYPE = /(?<![\w-])(?:font-size|font): [^;}]+/g;

const SPACE = "(?:0|auto|var\\(--space-(?:hair|[1-7])\\)|calc\\(-1 \\* var\\(--space-[1-7]\\)\\))";
const ON_SPACE = new RegExp(`: ${SPACE}(?: ${SPACE}){0,3}$`);
const ON_TYPE = /: (?:var\(--type(?:-fine|-small|-head|-title|-code)?\)|inherit)$/;

const sheets = filesUnder("src")
  .filter((path) => path.endsWith(".css"))
  .map((path) => ({
    path,
    text: textOf(path).replaceAll(/\/\*[^*]*\*+(?:[^/*][^*]*\*+)*\//g, ""),
  }));

const found = sheets.flatMap(({ path, text }) => [
  ...(text.match(SPACING) ?? [])
    .filter((line) => !ON_SPACE.test(line))
    .map((line) => `${path}: ${line}`),
  ...(text.match(TYPE) ?? [])
    .filter((line) => !ON_TYPE.test(line))
    .map((line) => `${path}: ${line}`),
]);

test("paddings, margins, gaps and sizes of type are steps of the scale", () => {
  expect(sheets.length).toBeGreaterThan(30);
  expect(found.filter((line) => !EXCEPTIONS.has(line))).toEqual([]);
});

test("every exception is still needed", () => {
  expect([...EXCEPTIONS.keys()].filter((line) => !found.includes(line))).toEqual([]);
});

test("the scale goes up, each step once, and type never falls below 11 px", () => {
  const theme = sheets.find(({ path }) => path.endsWith("theme.css"))?.text ?? "";
  const steps = (name: string) =>
    [...theme.matchAll(new RegExp(`--${name}[a-z0-9-]*: ([0-9.]+)rem`, "g"))].map(([, size]) =>
      Number(size),
    );
  for (const name of ["space", "type"]) {
    const sizes = steps(name);
    expect(sizes.length).toBeGreaterThan(5);
    expect(sizes).toEqual([...new Set(sizes)].sort((a, b) => a - b));
  }
  expect(Math.min(...steps("type")) * 16).toBeGreaterThanOrEqual(11);
});

test("what moves is over within 200 ms", () => {
  const times = sheets.flatMap(({ path, text }) =>
    [...text.matchAll(/(?<![\w-])(?:transition|animation)(?:-duration)?: [^;}]+/g)].flatMap(
      ([line]) =>
        [...line.matchAll(/(?<![\w.])([0-9.]+)(ms|s)(?![\w-])/g)]
          // The first time of a movement is how long it takes; the second is when it begins.
          .slice(0, 1)
          .map(([, size, unit]) => ({
            at: `${path}: ${line}`,
            ms: Number(size) * (unit === "s" ? 1000 : 1),
          })),
    ),
  );
  expect(times.filter(({ ms }) => ms > 200)).toEqual([]);
});

test("what is pressed looks pressed: looks of the pointer over a button end while it is", () => {
  const base = sheets.find(({ path }) => path.endsWith("base.css"))?.text ?? "";
  const hovers = base.match(/button[^{,]*:hover[^{]*/g) ?? [];
  expect(hovers.length).toBeGreaterThan(4);
  expect(hovers.filter((selector) => !selector.includes(":not(:disabled, :active)"))).toEqual([]);
  for (const sort of ["where(", "primary", "quiet", "link", "act"]) {
    expect(base).toMatch(new RegExp(`button[.:]${sort.replace("(", "\\(")}[^{]*:active`));
  }
});
