/** The years' problem of a plan: its seed shelf, its beds, what crosses, and what was set by hand. */
import { FALLBACK_SPACING_M } from "../beds/stretch.ts";
import { coversFor } from "../clearing/cover-choices.ts";
import { outlineArea, outlineOf } from "../geometry/outline.ts";
import type { CropBook } from "../kinds/crop-book.ts";
import type { Kind } from "../kinds/crop.ts";
import { lotBook } from "../lots/lot-book.ts";
import { type Renewal, plantsToGrow, renewals } from "../lots/renewal.ts";
import type { Layout, Lot, Plan, Variety } from "../model/plan.ts";
import {
  type Apart,
  apartOf,
  crossingParts,
  isExposed,
  rareCrossings,
  setOf,
} from "./crossing-sets.ts";
import { restRules } from "./rest-rules.ts";
import {
  type FreshLife,
  type LotEnd,
  freshLife,
  lastSeasonBefore,
  lastingLot,
} from "./seed-life.ts";
import type { ByHand, Years, YearsItem, YearsProblem } from "./years-problem.ts";
import { type YearsSettings, firstYear, yearsSettings } from "./years-settings.ts";

/**
 * How the seed of a variety stands. `keeps`: a lot holds its standard to the deadline. `late`: it
 * may be dead, or too little, before fresh seed can be ripe. `unknown`: no year and no test.
 * `no figure`: nobody says how long seed of the kind keeps.
 */
export type SeedStanding = "keeps" | "late" | "unknown" | "no figure";

/** One variety of the collection, in the order of the problem's items. */
export interface YearsRow extends Apart {
  readonly standing: SeedStanding;
  /** Why it must be renewed, as the shelf says. */
  readonly renewal: Renewal;
  /** The lot to sow and the ends of its band. */
  readonly lot: Lot | null;
  readonly end: LotEnd | null;
  readonly plants: number;
  /** No spacing of the kind is known: ours is assumed. */
  readonly isGroundAssumed: boolean;
  readonly fresh: FreshLife | null;
  /** Fresh seed may not keep until the next is ripe. */
  readonly isShortLived: boolean;
  /** Roots or plants of the year before that are set out or stand already. */
  readonly hasRoots: boolean;
}

/** Why a variety is not laid out. */
export type NotLaidOut = "no lot" | "gone" | "left out" | "kind not known";

export interface PlanYears {
  readonly problem: YearsProblem;
  readonly rows: readonly YearsRow[];
  readonly not: readonly { readonly variety: Variety; readonly why: NotLaidOut }[];
  readonly settings: YearsSettings;
  /** All beds together, square metres; null: there is no bed. */
  readonly bedsM2: number | null;
  readonly rare: readonly (readonly [Kind, Kind])[];
  /** As kept in the plan. */
  readonly years: Years;
}

/** @param day today */
export function yearsOfPlan(plan: Plan, layout: Layout, book: CropBook, day: number): PlanYears {
  const settings = yearsSettings(plan);
  const { rows, not } = rowsOf(plan, layout, book, day, settings);
  const beds = layout.beds;
  const bedsM2 =
    beds.length === 0
      ? null
      : beds.reduce((sum, bed) => sum + outlineArea(outlineOf(bed.outline)), 0);
  const parts = crossingParts(book, rows);
  const exposed = new Set(rows.flatMap((row, index) => (isExposed(beds, row) ? [index] : [])));
  const covers = new Map(parts.flatMap((part) => coversOfPart(rows, part)));
  const items = rows.map((row, index) =>
    itemOf(row, plan, settings, {
      isExposed: exposed.has(index),
      cover: covers.get(index) ?? "none",
    }),
  );
  const groundM2 = settings.groundM2 ?? bedsM2 ?? Infinity;
  const problem: YearsProblem = {
    seasons: settings.seasons,
    items,
    sets: parts
      .filter((part) => part.length > 1 || part.some((index) => exposed.has(index)))
      .map((part) => setOf(beds, part, rows, exposed)),
    rests:
      bedsM2 === null
        ? []
        : restRules(plan, book, parts, (index) => (rows[index] as YearsRow).kind),
    groundM2,
    landM2: Math.max(groundM2, bedsM2 ?? 0),
    mostVarieties: settings.mostVarieties ?? Infinity,
    covers: { cage: settings.cages, bag: settings.bags },
    byHand: rows.map((row) => handOf(plan, row, settings.seasons)),
  };
  return {
    problem,
    rows,
    not,
    settings,
    bedsM2,
    rare: rareCrossings(
      book,
      rows.map(({ kind }) => kind),
    ),
    years: rows.map(({ variety }) => grownBits(plan, variety, settings.seasons)),
  };
}

function rowsOf(
  plan: Plan,
  layout: Layout,
  book: CropBook,
  day: number,
  settings: YearsSettings,
): Pick<PlanYears, "rows" | "not"> {
  const shelf = lotBook(plan.lots);
  // So far ahead that every variety with a lot is told of, whenever it comes due.
  const due = new Map(
    renewals(plan, book, day, { seasonsAhead: Infinity }).map((each) => [each.variety.id, each]),
  );
  const rows: YearsRow[] = [];
  const not: { variety: Variety; why: NotLaidOut }[] = [];
  for (const variety of plan.varieties) {
    if (variety.hybrid === true) continue;
    const kind = book.kind(variety.kind);
    const renewal = due.get(variety.id);
    const why = whyNot(variety, kind, renewal, settings);
    if (why !== null || !kind || !renewal) not.push({ variety, why: why ?? "no lot" });
    else {
      const lots = shelf.ofVariety(variety.id);
      rows.push(rowOf({ plan, layout, book, variety, kind, lots, renewal, settings }));
    }
  }
  return { rows, not };
}

function whyNot(
  variety: Variety,
  kind: Kind | undefined,
  renewal: Renewal | undefined,
  { leftOut }: YearsSettings,
): NotLaidOut | null {
  if (!kind) return "kind not known";
  if (leftOut.has(variety.id)) return "left out";
  if (renewal?.cause === "gone") return "gone";
  return renewal ? null : "no lot";
}

interface Seen {
  readonly plan: Plan;
  readonly layout: Layout;
  readonly book: CropBook;
  readonly variety: Variety;
  readonly kind: Kind;
  readonly lots: readonly Lot[];
  readonly renewal: Renewal;
  readonly settings: YearsSettings;
}

function rowOf(seen: Seen): YearsRow {
  const { plan, layout, book, variety, kind, lots, renewal, settings } = seen;
  const end = lastingLot(lots, kind, plan, settings.end);
  const plants = plantsToGrow(variety, kind, lots);
  const inRowM = kind.spacing?.inRowM.value ?? FALLBACK_SPACING_M.inRow;
  const betweenM = kind.spacing?.betweenRowsM.value ?? FALLBACK_SPACING_M.betweenRows;
  const fresh = freshLife(kind, end?.lot ?? renewal.lot, plan);
  const lead = kind.lifeCycle === "biennial" ? 2 : 1;
  const hasRoots =
    lead === 2 &&
    ((variety.toSetOut?.length ?? 0) > 0 ||
      layout.plantings.some(
        ({ variety: of, purpose, flowering, start, stoodInto }) =>
          of === variety.id &&
          purpose === "seed" &&
          flowering === "yes" &&
          (stoodInto !== undefined || start?.method === "transplanted"),
      ));
  return {
    ...apartOf(plan, book, variety, kind, plants * inRowM * betweenM),
    renewal,
    standing: standingOf(seen, end, hasRoots || lead === 1 ? 0 : 1),
    lot: end?.lot ?? renewal.lot,
    end,
    plants,
    isGroundAssumed: kind.spacing === undefined,
    fresh,
    isShortLived: fresh !== null && fresh.seasons < lead,
    hasRoots,
  };
}

function standingOf(
  { plan, renewal, settings, lots, kind }: Seen,
  end: LotEnd | null,
  first: number,
): SeedStanding {
  if (!end) {
    const hasAge = lots.some(
      ({ state, harvestYear, tests }) =>
        state === "in stock" && (harvestYear !== undefined || (tests?.length ?? 0) > 0),
    );
    return hasAge && freshLife(kind, null, plan) === null ? "no figure" : "unknown";
  }
  if (renewal.cause !== "soon") return "late";
  return lastSeasonBefore(end[settings.end], plan) < first ? "late" : "keeps";
}

/**
 * Which cover each of a set takes: a cage where all of them give true seed in one, else bags or
 * pollination by hand, those with which that is done.
 */
function coversOfPart(
  rows: readonly YearsRow[],
  part: readonly number[],
): readonly (readonly [index: number, cover: YearsItem["cover"]])[] {
  const covers = part.map((index) => coversFor((rows[index] as YearsRow).kind));
  if (covers.every((list) => list.includes("cage"))) return part.map((index) => [index, "cage"]);
  return part.map((index, at) => {
    const isBagged = covers[at]?.some((cover) => cover !== "cage") === true;
    return [index, isBagged ? "bag" : "none"];
  });
}

function itemOf(
  row: YearsRow,
  plan: Plan,
  settings: YearsSettings,
  { isExposed: exposed, cover }: Pick<YearsItem, "isExposed" | "cover">,
): YearsItem {
  const lead = row.kind.lifeCycle === "biennial" ? 2 : 1;
  const isLate = row.standing !== "keeps";
  return {
    id: row.variety.id,
    groundM2: row.groundM2,
    lead,
    first: lead === 2 && !row.hasRoots ? 1 : 0,
    deadline: isLate || !row.end ? -1 : lastSeasonBefore(row.end[settings.end], plan),
    early: row.end ? lastSeasonBefore(row.end.earliest, plan) : -1,
    isLate,
    // Of what nobody knows how long it keeps it is said; it is not grown twice for that.
    keeps: row.fresh === null ? Infinity : Math.max(lead, row.fresh.seasons),
    needM: row.needM,
    cover,
    isExposed: exposed,
  };
}

/** Bits of the seasons kept in the plan for a variety. */
function bitsOf(
  plan: Plan,
  variety: Variety,
  seasons: number,
  isMeant: (choice: NonNullable<Plan["renewalYears"]>["choices"][number]) => boolean,
): number {
  const start = firstYear(plan);
  let bits = 0;
  for (const choice of plan.renewalYears?.choices ?? []) {
    const season = choice.year - start;
    if (choice.variety !== variety.id || season < 0 || season >= seasons) continue;
    if (isMeant(choice)) bits |= 1 << season;
  }
  return bits;
}

function grownBits(plan: Plan, variety: Variety, seasons: number): number {
  return bitsOf(plan, variety, seasons, ({ grown }) => grown);
}

/** Roots in store and what stood over winter do not wait: they bear seed now, unless somebody says no. */
function handOf(plan: Plan, { variety, hasRoots }: YearsRow, seasons: number): ByHand {
  const notGrown = bitsOf(plan, variety, seasons, ({ grown }) => !grown);
  const grown = bitsOf(plan, variety, seasons, (choice) => choice.grown && choice.byHand === true);
  return { grown: hasRoots && (notGrown & 1) === 0 ? grown | 1 : grown, notGrown };
}
