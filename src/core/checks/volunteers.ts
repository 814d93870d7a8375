/**
 * Seed parents on ground where something they can cross with grew in earlier years: what it shed
 * may come up among them, and flower. No distance, cover or time keeps that apart.
 */
import type { CropBook } from "../kinds/crop-book.ts";
import type { Kind } from "../kinds/crop.ts";
import { citedAs } from "../kinds/sources.ts";
import { boundsGap } from "../geometry/bounds.ts";
import { gapBetween } from "../geometry/gap.ts";
import { type Outline, outlineOf } from "../geometry/outline.ts";
import { civilFromDay } from "../model/day.ts";
import type { EarlierCrop, Plan } from "../model/plan.ts";
import type { Check } from "./check.ts";
import type { Description, Wording } from "./wording.ts";
import { type FindingBase, findingId } from "./finding.ts";
import { DISTANCE_TOLERANCE_M } from "./isolation.ts";
import { varietyKey } from "../model/variety-key.ts";
import type { Stand } from "./stand.ts";

/** An earlier crop with its kind and outline looked up. */
export interface EarlierGround {
  readonly crop: EarlierCrop;
  readonly kind: Kind;
  readonly outline: Outline;
}

/** A seed parent lies on ground where something it can cross with grew too few years ago. */
export interface VolunteersFinding extends FindingBase {
  readonly check: "volunteers";
  readonly subject: string;
  /** Earlier crops it lies on, the latest first. */
  readonly crops: readonly {
    readonly id: string;
    readonly kind: string;
    readonly year: number;
    readonly varietyName: string | null;
  }[];
  /** Years the ground should have been free of them, and who says so; null: none published. */
  readonly landYears: number | null;
  readonly source: string | null;
}

export const volunteersCheck: Check<VolunteersFinding> = {
  name: "volunteers",
  title: "Volunteers of an earlier crop may come up",
  run: ({ plan: { earlierCrops }, book, stands }) => {
    if (earlierCrops.length === 0) return [];
    return stands.flatMap((stand) => findingOf(stand, earlierCrops, book) ?? []);
  },
  describe: describeVolunteers,
};

const grounds = new WeakMap<
  Plan["earlierCrops"],
  { readonly book: CropBook; readonly list: readonly EarlierGround[] }
>();

/** The earlier crops of a plan resolved; the same list for the same crops. */
export function earlierGrounds(
  crops: Plan["earlierCrops"],
  book: CropBook,
): readonly EarlierGround[] {
  const known = grounds.get(crops);
  if (known?.book === book) return known.list;
  const list = crops.flatMap((crop): readonly EarlierGround[] => {
    const kind = book.kind(crop.kind);
    return kind ? [{ crop, kind, outline: outlineOf(crop.outline) }] : [];
  });
  grounds.set(crops, { book, list });
  return list;
}

/**
 * Whole years from a crop to a season: the calendar year the season begins in, less the year of
 * the crop. Negative for a crop that is still to come.
 */
export function yearsSince(crop: Pick<EarlierCrop, "year">, season: Plan["season"]): number {
  return civilFromDay(season.first).year - crop.year;
}

/**
 * Earlier crops that a seed parent must not lie on, wherever it lies now: of its crossing group
 * and able to cross with it, no crop of its own variety, and no more years ago than its kind's
 * land years - or any number of years where none are published.
 */
export function shunnedGrounds(
  stand: Stand,
  crops: Plan["earlierCrops"],
  book: CropBook,
): readonly EarlierGround[] {
  if (!stand.isSeedParent) return [];
  const years = stand.kind.landYears?.value ?? Infinity;
  return earlierGrounds(crops, book).filter(({ crop, kind }) => {
    if (kind.group !== stand.kind.group) return false;
    const since = yearsSince(crop, stand.season);
    if (since < 0 || since > years || years === 0) return false;
    if (book.relation(stand.kind, kind).relation === "no") return false;
    const key = varietyKey({ kind: kind.id, name: crop.varietyName });
    return key === null || key !== stand.varietyKey || stand.keepApart;
  });
}

/** Whether an outline touches ground, overlaps it or lies in it. */
export function liesOn(outline: Outline, ground: Outline): boolean {
  return (
    boundsGap(outline.bounds, ground.bounds) <= DISTANCE_TOLERANCE_M &&
    gapBetween(outline, ground).distanceM <= DISTANCE_TOLERANCE_M
  );
}

interface Remembered {
  readonly crops: Plan["earlierCrops"];
  readonly finding: VolunteersFinding | null;
}

// A stand is made anew whenever anything in it changes: its answer is kept as long as it is.
const remembered = new WeakMap<Stand, Remembered>();

function findingOf(
  stand: Stand,
  crops: Plan["earlierCrops"],
  book: CropBook,
): VolunteersFinding | null {
  const known = remembered.get(stand);
  if (known?.crops === crops) return known.finding;
  const finding = judged(stand, crops, book);
  remembered.set(stand, { crops, finding });
  return finding;
}

function judged(
  stand: Stand,
  crops: Plan["earlierCrops"],
  book: CropBook,
): VolunteersFinding | null {
  const on = shunnedGrounds(stand, crops, book)
    .filter(({ outline }) => liesOn(stand.outline, outline))
    .map(({ crop: { id, kind, year, varietyName = null } }) => ({ id, kind, year, varietyName }))
    .sort((a, b) => b.year - a.year || (a.id < b.id ? -1 : 1));
  if (on.length === 0) return null;
  const { landYears } = stand.kind;
  return {
    // The crops are what is required to be gone: accepted, it returns when another joins them.
    id: findingId(
      "volunteers",
      [stand.id],
      on.map(({ id, kind, year }) => `${id} ${kind} ${year}`).join(","),
    ).slice(0, LONGEST_ID),
    check: "volunteers",
    severity: landYears ? "caution" : "unknown",
    subjects: [stand.id],
    subject: stand.id,
    crops: on,
    landYears: landYears?.value ?? null,
    source: landYears?.source ?? null,
  };
}

/** As long as the id of an accepted finding may be in a plan file. */
const LONGEST_ID = 400;

function describeVolunteers(finding: VolunteersFinding, { nameOf, standOf }: Wording): Description {
  const name = nameOf(finding.subject);
  const stand = standOf(finding.subject);
  const grew = `On its ground grew ${listedAll(finding.crops.map((crop) => cropWords(crop, stand)))}.`;
  const kind = stand?.kind.name ?? "its kind";
  const dig = `Dig out what comes up unsown, or lay ${name} elsewhere.`;
  if (finding.landYears === null || finding.source === null) {
    return {
      title: `It cannot be told whether volunteers come up among ${name}`,
      sentences: [
        grew,
        `No figure is known here for how many years ground should be free of it before seed of ${kind}.`,
        dig,
      ],
    };
  }
  return {
    title: `Volunteers may come up among ${name}`,
    sentences: [
      grew,
      `Ground should be free of what crosses with ${kind} for ${yearCount(finding.landYears)} before seed of it (${sourceWords(stand?.kind, finding.source)}).`,
      ...relationWords(finding, stand),
      dig,
    ],
  };
}

function sourceWords(kind: Kind | undefined, source: string): string {
  const note = kind?.landYears?.note;
  return note === undefined ? citedAs(source) : `${citedAs(source)}; ${note}`;
}

function cropWords(
  { kind, varietyName, year }: VolunteersFinding["crops"][number],
  stand: Stand | undefined,
): string {
  const name = stand?.book.kind(kind)?.name ?? kind;
  return `${name}${varietyName === null ? "" : ` ${varietyName}`} in ${year}`;
}

/** Says so where all that grew there crosses rarely with it. */
function relationWords({ crops }: VolunteersFinding, stand: Stand | undefined): readonly string[] {
  if (!stand) return [];
  const relations = crops.map(({ kind }) => {
    const earlier = stand.book.kind(kind);
    return earlier ? stand.book.relation(stand.kind, earlier).relation : "freely";
  });
  return relations.every((relation) => relation === "rarely")
    ? ["The two species cross rarely."]
    : [];
}

function yearCount(count: number): string {
  return count === 1 ? "1 year" : `${count} years`;
}

function listedAll(names: readonly string[]): string {
  if (names.length <= 1) return names.join("");
  return `${names.slice(0, -1).join(", ")} and ${names.at(-1) ?? ""}`;
}
