/** Plantings on ground that is marked with a disease that harms them. */
import type { CheckInput } from "../checks/check.ts";
import { findingId } from "../checks/finding.ts";
import type { GroundMarkFinding } from "../checks/ground-checks.ts";
import type { Stand } from "../checks/stand.ts";
import { type Outline, outlineOf } from "../geometry/outline.ts";
import { isoFromDay } from "../model/day.ts";
import type { GroundMark, Plan } from "../model/plan.ts";
import { liesOn } from "./earlier-grounds.ts";
import { harms } from "./ground-diseases.ts";

interface MarkedGround {
  readonly mark: GroundMark;
  readonly outline: Outline;
}

const grounds = new WeakMap<Plan["groundMarks"], readonly MarkedGround[]>();

function markedGrounds(marks: Plan["groundMarks"]): readonly MarkedGround[] {
  const known = grounds.get(marks);
  if (known) return known;
  const made = marks.map((mark) => ({ mark, outline: outlineOf(mark.outline) }));
  grounds.set(marks, made);
  return made;
}

/** Marks that harm a planting, wherever it lies now. */
export function harmfulGrounds(
  { planting, kind }: Stand,
  marks: Plan["groundMarks"],
): readonly MarkedGround[] {
  if (planting === null) return [];
  return markedGrounds(marks).filter(({ mark }) => harms(mark, kind));
}

export function findMarks({
  plan: { groundMarks },
  stands,
}: CheckInput<GroundMarkFinding>): readonly GroundMarkFinding[] {
  if (groundMarks.length === 0) return [];
  return stands.flatMap((stand) =>
    harmfulGrounds(stand, groundMarks)
      .filter(({ outline }) => liesOn(stand.outline, outline))
      .map(({ mark }): GroundMarkFinding => ({
        id: findingId("ground-mark", [stand.id], `${mark.id} ${isoFromDay(mark.seenOn)}`),
        check: "ground-mark",
        severity: "caution",
        subjects: [stand.id],
        subject: stand.id,
        mark: mark.id,
        disease: mark.disease,
        name: mark.name ?? null,
        seenOn: mark.seenOn,
      })),
  );
}
