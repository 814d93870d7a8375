import { useMemo } from "react";
import { renewVariety } from "../../core/edits/sown-lots.ts";
import { bandWords } from "../../core/lots/band-words.ts";
import { renewalReason } from "../../core/lots/renewal-words.ts";
import { type Renewal, renewals } from "../../core/lots/renewal.ts";
import type { Lot } from "../../core/model/plan.ts";
import { commit, useKept } from "../state/plan-actions.ts";
import { testDialog } from "../lots/dialogs.ts";
import { lotsNow } from "../state/lots-state.ts";
import { useRovingRows } from "../state/roving-rows.ts";
import { today } from "../state/today.ts";

const causeWords: Readonly<Record<Renewal["cause"], string>> = {
  gone: "No seed left",
  dead: "Under its standard",
  short: "Less than kept in reserve",
  doubtful: "Likely under its standard",
  soon: "Fails soon",
  unknown: "Age not known",
};

/** Varieties that must be grown out, most urgent first; one press puts one into the seed list. */
export function RenewList() {
  const { plan, book } = useKept();
  const day = today();
  const list = useMemo(() => renewals(plan, book, day), [plan, book, day]);
  const roving = useRovingRows();
  if (list.length === 0) {
    return (
      <p className="region-empty lots-empty">
        Nothing has to be renewed for now: no lot will fall under its germination standard within
        three years, and none is less than its reserve.
      </p>
    );
  }
  return (
    <div className="lots-scroll">
      <p className="lots-note">
        Most urgent first. Standards are the germination standards of 7 CFR 201.31, half where there
        is none. An estimate is no test: test a doubtful lot before you give it up.
      </p>
      <ul className="plain-list list-rows" aria-label="To renew" {...roving}>
        {list.map((renewal) => (
          <RenewLine key={renewal.variety.id} renewal={renewal} day={day} />
        ))}
      </ul>
    </div>
  );
}

function RenewLine({ renewal, day }: { readonly renewal: Renewal; readonly day: number }) {
  const { variety, kind, cause, lot, estimate, plants } = renewal;
  const { wantedPlants = 0, reason } = variety;
  const isListed = wantedPlants >= plants && reason !== undefined;
  const isGrave = cause === "gone" || cause === "dead";
  return (
    <li className="list-row" data-row="">
      <p className="list-row-head">
        <b>
          <bdi>{variety.name}</bdi>
        </b>{" "}
        <span className="soft">{kind.name}</span>
        <span className={isGrave ? "conflict-text" : "caution-text"}>
          {isGrave ? "✕" : "!"} {causeWords[cause]}
        </span>
      </p>
      <p>
        {renewalReason(renewal)}
        {estimate !== null && lot && (
          <span className="soft">
            {" "}
            {lot.code} now: {bandWords(estimate.at(Math.max(day, estimate.startDay)))}.
          </span>
        )}
      </p>
      <div className="list-row-actions">
        {isListed ? (
          <span className="clear-text">✓ In this season’s seed list: {wantedPlants} plants</span>
        ) : (
          <button
            type="button"
            aria-label={`Grow out ${plants} plants of ${variety.name}`}
            onClick={() => commit(renewVariety(renewal, renewalReason(renewal)))}
          >
            Grow out {plants} plants{lot ? ` from ${lot.code}` : ""}
          </button>
        )}
        {lot && <LotLinks lot={lot} />}
        {!lot && <span className="soft">Ask for seed elsewhere: there is none to sow.</span>}
      </div>
    </li>
  );
}

function LotLinks({ lot }: { readonly lot: Pick<Lot, "id" | "code"> }) {
  return (
    <>
      <button
        type="button"
        className="link"
        onClick={() => lotsNow().openLot(lot.id)}
        aria-label={`Open lot ${lot.code}`}
      >
        Open {lot.code}
      </button>
      <button
        type="button"
        className="link"
        onClick={() => testDialog.open({ lotId: lot.id, testId: null })}
        aria-label={`Enter a test of ${lot.code}`}
      >
        Enter a test
      </button>
    </>
  );
}
