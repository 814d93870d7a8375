import { useState } from "react";
import { allExports, exportHindrance } from "../../core/files/all-exports.ts";
import type { LabelChoice } from "../../core/labels/label-pages.ts";
import { usualLabelSize } from "../../core/labels/label-sizes.ts";
import { ChoiceField } from "../form/ChoiceField.tsx";
import { Dialog } from "../form/Dialog.tsx";
import { FilesLabelFields } from "./FilesLabelFields.tsx";
import { onFormSubmit } from "../form/form-submit.ts";
import { makeFile } from "./make-file.ts";
import { useShownLayout, useShownPlan } from "../state/use-shown-plan.ts";

const RESOLUTIONS = ["100", "150", "200", "300"] as const;

type Progress =
  | { readonly kind: "idle" | "making" }
  | { readonly kind: "made" | "failed"; readonly words: string };

/** Every file for other programs and other people, the same list as on the command line. */
export function FilesDialog({ onClose }: { readonly onClose: () => void }) {
  const plan = useShownPlan();
  const layout = useShownLayout();
  const [id, setId] = useState("geojson");
  const [dots, setDots] = useState<(typeof RESOLUTIONS)[number]>("150");
  const [labels, setLabels] = useState<LabelChoice>(() => ({
    size: usualLabelSize(plan.units, false),
    startAt: 1,
    hasQr: false,
    treatment: "",
  }));
  const [progress, setProgress] = useState<Progress>({ kind: "idle" });
  const format = allExports.find((each) => each.id === id);
  if (!format) return null;
  const hindrance = exportHindrance(format, plan, true);
  const make = async () => {
    setProgress({ kind: "making" });
    try {
      const name = await makeFile(format, Number(dots), labels);
      setProgress({ kind: "made", words: `Made ${name}.` });
    } catch (error) {
      const reason = error instanceof Error ? error.message : String(error);
      setProgress({ kind: "failed", words: `The file was not made: ${reason}` });
    }
  };
  return (
    <Dialog title={`Files for others, of ${layout.name}`} onClose={onClose}>
      <form className="fields" noValidate onSubmit={onFormSubmit(() => void make())}>
        <ChoiceField
          label="File"
          value={id}
          choices={allExports.map((each) => ({ value: each.id, label: each.title }))}
          onPick={(picked) => {
            setId(picked);
            const use = allExports.find((each) => each.id === picked)?.labels;
            setLabels({ ...labels, size: usualLabelSize(plan.units, use === "packets") });
            setProgress({ kind: "idle" });
          }}
          hint={format.about}
        />
        {format.needs === "canvas" && (
          <ChoiceField
            label="Dots an inch"
            value={dots}
            choices={RESOLUTIONS.map((value) => ({ value, label: value }))}
            onPick={setDots}
          />
        )}
        {format.labels !== undefined && (
          <FilesLabelFields key={id} choice={labels} onSet={setLabels} />
        )}
        <div className="plot-map-status" role="status">
          {hindrance !== null && (
            <p className="field-reason">
              Not of this plan: {hindrance}.
              {format.needs === "position" && " Give it in the plan settings."}
            </p>
          )}
          {progress.kind === "making" && <p>Making the file ...</p>}
          {progress.kind === "made" && <p>{progress.words}</p>}
          {progress.kind === "failed" && <p className="field-reason">{progress.words}</p>}
        </div>
        <p className="dialog-actions">
          <button
            type="submit"
            className="primary"
            disabled={hindrance !== null || progress.kind === "making"}
          >
            Save the file
          </button>
        </p>
      </form>
    </Dialog>
  );
}
