/**
 * `npm run bench`: runs the benchmarks, prints one table and writes docs/benchmarks.md with the
 * machine and the date. `npm run bench -- NAME` runs those whose file has NAME in it and leaves
 * the page alone. With `--against FILE`, an earlier page or the rows of one, it names what got
 * worse. Ends with 1 when a benchmark failed, a budget is missed or something got worse.
 */
import { spawnSync } from "node:child_process";
import { existsSync, mkdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { cpus, release, totalmem, type } from "node:os";
import { parseArgs } from "node:util";
import { cells, compareTables, figure, headings, readTable, tableLines } from "./bench-table.mjs";
import { installPackages } from "./installed-packages.mjs";
import { repository, tool } from "./repository.mjs";
import { findShapely } from "./shapely.mjs";

/** Parts of the table in order; a part not listed comes last. */
const sections = [
  "Machine",
  "Whole-plan check",
  "One move",
  "District register",
  "Clear ground and ways out",
  "Clear everything",
  "How much would cross",
  "Arranger",
  "Lay out the seed list",
  "Paper and files",
  "Sheet in Chromium",
  "Load",
  "Seed lots",
  "Field record",
  "Seasons",
  "Years",
];

const { values: options, positionals: names } = parseArgs({
  options: { against: { type: "string" } },
  allowPositionals: true,
});
// Read first: the page that is written may be the one compared with.
const earlier = options.against === undefined ? null : readEarlier(options.against);
const rowsFile = `${repository}.build/bench-rows.jsonl`;
if (!installPackages()) process.exit(1);
const isPassed = runBenchmarks();
const rows = readRows();
printTable(rows);
if (names.length === 0 && rows.length > 0) writePage(rows);
/** A goal is worth aiming at; a budget is to be kept. */
const isGoal = (row) => row.budget?.startsWith("goal") ?? false;
const missed = rows.filter((row) => row.isMet === false && !isGoal(row)).length;
console.log(
  `\n${rows.length} rows, ${missed} budgets missed${isPassed ? "" : ", a benchmark failed"}`,
);
const worse = earlier === null ? 0 : tellWorse(earlier);
process.exitCode = isPassed && missed === 0 && worse === 0 ? 0 : 1;

function readEarlier(path) {
  const found = existsSync(path) ? readTable(readFileSync(path, "utf8")) : [];
  if (found.length > 0) return found;
  console.error(`${path}: got no table, expected a page or rows that "npm run bench" wrote.`);
  process.exit(2);
}

/** Says what got worse than in an earlier table; how much did. */
function tellWorse(before) {
  const compared = compareTables(rows, before);
  const machine = `a fixed piece of work takes ${figure(compared.slower)} times as long as then`;
  console.log(`\n${compared.compared} rows compared with ${options.against}; ${machine}.`);
  if (compared.worse.length === 0) console.log("Nothing got worse.");
  for (const line of compared.worse) console.log(`WORSE ${line}`);
  return compared.worse.length;
}

function runBenchmarks() {
  mkdirSync(`${repository}.build`, { recursive: true });
  rmSync(rowsFile, { force: true });
  const { status } = spawnSync(
    tool("vitest"),
    ["run", "--project=bench", `--reporter=${repository}.config/bench-progress.mjs`, ...names],
    {
      cwd: repository,
      stdio: "inherit",
      env: {
        ...process.env,
        WIDEBERTH_BENCH_ROWS: rowsFile,
        WIDEBERTH_SHAPELY: findShapely() ?? "",
      },
    },
  );
  return status === 0;
}

function readRows() {
  if (!existsSync(rowsFile)) return [];
  const found = readFileSync(rowsFile, "utf8")
    .split("\n")
    .filter(Boolean)
    .map((line) => JSON.parse(line));
  const rank = (row) => {
    const place = sections.indexOf(row.section);
    return place < 0 ? sections.length : place;
  };
  // Sorting is stable: within a part the rows stay in the order they were handed in.
  return found.sort((a, b) => rank(a) - rank(b));
}

function printTable(all) {
  const table = [headings, ...all.map(cells)];
  const widths = headings.map((_, column) => Math.max(...table.map((row) => row[column].length)));
  const line = (row) => row.map((cell, column) => cell.padEnd(widths[column])).join("  ");
  console.log(`\n${table.map((row) => line(row).trimEnd()).join("\n")}`);
}

function writePage(all) {
  const text = [
    "# Benchmarks",
    "",
    "Written by `npm run bench`; every figure is of one run on one machine. Timings are given as ratios to something measured in the same run wherever there is something to measure against: JSTS (tree and DistanceOp) and GEOS through Shapely (STRtree, dwithin and distance) on the same plantings, an empty page, a bare React page, one full check. x means times; with a peer, how many times faster than the peer Wideberth is. Milliseconds say what to expect here, not elsewhere.",
    "",
    ...machineLines(),
    "",
    ...tableLines(all),
    "",
  ];
  writeFileSync(`${repository}docs/benchmarks.md`, text.join("\n"));
  console.log("\ndocs/benchmarks.md is written.");
}

function machineLines() {
  const processors = cpus();
  const model = processors[0]?.model.trim() ?? "processor not told";
  return [
    `* Date: ${new Date().toISOString().slice(0, 10)}`,
    `* Machine: ${model}, ${processors.length} cores, ${Math.round(totalmem() / 2 ** 30)} GiB of memory, ${type()} ${release()}`,
    `* Node ${process.versions.node}`,
  ];
}
