import { useMemo } from "react";
import { CommandButton } from "../commands/CommandButton.tsx";
import { useKept } from "../state/plan-actions.ts";
import { harvestIntoLot } from "../grown/commands.ts";
import { newLot } from "../lots/commands.ts";
import { scanCode } from "../scan/commands.ts";
import { lotList } from "./commands.ts";
import { storagePlaces } from "../storage/commands.ts";
import { type LotsPart, lotsNow, useLots } from "../state/lots-state.ts";
import { RenewList } from "./RenewList.tsx";
import { Shelf } from "./Shelf.tsx";
import { SowList } from "./SowList.tsx";
import * as texts from "./words.ts";
import "../lots/lots.css";
import "./shelf.css";

const parts: readonly { readonly part: LotsPart; readonly label: string }[] = [
  { part: "shelf", label: texts.shelfPart },
  { part: "renew", label: texts.renewPart },
  { part: "sow", label: texts.sowPart },
];

/** The seed shelf: what there is, what must be grown out, what is sown from what. */
export function Lots() {
  const part = useLots((state) => state.part);
  const { plan } = useKept();
  const counts = useMemo(() => {
    const left = plan.lots.filter(({ state }) => state === "in stock").length;
    return left === plan.lots.length
      ? texts.inStock(left)
      : texts.inStockOf(left, plan.lots.length);
  }, [plan.lots]);
  return (
    <section className="lots" aria-labelledby="lots-heading">
      <header className="lots-head">
        <h2 id="lots-heading">{texts.lotsHeading}</h2>
        <p className="region-note">{counts}</p>
        <div className="lots-parts" role="group" aria-label={texts.list}>
          {parts.map((each) => (
            <button
              key={each.part}
              type="button"
              aria-pressed={each.part === part}
              onClick={() => lotsNow().showPart(each.part)}
            >
              {each.label}
            </button>
          ))}
        </div>
        <div className="lots-actions">
          <CommandButton of={newLot}>{texts.addALot}</CommandButton>
          <CommandButton of={harvestIntoLot}>{texts.fromAHarvest}</CommandButton>
          <CommandButton of={scanCode}>{texts.scan}</CommandButton>
          <CommandButton of={storagePlaces} className="quiet">
            {texts.storagePlaces}
          </CommandButton>
          <CommandButton of={lotList} className="quiet">
            {texts.csv}
          </CommandButton>
        </div>
      </header>
      {part === "shelf" && <Shelf />}
      {part === "renew" && <RenewList />}
      {part === "sow" && <SowList />}
    </section>
  );
}
