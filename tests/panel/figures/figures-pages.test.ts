/** The figure browser's rows: defaults, figures, facts, crossings and sources in words. */
import { describe, expect, test } from "vitest";
import { kinds } from "../../../src/core/kinds/kinds.ts";
import { requiredDistance } from "../../../src/core/distances/required-distance.ts";
import { findSource } from "../../../src/core/kinds/sources.ts";
import { crossings, groupName } from "../../../src/panel/figures/figures-crossing.ts";
import { kindFacts } from "../../../src/panel/figures/fact-words.ts";
import { defaultRows, figureLabel, figureRows } from "../../../src/panel/figures/figures-rows.ts";
import { sourceWords } from "../../../src/panel/figures/figures-sources.ts";
import { book } from "../../support/small-plan.ts";

function kindOf(id: string) {
  const kind = book.kind(id);
  if (!kind) throw new Error(`no kind "${id}"`);
  return kind;
}

describe("defaults", () => {
  test("each form where forms differ, one row where they agree", () => {
    const rows = defaultRows(kindOf("tomato"), "m").map(({ level, form, distance }) => [
      level,
      form,
      distance,
    ]);
    expect(rows).toEqual([
      ["home", "regular-leaf", "3 m"],
      ["home", "potato-leaf or long-styled", "7.6 m"],
      ["sale", null, "25 m"],
      ["stock", null, "61 m"],
    ]);
  });

  test("the reason, and the range of the figures they were taken from", () => {
    const [home] = defaultRows(kindOf("carrot"), "ft");
    expect(home?.distance).toBe("2640'");
    expect(home?.why).toMatch(/^handbook, home garden/);
    expect(home?.range).toMatch(/' to .*'$/);
  });

  test("a kind without a figure says that it is unknown", () => {
    expect(defaultRows(kindOf("husk-tomato"), "m").map(({ distance }) => distance)).toEqual([
      null,
      null,
      null,
    ]);
  });
});

describe("figures", () => {
  test("in the plan's unit beside what is printed, with level and source", () => {
    const row = figureRows(kindOf("tomato"), "m").find(({ id }) => id === "us-foundation");
    expect(row).toMatchObject({
      className: "US foundation seed",
      level: "stock",
      distance: "61 m",
      published: "200 ft",
      defaultOf: ["stock"],
      neverDefault: null,
      source: "cfr-201-76",
      remarks: "Half as much between classes of one variety (footnote 25).",
    });
  });

  test("those passed over say why", () => {
    const row = figureRows(kindOf("tomato"), "m").find(({ id }) => id === "india-certified-hybrid");
    expect(row).toMatchObject({ neverDefault: "for hybrid seed", defaultOf: [] });
  });

  test("exactly the figures the rule takes are marked, for every kind", () => {
    for (const kind of kinds) {
      const marked = figureRows(kind, "m").flatMap(({ id, defaultOf }) =>
        defaultOf.map((place) => `${place.split(",")[0]} ${id}`),
      );
      const chosen = (["home", "sale", "stock"] as const).flatMap((level) =>
        (kind.forms ?? [undefined]).flatMap((form) => {
          const found = requiredDistance(kind, form?.id, level);
          return found ? [`${level} ${found.figure.id}`] : [];
        }),
      );
      expect(new Set(marked)).toEqual(new Set(chosen));
    }
  });

  test("a label to choose by", () => {
    const [figure] = kindOf("tomato").isolation;
    expect(figure && figureLabel(figure, kindOf("tomato"), "ft")).toBe(
      "10': home practice, regular-leaf",
    );
  });
});

describe("facts", () => {
  test("every fact of every kind names a source that is known", () => {
    for (const kind of kinds) {
      for (const { facts } of kindFacts(kind, "m")) {
        for (const fact of facts) {
          expect([kind.id, fact.name, findSource(fact.source)?.id]).toEqual([
            kind.id,
            fact.name,
            fact.source,
          ]);
          expect(fact.text).not.toBe("");
        }
      }
    }
  });

  test("numbers in words and in the plan's unit", () => {
    const facts = new Map(
      kindFacts(kindOf("tomato"), "ft").flatMap(({ facts: list }) =>
        list.map((fact) => [fact.name, fact] as const),
      ),
    );
    expect(facts.get("Life cycle")?.text).toBe("annual");
    expect(facts.get("In bloom")?.text).toBe("50 to 80 days");
    expect(facts.get("In bloom")?.note).toBeNull();
    expect(facts.get("Seeds per gram")).toMatchObject({ text: "405", source: "cfr-201-46" });
    expect(facts.get("Spacing in the row")?.text).toMatch(/'/);
    expect(facts.get("Ground free of it before")?.text).toBe("1 year");
  });

  test("heat on its scale, and parts of the bloom that differ", () => {
    const text = kindFacts(kindOf("maize"), "m")
      .flatMap(({ facts }) => facts.map((fact) => `${fact.name}: ${fact.text}`))
      .join("\n");
    expect(text).toContain("C-days (modified average, base 10 C, cap 30 C)");
    expect(text).toContain("Pollen shed: 7 to 14 days, from 1 to 3 days before first flower");
  });
});

describe("crossings", () => {
  test("readiest first, with who says so and who says otherwise", () => {
    const found = crossings(kindOf("summer-squash"), book);
    expect(found[0]).toMatchObject({ species: "Cucurbita pepo", relation: "freely" });
    expect(found[0]?.kinds).toContain("pepo pumpkin");
    const order = found.map(({ relation }) => relation);
    expect(order).toEqual(
      [...order].sort(
        (a, b) =>
          ["freely", "sometimes", "rarely", "no"].indexOf(a) -
          ["freely", "sometimes", "rarely", "no"].indexOf(b),
      ),
    );
    expect(found.some(({ otherwise }) => otherwise.length > 0)).toBe(true);
  });

  test("species told apart in so many words are named too", () => {
    expect(crossings(kindOf("cucumber"), book)).toContainEqual(
      expect.objectContaining({ species: "Cucumis melo", relation: "no", kinds: ["melon"] }),
    );
  });

  test("groups by name; a group of one's own by its word", () => {
    expect(groupName("squash")).toBe("squash and pumpkin");
    expect(groupName("own-kind-1")).toBe("own-kind-1");
  });
});

test("sources as a reader would look them up, without what says nothing", () => {
  expect(sourceWords("cfr-201-76")).toEqual({
    text: "7 CFR 201.76 Table 5, minimum land, isolation, field and seed standards, United States, Code of Federal Regulations, 2015 annual edition",
    trust: "seen",
  });
  expect(sourceWords("home-practice")).toEqual({
    text: "Common practice among home seed growers",
    trust: "common practice",
  });
  expect(sourceWords("nowhere")).toEqual({ text: "nowhere", trust: "unknown source" });
});
