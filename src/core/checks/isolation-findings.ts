/** Isolation pairs to findings: one per pair of stands, and one per stand that lacks a figure or dates. */
import type { Check, CheckInput } from "./check.ts";
import {
  type IsolationFinding,
  type MissingBloomFinding,
  type MissingFigureFinding,
  compareText,
  findingId,
} from "./finding.ts";
import type { IsolationPair } from "./isolation-pair.ts";

export const isolationCheck: Check = {
  name: "isolation",
  title: "Plantings that would cross are too close",
  run: ({ freshPairs, isUnchanged, previous }) => {
    const byPair = new Map<string, IsolationPair[]>();
    for (const pair of freshPairs) {
      if (pair.standing !== "conflict") continue;
      const id = findingId("isolation", [pair.seedParent, pair.pollenSource]);
      const found = byPair.get(id);
      if (found) found.push(pair);
      else byPair.set(id, [pair]);
    }
    // A pair that touches a changed stand is judged anew both ways, so what is kept is whole.
    return [
      ...previous.filter((finding) => finding.subjects.every(isUnchanged)),
      ...[...byPair].map(([id, atRisk]) => isolationFinding(id, atRisk)),
    ];
  },
};

function isolationFinding(id: string, found: readonly IsolationPair[]): IsolationFinding {
  const atRisk = [...found].sort(
    (a, b) => (b.requiredM ?? 0) - (a.requiredM ?? 0) || compareText(a.seedParent, b.seedParent),
  );
  const worst = atRisk[0] as IsolationPair;
  return {
    id,
    check: "isolation",
    severity: atRisk.every((pair) => pair.relation === "rarely") ? "caution" : "conflict",
    subjects: [worst.seedParent, worst.pollenSource].sort(compareText),
    measuredM: worst.distanceM,
    requiredM: worst.requiredM,
    where: worst.where,
    atRisk,
  };
}

export const missingBloomCheck: Check = {
  name: "missing-bloom",
  title: "Bloom dates are missing",
  run: (input) =>
    [...unknownsBySubject(input, (pair) => pair.lacksBloom)].map(
      ([subject, pairs]): MissingBloomFinding => ({
        ...nearestOf("missing-bloom", subject, pairs),
        check: "missing-bloom",
        subject,
        against: othersOf(subject, pairs),
      }),
    ),
};

export const missingFigureCheck: Check = {
  name: "missing-figure",
  title: "No isolation distance is known",
  run: (input) =>
    [
      ...unknownsBySubject(input, (pair) => (pair.requirement === null ? [pair.seedParent] : [])),
    ].map(([subject, pairs]): MissingFigureFinding => ({
      ...nearestOf("missing-figure", subject, pairs),
      check: "missing-figure",
      subject,
      against: othersOf(subject, pairs),
    })),
};

function unknownsBySubject(
  { pairs }: CheckInput,
  blame: (pair: IsolationPair) => readonly string[],
): ReadonlyMap<string, readonly IsolationPair[]> {
  const found = new Map<string, IsolationPair[]>();
  for (const pair of pairs) {
    if (pair.standing !== "unknown") continue;
    for (const subject of blame(pair)) {
      const list = found.get(subject);
      if (list) list.push(pair);
      else found.set(subject, [pair]);
    }
  }
  return found;
}

function nearestOf(
  check: "missing-bloom" | "missing-figure",
  subject: string,
  pairs: readonly IsolationPair[],
) {
  const nearest = pairs.reduce((best, pair) => (pair.distanceM < best.distanceM ? pair : best));
  return {
    id: findingId(check, [subject]),
    severity: "unknown" as const,
    subjects: [subject],
    measuredM: nearest.distanceM,
    requiredM: nearest.requiredM,
    where: nearest.where,
  };
}

function othersOf(subject: string, pairs: readonly IsolationPair[]): readonly string[] {
  const others = pairs.map((pair) =>
    pair.seedParent === subject ? pair.pollenSource : pair.seedParent,
  );
  return [...new Set(others)].sort(compareText);
}
