import { useState } from "react";
import {
  type ExportFormat,
  exportById,
  exportHindrance,
  exportList,
} from "../../core/files/export-list.ts";
import { labelFaults } from "../../core/labels/label-measures.ts";
import { usualLabelSize } from "../../core/labels/label-sizes.ts";
import { ReadingSwitch } from "../grown/ReadingSwitch.tsx";
import { ChoiceField } from "../form/ChoiceField.tsx";
import { Dialog } from "../form/Dialog.tsx";
import { LabelFields } from "./LabelFields.tsx";
import { onFormSubmit } from "../form/use-form.ts";
import { type MadeFile, makeFile, usualLabels } from "../form/make-file.ts";
import { type Making, useMaking } from "../form/use-making.ts";
import { useKept } from "../state/plan-actions.ts";
import * as texts from "./words.ts";

const RESOLUTIONS = ["100", "150", "200", "300"] as const;

/** Every file for other programs and other people, the same list as on the command line. */
export function FilesDialog({ onClose }: { readonly onClose: () => void }) {
  const { plan, layout } = useKept();
  const [id, setId] = useState("geojson");
  const [dots, setDots] = useState<(typeof RESOLUTIONS)[number]>("150");
  const [labels, setLabels] = useState(() => usualLabels(plan.units, false));
  const { state, start, cancel } = useMaking<MadeFile>();
  const format = exportById(id);
  const [fault] = format.labels === undefined ? [] : labelFaults(labels.size, labels.startAt);
  const hindrance = exportHindrance(format, plan, true);
  const make = () =>
    start((_, signal) => makeFile(format, { dotsPerInch: Number(dots), labels, signal }));
  return (
    <Dialog title={texts.filesForOthersOf(layout.name)} onClose={onClose}>
      <form className="fields" noValidate onSubmit={onFormSubmit(() => void make())}>
        <ChoiceField
          label={texts.file}
          value={id}
          choices={exportList.map((each) => ({ value: each.id, label: each.title }))}
          onPick={(picked) => {
            setId(picked);
            const isPacket = exportById(picked).labels !== "stakes";
            setLabels({ ...labels, size: usualLabelSize(plan.units, isPacket) });
            cancel();
          }}
          hint={format.about}
        />
        {format.followsReading === true && plan.entries.length > 0 && <ReadingSwitch />}
        {format.needs === "canvas" && (
          <ChoiceField
            label={texts.resolutionDotsPerInch}
            value={dots}
            choices={RESOLUTIONS.map((value) => ({ value, label: value }))}
            onPick={setDots}
          />
        )}
        {format.labels !== undefined && (
          <LabelFields key={id} use={format.labels} choice={labels} onSet={setLabels} />
        )}
        <div className="plot-map-status" role="status">
          <Hindrance format={format} hindrance={hindrance} fault={fault} />
          <MakingLine state={state} />
        </div>
        <p className="dialog-actions">
          <button
            type="submit"
            className="primary"
            disabled={hindrance !== null || fault !== undefined || state.kind === "making"}
          >
            {texts.saveTheFile}
          </button>
        </p>
      </form>
    </Dialog>
  );
}

interface HindranceProps {
  readonly format: ExportFormat;
  readonly hindrance: string | null;
  readonly fault: string | undefined;
}

/** Why the file cannot be made of this plan, or of the labels chosen. */
function Hindrance({ format, hindrance, fault }: HindranceProps) {
  return (
    <>
      {hindrance !== null && (
        <p className="field-reason">
          {texts.notOfThisPlan(hindrance)}
          {format.needs === "position" && texts.givePlanSettings}
        </p>
      )}
      {fault !== undefined && <p className="field-reason">{fault}.</p>}
    </>
  );
}

function MakingLine({ state }: { readonly state: Making<MadeFile> }) {
  if (state.kind === "making") return <p>{texts.makingTheFile}</p>;
  if (state.kind === "made") {
    return (
      <>
        <p>{texts.made(state.made.name)}</p>
        {state.made.remarks.map((words) => (
          <p key={words}>{words}.</p>
        ))}
      </>
    );
  }
  if (state.kind !== "failed") return null;
  return <p className="field-reason">{texts.fileNotMade(state.reason)}</p>;
}
