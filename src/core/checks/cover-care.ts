/** What a cover costs: no pollinators inside, a cage that wind pollen passes; and what rests on cutting. */
import type { Check } from "./check.ts";
import type { Description, Wording } from "./wording.ts";
import { type FindingBase, findingId } from "./finding.ts";
import { boundsGap } from "../geometry/bounds.ts";
import { stopsPollen } from "./isolation.ts";
import type { Stand } from "./stand.ts";
import * as words from "../words/finding-words.ts";

/** A covered stand of an insect-pollinated outcrosser sets no seed by itself. */
export interface CoverFinding extends FindingBase {
  readonly check: "cover-care";
  readonly subject: string;
  /**
   * `no-pollinators`: insects are kept out; `wind-passes`: a cage does not stop wind pollen;
   * `cut-in-time`: a source around is harmless only as long as somebody cuts it before it flowers.
   */
  readonly trouble: "no-pollinators" | "wind-passes" | "cut-in-time";
}

export const coverCareCheck: Check<CoverFinding> = {
  name: "cover-care",
  ignoresPlace: true,
  title: words.cover,
  run: ({ stands }) =>
    stands.flatMap((stand) => {
      const trouble = troubleOf(stand) ?? restsOnCutting(stand, stands);
      if (trouble === null) return [];
      const finding: CoverFinding = {
        id: findingId("cover-care", [stand.id]),
        check: "cover-care",
        severity: "caution",
        subjects: [stand.id],
        subject: stand.id,
        trouble,
      };
      return [finding];
    }),
  describe: describeCover,
};

function troubleOf(stand: Stand): CoverFinding["trouble"] | null {
  if (stand.cover === "none" || stand.planting === null) return null;
  if (!stopsPollen(stand.cover, stand.carrier)) return "wind-passes";
  const needsVisitors = stand.kind.breeding === "outcrossing" && stand.carrier === "insects";
  return stand.isSeedParent && needsVisitors && stand.cover !== "hand" ? "no-pollinators" : null;
}

/** What is cut around the beds is somebody's promise, or a walk every week. */
function restsOnCutting(stand: Stand, stands: readonly Stand[]): CoverFinding["trouble"] | null {
  if (stand.surrounding?.flowering !== "cut") return null;
  const isNear = stands.some(
    (parent) =>
      parent.isSeedParent &&
      parent.kind.group === stand.kind.group &&
      boundsGap(parent.outline.bounds, stand.outline.bounds) < parent.reachM,
  );
  return isNear ? "cut-in-time" : null;
}

function describeCover(
  { trouble, subject }: CoverFinding,
  { nameOf, standOf }: Wording,
): Description {
  const name = nameOf(subject);
  const kind = standOf(subject)?.kind.name ?? words.thisKind;
  if (trouble === "cut-in-time") {
    return {
      title: words.mustBeCut(name),
      sentences: [words.cutAdvice(kind)],
    };
  }
  return trouble === "wind-passes"
    ? {
        title: words.windPasses(name),
        sentences: [words.windAdvice(kind)],
      }
    : {
        title: words.noPollinators(name),
        sentences: [words.pollinatorsAdvice(kind)],
      };
}
