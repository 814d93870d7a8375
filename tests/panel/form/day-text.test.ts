import { describe, expect, test } from "vitest";
import { dayFromIso, isoFromDay, longDate, shortDate } from "../../../src/core/model/day.ts";
import { readDay } from "../../../src/panel/form/day-text.ts";

const day = (iso: string) => dayFromIso(iso) ?? Number.NaN;
const season = { first: day("2027-01-01"), last: day("2027-12-31") };
/** A southern summer: over New Year. */
const southern = { first: day("2027-07-01"), last: day("2028-06-30") };

function isoOf(text: string, within = season): string {
  const read = readDay(text, within);
  return read.ok ? isoFromDay(read.value) : read.reason;
}

describe("dates with a year", () => {
  test.each(["2027-05-20", "20 May 2027", "20. May 2027", "May 20, 2027", "may 20 2027"])(
    "%j is 20 May 2027",
    (text) => expect(isoOf(text)).toBe("2027-05-20"),
  );
  test("every day of a leap year reads back from its long form", () => {
    for (let each = day("2028-01-01"); each <= day("2028-12-31"); each += 1) {
      expect(readDay(longDate(each), season)).toEqual({ ok: true, value: each });
    }
  });
});

describe("dates without a year", () => {
  test("belong to the season", () => {
    expect(isoOf("20 May")).toBe("2027-05-20");
    expect(isoOf("20 May", southern)).toBe("2028-05-20");
    expect(isoOf("1 October", southern)).toBe("2027-10-01");
  });
  test("every day of the season reads back from its short form", () => {
    for (let each = southern.first; each <= southern.last; each += 1) {
      expect(readDay(shortDate(each), southern)).toEqual({ ok: true, value: each });
    }
  });
  test("29 February is found in the one leap year of the season", () => {
    expect(isoOf("29 Feb", southern)).toBe("2028-02-29");
    expect(isoOf("29 Feb")).toBe("There is no 29 Feb 2027");
  });
});

test.each(["", "06/01/2027", "2027-1-5", "2027-02-30", "32 May", "20 Mud", "May", "20"])(
  "%j is refused",
  (text) => expect(readDay(text, season).ok).toBe(false),
);
