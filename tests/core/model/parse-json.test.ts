import * as fc from "fast-check";
import { describe, expect, test, vi } from "vitest";
import { jsonFault } from "../../../src/core/model/json-fault.ts";
import { MAX_DEPTH, parseJson } from "../../../src/core/model/parse-json.ts";
import { problemText } from "../../../src/core/model/problem.ts";

vi.setConfig({ testTimeout: 60_000 });

function refusal(text: string): string {
  const read = parseJson(text, "plan.json");
  return read.ok ? "accepted" : read.problems.map(problemText).join("\n");
}

test.each([
  ["an empty file", "", "plan.json: got an empty file, expected JSON text."],
  ["only spaces", " \n\t ", "plan.json: got an empty file, expected JSON text."],
  [
    "a cut file",
    '{\n  "a": [1,\n  2',
    "plan.json: got text that stops in the middle, at line 3, column 4, expected a comma or the end of a list.",
  ],
  [
    "a file cut in a text",
    '{"a": "half',
    "plan.json: got text that stops in the middle, at line 1, column 12, expected a closing double quote.",
  ],
  ["NaN", '{\n  "x": NaN\n}', /got "NaN" at line 2, column 8, expected a value/],
  [
    "Infinity",
    '{"a": 1,\n"x": -Infinity}',
    /got "-Infinity" at line 2, column 6, expected a value/,
  ],
  ["a trailing comma", '{"a": 1,}', /got "}" at line 1, column 9, expected a field name in double/],
  [
    "a missing comma",
    "[1\n 2]",
    /got "2" at line 2, column 2, expected a comma or the end of a list/,
  ],
  ["a bare name", "{a: 1}", /got "a" at line 1, column 2, expected a field name/],
  ["a missing colon", '{"a" 1}', /got "1" at line 1, column 6, expected a colon/],
  ["a comment", "// hello\n{}", /got "\/" at line 1, column 1/],
  [
    "text after the end",
    "{} extra",
    /got "extra" at line 1, column 4, expected the end of the file/,
  ],
  [
    "a line break in a text",
    '{"a": "x\ny"}',
    /got "\\n" at line 1, column 9, expected no line break/,
  ],
  ["a web page", "<!doctype html>", /got "<" at line 1, column 1, expected a value/],
])("%s is refused with its place", (_, text, message) => {
  expect(refusal(text)).toMatch(message);
});

test("nesting is refused before anything is built from it", () => {
  const deep = `${"[".repeat(5000)}${"]".repeat(5000)}`;
  expect(refusal(deep)).toBe(
    "plan.json: got brackets nested deeper than 64 at line 1, expected at most 64 levels.",
  );
  expect(refusal(`{\n"a":\n${'{"b":'.repeat(5000)}1`)).toMatch(/deeper than 64 at line 3/);
  expect(refusal("[".repeat(MAX_DEPTH) + "]".repeat(MAX_DEPTH))).toBe("accepted");
  expect(refusal(JSON.stringify({ a: "[".repeat(5000) }))).toBe("accepted");
});

test.each([
  ['{"__proto__": {"isAdmin": true}}', "__proto__"],
  ['{"varieties": [{"name": "x"}, {"__proto__": 1}]}', "varieties[1].__proto__"],
  ['{"site": {"constructor": {"prototype": 1}}}', "site.constructor"],
  ['{"\\u005f_proto__": 1}', "__proto__"],
])("%s is refused at %s", (text, place) => {
  expect(refusal(text)).toBe(`plan.json: ${place}: got a forbidden name, expected no such field.`);
  expect(({} as Record<string, unknown>)["isAdmin"]).toBeUndefined();
});

test("a byte order mark is no fault", () => {
  expect(parseJson('\uFEFF{"a": 1}', "plan.json")).toEqual({ ok: true, value: { a: 1 } });
});

describe("jsonFault", () => {
  test("finds none in what the engine reads, and one in whatever it refuses", () => {
    const scraps = fc.constantFrom(
      ...'{}[],:"\\ \n'.split(""),
      "1",
      "-",
      "0",
      ".5",
      "e3",
      "true",
      "null",
      "nul",
      '"a"',
      '"a":',
      "\\u00e9",
      "NaN",
      "é",
    );
    const texts = fc.oneof(
      fc.json(),
      fc.array(scraps, { maxLength: 12 }).map((parts) => parts.join("")),
      fc.tuple(fc.json(), fc.nat()).map(([text, at]) => text.slice(0, at % (text.length + 1))),
    );
    fc.assert(
      fc.property(texts, (text) => {
        let isJson = true;
        try {
          JSON.parse(text);
        } catch {
          isJson = false;
        }
        expect(jsonFault(text) === null).toBe(isJson);
      }),
      { numRuns: 5000 },
    );
  });
});
