/** The table of docs/advice.md is what the rules say; `UPDATE=1` writes it anew. */
import { readFileSync, writeFileSync } from "node:fs";
import { expect, test } from "vitest";
import { cropBook } from "../../../src/core/kinds/crop-book.ts";
import type { Kind } from "../../../src/core/kinds/crop.ts";
import { growthOf } from "../../../src/core/kinds/growth.ts";
import { handWay, whyNotByHand } from "../../../src/core/practice/by-hand.ts";
import { cutEarly } from "../../../src/core/practice/cut-early.ts";
import { ruleCited } from "../../../src/core/practice/practice.ts";
import { mayOpenByTurns, underCover } from "../../../src/core/practice/under-cover.ts";

const PAGE = new URL("../../../docs/advice.md", import.meta.url);
const [START, END] = ["<!-- kinds: made from the rules -->", "<!-- /kinds -->"];

type Said = { readonly value: unknown; readonly source: string } | undefined | null;

const cited = (source: string) => (source === "memory" ? "from memory" : ruleCited(source));

const cell = (rule: Said, without: string) =>
  rule ? `${String(rule.value)} (${cited(rule.source)})` : without;

function rowOf(kind: Kind): string {
  const turns = mayOpenByTurns(kind);
  const start = growthOf(kind).isTender ? "tender" : "hardy";
  return [
    cell(underCover(kind, "cage"), kind.carrier === "insects" ? "no" : "no: wind") +
      (turns ? `; by turns (${ruleCited(turns.source)})` : ""),
    cell(underCover(kind, "bags"), "no"),
    cell(handWay(kind), `no: ${whyNotByHand(kind)?.value ?? ""}`),
    cutEarly(kind).value,
    `${start}${kind.lifeCycle === "biennial" ? ", roots" : ""}`,
  ].join(" | ");
}

/** Kinds of which the same is said stand in one line. */
function table(): string {
  const byRow = new Map<string, string[]>();
  for (const kind of cropBook().kinds) {
    const row = rowOf(kind);
    byRow.set(row, [...(byRow.get(row) ?? []), kind.name]);
  }
  const lines = [...byRow].map(([row, names]) => `| ${names.join(", ")} | ${row} |`);
  return [
    "| kinds | cage | bags | by hand | cut before it flowers | start |",
    "| --- | --- | --- | --- | --- | --- |",
    ...lines,
  ].join("\n");
}

test("docs/advice.md shows what is done with each kind, and who says so", () => {
  const text = readFileSync(PAGE, "utf8");
  const [before = "", rest = ""] = text.split(START);
  const [, after = ""] = rest.split(END);
  expect(text.includes(START) && text.includes(END)).toBe(true);
  const made = `${before}${START}\n\n${table()}\n\n${END}${after}`;
  if (process.env["UPDATE"]) writeFileSync(PAGE, made);
  else expect(text).toBe(made);
});
