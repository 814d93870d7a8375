import { describe, expect, test } from "vitest";
import {
  USUAL_PATTERN,
  codeByPattern,
  patternProblem,
} from "../../../src/core/lots/code-pattern.ts";
import { foldedCode } from "../../../src/core/model/lot-code.ts";

const facts = { kind: "winter squash", variety: "Anvil Blue", harvestYear: 2026, plot: "B07-2" };
const none: ReadonlySet<string> = new Set();

describe("codes of new lots by a pattern", () => {
  test("each part is filled in from what is known of the lot", () => {
    expect(codeByPattern(USUAL_PATTERN, facts, none)).toBe("AB-26-01");
    expect(codeByPattern("{kind}/{variety} {year} {plot}", facts, none)).toBe("WS/AB 2026 B07-2");
  });

  test("a single word is shortened to three letters, whatever the script", () => {
    expect(codeByPattern("{variety}", { kind: "pea", variety: "Dusk" }, none)).toBe("DUS");
    expect(codeByPattern("{variety}", { kind: "pea", variety: "Ökör szem" }, none)).toBe("ÖS");
  });

  test("a part that is not known falls out with the sign before it", () => {
    const { kind, variety } = facts;
    expect(codeByPattern(USUAL_PATTERN, { kind, variety }, none)).toBe("AB-01");
    expect(codeByPattern("{plot}-{variety}", { kind, variety }, none)).toBe("AB");
  });

  test("the running number is the first that gives a code no lot has", () => {
    const taken = new Set(["AB-26-01", "ab-26-02"].map(foldedCode));
    expect(codeByPattern(USUAL_PATTERN, facts, taken)).toBe("AB-26-03");
  });

  test("without a number in the pattern a used code is counted on", () => {
    expect(codeByPattern("{variety}-{yy}", facts, new Set(["AB-26"]))).toBe("AB-26-2");
  });

  test("a pattern that cannot be used says why", () => {
    expect(patternProblem("{variety}-{colour}")).toContain("{colour} is not known");
    expect(patternProblem("  ")).toContain("Type a pattern");
    expect(patternProblem("{variety}-{yy")).toContain("brace");
    expect(patternProblem("seed")).toContain("at least one part");
    expect(patternProblem("{".repeat(90))).toContain("at most 80");
    expect(patternProblem(USUAL_PATTERN)).toBeNull();
  });

  test("a plan with a pattern that cannot be used still gets codes", () => {
    expect(codeByPattern("{colour}", facts, none)).toBe("AB-26-01");
  });
});
