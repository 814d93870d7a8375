/**
 * Small gardens with the verdict a practitioner signs, as tests/fixtures/verdicts/*.json hold
 * them: a short form, made into a whole plan file here and read as any plan file is.
 */
import { readFileSync, readdirSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { z } from "zod";
import { cropBook } from "../../src/core/kinds/crop-book.ts";
import type { Plan } from "../../src/core/model/plan.ts";
import { PLAN_FORMAT, PLAN_VERSION } from "../../src/core/model/limits.ts";
import { readPlan } from "../../src/core/model/read-plan.ts";

const book = cropBook();
const FOLDER = new URL("../fixtures/verdicts/", import.meta.url);

/** `07-31` of the season's year, or a whole date. */
const dayText = z.string().regex(/^(\d{4}-)?\d\d-\d\d$/);
const twoDays = z.tuple([dayText, dayText]);
const days = z.tuple([z.number(), z.number()]);

const stand = z.strictObject({
  /** Id of a kind, or a name as a grower would type it. */
  kind: z.string(),
  /** Name of the variety; left out: one of its own. */
  variety: z.string().optional(),
  /** Left edge on a line, metres; two at 0 and 6, 1 m wide, are 5 m apart. */
  at: z.number(),
  /** Size along the line and across, metres; 0: a single plant. */
  wideM: z.number().default(1),
  bloom: twoDays.optional(),
  flowering: z.enum(["yes", "cut", "first-year"]).optional(),
  cover: z.enum(["cage", "bags", "hand"]).optional(),
});

const planted = stand.extend({
  sown: dayText.optional(),
  setOut: dayText.optional(),
  purpose: z.enum(["seed", "food", "other"]).default("seed"),
  form: z.string().optional(),
  hybrid: z.boolean().optional(),
  level: z.enum(["home", "sale", "stock"]).optional(),
  isolationM: z.number().optional(),
  keepApart: z.boolean().optional(),
  adjustments: z.array(z.looseObject({ id: z.string() })).optional(),
  figure: z.string().optional(),
  /** The variety's own days to first flower, and of bloom. */
  sownToFlower: days.optional(),
  setOutToFlower: days.optional(),
  bloomDays: days.optional(),
});

/**
 * What is said of one seed parent and one source, `parent<-source`, or of both directions,
 * `one--other`: what clears it with nothing more to say (`clear`: whichever it is), else the
 * severity of what is said; `none`: the two are no risk to each other at all.
 */
const verdict = z.enum([
  "clear",
  "distance",
  "time",
  "cover",
  "caution",
  "conflict",
  "unknown",
  "none",
]);

export type Verdict = z.infer<typeof verdict>;

const garden = z.strictObject({
  name: z.string().min(5),
  situation: z.string().min(10),
  level: z.enum(["home", "sale", "stock"]).default("home"),
  season: z.tuple([z.iso.date(), z.iso.date()]).default(["2027-01-01", "2027-12-31"]),
  firstAutumnFrost: dayText.optional(),
  /** Twelve means, January first, degrees Celsius. */
  climate: z.strictObject({ minC: z.array(z.number()), maxC: z.array(z.number()) }).optional(),
  plantings: z.record(z.string(), planted),
  around: z.record(z.string(), stand).default({}),
  /** A list: a practitioner would sign any of them. */
  verdict: z.record(z.string(), z.union([verdict, z.array(verdict).min(2)])),
  /** Words a finding about the two must have. */
  says: z.record(z.string(), z.array(z.string())).default({}),
  /** What is said of one planting by itself. */
  told: z
    .array(
      z.strictObject({
        about: z.string(),
        severity: z.enum(["conflict", "caution", "unknown"]),
        words: z.array(z.string()).min(1),
      }),
    )
    .default([]),
  why: z.string().min(5),
  source: z.string().min(2),
});

export type VerdictGarden = z.infer<typeof garden> & { readonly file: string };

type Stand = z.infer<typeof stand>;
type Planted = z.infer<typeof planted>;

/** Every garden of every fixture. */
export function verdictGardens(): readonly VerdictGarden[] {
  return readdirSync(FOLDER)
    .sort()
    .flatMap((file) => {
      const path = fileURLToPath(new URL(file, FOLDER));
      const list = z.array(garden).parse(JSON.parse(readFileSync(path, "utf8")));
      return list.map((each) => ({ ...each, file }));
    });
}

/** The pairs a verdict's key names, `[seed parent, source]`. */
export function pairsNamed(key: string): readonly (readonly [string, string])[] {
  const [parent, source] = key.split("<-");
  if (parent !== undefined && source !== undefined) return [[parent, source]];
  const [one, other] = key.split("--");
  if (one === undefined || other === undefined) throw new Error(`no pair: ${key}`);
  return [
    [one, other],
    [other, one],
  ];
}

/** Id of the kind a grower's word names, or that the word is. */
export function kindNamed(word: string): string {
  const kind = book.kind(word) ?? book.find(word);
  if (!kind) throw new Error(`no kind is called ${word}`);
  return kind.id;
}

/** The garden as the text of a plan file. */
export function planText(each: VerdictGarden): string {
  const year = each.season[0].slice(0, 4);
  const date = (text: string) => (text.length === 5 ? `${year}-${text}` : text);
  const entries = Object.entries(each.plantings);
  return JSON.stringify({
    format: PLAN_FORMAT,
    version: PLAN_VERSION,
    id: "verdict",
    title: each.name,
    level: each.level,
    season: { name: year, first: each.season[0], last: each.season[1] },
    site: {
      name: "A garden",
      ...(each.firstAutumnFrost === undefined
        ? {}
        : { firstAutumnFrost: date(each.firstAutumnFrost) }),
      ...(each.climate === undefined
        ? {}
        : { climate: { station: "", source: "", normals: each.climate } }),
    },
    varieties: entries.map(([id, plant]) => varietyOf(id, plant)),
    surroundings: Object.entries(each.around).map(([id, source]) => ({
      id,
      label: `Next door ${id}`,
      what: "pollen",
      kind: kindNamed(source.kind),
      ...(source.variety === undefined ? {} : { varietyName: source.variety }),
      ...standFields(source, date),
    })),
    layouts: [
      {
        id: "layout-1",
        name: "Layout 1",
        beds: [],
        plantings: entries.map(([id, plant]) => plantingOf(id, plant, date)),
      },
    ],
  });
}

/** The garden read as a plan file is; throws with what is wrong. */
export function gardenPlan(each: VerdictGarden): Plan {
  const read = readPlan(planText(each), each.file, (kind) => book.kind(kind) !== undefined);
  if (read.ok) return read.value;
  throw new Error(`${each.name}: ${JSON.stringify(read.problems)}`);
}

function varietyOf(id: string, plant: Planted): object {
  return {
    id: `v-${id}`,
    name: plant.variety ?? `Variety ${id}`,
    kind: kindNamed(plant.kind),
    ...present({
      form: plant.form,
      hybrid: plant.hybrid,
      figure: plant.figure,
      sownToFlower: plant.sownToFlower,
      transplantedToFlower: plant.setOutToFlower,
      bloomDays: plant.bloomDays,
    }),
  };
}

function plantingOf(id: string, plant: Planted, date: (text: string) => string): object {
  const start = plant.sown ?? plant.setOut;
  const method = plant.sown === undefined ? "transplanted" : "sown";
  return {
    id,
    code: id.toUpperCase(),
    variety: `v-${id}`,
    purpose: plant.purpose,
    ...standFields(plant, date),
    ...(start === undefined ? {} : { start: { method, date: date(start) } }),
    ...present({
      level: plant.level,
      isolationM: plant.isolationM,
      keepApart: plant.keepApart,
      adjustments: plant.adjustments,
    }),
  };
}

function standFields(item: Stand, date: (text: string) => string): object {
  const { at, wideM } = item;
  return {
    outline:
      wideM === 0
        ? { shape: "point", x: at, y: 0 }
        : { shape: "rectangle", x: at + wideM / 2, y: 0, widthM: wideM, lengthM: 1, turnDeg: 0 },
    flowering: item.flowering ?? "yes",
    cover: item.cover ?? "none",
    ...(item.bloom === undefined
      ? {}
      : { bloom: { first: date(item.bloom[0]), last: date(item.bloom[1]) } }),
  };
}

function present(fields: Readonly<Record<string, unknown>>): object {
  return Object.fromEntries(Object.entries(fields).filter(([, value]) => value !== undefined));
}
