/** A small invented garden, turned on its sheet, for tests of the plot map. */
import { runChecks } from "../../src/core/checks/run-checks.ts";
import { cropBook } from "../../src/core/kinds/crop-book.ts";
import type { CheckedLayout } from "../../src/core/checks/checked-layout.ts";
import { outlineOnBed } from "../../src/core/beds/place-planting.ts";
import { dayFromIso } from "../../src/core/model/day.ts";
import { emptyPlan } from "../../src/core/model/empty-plan.ts";
import type {
  Bed,
  Plan,
  Planting,
  RectangleShape,
  Surrounding,
  Variety,
} from "../../src/core/model/plan.ts";

export const book = cropBook();

export function day(iso: string): number {
  const number = dayFromIso(iso);
  if (number === null) throw new Error(`${iso} is no date`);
  return number;
}

export function rectangle(
  x: number,
  y: number,
  widthM: number,
  lengthM: number,
  turnDeg = 0,
): RectangleShape {
  return { shape: "rectangle", x, y, widthM, lengthM, turnDeg };
}

export function variety(
  id: string,
  name: string,
  kind: string,
  more: Partial<Variety> = {},
): Variety {
  return { id, name, kind, ...more };
}

export function planting(
  id: string,
  code: string,
  varietyId: string,
  outline: Planting["outline"],
  more: Partial<Planting> = {},
): Planting {
  return {
    id,
    code,
    variety: varietyId,
    outline,
    purpose: "seed",
    flowering: "yes",
    cover: "none",
    ...more,
  };
}

export function source(
  id: string,
  label: string,
  outline: Surrounding["outline"],
  more: Partial<Surrounding> = {},
): Surrounding {
  return { id, label, what: "pollen", outline, flowering: "yes", cover: "none", ...more };
}

/** A plan around some beds and plantings. */
export function planOf(
  changes: Partial<Plan>,
  beds: readonly Bed[],
  plantings: readonly Planting[],
): Plan {
  return {
    ...emptyPlan("test", 2027),
    title: "Fallow End Seed Garden",
    site: { name: "Fallow End", upBearingDeg: 0 },
    layouts: [{ id: "layout-1", name: "Layout 1", beds, plantings }],
    ...changes,
  };
}

export function mapInput(plan: Plan): CheckedLayout {
  const [layout] = plan.layouts;
  if (!layout) throw new Error("no layout");
  return { plan, layout, book, result: runChecks(plan, layout, book) };
}

/** Ten beds in two columns, eleven plantings, a neighbour, a wild plant near by and one far off. */
export function gardenPlan(): Plan {
  const beds = ["A", "B"].flatMap((column, side) =>
    [1, 2, 3, 4, 5].map((number): Bed => {
      const code = `${column}0${number}`;
      const shape = rectangle(7 + side * 14.5 + number * 0.5, 14.5 - number * 2.9, 1.2, 11, 82);
      return { id: `bed-${code}`, code, outline: shape };
    }),
  );
  const on = (code: string, fromM: number, toM: number) => {
    const bed = beds.find((entry) => entry.code === code);
    if (bed?.outline.shape !== "rectangle") throw new Error(`no bed ${code}`);
    return outlineOnBed(bed.outline, { fromM, toM });
  };
  const grown = (
    code: string,
    number: number,
    kind: string,
    fromM: number,
    toM: number,
    more: Partial<Planting>,
  ) =>
    planting(`p-${code}-${number}`, `${code}-${number}`, kind, on(code, fromM, toM), {
      bed: `bed-${code}`,
      ...more,
    });
  const sown = (date: string, plants: number, rows: number): Partial<Planting> => ({
    start: { method: "sown", date: day(date) },
    plants,
    rows,
  });
  const out = (date: string, plants: number, rows: number): Partial<Planting> => ({
    start: { method: "transplanted", date: day(date) },
    plants,
    rows,
  });
  return planOf(
    {
      site: {
        name: "Fallow End",
        upBearingDeg: 24,
        position: { longitude: -2.91, latitude: 54.2 },
      },
      varieties: [
        variety("lantern", "Amber Lantern", "tomato", { form: "potato-leaf" }),
        variety("ferry", "Old Ferry", "tomato"),
        variety("plum", "Mossgate Plum", "tomato"),
        variety("coral", "Tarn Coral", "beet"),
        variety("silver", "Silverleaf Tarn", "chard"),
        variety("meadow", "Long Meadow", "carrot"),
        variety("dun", "Kettle Dun", "common-bean"),
        variety("slate", "Slate Ridge", "lettuce"),
        variety("quarry", "Quarry White", "onion"),
      ],
      surroundings: [
        source(
          "s-wild",
          "wild carrot, roadside",
          { shape: "point", x: 27, y: -4 },
          {
            kind: "carrot",
            bloom: { first: day("2027-06-20"), last: day("2027-09-10") },
          },
        ),
        source("s-far", "Hollins' beet field", rectangle(340, 420, 60, 90), {
          kind: "beet",
          bloom: { first: day("2027-06-10"), last: day("2027-07-20") },
        }),
        source(
          "s-hedge",
          "north hedge",
          {
            shape: "polygon",
            corners: [
              [0, 16],
              [26, 17.5],
              [26, 18.3],
              [0, 16.8],
            ],
          },
          { what: "hedge" },
        ),
        source("s-shed", "tool shed", rectangle(2, -5, 2.5, 4), { what: "building" }),
      ],
    },
    beds,
    [
      grown("A01", 1, "dun", 0, 5, sown("2027-05-10", 90, 3)),
      grown("A01", 2, "slate", 5.4, 9, sown("2027-04-12", 40, 4)),
      grown("A02", 1, "meadow", 0, 8, out("2027-04-05", 200, 4)),
      grown("A03", 1, "coral", 0, 11, { ...out("2027-04-10", 80, 3), cover: "none" }),
      grown("A04", 1, "quarry", 3, 9, out("2027-04-01", 120, 4)),
      grown("B01", 1, "ferry", 0, 4, out("2027-05-25", 20, 2)),
      grown("B01", 2, "dun", 4.5, 10, { ...sown("2027-05-12", 60, 3), purpose: "food" }),
      grown("B02", 1, "lantern", 3.6, 8.6, out("2027-05-20", 40, 2)),
      grown("B03", 1, "plum", 0, 4.2, { ...out("2027-05-28", 24, 2), cover: "bags" }),
      grown("B03", 2, "slate", 4.8, 9.5, {
        ...sown("2027-04-20", 30, 3),
        purpose: "food",
        flowering: "cut",
      }),
      grown("B04", 1, "silver", 0, 11, out("2027-04-12", 80, 3)),
    ],
  );
}
