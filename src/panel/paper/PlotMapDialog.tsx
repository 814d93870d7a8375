import { useMemo, useState } from "react";
import { type CompanionId, companionIds, companionTitles } from "../../core/map/companion-ids.ts";
import { ratioText, standardRatios } from "../../core/page/drawing-ratio.ts";
import { planSheets, suggestRatio, suggestSheets } from "../../core/map/page-plan.ts";
import {
  type Orientation,
  type PaperName,
  orientations,
  paperNames,
  usualPaper,
} from "../../core/page/paper.ts";
import { usePlanStore } from "../../store/plan/plan-store.ts";
import { ReadingSwitch } from "../grown/ReadingSwitch.tsx";
import { CheckField, ChoiceField } from "../form/ChoiceField.tsx";
import { Dialog } from "../form/Dialog.tsx";
import { PlotMapPreview } from "./PlotMapPreview.tsx";
import { PlotMapStatus } from "./PlotMapStatus.tsx";
import { TextField } from "../form/TextField.tsx";
import { onFormSubmit } from "../form/use-form.ts";
import { readRatio } from "../form/number-text.ts";
import { useMaking } from "../form/use-making.ts";
import { type MadePlotMap, makePlotMap } from "./make-plot-map.ts";
import { useKept } from "../state/plan-actions.ts";

/** Paper, orientation and ratio of the map for the helper's hand. */
export function PlotMapDialog({ onClose }: { readonly onClose: () => void }) {
  const { plan, layout } = useKept();
  const { paper, orientation, suggested, ownRatio, ratio, sheets, ...set } = useSheetChoice();
  const [companions, setCompanions] = useState<readonly CompanionId[]>([]);
  const [cardsPerPage, setCards] = useState<2 | 4>(4);
  const { state, start, cancel } = useMaking<MadePlotMap>();
  const grownOn = usePlanStore(({ reading }) => reading?.on ?? "planned");
  const choice = { paper, orientation, ratio, companions, cardsPerPage };
  const make = () => void start((onProgress, signal) => makePlotMap(choice, onProgress, signal));
  const isMaking = state.kind === "making";
  return (
    <Dialog title={`Plot map of ${layout.name}`} onClose={onClose} isWide>
      <form className="fields" noValidate onSubmit={onFormSubmit(make)}>
        <PaperFields
          paper={paper}
          orientation={orientation}
          onPaper={set.setPaper}
          onOrientation={set.setOrientation}
        />
        <RatioFields
          suggested={suggested}
          own={ownRatio}
          unit={plan.units}
          onPick={set.setRatio}
          hint={sheetWords(sheets)}
        />
        <CompanionFields
          chosen={companions}
          onSet={setCompanions}
          cardsPerPage={cardsPerPage}
          onCards={setCards}
        />
        {plan.entries.length > 0 && <ReadingSwitch />}
        {sheets > 0 && (
          <PlotMapPreview
            key={[paper, orientation, ratio, cardsPerPage, grownOn, ...companions].join(" ")}
            choice={choice}
          />
        )}
        <PlotMapStatus progress={state} />
        <p className="dialog-actions">
          <button type="submit" className="primary" disabled={isMaking || sheets === 0}>
            Make the PDF
          </button>
          {isMaking && (
            <button type="button" onClick={cancel}>
              Cancel
            </button>
          )}
        </p>
      </form>
    </Dialog>
  );
}

/** Paper, how it lies and ratio, each as suggested until it is chosen. */
function useSheetChoice() {
  const { plan, layout } = useKept();
  const [paper, setPaper] = useState<PaperName>(usualPaper(plan.units));
  const [ownOrientation, setOrientation] = useState<Orientation | null>(null);
  const [ownRatio, setRatio] = useState<number | null>(null);
  const lying = useMemo(
    () => suggestSheets(plan, layout, paper).orientation,
    [plan, layout, paper],
  );
  const orientation = ownOrientation ?? lying;
  const suggested = useMemo(
    () => suggestRatio(plan, layout, paper, orientation),
    [plan, layout, paper, orientation],
  );
  const ratio = ownRatio ?? suggested;
  const sheets = useMemo(
    () => planSheets(plan, layout, { paper, orientation }, ratio).sheets.length,
    [plan, layout, paper, orientation, ratio],
  );
  const set = { setPaper, setOrientation, setRatio };
  return { paper, orientation, suggested, ownRatio, ratio, sheets, ...set };
}

interface PaperFieldsProps {
  readonly paper: PaperName;
  readonly orientation: Orientation;
  readonly onPaper: (paper: PaperName) => void;
  readonly onOrientation: (orientation: Orientation) => void;
}

function PaperFields({ paper, orientation, onPaper, onOrientation }: PaperFieldsProps) {
  return (
    <>
      <ChoiceField
        label="Paper"
        value={paper}
        choices={paperNames.map((name) => ({ value: name, label: name }))}
        onPick={onPaper}
      />
      <ChoiceField
        label="Lying"
        value={orientation}
        choices={orientations.map((name) => ({ value: name, label: name }))}
        onPick={onOrientation}
      />
    </>
  );
}

interface CompanionFieldsProps {
  readonly chosen: readonly CompanionId[];
  readonly onSet: (chosen: readonly CompanionId[]) => void;
  readonly cardsPerPage: 2 | 4;
  readonly onCards: (perPage: 2 | 4) => void;
}

function CompanionFields({ chosen, onSet, cardsPerPage, onCards }: CompanionFieldsProps) {
  const tick = (id: CompanionId, isOn: boolean) =>
    onSet(companionIds.filter((each) => (each === id ? isOn : chosen.includes(each))));
  return (
    <fieldset className="fields">
      <legend>Sheets that go with it</legend>
      {companionIds.map((id) => (
        <CheckField
          key={id}
          label={companionTitles[id]}
          isOn={chosen.includes(id)}
          onSet={(isOn) => tick(id, isOn)}
        />
      ))}
      {chosen.includes("bed-cards") && (
        <ChoiceField
          label="Bed cards on a page"
          value={String(cardsPerPage)}
          choices={[
            { value: "4", label: "four" },
            { value: "2", label: "two, in larger type" },
          ]}
          onPick={(text) => onCards(text === "2" ? 2 : 4)}
        />
      )}
    </fieldset>
  );
}

function sheetWords(sheets: number): string {
  if (sheets === 0) return "That would take far too many sheets; choose a coarser ratio.";
  return sheets === 1 ? "The map fits one sheet." : `The map takes ${sheets} sheets that overlap.`;
}

interface RatioFieldsProps {
  readonly suggested: number;
  /** Null: as suggested. */
  readonly own: number | null;
  readonly unit: "m" | "ft";
  readonly onPick: (ratio: number | null) => void;
  readonly hint: string;
}

const CUSTOM = "custom";
const SUGGESTED = "suggested";

function RatioFields({ suggested, own, unit, onPick, hint }: RatioFieldsProps) {
  const [isCustom, setCustom] = useState(false);
  const choices = [
    { value: SUGGESTED, label: `${ratioText(suggested, unit)}, as suggested` },
    ...standardRatios(unit).map((ratio) => ({
      value: String(ratio),
      label: ratioText(ratio, unit),
    })),
    { value: CUSTOM, label: "another ratio" },
  ];
  const pick = (value: string) => {
    setCustom(value === CUSTOM);
    if (value === CUSTOM) onPick(own ?? suggested);
    else onPick(value === SUGGESTED ? null : Number(value));
  };
  const standard = own === null ? SUGGESTED : String(own);
  return (
    <>
      <ChoiceField
        label="Ratio"
        value={isCustom ? CUSTOM : standard}
        choices={choices}
        onPick={pick}
        hint={hint}
      />
      {isCustom && (
        <TextField
          label="One to"
          value={ratioText(own ?? suggested, "m")}
          onApply={(text) => {
            const read = readRatio(text);
            if (!read.ok) return read.reason;
            onPick(read.value);
            return null;
          }}
        />
      )}
    </>
  );
}
