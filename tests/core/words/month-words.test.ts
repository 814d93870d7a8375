import { expect, test } from "vitest";
import { months } from "../../../src/core/words/month-words.ts";
import { monthName } from "../../../src/core/model/day.ts";

test("months are named as the short forms of Unicode CLDR", () => {
  const short = new Intl.DateTimeFormat("en-US", { month: "short", timeZone: "UTC" });
  const named = Array.from({ length: 12 }, (_, at) => short.format(Date.UTC(2027, at, 1)));
  expect(months).toEqual(named);
  expect(Array.from({ length: 12 }, (_, at) => monthName(at + 1))).toEqual(named);
});
