import { useMemo } from "react";
import { coldFelt } from "../../core/calendar/cold-felt.ts";
import type { Stand } from "../../core/checks/stand.ts";
import { coldWords } from "./cold-words.ts";

/** The cold a biennial needs, against the winter of the site. */
export function ColdHint({ stand: { kind, climate, season } }: { readonly stand: Stand }) {
  const words = useMemo(
    () => coldWords(climate ? coldFelt(kind.id, season.first, climate) : null, kind.name),
    [kind, climate, season],
  );
  return <p className="field-hint">{words}</p>;
}
