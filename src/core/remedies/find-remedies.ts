/**
 * Ways out of an isolation finding, made when it is opened, each verified on the edited plan,
 * least disturbance first. Never applied unattended.
 */
import { type Finding, checkOf } from "../checks/all-checks.ts";
import { isSameLot, stopsPollen } from "../checks/isolation.ts";
import type { Stand } from "../checks/stand.ts";
import { changePlantings } from "../edits/object-edits.ts";
import { shortDate } from "../model/day.ts";
import type { Cover, Planting } from "../model/plan.ts";
import { nearestSpotProposals, otherBedProposals, swapProposals } from "./move-proposals.ts";
import { type Proposal, type Remedy, verified } from "./remedy.ts";
import type { CheckedLayout } from "../checks/checked-layout.ts";
import { staggerOffers } from "./stagger.ts";

/** How much ways that move nothing disturb, on the scale of metres moved. No source; our choice. */
const DISTURBANCE = { date: 12, cover: 25, cut: 35, frost: 40, notForSeed: 60 } as const;
/** A start moved by more than this is called large. No source; our choice. */
const LARGE_SHIFT_DAYS = 42;
/** Remedies of one way kept: a choice, not a catalogue. */
const PER_WAY = 3;

export function findRemedies(context: CheckedLayout, finding: Finding): readonly Remedy[] {
  const plantings = finding.subjects.flatMap((id) => {
    const planting = context.result.standById.get(id)?.planting;
    return planting ? [planting] : [];
  });
  const tried = (proposals: readonly Proposal[]) =>
    proposals.flatMap((proposal) => {
      const remedy = verified(context, finding, proposal);
      return remedy ? [remedy] : [];
    });
  const found = [
    ...plantings.flatMap((planting) => tried(nearestSpotProposals(context, planting))),
    ...plantings.flatMap((planting) => tried(swapProposals(context, planting))),
    ...plantings.flatMap((planting) => otherBeds(context, finding, planting)),
    ...tried(dateProposals(context, finding)),
    ...plantings.flatMap((planting) => tried(coverProposals(context, planting))),
    ...plantings.flatMap((planting) => tried(purposeProposals(context, finding, planting))),
  ].sort((a, b) => a.disturbance - b.disturbance);
  const counts = new Map<string, number>();
  const goals = new Set<string>();
  return found.filter((remedy) => {
    const count = counts.get(remedy.way) ?? 0;
    const goal = remedy.into ?? remedy.title;
    if (count >= PER_WAY || goals.has(goal)) return false;
    counts.set(remedy.way, count + 1);
    goals.add(goal);
    return true;
  });
}

/** In each other bed the nearest place that frees the planting of all conflicts, else of this one. */
function otherBeds(
  context: CheckedLayout,
  finding: Finding,
  planting: Planting,
): readonly Remedy[] {
  const troubles = context.result.findings.filter(
    (entry) => entry.severity === "conflict" && entry.subjects.includes(planting.id),
  );
  return otherBedProposals(context, planting).flatMap((proposals) => {
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

function dateProposals(context: CheckedLayout, finding: Finding): readonly Proposal[] {
  const { plan, result } = context;
  const [first, second] = finding.subjects;
  if (first === undefined || second === undefined) return [];
  return staggerOffers(context, [first, second]).map((offer) => {
    const planting = result.standById.get(offer.planting)?.planting;
    const verb = planting?.start?.method === "transplanted" ? "Set out" : "Sow";
    const shift = Math.abs(offer.startShift);
    return {
      way: "date",
      title: `${verb} ${planting?.code ?? ""} ${shift} days ${offer.startShift < 0 ? "earlier" : "later"}, on ${shortDate(offer.start)}`,
      notes: [
        `Bloom moves by ${Math.abs(offer.bloomShift)} days and leaves ${offer.gapDays} days between the two. It rests on time alone: a late spring can undo it.`,
        ...(shift > LARGE_SHIFT_DAYS ? ["Few seasons allow so large a shift."] : []),
        ...(plan.site.lastSpringFrost === undefined || plan.site.firstAutumnFrost === undefined
          ? ["Frost dates are missing from the site, so frost was not looked at."]
          : []),
        ...(offer.frost === "before last frost"
          ? ["That is before the last spring frost given."]
          : []),
        ...(offer.frost === "seed after first frost"
          ? ["Seed would likely ripen after the first frost."]
          : []),
      ],
      edit: offer.edit,
      disturbance: DISTURBANCE.date + shift + (offer.frost === null ? 0 : DISTURBANCE.frost),
    };
  });
}

const COVER_WORDS: Readonly<Record<Exclude<Cover, "none">, readonly [string, string]>> = {
  cage: [
    "Cage",
    "The mesh must stand clear of the flowers and go on before the first opens. Fix cages and stakes so that wind cannot throw them.",
  ],
  bags: ["Bag the flowers of", "Bag before the first flower opens and mark each bagged fruit."],
  hand: [
    "Pollinate by hand and tape the flowers of",
    "Tape buds the evening before, pollinate next morning, tape again and mark each fruit.",
  ],
};

function coverProposals(
  { layout, result }: CheckedLayout,
  planting: Planting,
): readonly Proposal[] {
  const stand = result.standById.get(planting.id) as Stand;
  return (["cage", "bags", "hand"] as const)
    .filter((cover) => stopsPollen(cover, stand.carrier))
    .map((cover, index) => ({
      way: "cover",
      title: `${COVER_WORDS[cover][0]} ${planting.code}`,
      notes: [
        COVER_WORDS[cover][1],
        ...(cover !== "hand" && stand.kind.breeding === "outcrossing" && stand.carrier === "insects"
          ? ["It needs pollinators inside, or cages opened on alternate days."]
          : []),
        ...(cover === "cage" ? inTurnWords(result, stand) : []),
      ],
      edit: changePlantings(layout.id, [planting.id], { cover }, `Cover ${planting.code}`),
      disturbance: DISTURBANCE.cover + index,
    }));
}

/** Cages of one crossing group are opened in turn, never together. */
function inTurnWords({ stands }: CheckedLayout["result"], stand: Stand): readonly string[] {
  const codes = stands
    .filter((other) => other.cover === "cage" && other.kind.group === stand.kind.group)
    .filter((other) => !isSameLot(stand, other))
    .flatMap(({ planting }) => planting?.code ?? []);
  if (codes.length === 0) return [];
  const turn = codes.length === 1 ? "every other day" : `one day in ${codes.length + 1}`;
  return [
    `${codes.join(", ")} of its crossing group ${codes.length === 1 ? "is" : "are"} caged too. Without pollinators inside, open one cage a day and keep the others shut: each is open ${turn}.`,
  ];
}

/** Cutting a source that is not kept for seed, or no longer keeping seed of the parent at risk. */
function purposeProposals(
  { layout }: CheckedLayout,
  finding: Finding,
  planting: Planting,
): readonly Proposal[] {
  if (planting.purpose !== "seed") {
    return [
      {
        way: "cut",
        title: `Cut ${planting.code} before it flowers`,
        notes: ["Every plant must be cut, and again if it sprouts."],
        edit: changePlantings(
          layout.id,
          [planting.id],
          { flowering: "cut" },
          `Cut ${planting.code} before bloom`,
        ),
        disturbance: DISTURBANCE.cut,
      },
    ];
  }
  if (
    !(checkOf(finding).pairsAtRisk?.(finding) ?? []).every(
      (pair) => pair.seedParent === planting.id,
    )
  )
    return [];
  return [
    {
      way: "not for seed",
      title: `Keep no seed of ${planting.code}`,
      notes: ["It is grown to eat; mark its seed as not to be kept."],
      edit: changePlantings(
        layout.id,
        [planting.id],
        { purpose: "food" },
        `${planting.code} not for seed`,
      ),
      disturbance: DISTURBANCE.notForSeed,
    },
  ];
}
