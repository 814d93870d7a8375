/** Changes of a little garden that can only add risk, each told by its name. */
import { dayFromIso, isoFromDay } from "../../src/core/model/day.ts";
import { cropBook } from "../../src/core/kinds/crop-book.ts";
import type { VerdictGarden } from "../support/verdict-garden.ts";

type Planted = VerdictGarden["plantings"][string];
type Source = VerdictGarden["around"][string];
/** A source is a planting with fewer fields. */
type Stand = Omit<Planted, "purpose"> & Partial<Pick<Planted, "purpose">>;

/** The garden before and after. */
type Change = readonly [VerdictGarden, VerdictGarden];

export interface RiskyChange {
  readonly name: string;
  /** Null: there is nothing to change so. `part` is from 0 to 1: which stand, how much. */
  readonly apply: (garden: VerdictGarden, part: number) => Change | null;
  /** Dates become less sure, so that a conflict may turn into "cannot be told". */
  readonly isOfDates?: true;
  /** Only in gardens of the crossing groups of these kinds. */
  readonly kinds?: readonly string[];
}

const book = cropBook();

const LEVELS = ["home", "sale", "stock"] as const;

/** Wild kinds that stand in for a grown one beside the fence. */
const WILD: Readonly<Record<string, string>> = {
  carrot: "wild-carrot",
  parsnip: "wild-parsnip",
  radish: "wild-radish",
  sunflower: "wild-sunflower",
  beet: "sea-beet",
};

/** One planting made riskier, if it can be. */
const planting =
  (change: (it: Planted, part: number, garden: VerdictGarden) => Planted | null) =>
  (garden: VerdictGarden, part: number): Change | null => {
    const id = picked(Object.keys(garden.plantings), part);
    const it = garden.plantings[id];
    const riskier = it ? change(it, part, garden) : null;
    return riskier && [garden, withPlanting(garden, id, riskier)];
  };

/** One stand, of the beds or around, first safe, then risky. */
const stand =
  (safe: (it: Stand, part: number) => Stand | null, risky: (it: Stand, part: number) => Stand) =>
  (garden: VerdictGarden, part: number): Change | null => {
    const id = picked([...Object.keys(garden.plantings), ...Object.keys(garden.around)], part);
    const it = garden.plantings[id] ?? garden.around[id];
    const before = it ? safe(it, part) : null;
    if (!it || !before) return null;
    return [withStand(garden, id, before), withStand(garden, id, risky(it, part))];
  };

const same = (it: Stand) => it;

export const riskyChanges: readonly RiskyChange[] = [
  {
    name: "closer",
    apply: (garden, part) => [garden, everyStand(garden, (it) => ({ ...it, at: it.at * part }))],
  },
  {
    name: "own bloom longer",
    isOfDates: true,
    apply: stand(
      (it) => (it.bloom ? it : null),
      (it, part) => longerBloom(it, Math.round(part * 25)),
    ),
  },
  {
    name: "days to flower less sure",
    isOfDates: true,
    apply: planting((it, part) => {
      const by = Math.round(part * 15);
      if (it.sownToFlower) return { ...it, sownToFlower: wider(it.sownToFlower, by) };
      return it.setOutToFlower ? { ...it, setOutToFlower: wider(it.setOutToFlower, by) } : null;
    }),
  },
  {
    name: "bloom of more days",
    isOfDates: true,
    apply: planting((it, part) =>
      it.bloomDays
        ? { ...it, bloomDays: [it.bloomDays[0], it.bloomDays[1] + Math.round(part * 30)] }
        : null,
    ),
  },
  {
    name: "no dates at all",
    isOfDates: true,
    apply: stand(
      ({ bloom, sown, setOut, ...it }) =>
        (bloom ?? sown ?? setOut) === undefined ? null : { ...it, bloom, sown, setOut },
      (it) => ({ ...it, bloom: undefined, sown: undefined, setOut: undefined }),
    ),
  },
  {
    name: "stricter level",
    apply: (garden) => {
      const level = LEVELS[LEVELS.indexOf(garden.level) + 1];
      return level ? [garden, { ...garden, level }] : null;
    },
  },
  {
    name: "stricter level of one planting",
    apply: planting((it, _part, garden) => {
      const level = LEVELS[LEVELS.indexOf(it.level ?? garden.level) + 1];
      return level ? { ...it, level } : null;
    }),
  },
  {
    name: "cover off",
    apply: stand(
      (it, part) => ({ ...it, cover: (part * 8) % 1 < 0.5 ? "cage" : "bags" }),
      (it) => ({ ...it, cover: undefined }),
    ),
  },
  {
    name: "seed instead of food",
    apply: planting((it) => (it.purpose === "seed" ? null : { ...it, purpose: "seed" })),
  },
  {
    name: "flowers instead of cut",
    apply: stand(
      (it) => ({ ...it, flowering: "cut" }),
      (it) => ({ ...it, flowering: "yes" }),
    ),
  },
  {
    name: "kept apart",
    apply: planting((it) => (it.keepApart ? null : { ...it, keepApart: true })),
  },
  {
    name: "another variety",
    apply: (garden, part) =>
      stand(same, (it) => ({ ...it, variety: "Another One" }))(
        everyStand(garden, (it) => ({ ...it, variety: "Fell Amber" })),
        part,
      ),
  },
  {
    name: "a greater distance typed",
    apply: planting((it, part) => {
      const typed = it.isolationM;
      return typed === undefined ? null : { ...it, isolationM: typed + 1000 * part };
    }),
  },
  {
    name: "long styles",
    kinds: ["tomato"],
    apply: stand(
      (it) => (it.kind === "tomato" ? { ...it, form: "regular" } : null),
      (it) => ({ ...it, form: "potato-leaf" }),
    ),
  },
  {
    name: "form no longer said",
    kinds: ["tomato"],
    apply: stand(
      (it) => (it.kind === "tomato" ? { ...it, form: "regular" } : null),
      (it) => ({ ...it, form: undefined }),
    ),
  },
  { name: "a wild stand beside the fence", kinds: Object.keys(WILD), apply: wildAround },
  {
    name: "one source more",
    apply: (garden, part) => {
      const [first] = Object.values(garden.plantings);
      if (!first) return null;
      const more: Source = { kind: first.kind, at: first.at - 300 * part, wideM: 0 };
      return [garden, { ...garden, around: { ...garden.around, more } }];
    },
  },
  {
    name: "frost not known",
    isOfDates: true,
    apply: ({ firstAutumnFrost = "2027-10-10", ...rest }) => [{ ...rest, firstAutumnFrost }, rest],
  },
];

/** A grown stand beside the fence, then its wild kin. */
function wildAround(garden: VerdictGarden, part: number): Change {
  const groups = Object.values(garden.plantings).map(({ kind }) => book.kind(kind)?.group);
  const grown = Object.keys(WILD).find((kind) => groups.includes(book.kind(kind)?.group));
  const bloom: [string, string] = [moved("2027-05-01", part * 60), moved("2027-07-01", part * 60)];
  const beside = (kind: string | undefined) => {
    if (kind === undefined) throw new Error("expected a group that has wild kin");
    const wild: Source = { kind, at: -300 * part, wideM: 0, bloom };
    return { ...garden, around: { ...garden.around, wild } };
  };
  return [beside(grown), beside(WILD[grown ?? ""])];
}

function longerBloom(it: Stand, by: number): Stand {
  return it.bloom ? { ...it, bloom: [moved(it.bloom[0], -by), moved(it.bloom[1], 25 - by)] } : it;
}

function moved(iso: string, by: number): string {
  return isoFromDay((dayFromIso(iso) as number) + Math.round(by));
}

function wider([least, most]: readonly [number, number], by: number): [number, number] {
  return [Math.max(1, least - by), most + by];
}

function picked(ids: readonly string[], part: number): string {
  return ids[Math.floor(part * 0.999 * ids.length)] ?? "";
}

function withPlanting(garden: VerdictGarden, id: string, it: Planted): VerdictGarden {
  return { ...garden, plantings: { ...garden.plantings, [id]: it } };
}

function withStand(garden: VerdictGarden, id: string, it: Stand): VerdictGarden {
  const planted = garden.plantings[id];
  if (planted) return withPlanting(garden, id, { ...planted, ...it });
  const { kind, at, wideM, variety, bloom, cover, flowering } = it;
  const source: Source = { kind, at, wideM, variety, bloom, cover, flowering };
  return { ...garden, around: { ...garden.around, [id]: source } };
}

function everyStand(garden: VerdictGarden, change: (it: Stand) => Stand): VerdictGarden {
  const ids = [...Object.keys(garden.plantings), ...Object.keys(garden.around)];
  return ids.reduce(
    (made, id) => withStand(made, id, change((garden.plantings[id] ?? garden.around[id]) as Stand)),
    garden,
  );
}
