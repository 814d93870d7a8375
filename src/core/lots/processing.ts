/**
 * From the harvested fruit or stalk to dry seed: which way a kind is cleaned, how long it takes,
 * how warm it may get. Every figure says whether it was read in a source, is common practice, or
 * is recalled and unchecked.
 */
import type { Kind } from "../kinds/crop.ts";

/** `dry`: ripens and dries on the plant. `wet`: washed out of the ripe fruit. `fermented`: left to ferment first. */
export type ProcessingWay = "dry" | "wet" | "fermented";
export type Trust = "seen" | "common practice" | "from memory";

/** Something said of a kind, and who says it. */
export interface Said {
  readonly text: string;
  readonly trust: Trust;
  /** Title and publisher, for what was read. */
  readonly source?: string;
}

export interface Processing {
  readonly way: ProcessingWay;
  /** How the way was told. */
  readonly wayTrust: Pick<Said, "trust" | "source">;
  /** When it is ripe enough. */
  readonly cue: Said | null;
  /** Whole days, [least, most], that pulp ferments or soaks; null for dry seed. */
  readonly wetDays: readonly [number, number] | null;
  readonly wet: Said | null;
  /** Whole days, [least, most], that stalks or pods lie under a roof before they are threshed. */
  readonly cureDays: readonly [number, number] | null;
  /** Whole days of drying the clean seed. */
  readonly dryDays: readonly [number, number];
  /** Air no warmer than this while it dries, C. */
  readonly limits: readonly Said[];
  /** What can hurt whoever does it. */
  readonly cautions: readonly string[];
}

const AVRDC =
  "Sukprakarn, Juntakool, Huang and Kalb, Saving your own vegetable seeds, AVRDC 05-647, 2005";
const ICAR = "e-course on vegetable seed production, Indian Council of Agricultural Research, 2012";
const ICAR_AFTER =
  "e-course on post-harvest handling, Indian Council of Agricultural Research, 2012";
const TNAU = "seed certification pages, Tamil Nadu Agricultural University";
const ACID_TRIAL = "Pritpal and Arindam, Pharma Innovation Journal 11(7S):369-372, 2022, abstract";

const seen = (text: string, source: string): Said => ({ text, trust: "seen", source });
const practice = (text: string): Said => ({ text, trust: "common practice" });
const recalled = (text: string): Said => ({ text, trust: "from memory" });

interface Row {
  readonly kinds: readonly string[];
  readonly way: ProcessingWay;
  readonly wayTrust: Processing["wayTrust"];
  readonly cue?: Said;
  readonly wetDays?: readonly [number, number];
  readonly wet?: Said;
  readonly cureDays?: readonly [number, number];
  readonly caution?: string;
}

const CLASS_LIST = { trust: "seen", source: ICAR } as const;
const WET_LIST = { trust: "seen", source: AVRDC } as const;
const RECALLED = { trust: "from memory" } as const;

const HOT = "gloves, and fresh air: hot pepper on hands gets into eyes, and its dust into lungs";

const words = (text: string): readonly string[] => text.trim().split(/\s+/);

const ROWS: readonly Row[] = [
  {
    kinds: ["tomato", "currant-tomato"],
    way: "fermented",
    wayTrust: { trust: "seen", source: AVRDC },
    cue: seen("fully coloured and ripe", AVRDC),
    wetDays: [1, 3],
    wet: seen(
      "1 to 2 days at 25 to 30 C; in a trial 72 hours gave most fungus (Pharma Innovation Journal 2022, abstract)",
      `${AVRDC}; ${ACID_TRIAL}`,
    ),
  },
  {
    kinds: ["cucumber", "west-india-gherkin"],
    way: "fermented",
    wayTrust: CLASS_LIST,
    cue: seen("left on the vine until brownish or yellow", AVRDC),
    wetDays: [1, 3],
    wet: recalled("1 to 3 days at 20 to 27 C; hold the ripe fruit one to three weeks before"),
  },
  {
    kinds: ["melon", "watermelon", "citron-melon"],
    way: "wet",
    wayTrust: WET_LIST,
    cue: recalled("ripe to eat, or a little over"),
    wetDays: [0, 2],
    wet: recalled("rinse at once, or cover with water for up to 2 days; sinkers are kept"),
  },
  {
    kinds: words(`summer-squash pumpkin winter-squash butternut cushaw fig-leaf-gourd
      ornamental-gourd`),
    way: "wet",
    wayTrust: WET_LIST,
    cue: recalled("rind hard; hold the fruit three to eight weeks"),
    wetDays: [0, 1],
    wet: recalled("scoop, rub and wash; no ferment is needed"),
  },
  {
    kinds: ["eggplant"],
    way: "wet",
    wayTrust: CLASS_LIST,
    cue: seen("40 to 45 days after flowering, skin from green to bright yellow", TNAU),
    wetDays: [0, 1],
    wet: seen("soak overnight, then wash", TNAU),
  },
  {
    kinds: ["tomatillo", "husk-tomato"],
    way: "wet",
    wayTrust: RECALLED,
    cue: recalled("fruit falls, husk dry"),
    wetDays: [0, 2],
    wet: recalled("pulse in three to four volumes of water and pour off the pulp"),
  },
  {
    kinds: ["bitter-gourd", "wax-gourd"],
    way: "wet",
    wayTrust: WET_LIST,
    cue: seen("bitter gourd orange, wax gourd powdery", AVRDC),
    wetDays: [0, 1],
  },
  {
    kinds: ["hot-pepper", "habanero", "bird-pepper", "aji", "rocoto"],
    way: "dry",
    wayTrust: CLASS_LIST,
    cue: seen("fully ripe pods, picked and dried", ICAR),
    cureDays: [15, 20],
    caution: HOT,
  },
  {
    kinds: ["pepper"],
    way: "dry",
    wayTrust: CLASS_LIST,
    cue: seen("red ripe", ICAR),
    cureDays: [0, 3],
  },
  {
    kinds: ["bottle-gourd", "luffa", "angled-luffa"],
    way: "dry",
    wayTrust: CLASS_LIST,
    cue: seen("left until dry", AVRDC),
    cureDays: [0, 14],
  },
  {
    kinds: ["onion", "bunching-onion", "leek", "chives"],
    way: "dry",
    wayTrust: CLASS_LIST,
    cue: seen("half of the seed in the head black; heads shatter", TNAU),
    cureDays: [7, 14],
  },
  {
    kinds: ["carrot"],
    way: "dry",
    wayTrust: CLASS_LIST,
    cue: seen("second and third umbels brown", ICAR),
    cureDays: [7, 14],
  },
  {
    kinds: ["radish", "winter-radish"],
    way: "dry",
    wayTrust: CLASS_LIST,
    cue: seen("pods brown, like parchment", ICAR),
    cureDays: [7, 14],
  },
  {
    kinds: ["turnip"],
    way: "dry",
    wayTrust: CLASS_LIST,
    cue: seen("plants brown, like parchment; it shatters", ICAR),
    cureDays: [7, 14],
  },
  {
    kinds: ["coriander"],
    way: "dry",
    wayTrust: CLASS_LIST,
    cue: seen("plants light yellow to brown; it shatters", ICAR),
    cureDays: [7, 14],
  },
  {
    kinds: ["grain-amaranth", "leaf-amaranth", "love-lies-bleeding", "blood-amaranth"],
    way: "dry",
    wayTrust: CLASS_LIST,
    cue: seen("flower head yellowish brown; it shatters", ICAR),
    cureDays: [7, 14],
  },
  {
    kinds: ["okra"],
    way: "dry",
    wayTrust: CLASS_LIST,
    cue: seen(
      "30 to 35 days after flowering, pods begin to crack",
      "Studies on seed maturation in bhendi, Madras Agricultural Journal, abstract",
    ),
    cureDays: [7, 14],
  },
  {
    kinds: words(`common-bean runner-bean lima-bean soybean cowpea yardlong-bean mung-bean pea
      chickpea pigeon-pea hyacinth-bean broad-bean`),
    way: "dry",
    wayTrust: CLASS_LIST,
    cue: recalled("pods dry and rattling; seed dents no more under a nail"),
    cureDays: [7, 14],
  },
  {
    kinds: words("lettuce chicory endive"),
    way: "dry",
    wayTrust: CLASS_LIST,
    cue: recalled("half to two thirds of the heads feathered"),
    cureDays: [3, 10],
  },
  {
    kinds: words("beet chard sugar-beet fodder-beet spinach orach quinoa"),
    way: "dry",
    wayTrust: CLASS_LIST,
    cue: recalled("two thirds of the clusters brown"),
    cureDays: [7, 14],
  },
  {
    kinds: words("maize sweet-corn popcorn"),
    way: "dry",
    wayTrust: RECALLED,
    cue: recalled("husks dry, kernels hard, black layer; hang the ears"),
    cureDays: [14, 28],
  },
];

/** Dry seed of a kind nobody wrote a row for. */
const FALLBACK: Omit<Row, "kinds"> = {
  way: "dry",
  wayTrust: { trust: "common practice" },
  cureDays: [7, 14],
};

const BY_KIND: ReadonlyMap<string, Row> = new Map(
  ROWS.flatMap((row) => row.kinds.map((id) => [id, row] as const)),
);

/** Ids named above, for the test that each is a kind. */
export const processingKinds: readonly string[] = [...BY_KIND.keys()];

const LIMITS: readonly Said[] = [
  recalled("thin layer, moving air, no warmer than 35 C; no oven, no direct sun on dark seed"),
  seen("never above 43 C; a thin layer in diffused light", ICAR_AFTER),
];

const DUST = "thresh outdoors or with a mask: seed dust and mould harm lungs";

/** How the seed of a kind is cleaned and dried. */
export function processingOf({ id }: Pick<Kind, "id">): Processing {
  const { way, wayTrust, cue, wetDays, wet, cureDays, caution } = BY_KIND.get(id) ?? FALLBACK;
  return {
    way,
    wayTrust,
    cue: cue ?? null,
    wetDays: wetDays ?? null,
    wet: wet ?? (way === "dry" ? null : practice("wash the pulp off at once")),
    cureDays: way === "dry" ? (cureDays ?? null) : null,
    // About two weeks in air: common practice.
    dryDays: [7, 14],
    limits: LIMITS,
    cautions: [...(caution === undefined ? [] : [caution]), ...(way === "dry" ? [DUST] : [])],
  };
}

/** `read in: TITLE`, `common practice` or `from memory, not checked`. */
export function trustWords({ trust, source }: Pick<Said, "trust" | "source">): string {
  if (trust === "seen") return `read in: ${source ?? "a source"}`;
  return trust === "from memory" ? "from memory, not checked" : trust;
}
