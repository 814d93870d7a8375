/** Arbitrary whole plans, as fast-check makes them: every optional field there or not. */
import * as fc from "fast-check";
import { dayFromCivil } from "../../src/core/model/day.ts";
import type {
  AreaShape,
  Layout,
  Lot,
  Plan,
  Planting,
  Surrounding,
  Variety,
} from "../../src/core/model/plan.ts";

const id = fc.stringMatching(/^[A-Za-z0-9._:-]{1,12}$/);
const text = fc.string({ maxLength: 30, unit: "grapheme" });
/** JSON knows no negative zero. */
const number = (min: number, max: number) =>
  fc.double({ min, max, noNaN: true }).map((value) => value + 0);
const metres = number(-90_000, 90_000);
const size = number(1e-3, 500);
const day = fc.integer({
  min: dayFromCivil({ year: 1990, month: 1, day: 1 }),
  max: dayFromCivil({ year: 2060, month: 12, day: 31 }),
});
const dayWindow = fc
  .tuple(day, fc.nat(200))
  .map(([first, length]) => ({ first, last: first + length }));
const dayRange = fc
  .tuple(fc.integer({ min: 1, max: 300 }), fc.nat(300))
  .map(([least, more]): [number, number] => [least, least + more]);

const rectangle = fc.record({
  shape: fc.constant("rectangle" as const),
  x: metres,
  y: metres,
  widthM: size,
  lengthM: size,
  turnDeg: number(-360, 360),
});
/** Corners in order of their direction from a middle: a simple outline. */
const polygon = fc
  .tuple(metres, metres, fc.array(number(1, 50), { minLength: 3, maxLength: 9 }))
  .map(([x, y, reaches]) => ({
    shape: "polygon" as const,
    corners: reaches.map((reach, index): [number, number] => {
      const angle = (index / reaches.length) * 2 * Math.PI;
      return [x + reach * Math.cos(angle), y + reach * Math.sin(angle)];
    }),
  }));
const point = fc.record({ shape: fc.constant("point" as const), x: metres, y: metres });
const area: fc.Arbitrary<AreaShape> = fc.oneof(rectangle, polygon);

const cover = fc.constantFrom("none" as const, "cage" as const, "bags" as const, "hand" as const);
const flowering = fc.constantFrom("yes" as const, "cut" as const, "first-year" as const);

/** A record with some keys always there; the others are there or left out, never undefined. */
function optional<T extends object, K extends keyof T>(
  model: { [Key in keyof T]: fc.Arbitrary<T[Key]> },
  requiredKeys: K[],
): fc.Arbitrary<Pick<T, K> & { [Key in Exclude<keyof T, K>]?: Exclude<T[Key], undefined> }> {
  return fc.record(model, { requiredKeys }) as fc.Arbitrary<
    Pick<T, K> & { [Key in Exclude<keyof T, K>]?: Exclude<T[Key], undefined> }
  >;
}

const ownKind = optional(
  {
    id,
    name: text.filter((name) => name !== ""),
    botanicalName: text,
    family: text,
    group: id,
    species: text,
    lifeCycle: fc.constantFrom("annual" as const, "biennial" as const),
    carrier: fc.constantFrom("insects" as const, "wind" as const, "insects and wind" as const),
    breeding: fc.constantFrom("selfing" as const, "outcrossing" as const),
    isolationM: optional({ home: number(0, 2000), sale: number(0, 2000) }, []),
    source: text,
    bloomDays: dayRange,
    inRowM: size,
    plantsNeeded: fc.nat(200),
  },
  ["id", "name", "group", "lifeCycle", "carrier", "breeding", "isolationM"],
);

function varieties(ids: readonly string[]): fc.Arbitrary<readonly Variety[]> {
  const each = (varietyId: string) =>
    optional(
      {
        id: fc.constant(varietyId),
        name: text,
        kind: fc.constantFrom("tomato", "beet", "maize"),
        form: fc.constant("potato-leaf"),
        hybrid: fc.boolean(),
        wantedPlants: fc.nat(500),
        isolationM: number(0, 3000),
        sownToFlower: dayRange,
        bloomDays: dayRange,
        toSetOut: fc.tuple(optional({ plants: fc.nat(500), plot: text, season: text }, [])),
        note: text,
      },
      ["id", "name", "kind"],
    );
  return fc.tuple(...ids.map(each));
}

function plantings(
  ids: readonly string[],
  beds: readonly string[],
  varietyIds: readonly string[],
): fc.Arbitrary<readonly Planting[]> {
  const each = (plantingId: string) =>
    optional(
      {
        id: fc.constant(plantingId),
        code: text,
        variety: fc.constantFrom(...varietyIds),
        bed: fc.constantFrom(...beds),
        outline: area,
        purpose: fc.constantFrom("seed" as const, "food" as const, "other" as const),
        flowering,
        start: optional(
          {
            method: fc.constantFrom("sown" as const, "transplanted" as const),
            date: day,
            sownUnderGlass: day,
          },
          ["method", "date"],
        ),
        end: day,
        plants: fc.nat(1000),
        rows: fc.nat(20),
        bloom: dayWindow,
        isolationM: number(0, 3000),
        level: fc.constantFrom("home" as const, "sale" as const, "stock" as const),
        cover,
        keepApart: fc.boolean(),
        note: text,
      },
      ["id", "code", "variety", "outline", "purpose", "flowering", "cover"],
    );
  return fc.tuple(...ids.map(each));
}

function surroundings(ids: readonly string[]): fc.Arbitrary<readonly Surrounding[]> {
  const each = (surroundingId: string) =>
    optional(
      {
        id: fc.constant(surroundingId),
        label: text,
        what: fc.constantFrom("pollen" as const, "hedge" as const, "tree" as const),
        outline: fc.oneof(area, point),
        kind: fc.constant("beet"),
        varietyName: text,
        flowering,
        bloom: dayWindow,
        cover,
        everyYear: fc.boolean(),
        locked: fc.boolean(),
        note: text,
      },
      ["id", "label", "what", "outline", "kind", "flowering", "cover"],
    );
  return fc.tuple(...ids.map(each));
}

const earlierCrops: fc.Arbitrary<Plan["earlierCrops"]> = fc.uniqueArray(
  optional(
    {
      id,
      outline: area,
      kind: fc.constantFrom("tomato", "beet"),
      varietyName: text,
      year: fc.integer({ min: 1900, max: 2200 }),
      code: text,
      wentToSeed: fc.constantFrom("yes" as const, "no" as const, "unknown" as const),
      knownFrom: fc.constantFrom("record" as const, "plan" as const, "told" as const),
      note: text,
    },
    ["id", "outline", "kind", "year"],
  ),
  { maxLength: 3, selector: (crop) => crop.id },
);

const groundMarks: fc.Arbitrary<Plan["groundMarks"]> = fc.uniqueArray(
  optional(
    {
      id,
      outline: area,
      disease: fc.constantFrom("white-rot", "clubroot", "something-else"),
      name: text,
      kinds: fc.constant(["leek"]),
      seenOn: day,
      note: text,
    },
    ["id", "outline", "disease", "seenOn"],
  ),
  { maxLength: 2, selector: (mark) => mark.id },
);

const entries: fc.Arbitrary<Plan["entries"]> = fc.uniqueArray(
  optional(
    {
      id,
      on: day,
      of: id,
      what: fc.constantFrom("sown", "first flower", "covered", "rogued", "note"),
      count: fc.integer({ min: 0, max: 500 }),
      note: text,
      who: text,
      corrects: id,
    },
    ["id", "on", "of", "what"],
  ),
  { maxLength: 4, selector: (entry) => entry.id },
);

const picture: fc.Arbitrary<Plan["picture"]> = fc.record({
  name: text,
  data: fc.base64String({ minLength: 4, maxLength: 40 }),
  mediaType: fc.constantFrom("image/jpeg" as const, "image/png" as const),
  widthPx: fc.integer({ min: 1, max: 2000 }),
  heightPx: fc.integer({ min: 1, max: 2000 }),
  x: number(-50, 50),
  y: number(-50, 50),
  metresPerPixel: number(0.001, 1),
  turnDeg: number(-180, 180),
  opacity: number(0, 1),
});

const ids = (most: number) => fc.uniqueArray(id, { minLength: 1, maxLength: most });

function layout(
  layoutId: string,
  varietyIds: readonly string[],
  taken: readonly string[],
): fc.Arbitrary<Layout> {
  return ids(8).chain((all) => {
    const free = all.filter((one) => !taken.includes(one) && one !== "site");
    const beds = free.slice(0, Math.ceil(free.length / 2));
    const bedIds = beds.length > 0 ? beds : ["bed-1"];
    const plantingIds = free.slice(beds.length);
    return fc.record({
      id: fc.constant(layoutId),
      name: text,
      beds: fc.tuple(
        ...bedIds.map((bedId) =>
          optional({ id: fc.constant(bedId), code: text, outline: area, locked: fc.boolean() }, [
            "id",
            "code",
            "outline",
          ]),
        ),
      ),
      plantings: plantings(plantingIds, bedIds, varietyIds),
    });
  });
}

const shelf = {
  id: "place-1",
  name: "Shelf",
  conditions: [
    { fromMonth: 5, temperatureC: 18, humidityPct: 55 },
    { fromMonth: 10, temperatureC: 4, moisturePct: 6 },
  ],
};

function lots(varietyIds: readonly string[]): fc.Arbitrary<readonly Lot[]> {
  return fc.array(fc.constantFrom(...varietyIds), { maxLength: 4 }).chain((owners) =>
    fc.tuple(
      ...owners.map((variety, index) =>
        optional(
          {
            id: fc.constant(`lot-${index + 1}`),
            code: fc.constant(`AB-${index + 1}`),
            variety: fc.constant(variety),
            state: fc.constantFrom("in stock" as const, "used up" as const, "discarded" as const),
            amount: fc.record({ unit: fc.constant("seeds" as const), value: fc.nat(100_000) }),
            seedsPerGram: number(0.5, 5000),
            stored: fc.tuple(fc.record({ place: fc.constant(shelf.id) })),
            tests: fc.tuple(
              fc.record({
                id: fc.constant("t1"),
                date: day,
                sown: fc.constant(100),
                sprouted: fc.nat(100),
              }),
            ),
            treated: fc.boolean(),
            note: text,
          },
          ["id", "code", "variety", "state"],
        ),
      ),
    ),
  );
}

/** Plans that hold together: ids of their own, references that lead somewhere. */
export const arbitraryPlan: fc.Arbitrary<Plan> = fc
  .record({ varietyIds: ids(5), around: ids(3), layoutIds: ids(3) })
  .map(({ around, ...rest }) => ({
    ...rest,
    around: around.filter((one) => one !== "site" && one !== "bed-1"),
  }))
  .chain(({ varietyIds, around, layoutIds }) =>
    optional(
      {
        format: fc.constant("wideberth-plan" as const),
        version: fc.constant(3 as const),
        id,
        title: text,
        units: fc.constantFrom("m" as const, "ft" as const),
        level: fc.constantFrom("home" as const, "sale" as const, "stock" as const),
        season: fc.tuple(text, dayWindow).map(([name, window]) => ({ name, ...window })),
        site: optional(
          {
            name: text,
            position: fc.record({ longitude: number(-180, 180), latitude: number(-90, 90) }),
            upBearingDeg: number(-360, 360),
            outline: polygon,
            lastSpringFrost: day,
            firstAutumnFrost: day,
          },
          ["name", "upBearingDeg"],
        ),
        ownKinds: fc.uniqueArray(ownKind, { maxLength: 3, selector: (kind) => kind.id }),
        varieties: varieties(varietyIds),
        lots: lots(varietyIds),
        storagePlaces: fc.constant([shelf]),
        surroundings: surroundings(around),
        earlierCrops,
        groundMarks,
        entries,
        cameFrom: optional({ plan: id, title: text, season: text }, ["plan"]),
        picture,
        layouts: fc.tuple(...layoutIds.map((layoutId) => layout(layoutId, varietyIds, around))),
        chosenLayout: fc.constantFrom(...layoutIds),
        accepted: fc.array(
          fc.record({
            finding: fc.string({ minLength: 1, maxLength: 60 }),
            reason: text,
            requiredM: fc.option(number(0, 3000)),
          }),
          { maxLength: 4 },
        ),
      },
      [
        "format",
        "version",
        "id",
        "title",
        "units",
        "level",
        "season",
        "site",
        "ownKinds",
        "varieties",
        "lots",
        "storagePlaces",
        "surroundings",
        "layouts",
        "earlierCrops",
        "groundMarks",
        "entries",
        "accepted",
      ],
    ),
  );
