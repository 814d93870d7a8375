/**
 * Ways out of an isolation finding, made when it is opened, each verified on the edited plan, the
 * one a grower would take first before the others. Never applied unattended.
 */
import type { CheckedLayout } from "../checks/checked-layout.ts";
import { type Finding, checkOf } from "../checks/all-checks.ts";
import type { Stand } from "../checks/stand.ts";
import { aroundProposals } from "./around-proposals.ts";
import { bothCoveredProposals, coverProposals, turnsProposal } from "./cover-proposals.ts";
import { cutProposals } from "./cut-proposals.ts";
import { dateProposals } from "./date-proposals.ts";
import { fewerProposals } from "./fewer-proposals.ts";
import { guardProposals } from "./guard-proposals.ts";
import type { RectangleShape } from "../model/plan.ts";
import {
  keepsDistance,
  nearestSpotProposals,
  otherBedProposals,
  swapProposals,
} from "./move-proposals.ts";
import { inOrderOfWorth, spoilsGround } from "./rank-ways.ts";
import { type Proposal, type Remedy, verified } from "./remedy.ts";
import { yearProposals } from "./year-proposals.ts";

/** All of them, the best first; whoever shows fewer says how many there are. */
export function findRemedies(context: CheckedLayout, finding: Finding): readonly Remedy[] {
  const stands = finding.subjects.flatMap((id) => context.result.standById.get(id) ?? []);
  const proposals = [
    ...stands.flatMap((stand) => movesOf(context, stand)),
    ...dateProposals(context, finding),
    ...stands.flatMap((stand) => coverProposals(context, stand)),
    ...ofBoth(context, stands),
    ...stands.flatMap((stand) => fewerProposals(context, stand, finding)),
    ...stands.flatMap((stand) => guardProposals(context, stand, finding)),
    ...stands.flatMap((stand) => cutProposals(context, stand)),
    ...stands.flatMap((stand) => aroundProposals(context, stand, parentOf(context, finding))),
    ...stands.flatMap((stand) => yearProposals(context, stand)),
  ];
  const tried = proposals.flatMap((proposal) => verified(context, finding, proposal) ?? []);
  const beds = stands.flatMap((stand) => otherBeds(context, finding, stand));
  return withoutNeedless(withoutTwins(inOrderOfWorth([...tried, ...beds])));
}

function movesOf(context: CheckedLayout, { planting }: Stand): readonly Proposal[] {
  if (!planting || planting.locked === true) return [];
  return [...nearestSpotProposals(context, planting), ...swapProposals(context, planting)];
}

/** Covers that help only over both. */
function ofBoth(context: CheckedLayout, [a, b]: readonly Stand[]): readonly Proposal[] {
  if (!a || !b) return [];
  const byTurns = turnsProposal(context, [a, b]);
  return [...bothCoveredProposals(context, [a, b]), ...(byTurns ? [byTurns] : [])];
}

/** The seed parent at most risk of the finding. */
function parentOf({ result }: CheckedLayout, finding: Finding): Stand | undefined {
  const [worst] = checkOf(finding).pairsAtRisk?.(finding) ?? [];
  return worst && result.standById.get(worst.seedParent);
}

/**
 * Of two into the same bed the better, and of keeping no seed the milder: where that alone does, the
 * other is not needed.
 */
function withoutTwins(remedies: readonly Remedy[]): readonly Remedy[] {
  const goals = new Set<string>();
  return remedies.filter(({ into, id, way, touches }) => {
    const goal = into ?? (way === "not for seed" ? `${way} ${touches.join(" ")}` : id);
    if (goals.has(goal)) return false;
    goals.add(goal);
    return true;
  });
}

/** Plants are not given up where all of them could move and clear as much. */
function withoutNeedless(remedies: readonly Remedy[]): readonly Remedy[] {
  const isMove = ({ way }: Remedy) => way === "move" || way === "other bed";
  const least = (id: string) =>
    Math.min(
      ...remedies
        .filter((each) => isMove(each) && each.touches.includes(id) && !spoilsGround(each))
        .map(({ conflictsAfter }) => conflictsAfter),
    );
  return remedies.filter(
    ({ way, touches: [id = ""], conflictsAfter }) =>
      way !== "fewer plants" || conflictsAfter < least(id),
  );
}

/** In each other bed the nearest place that frees the planting of all conflicts, else of this one. */
function otherBeds(
  context: CheckedLayout,
  finding: Finding,
  { planting }: Stand,
): readonly Remedy[] {
  if (!planting || planting.locked === true) return [];
  const troubles = context.result.findings.filter(
    (entry) => entry.severity === "conflict" && entry.subjects.includes(planting.id),
  );
  const otherId = finding.subjects.find((id) => id !== planting.id);
  const other = otherId === undefined ? undefined : context.result.standById.get(otherId);
  const isWorth = (outline: RectangleShape) =>
    !other || keepsDistance(context, planting, outline, other);
  return otherBedProposals(context, planting, isWorth).flatMap((proposals) => {
    let first: Remedy | null = null;
    for (const proposal of proposals) {
      const remedy = verified(context, finding, proposal);
      if (!remedy) continue;
      first ??= remedy;
      if (troubles.every((trouble) => remedy.clears.includes(trouble.id))) return [remedy];
    }
    return first ? [first] : [];
  });
}
