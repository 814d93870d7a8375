/** Own kinds of two plans, both numbered from 1, in one plan. */
import { describe, expect, test } from "vitest";
import {
  clipText,
  pasteClashes,
  pasteObjects,
  readClip,
} from "../../../src/core/edits/clipboard.ts";
import { cropsOfPlan, takeOverCrops } from "../../../src/core/edits/earlier-crops.ts";
import type { ClashAnswer } from "../../../src/core/edits/kinds-brought.ts";
import { planBook } from "../../../src/core/kinds/own-kinds.ts";
import { runChecks } from "../../../src/core/checks/run-checks.ts";
import type { OwnKind, Plan } from "../../../src/core/model/plan.ts";
import { layoutOf, source, trialPlan } from "../../support/trial-plan.ts";

const AT_ZERO = { x: 0, y: 0 };

function ownKind(name: string, metres: number, more: Partial<OwnKind> = {}): OwnKind {
  return {
    id: "own-kind-1",
    name,
    group: name.trim().toLowerCase().replace(" ", "-"),
    lifeCycle: "annual",
    carrier: "insects",
    breeding: "outcrossing",
    isolationM: { home: metres },
    ...more,
  };
}

/** A plan with one planting and one pollen source of its own kind. */
function planWith(kind: OwnKind, varietyName: string): Plan {
  const point = { shape: "point", x: 50, y: 0 } as const;
  const plan = trialPlan(
    { p: { at: 0, kind: kind.id, variety: { name: varietyName } } },
    [source("s", kind.id, point)],
    { ownKinds: [kind] },
  );
  return { ...plan, id: `plan-${varietyName}` };
}

function pasted(from: Plan, into: Plan, answer?: ClashAnswer): Plan {
  const text = clipText(from, layoutOf(from), ["p", "s"]);
  const read = readClip(text ?? "", (kind) => planBook(into).kind(kind) !== undefined);
  if (!read.ok) throw new Error(read.reason);
  return pasteObjects("layout-1", read.clip, AT_ZERO, "Paste", answer).apply(into);
}

function clashNames(from: Plan, into: Plan): readonly string[] {
  const text = clipText(from, layoutOf(from), ["p"]);
  const read = readClip(text ?? "", () => true);
  return read.ok ? pasteClashes(into, read.clip).map(({ copied }) => copied.name) : ["unread"];
}

/** Name of the kind and metres that the last planting and the last source have by the checks. */
function lastOf(plan: Plan) {
  const { stands } = runChecks(plan, layoutOf(plan), planBook(plan));
  const plantings = stands.filter((stand) => stand.planting !== null);
  const sources = stands.filter((stand) => stand.surrounding !== null);
  return [
    plantings.at(-1)?.kind.name,
    plantings.at(-1)?.requirement?.metres,
    sources.at(-1)?.kind.name,
  ];
}

const NIGER = ownKind("Niger seed", 300);
const BORAGE = ownKind("Borage", 5);

describe("a planting pasted into another plan", () => {
  test("stays of its kind where both plans call theirs own-kind-1", () => {
    const after = pasted(planWith(NIGER, "Golden"), planWith(BORAGE, "Blue"));
    expect(clashNames(planWith(NIGER, "Golden"), planWith(BORAGE, "Blue"))).toEqual([]);
    expect(lastOf(after)).toEqual(["Niger seed", 300, "Niger seed"]);
    expect(after.ownKinds.map(({ id, name }) => [id, name])).toEqual([
      ["own-kind-1", "Borage"],
      ["own-kind-2", "Niger seed"],
    ]);
  });

  test("is not taken for a variety of the same name of another kind", () => {
    const after = pasted(planWith(NIGER, "Golden"), planWith(BORAGE, "Golden"));
    expect(after.varieties).toHaveLength(2);
    expect(lastOf(after)).toEqual(["Niger seed", 300, "Niger seed"]);
  });

  test("joins the same kind under whatever id it has here, and nothing is asked", () => {
    const here = planWith({ ...NIGER, id: "own-kind-7" }, "Blue");
    expect(clashNames(planWith(NIGER, "Golden"), here)).toEqual([]);
    expect(pasted(planWith(NIGER, "Golden"), here).ownKinds).toBe(here.ownKinds);
  });

  test("of a kind that has other figures here is asked, and either answer holds", () => {
    const [from, into] = [planWith(NIGER, "Golden"), planWith(ownKind("niger seed ", 20), "Blue")];
    expect(clashNames(from, into)).toEqual(["Niger seed"]);
    expect(lastOf(pasted(from, into, "here"))).toEqual(["niger seed ", 20, "niger seed "]);
    expect(lastOf(pasted(from, into, "copied"))).toEqual([
      "Niger seed (copied)",
      300,
      "Niger seed (copied)",
    ]);
  });

  test("with own figures for a kind of the crop base is asked too", () => {
    const carrot = ownKind("Carrot", 900, {
      id: "carrot",
      group: "carrot",
      species: "Daucus carota",
    });
    const into = trialPlan({ q: { at: 90, kind: "carrot" } });
    expect(clashNames(planWith(carrot, "Long"), into)).toEqual(["Carrot"]);
    expect(pasted(planWith(carrot, "Long"), into, "here").ownKinds).toEqual([]);
    expect(lastOf(pasted(planWith(carrot, "Long"), into, "copied"))[1]).toBe(900);
    const both = { ...into, ownKinds: [carrot] };
    expect(clashNames(planWith(carrot, "Long"), both)).toEqual([]);
  });
});

describe("crossing groups that plans number by themselves", () => {
  const alone = (name: string, id = "own-kind-1") => ownKind(name, 300, { id, group: id });

  test("do not run together", () => {
    const after = pasted(
      planWith(alone("Niger seed"), "Golden"),
      planWith(alone("Borage"), "Blue"),
    );
    expect(after.ownKinds.map(({ name, group }) => [name, group])).toEqual([
      ["Borage", "own-kind-1"],
      ["Niger seed", "own-kind-2"],
    ]);
    const same = planWith(alone("Niger seed", "own-kind-3"), "Blue");
    expect(pasted(planWith(alone("Niger seed"), "Golden"), same).ownKinds).toBe(same.ownKinds);
  });

  test("stay together for kinds that cross, also when only one of them comes", () => {
    const pair = [
      alone("Niger seed"),
      ownKind("Tall niger", 300, { id: "own-kind-2", group: "own-kind-1" }),
    ];
    const from: Plan = { ...planWith(pair[1] as OwnKind, "Tall"), ownKinds: pair };
    const after = pasted(from, planWith(alone("Borage"), "Blue"));
    const [borage, tall] = after.ownKinds;
    expect([tall?.name, tall?.group === borage?.group]).toEqual(["Tall niger", false]);
  });
});

describe("earlier crops taken over", () => {
  const taken = (from: Plan, into: Plan) => {
    const next = takeOverCrops(cropsOfPlan(from, into), "Take").apply(into);
    const kind = planBook(next).kind(next.earlierCrops[0]?.kind ?? "");
    return [kind?.name, kind?.group, next.ownKinds.length];
  };

  test("stay of their kind, and bring no own figures for kinds of the crop base", () => {
    expect(taken(planWith(NIGER, "Golden"), planWith(BORAGE, "Blue"))).toEqual([
      "Niger seed",
      "niger-seed",
      2,
    ]);
    const carrot = ownKind("Carrot", 1, {
      id: "carrot",
      group: "carrot",
      species: "Daucus carota",
    });
    expect(taken(planWith(carrot, "Long"), trialPlan({}))).toEqual(["carrot", "carrot", 0]);
  });

  test("of a kind of the same name but another group do not pass for it", () => {
    const other = ownKind("Borage", 5, { group: "comfrey" });
    expect(taken(planWith(other, "Golden"), planWith(BORAGE, "Blue"))).toEqual([
      "Borage (copied)",
      "comfrey",
      2,
    ]);
  });
});
