import { lotBook } from "../../core/lots/lot-book.ts";
import type { Lot } from "../../core/model/plan.ts";
import { exportById } from "../../core/files/export-list.ts";
import { IsolationRecordView } from "../grown/IsolationRecordView.tsx";
import { harvestWords as words } from "../grown/harvest-words.ts";
import { makeFile } from "../form/make-file.ts";
import { useMaking } from "../form/use-making.ts";
import { lotsNow } from "../state/lots-state.ts";
import { useKept } from "../state/plan-actions.ts";
import * as texts from "./words.ts";

/** Of an own harvest: the lots it was grown from, and how it was isolated. */
export function LotIsolation({ lot }: { readonly lot: Lot }) {
  const { plan } = useKept();
  const parents = (lot.grownFrom ?? []).flatMap((id) => lotBook(plan.lots).lot(id) ?? []);
  if (parents.length === 0 && !lot.isolation) return null;
  return (
    <>
      {parents.length > 0 && (
        <p>
          {texts.grownFrom}{" "}
          {parents.map(({ id, code }) => (
            <button
              key={id}
              type="button"
              className="link code"
              onClick={() => lotsNow().openLot(id)}
            >
              {code}
            </button>
          ))}
        </p>
      )}
      {lot.isolation && (
        <>
          <h4>{words.isolation}</h4>
          <IsolationRecordView record={lot.isolation} unit={plan.units} />
          <ReportButton lotId={lot.id} />
        </>
      )}
    </>
  );
}

function ReportButton({ lotId }: { readonly lotId: string }) {
  const { state, start } = useMaking<string>();
  const make = () =>
    start(async (_, signal) => {
      const format = exportById("lot-isolation");
      return (await makeFile(format, { lots: new Set([lotId]), signal }))?.name ?? null;
    });
  return (
    <>
      <p className="offers">
        <button type="button" disabled={state.kind === "making"} onClick={() => void make()}>
          {words.report}
        </button>
      </p>
      <p role="status">{state.kind === "made" ? words.made(state.made) : ""}</p>
      {state.kind === "failed" && (
        <p className="field-reason" role="alert">
          {state.reason}
        </p>
      )}
    </>
  );
}
