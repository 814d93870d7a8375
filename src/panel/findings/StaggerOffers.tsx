import { useMemo } from "react";
import { type StaggerOffer, staggerOffers } from "../../core/remedies/stagger.ts";
import type { Planting } from "../../core/model/plan.ts";
import { commit, useKept } from "../state/plan-actions.ts";
import { inOrderOfUse, noOfferWords, offerNotes, offerTitle, offersNote } from "./stagger-words.ts";
import * as texts from "./dialog-words.ts";

interface StaggerOffersProps {
  /** Ids of the two stands in conflict, with a space between. */
  readonly subjects: string;
}

/** Sowing dates for either of two stands that keep their blooms apart, each tried on the plan. */
export function StaggerOffers({ subjects }: StaggerOffersProps) {
  // The committed plan: offers do not follow a drag.
  const kept = useKept();
  const [first = "", second = ""] = subjects.split(" ");
  const { offers, plantings } = useMemo(
    () => ({
      offers: inOrderOfUse(staggerOffers(kept, [first, second])),
      plantings: kept.layout.plantings.filter(({ id }) => id === first || id === second),
    }),
    [kept, first, second],
  );
  if (offers.length === 0) {
    const hasStart = plantings.some((planting) => planting.start && !planting.bloom);
    const hasOwnDates = plantings.some((planting) => planting.bloom) && !hasStart;
    return <p className="stagger">{noOfferWords(hasOwnDates, hasStart)}</p>;
  }
  return (
    <div className="stagger">
      <p>{offersNote(offers)}</p>
      <ul className="plain-list">
        {offers.map((offer) => (
          <Offer
            key={`${offer.planting} ${offer.start}`}
            offer={offer}
            planting={plantings.find(({ id }) => id === offer.planting)}
          />
        ))}
      </ul>
    </div>
  );
}

interface OfferProps {
  readonly offer: StaggerOffer;
  readonly planting: Planting | undefined;
}

function Offer({ offer, planting }: OfferProps) {
  const isSown = planting?.start?.method !== "transplanted";
  const title = offerTitle(offer, planting?.code ?? "", isSown);
  const apply = () => {
    commit(offer.edit);
    document.getElementById("findings-heading")?.focus();
  };
  return (
    <li className="stagger-offer">
      <p>
        <strong>{title}</strong>
      </p>
      <p>{offerNotes(offer).join(" ")}</p>
      <button type="button" aria-label={texts.apply(title)} onClick={apply}>
        {texts.apply2}
      </button>
    </li>
  );
}
