import { setOutline, turnObjects } from "../../core/edits/move-objects.ts";
import type { Edit } from "../../core/edits/edit.ts";
import { changePlantings } from "../../core/edits/object-edits.ts";
import type { Bed, Planting, RectangleShape } from "../../core/model/plan.ts";
import { ChoiceField } from "../form/ChoiceField.tsx";
import { SharedStart } from "./SharedStart.tsx";
import { levelChoices } from "./IsolationFields.tsx";
import { CountField } from "../form/NumberField.tsx";
import { RectangleSizeFields } from "../form/RectangleFields.tsx";
import { choicesOf, coverWords, floweringWords, purposeWords } from "../state/plan-words.ts";
import { sharedValue } from "../state/selected-objects.ts";
import { useShownLayout, useShownPlan } from "../state/use-shown-plan.ts";
import { commit } from "../state/plan-actions.ts";
import * as texts from "./dialog-words.ts";
import * as steps from "./step-words.ts";

/** One undo step made of several edits. */
function inOneStep(title: string, edits: readonly Edit[]): Edit {
  return { title, apply: (plan) => edits.reduce((before, edit) => edit.apply(before), plan) };
}

/** Fields several beds share; what differs shows empty and is set for all at once. */
export function SeveralBeds({ beds }: { readonly beds: readonly Bed[] }) {
  const layoutId = useShownLayout().id;
  const rectangles = beds.flatMap(({ id, outline }) =>
    outline.shape === "rectangle" ? [{ id, outline }] : [],
  );
  if (rectangles.length < 2) return null;
  const each = (title: string, edit: (id: string, outline: RectangleShape) => Edit) =>
    commit(
      inOneStep(
        title,
        rectangles.map(({ id, outline }) => edit(id, outline)),
      ),
    );
  const count = rectangles.length;
  const set = ({ turnDeg, ...size }: Partial<RectangleShape>) => {
    if (turnDeg === undefined) {
      each(steps.resizeBeds(count), (id, outline) =>
        setOutline(layoutId, id, { ...outline, ...size }),
      );
    } else {
      each(steps.turnBeds(count), (id, outline) =>
        turnObjects(layoutId, [id], outline, turnDeg - outline.turnDeg),
      );
    }
    return null;
  };
  const shared = (field: "widthM" | "lengthM" | "turnDeg") =>
    sharedValue(rectangles, ({ outline }) => outline[field])?.value;
  const sizes = {
    widthM: shared("widthM"),
    lengthM: shared("lengthM"),
    turnDeg: shared("turnDeg"),
  };
  return (
    <div className="fields">
      <h3>{texts.bedCount(count)}</h3>
      <RectangleSizeFields sizes={sizes} placeholder={texts.differs} onSet={set} />
    </div>
  );
}

/** Fields several plantings share. */
export function SeveralPlantings({ plantings }: { readonly plantings: readonly Planting[] }) {
  const plan = useShownPlan();
  const layoutId = useShownLayout().id;
  const what = steps.plantingCount(plantings.length);
  const ids = plantings.map((planting) => planting.id);
  const change = (changes: Parameters<typeof changePlantings>[2], title: string) =>
    commit(changePlantings(layoutId, ids, changes, title));
  const shared = <Key extends keyof Planting>(key: Key) =>
    sharedValue(plantings, (planting) => planting[key]);
  const level = sharedValue(plantings, (planting) => planting.level ?? "plan");
  return (
    <div className="fields">
      <h3>{what}</h3>
      <ChoiceField
        label={texts.purpose}
        value={shared("purpose")?.value ?? null}
        choices={choicesOf(purposeWords)}
        onPick={(purpose) => change({ purpose }, steps.changePurpose(what))}
      />
      <CountField
        label={texts.plantsInEach}
        value={shared("plants")?.value}
        onApply={(plants) => change({ plants }, steps.setPlants(what))}
      />
      <SharedStart plantings={plantings} what={what} />
      <ChoiceField
        label={texts.flowering}
        value={shared("flowering")?.value ?? null}
        choices={choicesOf(floweringWords)}
        onPick={(flowering) => change({ flowering }, steps.changeFlowering(what))}
      />
      <ChoiceField
        label={texts.cover}
        value={shared("cover")?.value ?? null}
        choices={choicesOf(coverWords)}
        onPick={(cover) => change({ cover }, steps.changeCover(what))}
      />
      <ChoiceField
        label={texts.purityLevel}
        value={level?.value ?? null}
        choices={levelChoices(plan.level)}
        onPick={(next) =>
          change({ level: next === "plan" ? undefined : next }, steps.changeLevel(what))
        }
      />
    </div>
  );
}
