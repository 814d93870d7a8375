/**
 * Rows of a benchmark table: written to a page, read back from one, and two tables compared. What
 * follows a semicolon in `what` is a remark; part, what and size before it name the row.
 */

/** Share by which a value may be larger than before and still be the same: runs differ by so much. */
const NOISE = new Map([
  ["KiB gzip", 0.01],
  ["MB", 0.1],
]);
const TIME_NOISE = 0.25;
/** Units that a slower machine makes larger. */
const TIME_UNITS = new Set(["ms", "µs"]);
/** Of values that are numbers; anything else after one makes it words. */
const UNITS = new Set(["", "x", ...TIME_UNITS, ...NOISE.keys()]);
/** The row by which the machine's own speed is known; see tests/bench/machine.bench.ts. */
const MACHINE = "Machine";

export const headings = ["Part", "What", "Size", "Value", "Budget", ""];

export function cells(row) {
  return [
    row.section,
    row.what,
    row.size,
    `${typeof row.value === "number" ? figure(row.value) : row.value} ${row.unit}`.trim(),
    row.budget ?? "",
    row.isMet === undefined ? "" : row.isMet ? "met" : "missed",
  ];
}

/** Three significant digits, never in powers of ten unless it is tiny. */
export function figure(value) {
  if (value === 0) return "0";
  if (Math.abs(value) < 1e-4) return value.toExponential(1);
  return Math.abs(value) >= 1000
    ? Math.round(value).toLocaleString("en")
    : String(Number(value.toPrecision(3)));
}

export function tableLines(rows) {
  const line = (row) => `| ${row.map((cell) => cell.replaceAll("|", "\\|")).join(" | ")} |`;
  return [line(headings), line(headings.map(() => "---")), ...rows.map((row) => line(cells(row)))];
}

/** Rows of a written page or of lines of JSON; values that are words stay words. */
export function readTable(text) {
  if (text.trimStart().startsWith("{")) {
    return text
      .split("\n")
      .filter(Boolean)
      .map((line) => JSON.parse(line));
  }
  return text
    .split("\n")
    .filter((line) => line.startsWith("| ") && !line.startsWith("| ---"))
    .map((line) =>
      line
        .slice(2, -1)
        .split(/(?<!\\)\|/)
        .map((cell) => cell.trim().replaceAll("\\|", "|")),
    )
    .filter(([part]) => part !== headings[0])
    .map(([section, what, size, value = "", budget, verdict]) => {
      const [, number, unit] = /^(-?[\d.,]+(?:e-?\d+)?) ?(.*)$/.exec(value) ?? [];
      const isNumber = number !== undefined && UNITS.has(unit);
      return {
        section,
        what,
        size,
        value: isNumber ? Number(number.replaceAll(",", "")) : value,
        unit: isNumber ? unit : "",
        ...(budget ? { budget, isMet: verdict === "met" } : {}),
      };
    });
}

/** What a row is called from one run to the next. */
function nameOf({ section, what, size }) {
  return [section, what.split(";")[0], size].join(" | ");
}

/**
 * What got worse, worst first, as lines of words, and how many rows both tables have. Times are
 * taken as if both runs had been on a machine of the speed of now.
 */
export function compareTables(rows, earlier) {
  const before = new Map(earlier.map((row) => [nameOf(row), row]));
  const slower = machineShare(rows, earlier);
  const worse = [];
  let compared = 0;
  for (const row of rows) {
    const old = before.get(nameOf(row));
    if (!old || row.section === MACHINE) continue;
    if (old.isMet === true && row.isMet === false) {
      worse.push({ share: Infinity, line: `${nameOf(row)}: ${row.budget} was met and is missed` });
    }
    if (typeof row.value !== "number" || typeof old.value !== "number") continue;
    if (row.unit !== old.unit || old.value <= 0 || row.value <= 0) continue;
    compared += 1;
    const was = TIME_UNITS.has(row.unit) ? old.value * slower : old.value;
    const share = row.moreIsBetter ? was / row.value : row.value / was;
    if (share <= 1 + (NOISE.get(row.unit) ?? TIME_NOISE)) continue;
    const values = `${figure(was)} -> ${figure(row.value)} ${row.unit}`;
    worse.push({ share, line: `${nameOf(row)}: ${values}, ${figure(share)} times worse` });
  }
  worse.sort((a, b) => b.share - a.share);
  return { worse: worse.map(({ line }) => line), compared, slower };
}

/** How much slower the machine is now than it was then; 1 where one table does not say. */
function machineShare(rows, earlier) {
  const ms = (table) => table.find(({ section }) => section === MACHINE)?.value;
  const [now, then] = [ms(rows), ms(earlier)];
  return typeof now === "number" && typeof then === "number" && then > 0 ? now / then : 1;
}
