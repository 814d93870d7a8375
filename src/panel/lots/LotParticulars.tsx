import { useMemo } from "react";
import { lotBook } from "../../core/lots/lot-book.ts";
import { useKept } from "../state/plan-actions.ts";
import { LotFields } from "./LotFields.tsx";
import { LotIsolation } from "./LotIsolation.tsx";
import { LotLife } from "./LotLife.tsx";
import { LotTests } from "./LotTests.tsx";
import { LotUses } from "./LotUses.tsx";
import { SeveralLots } from "./SeveralLots.tsx";
import { useLots } from "../state/lots-state.ts";
import * as texts from "./words.ts";
import "./lots.css";
import { Sentence } from "../state/Sentence.tsx";

/** All there is to say of the picked lot, to be changed in place; of several, what they share. */
export function LotParticulars() {
  const { plan, book } = useKept();
  const picked = useLots((state) => state.picked);
  const lots = useMemo(() => {
    const shelf = lotBook(plan.lots);
    return picked.flatMap((id) => shelf.lot(id) ?? []);
  }, [plan.lots, picked]);
  const [lot] = lots;
  const variety = plan.varieties.find(({ id }) => id === lot?.variety);
  const kind = variety && book.kind(variety.kind);
  return (
    <section className="region lot-particulars" aria-labelledby="particulars-heading">
      <header className="region-head">
        <h2 id="particulars-heading" tabIndex={-1}>
          {texts.particulars}
        </h2>
      </header>
      {!lot && <p className="region-empty">{texts.pickLotSeeChange}</p>}
      {lots.length > 1 && <SeveralLots lots={lots} />}
      {lot && lots.length === 1 && (
        <div className="fields" key={lot.id}>
          <h3>
            <Sentence
              words={texts.lotHeading}
              parts={{ code: <span className="code">{lot.code}</span> }}
            />{" "}
            <span className="soft">
              <bdi>{variety?.name ?? ""}</bdi>
            </span>
          </h3>
          <LotLife lot={lot} kind={kind} />
          <LotTests lot={lot} kind={kind} />
          <h4>{texts.whatItIs}</h4>
          <LotFields lot={lot} kind={kind} />
          <LotIsolation lot={lot} />
          <LotUses lot={lot} />
        </div>
      )}
    </section>
  );
}
