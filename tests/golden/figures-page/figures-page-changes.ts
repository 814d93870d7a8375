/** The parts of the figures page on wild plants, and on every default the rewritten rule changed. */
import { requiredDistance } from "../../../src/core/distances/required-distance.ts";
import { wildIncreases } from "../../../src/core/distances/wild-increase.ts";
import { kinds } from "../../../src/core/kinds/kinds.ts";
import { levelOrder } from "../../../src/core/kinds/levels.ts";
import before from "./defaults-before.json" with { type: "json" };
import { listed, metresText, table } from "./markdown.ts";
import { cite } from "./source-numbers.ts";

type Metres = number | null;

/** Metres at home, for sale and of stock seed under the earlier rule, by kind and flower form. */
const earlier: Readonly<Record<string, readonly Metres[]>> = before;

export function changedPart(): readonly string[] {
  const rows = kinds.flatMap((kind) =>
    (kind.forms ?? [undefined]).flatMap((form) => {
      const was = earlier[form ? `${kind.id}|${form.id}` : kind.id];
      const cells = levelOrder.map((level, place) => {
        const found = requiredDistance(kind, form?.id, level);
        const now = found ? `${text(found.figure.metres)}${found.isFloor ? "+" : ""}` : "-";
        const then = was ? text(was[place] ?? null) : "not carried";
        return then === now ? "" : `${then} → ${now}`;
      });
      if (cells.every((cell) => cell === "")) return [];
      return [[form ? `${kind.name}, ${form.name}` : kind.name, ...cells]];
    }),
  );
  return [
    "## Defaults that the rule of 2026 changed",
    "",
    "Metres before and after; an empty cell did not change. Before, seed law, our readings of it and",
    "pages that restate it went before everything written for gardens, a home garden was never asked",
    "more than seed for sale, and a level without a figure was unknown however near. Made by running",
    "both rules, not by hand.",
    "",
    ...table(["kind", ...levelOrder], rows),
  ];
}

function text(metres: Metres): string {
  return metres === null ? "-" : metresText(metres);
}

export function wildPart(): readonly string[] {
  const rows = wildIncreases.map(({ parents, wild, atLeastM, why, source }) => [
    listed(parents.map(nameOf)),
    nameOf(wild),
    `at least ${metresText(atLeastM)}`,
    `${why} ${cite(source)}`,
  ]);
  return [
    "## More from wild and weedy plants",
    "",
    "Where the pollen source is one of these, the seed parent's published distance is raised unasked,",
    "at every level, and the finding says so.",
    "",
    ...table(["seed of", "from", "distance", "why"], rows),
  ];
}

function nameOf(id: string): string {
  return kinds.find((kind) => kind.id === id)?.name ?? id;
}
