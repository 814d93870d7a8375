import { expect, test } from "vitest";
import { compareTables, readTable, tableLines } from "../../.config/bench-table.mjs";
import type { Row } from "./report.ts";

const row = (what: string, value: number | string, unit: string, more: Partial<Row> = {}): Row => ({
  section: "Checks",
  what,
  size: "10 plantings",
  value,
  unit,
  ...more,
});

test("A table written to a page is read back from it", () => {
  const rows = [
    row("all pairs | of all", 1546, "ms"),
    row("against JSTS; the same pairs", 7.92, "x", { budget: "at least 5 x", isMet: true }),
    row("weight", 318, "KiB gzip"),
    row("tiny", 0.000_012, "x"),
    row("frame gaps", "16.7 / 16.8 / 50.1; 4", ""),
    row("after 1 s", "3 pairs too close", ""),
  ];
  const page = ["# Benchmarks", "", "* Node 20", "", ...tableLines(rows), ""].join("\n");
  expect(readTable(page)).toEqual(rows);
  expect(readTable(rows.map((one) => JSON.stringify(one)).join("\n"))).toEqual(rows);
});

test("What got worse is named, what got better or wavers is not", () => {
  const before = [
    row("slower", 10, "ms"),
    row("wavers", 10, "ms"),
    row("faster", 10, "ms"),
    row("against a peer; version 1", 4, "x", { moreIsBetter: true }),
    row("heavier", 300, "KiB gzip"),
    row("budget", 1, "x", { budget: "at most 1.1 x", isMet: true }),
    row("gone", 1, "ms"),
  ];
  const now = [
    row("slower", 20, "ms"),
    row("wavers", 11, "ms"),
    row("faster", 2, "ms"),
    row("against a peer; version 2", 2, "x", { moreIsBetter: true }),
    row("heavier", 310, "KiB gzip"),
    row("budget", 1.15, "x", { budget: "at most 1.1 x", isMet: false }),
    row("new", 1, "ms"),
  ];
  const { worse, compared } = compareTables(now, before);
  expect(compared).toBe(6);
  expect(worse).toEqual([
    "Checks | budget | 10 plantings: at most 1.1 x was met and is missed",
    "Checks | slower | 10 plantings: 10 -> 20 ms, 2 times worse",
    "Checks | against a peer | 10 plantings: 4 -> 2 x, 2 times worse",
    "Checks | heavier | 10 plantings: 300 -> 310 KiB gzip, 1.03 times worse",
  ]);
  expect(compareTables(before, before).worse).toEqual([]);
});

test("Times are compared as if both runs had been on one machine", () => {
  const machine = (value: number): Row => ({
    ...row("fixed work", value, "ms"),
    section: "Machine",
  });
  const before = [machine(100), row("a check", 10, "ms"), row("a ratio", 2, "x")];
  const twice = [machine(200), row("a check", 20, "ms"), row("a ratio", 2, "x")];
  expect(compareTables(twice, before)).toEqual({ worse: [], compared: 2, slower: 2 });
  const worse = [machine(200), row("a check", 40, "ms"), row("a ratio", 4, "x")];
  expect(compareTables(worse, before).worse).toHaveLength(2);
});
