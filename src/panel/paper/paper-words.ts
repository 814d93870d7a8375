/** Words of the dialog that prints. */
import { formOf } from "../../core/words/plurals.ts";

/** `1 page`, `12 pages`. */
export function pagesText(count: number): string {
  return formOf(count, { one: "1 page", other: `${count} pages` });
}

/** How many sheets the map takes at the scale chosen. */
export function sheetsText(count: number): string {
  return formOf(count, {
    one: "The map fits one sheet.",
    other: `The map takes ${count} sheets that overlap.`,
  });
}

export const paperWords = {
  title: (layout: string) => `Paper for ${layout}`,
  parts: "What is printed",
  cards: "Bed cards on a page",
  paper: "Paper",
  lying: "Orientation",
  ratio: "Scale",
  another: "another scale",
  oneTo: "Scale 1 :",
  suggested: (ratio: string) => `${ratio}, as suggested`,
  tooMany: (count: number) =>
    `The map would take ${count} sheets: most likely the scale is mistyped. Choose a coarser one.`,
  many: (count: number) => `Yes, print all ${count} sheets of the map`,
  stakes: "Stake labels: sheet and printer",
  packets: "Packet labels: sheet and printer",
  pages: "Pages",
  count: "Show the pages",
  counting: "Laying out the pages ...",
  counted: "Pages laid out",
  stopCounting: "Stop",
  notCounted: (reason: string) => `The pages were not laid out: ${reason}`,
  nothing: "Nothing is ticked.",
  before: "Before printing:",
  clear: "Nothing stands in the way of printing.",
  pageBefore: "Page before",
  pageNext: "Next page",
  place: (name: string, place: number, of: number) => `${name}, ${place} of ${of}`,
  save: (pages: number | null) =>
    pages === null || pages === 0 ? "Save as PDF" : `Save as PDF, ${pagesText(pages)}`,
  making: "Making the PDF ...",
  made: "Pages made",
  cancel: "Cancel",
  done: (names: readonly string[]) =>
    `Made ${names.join(" and ")}. Print at 100 %, and measure the check bars before use.`,
  failed: (reason: string) => `Nothing was made: ${reason}`,
  labelsApart: "Labels come as files of their own, as they are printed on other sheets.",
} as const;

export const cardChoices = [
  { value: "4", label: "four" },
  { value: "2", label: "two, in larger type" },
] as const;

export const faceWords = {
  legend: "Letters the program has not",
  hint: "Names in scripts other than Latin, Greek and Cyrillic need a face of your own: a TrueType or OpenType file. It is kept on this device and used where the program's own has no letter.",
  label: "Face (TTF, OTF)",
  kept: (name: string) => `In use: ${name}.`,
  remove: "Delete it",
  trying: "Trying the face ...",
  refused: (name: string, reason: string) => `${name}: ${reason}.`,
  unread: "it cannot be read (moved, deleted or not permitted)",
  unkept: "it could not be kept on this device",
} as const;
export const plotMapPdf = "plot map";
export const seasonPdf = "paper for the season";
export const paperFile = (paper: string) => `${paper} paper`;
