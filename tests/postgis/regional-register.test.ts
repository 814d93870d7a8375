/**
 * docs/regional-register.sql in a real PostgreSQL with PostGIS against our own check of the same
 * register: the same directed pairs with the same standing, days and requirement. PostGIS measures
 * geodesics on WGS 84, we on the projected sheet: distances may differ by 1 part in 10,000, so the
 * register has no pair that near to its limit.
 */
import { execFileSync } from "node:child_process";
import { fileURLToPath } from "node:url";
import { expect, test } from "vitest";
import { allIsolationPairs } from "../../src/core/checks/isolation.ts";
import { runChecks } from "../../src/core/checks/run-checks.ts";
import { cropBook } from "../../src/core/kinds/crop-book.ts";
import { checkReport } from "../../src/core/files/check-report.ts";
import type { ReportPair } from "../../src/core/files/report-pair.ts";
import { readGeojson } from "../../src/core/exchange/read-geojson.ts";
import type { Layout } from "../../src/core/model/plan.ts";
import { problemText } from "../../src/core/model/problem.ts";
import { registerFeatures } from "../bench/register.ts";

const book = cropBook();
const docs = fileURLToPath(new URL("../../docs/", import.meta.url));
/** Share of the limit, and metres, within which the two ways of measuring might disagree. */
const NEAR_SHARE = 1e-4;
const NEAR_M = 0.001;

interface Feature {
  readonly id: string;
  readonly properties: { readonly kind: string };
}

function checked(features: readonly Feature[]) {
  const read = readGeojson({ type: "FeatureCollection", features }, "register", book);
  if (!read.ok) throw new Error(read.problems.map(problemText).join("\n"));
  const plan = read.value;
  const layout = plan.layouts[0] as Layout;
  return { plan, layout, result: runChecks(plan, layout, book) };
}

/** Wild kinds, kinds that cross one way, kinds whose stricter levels have no figure. */
const OTHER_KINDS = [
  "wild-carrot",
  "sunflower",
  "wild-sunflower",
  "prickly-lettuce",
  "chicory",
  "endive",
  "currant-tomato",
  "pea",
];
const LEVELS = ["home", "Sale", "stock", ""];

/** A made-up register, kinds by their id, without plantings that lie just at a limit. */
function register(count: number, seed: number): readonly Feature[] {
  const all = [...registerFeatures(count, seed)].map((raw, index) => {
    const feature = raw as Feature;
    const { isolationM, ...rest } = feature.properties as { isolationM?: number; kind: string };
    // Every third planting goes by the published figure of its kind.
    const typed = index % 3 === 0 || isolationM === undefined ? {} : { isolationM };
    const made = book.find(rest.kind)?.id ?? rest.kind;
    const kind = index % 5 === 0 ? OTHER_KINDS[(index / 5) % OTHER_KINDS.length] : made;
    const level = LEVELS[(index >> 2) % LEVELS.length];
    return { ...feature, properties: { ...rest, ...typed, level, kind: kind ?? made } };
  });
  const atLimit = new Set(
    allIsolationPairs(checked(all).result.stands, book)
      .filter(({ distanceM, requiredM }) => {
        const near = NEAR_M + NEAR_SHARE * (requiredM ?? 0);
        return requiredM !== null && Math.abs(distanceM - requiredM) <= near;
      })
      .map(({ seedParent }) => seedParent),
  );
  return all.filter(({ id }) => !atLimit.has(id));
}

function psql(args: readonly string[], input = ""): string {
  const program = process.env["WIDEBERTH_PSQL"];
  if (!program) throw new Error("npm run postgis starts the server this needs");
  return execFileSync(program, ["-X", "-q", "-v", "ON_ERROR_STOP=1", ...args], {
    cwd: docs,
    input,
    encoding: "utf8",
    maxBuffer: 1e9,
  });
}

type Pair = Pick<
  ReportPair,
  "seedParent" | "pollenSource" | "requiredM" | "overlapDays" | "gapDays" | "standing"
>;

const told = (pair: Pair) =>
  [
    pair.seedParent,
    pair.pollenSource,
    pair.requiredM,
    pair.overlapDays,
    pair.gapDays,
    pair.standing,
  ].join(" ");

type Near = readonly [string, string, number];

/** Pairs that plants or harvest of may mix, by the view. */
function mixing(database: string): readonly Near[] {
  const rows = psql([
    "-d",
    database,
    "-At",
    "-c",
    "select json_build_array(seed_parent, other, required_m) from mixing_pair",
  ]);
  return rows
    .split("\n")
    .filter(Boolean)
    .map((row) => JSON.parse(row) as Near);
}

/** Either way round once. */
function pairsOf(pairs: readonly Near[]): readonly string[] {
  return [...new Set(pairs.map(([a, b, metres]) => [...[a, b].sort(), metres].join(" ")))].sort();
}

test.each([
  [1500, 1],
  [1500, 2],
])("%d plantings, seed %d: the same pairs", (count, seed) => {
  const features = register(count, seed);
  const { plan, layout, result } = checked(features);
  const report = checkReport({ file: "register", plan, layout, book, result, isAll: false });
  const database = `register_${seed}`;
  psql(["-c", `create database ${database}`]);
  const lines = features.map((feature) => `${JSON.stringify(feature)}\n`).join("");
  psql(["-d", database, "-f", "regional-register.sql"], lines);
  const rows = psql([
    "-d",
    database,
    "-At",
    "-c",
    `select json_build_object('seedParent', seed_parent, 'pollenSource', pollen_source,
       'distanceM', distance_m, 'requiredM', required_m, 'overlapDays', overlap_days,
       'gapDays', gap_days, 'standing', standing) from isolation_pair`,
  ]);
  const theirs = rows
    .split("\n")
    .filter(Boolean)
    .map((row) => JSON.parse(row) as Pair & { readonly distanceM: number });

  expect(theirs.map(told).sort()).toEqual(report.pairs.map(told).sort());
  expect(new Set(theirs.map(({ standing }) => standing)).size).toBe(4);
  const mixed = pairsOf(mixing(database));
  expect(mixed.length).toBeGreaterThan(0);
  expect(mixed).toEqual(
    pairsOf(
      result.findings
        .filter((finding) => finding.check === "mixing")
        .map(({ subject, other, requiredM }) => [subject, other, requiredM ?? 0]),
    ),
  );
  const ours = new Map(report.pairs.map((pair) => [told(pair), pair.distanceM]));
  const largest = Math.max(
    ...theirs.map((pair) => Math.abs(pair.distanceM - (ours.get(told(pair)) ?? Infinity))),
  );
  const most = Math.max(...report.pairs.map(({ distanceM }) => distanceM));
  console.log(
    `${features.length} plantings: ${theirs.length} directed pairs equal, largest difference ${largest.toExponential(1)} m over at most ${most.toFixed(0)} m`,
  );
  expect(largest).toBeLessThan(NEAR_M + NEAR_SHARE * most);
});
