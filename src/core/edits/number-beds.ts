/**
 * Giving beds new codes in the order they are walked, only when the grower asks for it. Codes of
 * plantings that were made from their bed's code follow; those written by hand stay.
 */
import { shapeCentre } from "../geometry/outline.ts";
import { turnPoint } from "../geometry/point.ts";
import { turnedBounds } from "../geometry/turned-bounds.ts";
import type { Bed, Layout } from "../model/plan.ts";
import { trailingDigits } from "../model/trailing-digits.ts";
import { isCodeOfBed, plantingPrefix } from "../beds/codes.ts";
import { type Edit, inLayout, mapItems } from "./edit.ts";

export const numberingCorners = ["near left", "near right", "far left", "far right"] as const;
export type NumberingCorner = (typeof numberingCorners)[number];

export interface Numbering {
  readonly beds: readonly string[];
  /** Where the first bed lies, as seen along the beds. */
  readonly from: NumberingCorner;
  /** There along one row and back along the next; else each row begins at the same side. */
  readonly isThereAndBack: boolean;
  /** A letter for each row, numbers within it; else one series. */
  readonly isLetterForRow: boolean;
  /** `B` in `B07`: letters before the number, of the first row. */
  readonly prefix: string;
  /** The first number. */
  readonly start: number;
}

export interface Renamed {
  readonly id: string;
  readonly from: string;
  readonly to: string;
}

export interface Renaming {
  /** All beds numbered, in their new order, also those that keep their code. */
  readonly beds: readonly Renamed[];
  /** Only plantings whose code changes. */
  readonly plantings: readonly Renamed[];
  /** New codes that something else has already. */
  readonly taken: readonly string[];
}

/**
 * The numbering that leaves most codes as they are, among all ways to walk; there and back first
 * where several do, as that is the shorter walk.
 */
export function suggestedNumbering(layout: Layout, beds: readonly string[]): Numbering {
  const codes = layout.beds.filter(({ id }) => beds.includes(id)).map(({ code }) => code);
  const first = [...codes].sort()[0] ?? "";
  const prefix = first.slice(0, first.length - trailingDigits(first).length);
  const base = { beds, prefix: prefix === "" ? "B" : prefix, start: 1 };
  const all = [true, false].flatMap((isThereAndBack) =>
    [false, true].flatMap((isLetterForRow) =>
      numberingCorners.map((from) => ({ ...base, from, isThereAndBack, isLetterForRow })),
    ),
  );
  const changes = (numbering: Numbering) =>
    renamingOf(layout, numbering).beds.filter(({ from, to }) => from !== to).length;
  return all.reduce((best, next) => (changes(next) < changes(best) ? next : best));
}

/** Letters easily taken for digits are left out of blocks: I and O. */
const BLOCK_LETTERS = "ABCDEFGHJKLMNPQRSTUVWXYZ";

/** What numbering would change, for a preview; nothing is changed. */
export function renamingOf(layout: Layout, numbering: Numbering): Renaming {
  const rows = bedRowsOf(
    layout.beds.filter(({ id }) => numbering.beds.includes(id)),
    numbering,
  );
  const most = numbering.isLetterForRow
    ? Math.max(...rows.map((row) => row.length), 0)
    : rows.flat().length;
  const digits = Math.max(2, String(numbering.start + most - 1).length);
  let number = numbering.start;
  const beds = rows.flatMap((row, index) => {
    if (numbering.isLetterForRow) number = numbering.start;
    const prefix = numbering.isLetterForRow ? rowPrefix(numbering.prefix, index) : numbering.prefix;
    return row.map(({ id, code }): Renamed => {
      const to = `${prefix}${String(number).padStart(digits, "0")}`;
      number += 1;
      return { id, from: code, to };
    });
  });
  const plantings = followingPlantings(layout, beds);
  const changed = new Set([...beds, ...plantings].map(({ id }) => id));
  const kept = new Set(
    [...layout.beds, ...layout.plantings]
      .filter(({ id }) => !changed.has(id))
      .map(({ code }) => code),
  );
  const taken = [...beds, ...plantings].filter(({ to }) => kept.has(to)).map(({ to }) => to);
  return { beds, plantings, taken };
}

/** The rows of beds in the order of walking, each in the order of its beds. */
function bedRowsOf(beds: readonly Bed[], numbering: Numbering): readonly (readonly Bed[])[] {
  const first = beds.find(({ outline }) => outline.shape === "rectangle")?.outline;
  const turnDeg = first?.shape === "rectangle" ? first.turnDeg : 0;
  const isFar = numbering.from.startsWith("far");
  const isRight = numbering.from.endsWith("right");
  const placed = beds
    .map((bed) => {
      const { x, y } = turnPoint(shapeCentre(bed.outline), { x: 0, y: 0 }, -turnDeg);
      const { minY, maxY } = turnedBounds(bed.outline, turnDeg);
      return { bed, across: isRight ? -x : x, along: isFar ? -y : y, half: (maxY - minY) / 2 };
    })
    .sort((a, b) => a.along - b.along);
  const rows: (typeof placed)[] = [];
  for (const entry of placed) {
    const row = rows.at(-1);
    const head = row?.[0];
    if (row && head && entry.along - head.along < Math.max(head.half, entry.half)) row.push(entry);
    else rows.push([entry]);
  }
  return rows.map((row, index) => {
    const sign = numbering.isThereAndBack && index % 2 === 1 ? -1 : 1;
    return row.sort((a, b) => sign * (a.across - b.across)).map(({ bed }) => bed);
  });
}

/** The prefix of a row: `B`, then `C`; after `Z` comes `AA`. */
function rowPrefix(prefix: string, row: number): string {
  const head = prefix.slice(0, -1);
  const at = BLOCK_LETTERS.indexOf(prefix.slice(-1).toUpperCase());
  if (at < 0) return `${prefix}${BLOCK_LETTERS[row % BLOCK_LETTERS.length] ?? "A"}`;
  const place = at + row;
  const letter = BLOCK_LETTERS[place % BLOCK_LETTERS.length] ?? "A";
  const rounds = Math.floor(place / BLOCK_LETTERS.length);
  return `${head}${"A".repeat(rounds)}${letter}`;
}

function followingPlantings(layout: Layout, beds: readonly Renamed[]): readonly Renamed[] {
  const renamed = new Map(beds.map((bed) => [bed.id, bed]));
  return layout.plantings.flatMap(({ id, code, bed: bedId }) => {
    const bed = renamed.get(bedId ?? "");
    if (!bed || bed.from === bed.to) return [];
    const old = layout.beds.find((entry) => entry.id === bedId);
    if (!isCodeOfBed(code, old)) return [];
    return [
      {
        id,
        from: code,
        to: `${plantingPrefix({ code: bed.to })}${code.slice(plantingPrefix(old).length)}`,
      },
    ];
  });
}

/** Gives the beds, and the plantings that follow, their new codes; nothing where a code is taken. */
export function numberBeds(layoutId: string, numbering: Numbering, title: string): Edit {
  return {
    title,
    apply: (plan) =>
      inLayout(plan, layoutId, (layout) => {
        const { beds, plantings, taken } = renamingOf(layout, numbering);
        if (taken.length > 0) return layout;
        const to = new Map([...beds, ...plantings].map((entry) => [entry.id, entry.to]));
        const recoded = <T extends { readonly id: string; readonly code: string }>(item: T): T => {
          const code = to.get(item.id) ?? item.code;
          return code === item.code ? item : { ...item, code };
        };
        const next = {
          ...layout,
          beds: mapItems(layout.beds, recoded),
          plantings: mapItems(layout.plantings, recoded),
        };
        return next.beds === layout.beds && next.plantings === layout.plantings ? layout : next;
      }),
  };
}
