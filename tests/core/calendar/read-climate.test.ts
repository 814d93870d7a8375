/** Temperatures out of pasted tables and station records. */
import { describe, expect, test } from "vitest";
import { temperatureOn } from "../../../src/core/calendar/climate.ts";
import { readDailyTemperatures } from "../../../src/core/calendar/read-daily-temperatures.ts";
import { readNormals } from "../../../src/core/calendar/read-normals.ts";
import { readTemperature, temperatureText } from "../../../src/core/calendar/temperature-text.ts";
import { dayFromIso } from "../../../src/core/model/day.ts";
import { problemText } from "../../../src/core/model/problem.ts";
import { climateRows } from "../../support/climate-rows.ts";

const MONTHS = ["Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"];
const medford = climateRows("monthly-normals.tsv").filter((row) =>
  row["id"]?.startsWith("medford"),
);
const low = medford.map((row) => row["tmin"] ?? "");
const high = medford.map((row) => row["tmax"] ?? "");
const inCelsius = (texts: readonly string[]) =>
  texts.map((text) => Math.round(((Number(text) - 32) / 1.8) * 100) / 100);
const byMonth = (line: (month: number) => string) =>
  MONTHS.map((_, month) => line(month)).join("\n");

describe("a pasted table of monthly normals is read", () => {
  const comma = (text: string | undefined) => (text ?? "").replace(".", ",");
  test.each([
    ["as twelve rows with tabs", byMonth((m) => `${low[m]}\t${high[m]}`)],
    ["highest first", byMonth((m) => `${high[m]}\t${low[m]}`)],
    ["with month names and spaces", byMonth((m) => `${MONTHS[m]}   ${low[m]}  ${high[m]}`)],
    ["with commas", byMonth((m) => `${MONTHS[m]}, ${low[m]}, ${high[m]}`)],
    ["with decimal commas and semicolons", byMonth((m) => `${comma(low[m])};${comma(high[m])}`)],
    ["with decimal commas and spaces", byMonth((m) => `${comma(low[m])} ${comma(high[m])}`)],
    ["with units", byMonth((m) => `${low[m]} °F\t${high[m]} °F`)],
    ["with units by themselves", byMonth((m) => `${MONTHS[m]} ${low[m]} F ${high[m]} F`)],
    ["as two rows of twelve", `${low.join(" ")}\n${high.join(" ")}`],
    [
      "as two rows under month names",
      `\t${MONTHS.join("\t")}\nLow\t${low.join("\t")}\nHigh\t${high.join("\t")}`,
    ],
    ["with a yearly mean as column", `Min ${low.join(" ")} 39.5\nMax ${high.join(" ")} 66.0`],
    [
      "with a yearly mean as row, headings and a mean between",
      `Month,Tmin,Mean,Tmax\n${byMonth((m) => `${MONTHS[m]},${low[m]},50,${high[m]}`)}\nYear,39.5,50,66`,
    ],
    [
      "with Windows line ends and blank lines",
      `\r\n${byMonth((m) => `${low[m]}\t${high[m]}\r\n`)}`,
    ],
  ])("%s", (_, text) => {
    expect(readNormals(text, "F")).toEqual({
      ok: true,
      value: { minC: inCelsius(low), maxC: inCelsius(high) },
    });
  });

  const southern = MONTHS.map((_, place) => (place + 6) % 12);
  const dayName = (tag: string) => (month: number) =>
    new Intl.DateTimeFormat(tag, { month: "long" }).format(new Date(2027, month, 15));
  test.each([
    [
      "with July first, as in the south",
      southern.map((m) => `${MONTHS[m]} ${low[m]} ${high[m]}`).join("\n"),
    ],
    [
      "from December back to January, in whole words",
      MONTHS.map((_, m) => `${dayName("en")(11 - m)}, ${low[11 - m]}, ${high[11 - m]}`).join("\n"),
    ],
    [
      "under month names that begin with July",
      `\t${southern.map((m) => MONTHS[m]).join("\t")}\tYear\nLow\t${southern.map((m) => low[m]).join("\t")}\t39\nHigh\t${southern.map((m) => high[m]).join("\t")}\t66`,
    ],
    [
      "under initials that begin with July",
      `J A S O N D J F M A M J\n${southern.map((m) => low[m]).join(" ")}\n${southern.map((m) => high[m]).join(" ")}`,
    ],
    [
      "by the number of the month",
      `Month,Min,Max\n${southern.map((m) => `${m + 1},${low[m]},${high[m]}`).join("\n")}`,
    ],
    ...["de", "fr", "es", "it", "nl", "pt", "sv", "da"].map((tag) => [
      `with July first, months named in ${tag}`,
      southern.map((m) => `${dayName(tag)(m)}\t${low[m]}\t${high[m]}`).join("\n"),
    ]),
  ])("in any order of the months: %s", (_, text) => {
    const read = readNormals(text, "F");
    expect(read).toEqual({
      ok: true,
      value: { minC: inCelsius(low), maxC: inCelsius(high) },
    });
  });

  test.each([
    ["a month twice", byMonth((m) => `${MONTHS[m === 5 ? 4 : m]} ${low[m]} ${high[m]}`)],
    [
      "a month in words not known",
      byMonth((m) => `${m === 6 ? "Heinä" : MONTHS[m]} ${low[m]} ${high[m]}`),
    ],
    ["words that are no months", byMonth((m) => `Row${"abcdefghijkl"[m]} ${low[m]} ${high[m]}`)],
    ["too few names over them", `Jul Aug Sep\n${low.join(" ")}\n${high.join(" ")}`],
  ])("not with %s: which month is which is asked", (_, text) => {
    const read = readNormals(text, "F");
    expect(read.ok ? [] : read.problems.map(problemText).join()).toContain("twelve months once");
  });

  test("in Celsius as it stands", () => {
    const read = readNormals(
      byMonth((m) => `${m - 4} ${m + 6.5}`),
      "C",
    );
    expect(read).toMatchObject({ ok: true, value: { minC: MONTHS.map((_, m) => m - 4) } });
  });
});

describe("a table that cannot be read says where", () => {
  const told = (text: string) => {
    const read = readNormals(text, "F");
    return read.ok ? [] : read.problems.map(problemText);
  };
  test.each([
    [
      "",
      "pasted table: got nothing, expected 12 rows of lowest and highest, or 2 rows of 12 months.",
    ],
    ["1 2\n3 4", "pasted table: got 2 rows of 2 numbers, expected 12 rows"],
    [
      byMonth((m) => (m === 3 ? "Apr\t37.5\t6x4" : `${MONTHS[m]}\t${low[m]}\t${high[m]}`)),
      'row 4, column 3: got "6x4", expected a temperature.',
    ],
    [
      byMonth((m) => (m === 3 ? "Apr\t37.5\t640" : `${MONTHS[m]}\t${low[m]}\t${high[m]}`)),
      'row 4, column 3: got "640", expected a temperature.',
    ],
    [
      byMonth((m) => (m === 6 ? "90 80" : `${low[m]} ${high[m]}`)),
      "row 7, column 1: got a lowest above the highest in Jul",
    ],
    [byMonth((m) => `${low[m]} 50 ${high[m]}`), "12 rows of 3 numbers"],
  ])("%#", (text, words) => {
    const [first = "", ...more] = told(text);
    expect(first).toContain(words);
    expect(more).toEqual([]);
  });
});

describe("a record of days is read", () => {
  const first = dayFromIso("2027-04-01") ?? 0;
  const days = { first, minC: [2, null, 4.5], maxC: [12, null, 14] };
  test.each([
    ["with a heading", "date,min,max\n2027-04-01,2,12\n2027-04-03,4.5,14\n"],
    ["without one", "2027-04-01,2,12\n2027-04-03,4.5,14"],
    ["in any order", "2027-04-03,4.5,14\n2027-04-01,2,12"],
    ["by the heading's order", "STATION,DATE,TMAX,TMIN\nA,2027-04-01,12,2\nA,2027-04-03,14,4.5"],
    ["with quotes, tabs and short dates", '"20270401"\t"2"\t"12"\n"20270403"\t"4.5"\t"14"'],
    ["with decimal commas", "Date;Low;High\n2027-04-01;2;12\n2027-04-02;;\n2027-04-03;4,5;14"],
    [
      "with what stations write for nothing",
      "2027-04-01,2,12\n2027-04-02,-9999,M\n2027-04-03,4.5,14",
    ],
  ])("%s", (_, text) => {
    expect(readDailyTemperatures(text, "record.csv", "C")).toEqual({ ok: true, value: days });
  });

  test("in Fahrenheit", () => {
    const read = readDailyTemperatures("2027-04-01,41,68", "record.csv", "F");
    expect(read).toEqual({ ok: true, value: { first, minC: [5], maxC: [20] } });
  });

  test.each([
    [
      "2027-04-01,2,12\n2027-02-30,2,12",
      'record.csv: row 2, column 1: got "2027-02-30", expected a date as YYYY-MM-DD.',
    ],
    [
      "2027-04-01,2,12\n2027-04-02,x,12",
      'record.csv: row 2, column 2: got "x", expected a temperature, or nothing.',
    ],
    ["2027-04-01,12,2", "row 1, column 2: got a minimum above the maximum"],
    ["2027-04-01,2,12\n2027-04-01,2,12", "row 2, column 1: got a date that stands above already"],
    ["date,rain\n2027-04-01,2", 'row 1: got "date, rain", expected the columns date, min, max.'],
    ["", "record.csv: row 1: got"],
    ["date,min,max", "got no day"],
    ["1980-01-01,2,12\n2027-04-01,2,12", "at most 14640, forty years"],
  ])("or refused: %#", (text, words) => {
    const read = readDailyTemperatures(text, "record.csv", "C");
    expect(read.ok ? "" : problemText(read.problems[0] ?? failed())).toContain(words);
  });
});

test("a temperature is read as people write it and written to a tenth", () => {
  expect(readTemperature("46.8", "F")).toBe(8.22);
  expect(readTemperature(" 3,5 °C ", "F")).toBe(3.5);
  expect(readTemperature("\u22122", "C")).toBe(-2);
  for (const text of ["", "warm", "3 4", "4..5", "71", "1e2"]) {
    expect(readTemperature(text, "C"), text).toBeNull();
  }
  expect(temperatureText(8.22, "F")).toBe("46.8");
  expect(temperatureText(-0.01, "C")).toBe("0");
});

describe("a record without normals", () => {
  const record = readDailyTemperatures(
    "2024-02-28,1,9\n2025-02-28,3,11\n2025-03-01,5,15",
    "record.csv",
    "C",
  );
  const on = temperatureOn(record.ok ? { days: record.value } : {});
  const day = (iso: string) => dayFromIso(iso) ?? 0;
  test("gives its own days as they were, and other years the mean of the date", () => {
    expect(on(day("2025-02-28"))).toEqual({ minC: 3, maxC: 11 });
    expect(on(day("2027-02-28"))).toEqual({ minC: 2, maxC: 10 });
    expect(on(day("2028-02-29"))).toEqual({ minC: 2, maxC: 10 });
    expect(on(day("2027-03-01"))).toEqual({ minC: 5, maxC: 15 });
    expect(on(day("2027-03-02"))).toBeNull();
  });
});

function failed(): never {
  throw new Error("no problem");
}
