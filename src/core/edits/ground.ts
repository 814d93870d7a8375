/**
 * Ground around the beds: what a hedge, a path or a tree is unless the grower says otherwise. And
 * marks on the ground: diseases seen there.
 */
import { roundShape } from "../geometry/round.ts";
import type {
  GroundMark,
  Layout,
  Plan,
  Shape,
  Surrounding,
  SurroundingSort,
} from "../model/plan.ts";
import { type Edit, drawnIds, mapItem, nextId, patched } from "./edit.ts";

export const groundForms = ["line", "rectangle", "round", "point"] as const;
/** A line has a real width and runs from one end to the other; a round one has a diameter. */
export type GroundForm = (typeof groundForms)[number];

/** How each sort is usually drawn, and its width or diameter, metres. No source; our choice. */
export const usualGround: Readonly<
  Record<SurroundingSort, { readonly form: GroundForm; readonly widthM: number }>
> = {
  pollen: { form: "point", widthM: 1 },
  hedge: { form: "line", widthM: 1 },
  fence: { form: "line", widthM: 0.1 },
  tree: { form: "round", widthM: 5 },
  building: { form: "rectangle", widthM: 6 },
  water: { form: "rectangle", widthM: 3 },
  path: { form: "line", widthM: 1 },
  slope: { form: "rectangle", widthM: 4 },
  other: { form: "rectangle", widthM: 2 },
};

export interface TypedGround {
  readonly what: SurroundingSort;
  readonly label: string;
  readonly form: GroundForm;
  /** Width of a line or rectangle, diameter of what is round, metres. */
  readonly widthM: number;
  readonly lengthM: number;
  /** Degrees clockwise from up. */
  readonly turnDeg: number;
  /** Its middle, metres. */
  readonly x: number;
  readonly y: number;
}

export function groundShape({ form, widthM, lengthM, turnDeg, x, y }: TypedGround): Shape {
  switch (form) {
    case "point":
      return { shape: "point", x, y };
    case "round":
      return roundShape({ x, y, diameterM: widthM });
    case "line":
    case "rectangle":
      return { shape: "rectangle", x, y, widthM, lengthM, turnDeg };
  }
}

/** A new object of the surroundings from typed numbers. */
export function typedSurrounding(plan: Plan, layout: Layout, typed: TypedGround): Surrounding {
  return {
    id: nextId("ground-", drawnIds(plan, layout)),
    label: typed.label,
    what: typed.what,
    outline: groundShape(typed),
    flowering: "yes",
    cover: "none",
  };
}

/** The word, or the word with the first free number: `hedge`, `hedge 2`. */
export function freeLabel(plan: Plan, word: string): string {
  const taken = new Set(plan.surroundings.map(({ label }) => label.toLowerCase()));
  if (!taken.has(word.toLowerCase())) return word;
  for (let number = 2; ; number += 1) {
    if (!taken.has(`${word} ${number}`.toLowerCase())) return `${word} ${number}`;
  }
}

/** Gives the site an edge, or takes it away. */
export function setSiteOutline(outline: Plan["site"]["outline"], title: string): Edit {
  return { title, apply: (plan) => ({ ...plan, site: patched(plan.site, { outline }) }) };
}

/** Adds marks under ids of their own, in one step. */
export function addGroundMarks(marks: readonly Omit<GroundMark, "id">[], title: string): Edit {
  return {
    title,
    apply: (plan) => {
      if (marks.length === 0) return plan;
      const list = [...plan.groundMarks];
      for (const mark of marks) {
        const ids = list.map(({ id }) => id);
        list.push({ ...mark, id: nextId("mark-", ids) });
      }
      return { ...plan, groundMarks: list };
    },
  };
}

/** Puts a mark in the place of the one with its id. */
export function changeGroundMark(mark: GroundMark, title: string): Edit {
  return {
    title,
    apply: (plan) => {
      const groundMarks = mapItem(plan.groundMarks, mark.id, () => mark);
      return groundMarks === plan.groundMarks ? plan : { ...plan, groundMarks };
    },
  };
}

export function removeGroundMark(id: string, title: string): Edit {
  return {
    title,
    apply: (plan) => {
      const groundMarks = plan.groundMarks.filter((mark) => mark.id !== id);
      return groundMarks.length === plan.groundMarks.length ? plan : { ...plan, groundMarks };
    },
  };
}
