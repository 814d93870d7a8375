import { useMemo } from "react";
import { renewVariety } from "../../core/edits/sown-lots.ts";
import { bandWords } from "../../core/lots/band-words.ts";
import { plantedWords, renewalReason } from "../../core/lots/renewal-words.ts";
import { unshelvedVarieties } from "../../core/lots/lot-book.ts";
import { type Renewal, fineVarieties, renewals } from "../../core/lots/renewal.ts";
import type { Lot } from "../../core/model/plan.ts";
import { commit, useKept } from "../state/plan-actions.ts";
import { testDialog } from "../lots/dialogs.ts";
import { lotsNow } from "../state/lots-state.ts";
import { CommandButton } from "../commands/CommandButton.tsx";
import { whichYear } from "../years/commands.ts";
import { useRovingRows } from "../state/roving-rows.ts";
import { today } from "../state/today.ts";
import * as texts from "./words.ts";

function causeWords({ cause, reserveSeeds, seasonsLeft, by }: Renewal): string {
  switch (cause) {
    case "gone":
      return texts.noSeedLeft;
    case "dead":
      return texts.underStandard;
    case "short":
      return reserveSeeds === null ? texts.tooLittleSeed : texts.lessThanReserve;
    case "doubtful":
      return texts.likelyUnder;
    case "soon":
      return seasonsLeft === 0 ? texts.failsSoon : texts.dueBy(by);
    case "unknown":
      return texts.ageNotKnown;
  }
}

/** Varieties by how long they can wait, most urgent first; one press puts one into the seed list. */
export function RenewList() {
  const { plan, book, layout } = useKept();
  const day = today();
  const list = useMemo(() => renewals(plan, book, day, { layout }), [plan, book, day, layout]);
  const fine = useMemo(() => fineVarieties(plan, list), [plan, list]);
  const urgent = list.filter(({ seasonsLeft }) => seasonsLeft === 0);
  const later = list.filter(({ seasonsLeft }) => seasonsLeft > 0);
  const unshelved = useMemo(() => unshelvedVarieties(plan), [plan]);
  const isNothingEntered = plan.lots.length === 0 && list.length === 0;
  if (isNothingEntered) {
    return (
      <div className="lots-scroll">
        <p className="lots-note">{texts.shelfNotEntered}</p>
      </div>
    );
  }
  return (
    <div className="lots-scroll">
      <p className="lots-note">{texts.mostUrgentFirstLayout}</p>
      <p>
        <CommandButton of={whichYear} />
      </p>
      <RenewPart
        title={texts.toRenewThisSeason}
        list={urgent}
        day={day}
        whenNone={texts.nothingUrgent}
      />
      <RenewPart title={texts.canWaitOneTwo} list={later} day={day} whenNone={texts.nothingLater} />
      <FinePart names={fine.map(({ name }) => name)} />
      {unshelved.length > 0 && (
        <section className="renew-part">
          <h3>
            {texts.notOnShelf} <span className="soft">{unshelved.length}</span>
          </h3>
          <p className="soft">
            {texts.notOnShelfHint} {unshelved.map(({ name }) => name).join(", ")}.
          </p>
        </section>
      )}
    </div>
  );
}

interface RenewPartProps {
  readonly title: string;
  readonly list: readonly Renewal[];
  readonly day: number;
  readonly whenNone: string;
}

function RenewPart({ title, list, day, whenNone }: RenewPartProps) {
  const roving = useRovingRows();
  return (
    <section className="renew-part">
      <h3>
        {title} <span className="soft">{list.length}</span>
      </h3>
      {list.length === 0 ? (
        <p className="soft">{whenNone}</p>
      ) : (
        <ul className="plain-list list-rows" aria-label={title} {...roving}>
          {list.map((renewal) => (
            <RenewLine key={renewal.variety.id} renewal={renewal} day={day} />
          ))}
        </ul>
      )}
    </section>
  );
}

/** Named, so that nobody takes a variety for forgotten. */
function FinePart({ names }: { readonly names: readonly string[] }) {
  return (
    <section className="renew-part">
      <h3>
        {texts.goodForLonger} <span className="soft">{names.length}</span>
      </h3>
      <p className="soft">
        {names.length === 0 ? texts.noOtherVarietySeed : `${names.join(", ")}.`}
      </p>
    </section>
  );
}

function RenewLine({ renewal, day }: { readonly renewal: Renewal; readonly day: number }) {
  const { variety, kind, cause, lot, estimate, plants } = renewal;
  const { wantedPlants = 0, reason } = variety;
  const isListed = wantedPlants >= plants && reason !== undefined;
  const isGrave = cause === "gone" || cause === "dead";
  // More may be wanted already: the press takes none of them away.
  const growOut = texts.growOut(Math.max(plants, wantedPlants), lot?.code ?? null);
  return (
    <li className="list-row" data-row="">
      <p className="list-row-head">
        <b>
          <bdi>{variety.name}</bdi>
        </b>{" "}
        <span className="soft">{kind.name}</span>
        <span className={isGrave ? "conflict-text" : "caution-text"}>
          {isGrave ? "✕" : "!"} {causeWords(renewal)}
        </span>
      </p>
      <p>
        {renewalReason(renewal)} {plantedWords(renewal)}
        {estimate !== null && lot && (
          <span className="soft">
            {texts.now(lot.code, bandWords(estimate.at(Math.max(day, estimate.startDay))))}
          </span>
        )}
      </p>
      <div className="list-row-actions">
        {isListed ? (
          <span className="clear-text">{texts.seasonsSeedListPlants(wantedPlants)}</span>
        ) : (
          <button
            type="button"
            aria-label={`${growOut}: ${variety.name}`}
            onClick={() => commit(renewVariety(renewal, renewalReason(renewal)))}
          >
            {growOut}
          </button>
        )}
        {lot && <LotLinks lot={lot} />}
        {!lot && <span className="soft">{texts.askSeedElsewhereThere}</span>}
      </div>
    </li>
  );
}

function LotLinks({ lot }: { readonly lot: Pick<Lot, "id" | "code"> }) {
  return (
    <>
      <button type="button" className="link" onClick={() => lotsNow().openLot(lot.id)}>
        {texts.open(lot.code)}
      </button>
      <button
        type="button"
        className="act"
        onClick={() => testDialog.open({ lotId: lot.id, testId: null })}
        aria-label={texts.enterATestOf(lot.code)}
      >
        {texts.enterATest}
      </button>
    </>
  );
}
