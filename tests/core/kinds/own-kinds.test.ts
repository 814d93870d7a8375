/** A plan's own kinds, and own figures for a built-in one. */
import { describe, expect, test } from "vitest";
import { cropBook } from "../../../src/core/kinds/crop-book.ts";
import type { Level } from "../../../src/core/kinds/crop.ts";
import { kindOf, planBook } from "../../../src/core/kinds/own-kinds.ts";
import { requiredDistance } from "../../../src/core/distances/required-distance.ts";
import { emptyPlan } from "../../../src/core/model/empty-plan.ts";
import type { OwnKind } from "../../../src/core/model/plan.ts";
import { figureWords } from "../../../src/core/distances/distance-words.ts";

const MOONFRUIT: OwnKind = {
  id: "own-kind-1",
  name: "moonfruit",
  botanicalName: "Cucurbita pepo",
  group: "squash",
  lifeCycle: "annual",
  carrier: "insects",
  breeding: "outcrossing",
  isolationM: { home: 90, sale: 200 },
  source: "a neighbour",
  bloomDays: [20, 30],
};

function builtIn(id: string) {
  const kind = cropBook().kind(id);
  if (!kind) throw new Error(`no kind "${id}"`);
  return kind;
}

/** Own figures for a built-in kind, with all else as it is. */
function ownFigures(id: string, more: Partial<OwnKind>): OwnKind {
  const { name, botanicalName, group, lifeCycle, carrier, breeding } = builtIn(id);
  return { id, name, botanicalName, group, lifeCycle, carrier, breeding, isolationM: {}, ...more };
}

function metres(own: OwnKind, level: Level, form?: string): number | undefined {
  return requiredDistance(kindOf(own), form, level)?.figure.metres;
}

describe("a kind that is missing", () => {
  const book = planBook({ ...emptyPlan("p", 2027), ownKinds: [MOONFRUIT] });

  test("is found by name and crosses as its species does", () => {
    const own = book.find("Moonfruit");
    expect(own?.id).toBe("own-kind-1");
    if (!own) throw new Error("not found");
    expect(book.relation(own, builtIn("summer-squash")).relation).toBe("freely");
    expect(book.relation(own, builtIn("cucumber")).relation).toBe("no");
    expect(book.kinds).toHaveLength(cropBook().kinds.length + 1);
  });

  test("has the typed distances, each saying whose it is", () => {
    expect(metres(MOONFRUIT, "home")).toBe(90);
    expect(metres(MOONFRUIT, "sale")).toBe(200);
    const found = requiredDistance(kindOf(MOONFRUIT), undefined, "home");
    expect(found && figureWords(found.reason)).toBe("own figure, 90 m");
    expect(found?.figure).toMatchObject({ source: "own", note: "a neighbour" });
  });

  test("a level without a distance keeps at least a laxer one's, and is not known beyond", () => {
    const forStock = requiredDistance(kindOf(MOONFRUIT), undefined, "stock");
    expect(forStock).toMatchObject({ isFloor: true, figure: { metres: 200 } });
  });
});

describe("own figures for a built-in kind", () => {
  test("go before every published one at their level, for every flower form", () => {
    const own = ownFigures("tomato", { isolationM: { home: 40, stock: 5 } });
    expect(metres(own, "home", "regular")).toBe(40);
    expect(metres(own, "home", "potato-leaf")).toBe(40);
    expect(metres(own, "stock")).toBe(5);
  });

  test("leave the stricter levels as published, but for one that would ask less", () => {
    const own = ownFigures("tomato", { isolationM: { home: 40 } });
    expect(metres(own, "sale")).toBe(40);
    expect(metres(own, "stock")).toBe(
      requiredDistance(builtIn("tomato"), undefined, "stock")?.figure.metres,
    );
  });

  test("leave forms, published figures, cautions and times standing", () => {
    const own = kindOf(ownFigures("summer-squash", { isolationM: { home: 100 } }));
    const published = builtIn("summer-squash");
    expect(own.cautions).toEqual(published.cautions);
    expect(own.isolation.slice(1)).toEqual(published.isolation);
    expect(own.timing).toEqual(published.timing);
    expect(own.population).toEqual(published.population);
    expect(own.botanySource).toBe(published.botanySource);
    expect(kindOf(ownFigures("tomato", {})).forms).toEqual(builtIn("tomato").forms);
  });

  test("times, spacing and plants that are typed win", () => {
    const own = kindOf(
      ownFigures("carrot", {
        bloomDays: [9, 12],
        plantsNeeded: 3,
        inRowM: 0.2,
        betweenRowsM: 0.5,
        carrier: "wind",
      }),
    );
    expect(own.timing.bloomDays).toEqual({ value: [9, 12], source: "own" });
    expect(own.timing.flowerToSeed).toEqual(builtIn("carrot").timing.flowerToSeed);
    expect(own.population).toEqual({ maintenance: { value: 3, source: "own" } });
    expect(own.spacing?.inRowM).toEqual({ value: 0.2, source: "own" });
    expect(own.botanySource).toBe("own");
  });
});
