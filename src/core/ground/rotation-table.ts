/**
 * Diseases that wait in the ground for their hosts, and the years without hosts that a source asks.
 * Sources that say "several" or "few" years give no figure and are left out, and so are rules of
 * thumb without a disease.
 */
import type { Taxa } from "./taxa.ts";

export interface RotationRow {
  readonly disease: string;
  /** The crop the row is printed for, as printed. */
  readonly printedFor: string;
  /** Crops it is about, and those that must not have grown there. */
  readonly crop: Taxa;
  readonly hosts: Taxa;
  /** [least, most] years without them; null: never again. */
  readonly years: readonly [number, number] | null;
  readonly source: string;
  /** Printed for seed crops alone. */
  readonly isSeedOnly?: true;
  readonly note?: string;
}

const UCONN = "uconn-rotation";
const BEAN: Taxa = ["Phaseolus vulgaris"];
const BEET: Taxa = ["Beta vulgaris"];
const CABBAGES: Taxa = ["Brassica"];
const EGGPLANT: Taxa = ["Solanum melongena"];
const MELON: Taxa = ["Cucumis melo"];

function years(least: number, most = least): readonly [number, number] {
  return [least, most];
}

type Rest = Pick<RotationRow, "printedFor" | "crop"> & Partial<RotationRow>;

/** A row whose hosts are the crop itself unless others are named. */
function row(disease: string, asked: RotationRow["years"], rest: Rest): RotationRow {
  return { hosts: rest.crop, source: UCONN, ...rest, disease, years: asked };
}

export const rotationTable: readonly RotationRow[] = [
  row("anthracnose", years(2), { printedFor: "bean", crop: BEAN }),
  row("bacterial blight", years(2), { printedFor: "bean", crop: BEAN }),
  row("Cercospora leaf spot", years(3), { printedFor: "beet", crop: BEET }),
  row("clubroot", years(7), {
    printedFor: "cabbage and relatives",
    crop: ["Brassica", "Raphanus"],
    note: "turnip and radish count as well",
  }),
  row("blackleg", years(3, 4), {
    printedFor: "cabbage and relatives",
    crop: CABBAGES,
    note: "turnip counts as well; beside canola the distance from last year's stubble told, and years did not",
  }),
  row("black rot", years(2, 3), {
    printedFor: "cabbage and relatives",
    crop: CABBAGES,
    note: "turnip counts as well",
  }),
  row("yellow leaf blight", years(3), { printedFor: "sweet corn", crop: ["Zea mays"] }),
  row("scab and leaf spot", years(2), { printedFor: "cucumber", crop: ["Cucumis sativus"] }),
  row("Verticillium wilt", years(4), {
    printedFor: "eggplant",
    crop: EGGPLANT,
    hosts: ["Solanum melongena", "Solanum lycopersicum", "Solanum pimpinellifolium", "Capsicum"],
    note: "tomato and pepper count as well, and so do potato, strawberry and brambles",
  }),
  row("fruit rots", years(3), { printedFor: "eggplant", crop: EGGPLANT }),
  row("bottom rot and drop", years(3), { printedFor: "lettuce", crop: ["Lactuca sativa"] }),
  row("leaf spots", years(2), {
    printedFor: "muskmelon",
    crop: MELON,
    hosts: ["Cucumis melo", "Citrullus", "Cucurbita"],
    note: "2 years or more; watermelon, pumpkin and squash count as well",
  }),
  row("scab", years(2), { printedFor: "muskmelon", crop: MELON, note: "2 years or more" }),
  row("Fusarium wilt and root rot", null, {
    printedFor: "asparagus",
    crop: ["Asparagus officinalis"],
    note: "never again without treating the soil",
  }),
  row("Fusarium wilt", years(10, 15), {
    printedFor: "spinach seed crop",
    crop: ["Spinacia oleracea"],
    source: "wsu-spinach-wilt",
    isSeedOnly: true,
    note: "15 years have failed; liming and a soil test can shorten it",
  }),
];
