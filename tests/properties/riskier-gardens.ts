/**
 * Random little gardens of every crossing group, and changes of them that can only add risk.
 * Gardens are in the short form of tests/fixtures/verdicts, so that a failing one can be read,
 * and kept as a fixture.
 */
import * as fc from "fast-check";
import { cropBook } from "../../src/core/kinds/crop-book.ts";
import { dayFromIso, isoFromDay } from "../../src/core/model/day.ts";
import type { VerdictGarden } from "../support/verdict-garden.ts";

const book = cropBook();

type Plants = VerdictGarden["plantings"];
type Planted = Plants[string];
type Around = VerdictGarden["around"];

const groups = [...new Set(book.kinds.map(({ group }) => group))].map((group) =>
  book.kinds.filter((kind) => kind.group === group).map(({ id }) => id),
);

const SEASON_FIRST = "2027-01-01";
/** Day of the season to a date; negative: the year before. */
function dateOf(dayOfSeason: number): string {
  return isoFromDay((dayFromIso(SEASON_FIRST) as number) + dayOfSeason);
}

/** Gaps about where published distances lie. */
const gapM = fc.oneof(
  fc.constantFrom(0, 0.5, 2, 3, 4, 6, 9, 16, 25, 40, 80, 160, 250, 420, 700, 900, 1700, 3300),
  fc.double({ min: 0, max: 2000, noNaN: true }).map((gap) => Math.round(gap * 10) / 10),
);
const bloom = fc
  .tuple(
    fc.oneof(
      { weight: 6, arbitrary: fc.integer({ min: 100, max: 260 }) },
      fc.integer({ min: -270, max: -150 }),
    ),
    fc.integer({ min: 3, max: 60 }),
  )
  .map(([first, length]): [string, string] => [dateOf(first), dateOf(first + length)]);
const start = fc
  .oneof(
    { weight: 3, arbitrary: fc.integer({ min: 60, max: 220 }) },
    fc.integer({ min: -200, max: 59 }),
  )
  .map(dateOf);
const days = fc
  .tuple(fc.integer({ min: 30, max: 90 }), fc.integer({ min: 0, max: 20 }))
  .map(([least, more]): [number, number] => [least, least + more]);
const maybe = <T>(arbitrary: fc.Arbitrary<T>) => fc.option(arbitrary, { nil: undefined, freq: 2 });

const when = fc.oneof(
  fc.record({ bloom }),
  fc.record({ sown: start, sownToFlower: maybe(days), bloomDays: maybe(days) }),
  fc.record({ setOut: start, setOutToFlower: maybe(days), bloomDays: maybe(days) }),
  fc.constant({}),
);
const cover = maybe(fc.constantFrom("cage" as const, "bags" as const, "hand" as const));
const flowering = fc.constantFrom("yes" as const, "yes" as const, "yes" as const, "cut" as const);
const variety = maybe(fc.constantFrom("Fell Amber", "Combe Red"));

function plantedOf(kinds: readonly string[]): fc.Arbitrary<Omit<Planted, "at">> {
  return fc
    .tuple(
      when,
      fc.record({
        kind: fc.constantFrom(...kinds),
        wideM: fc.constant(1),
        purpose: fc.constantFrom("seed" as const, "seed" as const, "food" as const),
        variety,
        cover,
        flowering,
        form: maybe(fc.constantFrom("regular", "potato-leaf")),
        keepApart: maybe(fc.constant(true)),
        isolationM: maybe(fc.constantFrom(0, 5, 50, 500)),
        level: maybe(fc.constantFrom("home" as const, "sale" as const, "stock" as const)),
      }),
    )
    .map(([dates, rest]) => withForm({ ...rest, ...dates }));
}

/** Only tomatoes have forms. */
function withForm<T extends { kind: string; form?: string | undefined }>(plant: T): T {
  return plant.kind === "tomato" ? plant : { ...plant, form: undefined };
}

function sourceOf(kinds: readonly string[]): fc.Arbitrary<Omit<Around[string], "at">> {
  return fc.record({
    kind: fc.constantFrom(...kinds),
    wideM: fc.constantFrom(0, 1),
    variety,
    bloom: maybe(bloom),
    cover,
    flowering,
  });
}

/**
 * Up to three plantings and perhaps a source in a row, of one crossing group.
 * @param wanted only groups that hold one of these kinds
 */
export function riskGardens(wanted?: readonly string[]): fc.Arbitrary<VerdictGarden> {
  const some = groups.filter((kinds) => !wanted || kinds.some((kind) => wanted.includes(kind)));
  return fc
    .constantFrom(...some)
    .chain(gardenOf)
    .map(laidOut);
}

function gardenOf(kinds: readonly string[]) {
  return fc.record({
    stands: fc.array(fc.tuple(gapM, plantedOf(kinds)), { minLength: 1, maxLength: 3 }),
    source: maybe(fc.tuple(gapM, sourceOf(kinds))),
    level: fc.constantFrom("home" as const, "sale" as const, "stock" as const),
    frost: maybe(fc.integer({ min: 260, max: 330 }).map(dateOf)),
    climate: maybe(fc.constantFrom(...climates)),
  });
}

type Drawn = ReturnType<typeof gardenOf> extends fc.Arbitrary<infer T> ? T : never;

/** Each stand so far beyond the last. */
function laidOut({ stands, source, level, frost, climate }: Drawn): VerdictGarden {
  let at = 0;
  const plantings: Record<string, Planted> = {};
  stands.forEach(([gap, plant], index) => {
    plantings[`p${index}`] = { ...plant, at };
    at += 1 + gap;
  });
  return {
    file: "random",
    name: "random",
    situation: "",
    season: [SEASON_FIRST, "2027-12-31"],
    level,
    ...(frost === undefined ? {} : { firstAutumnFrost: frost }),
    ...(climate === undefined ? {} : { climate }),
    plantings,
    around: source ? { s: { ...source[1], at: at - 1 + source[0] } } : {},
    verdict: {},
    says: {},
    told: [],
    why: "",
    source: "",
  };
}

/** A warm and a cool place, monthly means. */
const climates = [
  {
    minC: [-6, -5, -1, 4, 9, 14, 16, 15, 11, 5, 1, -4],
    maxC: [2, 3, 8, 15, 21, 25, 28, 27, 22, 15, 8, 3],
  },
  {
    minC: [1, 1, 2, 3, 6, 8, 10, 10, 8, 6, 3, 1],
    maxC: [6.5, 7.5, 9.5, 12.5, 15.5, 17.5, 19.5, 19.5, 16.5, 13.5, 9.5, 7.5],
  },
];
