/** Lots named by code in a text: known ones are met, whatever the case; others are made. */
import { expect, test } from "vitest";
import { codesText, namedLots } from "../../../src/core/lots/named-lots.ts";
import { LIMITS } from "../../../src/core/model/limits.ts";
import type { Lot } from "../../../src/core/model/plan.ts";

const lot = (id: string, code: string, variety = "v1"): Lot => ({
  id,
  code,
  variety,
  state: "in stock",
});
const SHELF = [lot("lot-1", "AL-25"), lot("lot-3", "OF-24", "v2"), lot("lot-4", "A; B")];

test("what is written as one text is read as the same lots", () => {
  const shelf = namedLots(SHELF);
  const two = SHELF.slice(0, 2);
  expect(codesText(two)).toBe("AL-25; OF-24");
  expect(shelf.named(codesText(two), "v1")).toEqual(two);
  expect(shelf.made).toEqual([]);
});

test("case and blanks do not tell lots apart, and each is named once", () => {
  const shelf = namedLots(SHELF);
  expect(shelf.named(" al-25 ;AL-25;; ", "v1")).toEqual([SHELF[0]]);
  expect(shelf.made).toEqual([]);
});

test("a code that holds the sign between codes is one code where the shelf has it", () => {
  expect(namedLots(SHELF).named("A; B", "v1")).toEqual([SHELF[2]]);
});

test("unknown codes become lots under ids nobody has, known from then on", () => {
  const shelf = namedLots(SHELF);
  const [made] = shelf.named("New-27", "v2");
  expect(made).toEqual(lot("lot-2", "New-27", "v2"));
  expect(shelf.named("new-27; Other", "v1").map(({ id }) => id)).toEqual(["lot-2", "lot-5"]);
  expect(shelf.made.map(({ code }) => code)).toEqual(["New-27", "Other"]);
  expect(shelf.strangers("New-27; AL-25; nobody", "v1")).toEqual([made]);
});

test("no more than a variety can hold", () => {
  const codes = Array.from({ length: LIMITS.lotRefs + 5 }, (_, index) => `X-${index}`).join(";");
  expect(namedLots([]).named(codes, "v1")).toHaveLength(LIMITS.lotRefs);
});
