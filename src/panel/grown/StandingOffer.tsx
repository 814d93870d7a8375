import { useEffect, useMemo, useState } from "react";
import type { changePlantings } from "../../core/edits/object-edits.ts";
import { isStanding } from "../../core/model/layouts.ts";
import type { Plan, Planting } from "../../core/model/plan.ts";
import { standingBloom } from "../../core/record/standing-bloom.ts";
import { plansBefore } from "../../store/keeping/stored-plans.ts";
import { useShownPlan } from "../state/use-shown-plan.ts";
import { standingWords as words } from "./standing-words.ts";

interface StandingOfferProps {
  readonly planting: Planting;
  readonly onChange: (changes: Parameters<typeof changePlantings>[2], title: string) => void;
}

/** Bloom dates of what stood over winter, where the records of seasons before know them. */
export function StandingOffer({ planting, onChange }: StandingOfferProps) {
  const plan = useShownPlan();
  const isAsked = isStanding(planting) && !planting.bloom && planting.flowering === "yes";
  const before = usePlansBefore(isAsked ? plan.cameFrom?.plan : undefined);
  const offer = useMemo(
    () => (before.length === 0 ? null : standingBloom(plan, planting, before)),
    [plan, planting, before],
  );
  if (!offer) return null;
  return (
    <p className="field-hint">
      {words.seen(offer)} {words.offered(offer)}{" "}
      <button
        type="button"
        className="act"
        onClick={() =>
          onChange(
            { bloom: { ...offer.offered, basis: "rule of thumb" } },
            words.step(planting.code),
          )
        }
      >
        {words.apply}
      </button>
    </p>
  );
}

const NONE: readonly Plan[] = [];

/** Read once for each plan before; none until they are read, or where they are not kept here. */
function usePlansBefore(from: string | undefined): readonly Plan[] {
  const [plans, setPlans] = useState(NONE);
  useEffect(() => {
    if (from === undefined) return;
    let isWanted = true;
    const look = async () => {
      const found = await plansBefore(from);
      if (isWanted) setPlans(found);
    };
    // Without what is kept there is nothing to offer.
    void look().catch(() => null);
    return () => {
      isWanted = false;
    };
  }, [from]);
  return from === undefined ? NONE : plans;
}
