/** What a cover costs: no pollinators inside, or a cage that wind pollen passes. */
import type { Check } from "./check.ts";
import type { Description, Wording } from "./wording.ts";
import { type FindingBase, findingId } from "./finding.ts";
import { stopsPollen } from "./isolation.ts";
import type { Stand } from "./stand.ts";

/** A covered stand of an insect-pollinated outcrosser sets no seed by itself. */
export interface CoverFinding extends FindingBase {
  readonly check: "cover-care";
  readonly subject: string;
  /** `no-pollinators`: insects are kept out; `wind-passes`: a cage does not stop wind pollen. */
  readonly trouble: "no-pollinators" | "wind-passes";
}

export const coverCareCheck: Check<CoverFinding> = {
  name: "cover-care",
  ignoresPlace: true,
  title: "A cover needs care, or does not help",
  run: ({ stands }) =>
    stands.flatMap((stand) => {
      const trouble = troubleOf(stand);
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

function describeCover(
  { trouble, subject }: CoverFinding,
  { nameOf, standOf }: Wording,
): Description {
  const name = nameOf(subject);
  const kind = standOf(subject)?.kind.name ?? "this kind";
  return trouble === "wind-passes"
    ? {
        title: `A cage does not isolate ${name}`,
        sentences: [`Pollen of ${kind} travels on the wind and passes the mesh. Bags do stop it.`],
      }
    : {
        title: `${name} needs pollinators under its cover`,
        sentences: [
          `Insects cannot reach it, and ${kind} sets little seed alone. Introduce pollinators, pollinate by hand, or open two cages on alternate days.`,
        ],
      };
}
