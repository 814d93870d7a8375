/** Words of the bloom strip itself and of its commands: those of what lies in it come with that. */
import { formOf } from "../../core/words/plurals.ts";
import type { BloomOrder } from "./bloom-order.ts";

export const foldBloom = "Show or hide the bloom strip";

export const nothingFlowersYet =
  "Nothing that flowers is placed yet. Place a variety, with the day it is sown or set out: its days of bloom then stand here.";
export const bloom = "Bloom";
export const barKey = "hatched: likely; dashed: earliest to latest; striped: in conflict";
export const lateSpring = "Late spring";
export const calendar = "Calendar";
export const hide = "Hide";
export const show = "Show";
export const orderOfTheRows = "Order of the rows";

export const stripHeightWords = {
  label: "Height of the bloom strip",
  title: "Drag, or use the arrow keys: how many rows the bloom strip shows",
  value: (rows: number) => formOf(rows, { one: `${rows} row`, other: `${rows} rows` }),
};

export const orderWords: Readonly<Record<BloomOrder, string>> = {
  flower: "first flower",
  group: "crossing group",
};
