import {
  type GroundForm,
  type TypedGround,
  freeLabel,
  typedSurrounding,
  usualGround,
} from "../../core/edits/ground.ts";
import { addSurrounding } from "../../core/edits/object-edits.ts";
import { joinBounds } from "../../core/geometry/bounds.ts";
import { outlineOf } from "../../core/geometry/outline.ts";
import type { Layout, Plan, Surrounding, SurroundingSort } from "../../core/model/plan.ts";
import { askSource } from "../../store/window/source-ask.ts";
import { useOutlineTarget } from "../../store/window/outline-target.ts";
import { ChoiceField } from "../form/ChoiceField.tsx";
import { Dialog } from "../form/Dialog.tsx";
import { LengthField } from "../form/LengthField.tsx";
import { PlaceFields, RectangleSizeFields } from "../form/RectangleFields.tsx";
import { TextField } from "../form/TextField.tsx";
import { nameProblem } from "../form/name-problem.ts";
import { useForm } from "../form/use-form.ts";
import { commit, windowNow } from "../state/plan-actions.ts";
import { choicesOf, surroundingWords } from "../state/plan-words.ts";
import { useShownLayout, useShownPlan } from "../state/use-shown-plan.ts";
import { viewNow } from "../state/view-state.ts";
import * as texts from "./words.ts";

const formWords: Readonly<Record<GroundForm, string>> = {
  line: texts.lineShape,
  rectangle: texts.rectangleShape,
  round: texts.roundShape,
  point: texts.placeShape,
};

/** A hedge, path, tree or whatever stands around the beds, by its numbers. */
export function GroundDialog({ onClose }: { readonly onClose: () => void }) {
  const plan = useShownPlan();
  const layout = useShownLayout();
  const form = useForm<TypedGround>({
    start: () => suggested(plan, layout),
    send: (typed) => {
      onClose();
      keep(typedSurrounding(plan, layout, typed), isNamed(typed, plan));
    },
  });
  const { draft: typed, set } = form;
  const draw = () => {
    onClose();
    viewNow().showSheet();
    // The particulars of what was selected before would seem to be those of what is drawn.
    windowNow().select([]);
    windowNow().pickTool("draw-outline");
    useOutlineTarget.setState({ target: typed.what });
  };
  return (
    <Dialog title={texts.addGround} onClose={onClose}>
      <form className="fields" noValidate onSubmit={form.onSubmit}>
        <ChoiceField
          label={texts.whatItIs}
          value={typed.what}
          choices={choicesOf(surroundingWords)}
          onPick={(what) => set(turnedInto(what, typed, plan))}
        />
        <TextField
          label={texts.name}
          value={typed.label}
          isWide
          onApply={(text) =>
            nameProblem(text, { isNeeded: texts.nameNeeded }) ?? set({ label: text.trim() })
          }
        />
        <ChoiceField
          label={texts.shape}
          value={typed.form}
          choices={choicesOf(formWords)}
          onPick={(next) => set({ form: next })}
        />
        <SizeFields typed={typed} onSet={set} />
        <PlaceFields place={typed} onSet={set} />
        <p className="dialog-actions">
          <button type="submit" className="primary">
            {texts.addIt}
          </button>
          <button type="button" onClick={draw}>
            {texts.drawInstead}
          </button>
        </p>
      </form>
    </Dialog>
  );
}

/** Adds the ground; of a pollen source it is asked first what flowers there. */
function keep(surrounding: Surrounding, isOwnName: boolean): void {
  if (surrounding.what === "pollen") {
    askSource(surrounding.outline, isOwnName ? surrounding.label : undefined);
    return;
  }
  commit(addSurrounding(surrounding));
  windowNow().select([surrounding.id]);
  windowNow().keepInView([surrounding.id]);
}

interface SizeFieldsProps {
  readonly typed: TypedGround;
  readonly onSet: (changes: Partial<TypedGround>) => null;
}

function SizeFields({ typed, onSet }: SizeFieldsProps) {
  const { form, widthM } = typed;
  if (form === "point") return null;
  if (form === "round") {
    return (
      <LengthField
        label={texts.diameter}
        value={widthM}
        isSize
        onApply={(metres) => onSet({ widthM: metres })}
        hint={typed.what === "tree" ? texts.canopyHint : undefined}
      />
    );
  }
  return <RectangleSizeFields sizes={typed} turnHint={texts.turnHint} onSet={onSet} />;
}

function suggested(plan: Plan, layout: Layout): TypedGround {
  return { ...usualOf("hedge", plan), lengthM: 10, turnDeg: 0, ...besideGarden(plan, layout) };
}

function usualOf(what: SurroundingSort, plan: Plan) {
  const label = freeLabel(plan, capital(surroundingWords[what]));
  return { what, label, ...usualGround[what] };
}

/**
 * Left of the garden, so that new ground lies on none of its beds; at the origin on an empty sheet.
 * What lies far around it, such as a neighbour's plot, does not draw it away.
 */
function besideGarden({ site, surroundings }: Plan, layout: Layout) {
  const own = [...layout.beds, ...(site.outline ? [{ outline: site.outline }] : [])];
  const items = own.length > 0 ? own : surroundings;
  const drawn = joinBounds(items.map(({ outline }) => outlineOf(outline).bounds));
  if (!drawn) return { x: 0, y: 0 };
  const { minX, minY, maxY } = drawn;
  return { x: Math.floor(minX) - 1, y: Math.round((minY + maxY) / 2) };
}

/** Whether its name was typed, and is not the one it gets by itself. */
function isNamed({ what, label }: TypedGround, plan: Plan): boolean {
  return label !== usualOf(what, plan).label;
}

/** Something else takes the usual size and shape of its kind; a name that was typed stays. */
function turnedInto(what: SurroundingSort, typed: TypedGround, plan: Plan) {
  const usual = usualOf(what, plan);
  return isNamed(typed, plan) ? { ...usual, label: typed.label } : usual;
}

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
