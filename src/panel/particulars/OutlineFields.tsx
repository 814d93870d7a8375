import { moveObjects, setOutline, turnObjects } from "../../core/edits/move-objects.ts";
import {
  outlineArea,
  outlineOf,
  rectangleCorners,
  shapeCentre,
} from "../../core/geometry/outline.ts";
import { type Circle, circleOf, roundShape } from "../../core/geometry/round.ts";
import { outlinePerimeter } from "../../core/geometry/perimeter.ts";
import { formatArea, formatLength } from "../../core/model/length.ts";
import type { PolygonShape, RectangleShape, Shape } from "../../core/model/plan.ts";
import { CornerFields } from "./CornerFields.tsx";
import { LengthField } from "../form/LengthField.tsx";
import { PlaceFields, RectangleSizeFields } from "../form/RectangleFields.tsx";
import { useShownLayout, useShownPlan } from "../state/use-shown-plan.ts";
import { commit } from "../state/plan-actions.ts";
import * as texts from "./dialog-words.ts";
import * as steps from "./step-words.ts";

interface OutlineFieldsProps {
  readonly id: string;
  /** What undo calls it: `B02`, `B02-1`. */
  readonly name: string;
  readonly outline: Shape;
  /** Its length stands among other fields already: along its bed. */
  readonly isLengthElsewhere?: boolean;
}

/** Size, turn and place of any shape. A bed that is moved or turned takes its plantings along. */
export function OutlineFields(props: OutlineFieldsProps) {
  const { id, name, outline, isLengthElsewhere = false } = props;
  const layoutId = useShownLayout().id;
  const circle = circleOf(outline);
  return (
    <>
      {outline.shape === "rectangle" && (
        <RectangleFields
          id={id}
          name={name}
          outline={outline}
          isLengthElsewhere={isLengthElsewhere}
        />
      )}
      <MiddleFields id={id} name={name} outline={outline} />
      {outline.shape !== "point" && <AreaLine outline={outline} />}
      {outline.shape === "rectangle" && (
        <p className="field-hint">
          <button
            type="button"
            className="act"
            onClick={() => {
              const corners = rectangleCorners(outline).map(({ x, y }) => [x, y] as const);
              commit(
                setOutline(layoutId, id, { shape: "polygon", corners }, steps.makeOutline(name)),
              );
            }}
          >
            {texts.makeOutline}
          </button>
        </p>
      )}
      {circle && <RoundFields id={id} name={name} circle={circle} />}
      {outline.shape === "polygon" && circle === null && (
        <CornerFields
          outline={outline}
          onApply={(next: PolygonShape) => {
            commit(setOutline(layoutId, id, next, steps.reshape(name)));
          }}
        />
      )}
    </>
  );
}

interface RoundFieldsProps extends Pick<OutlineFieldsProps, "id" | "name"> {
  readonly circle: Circle;
}

/** What is round has a diameter rather than corners. */
function RoundFields({ id, name, circle }: RoundFieldsProps) {
  const layoutId = useShownLayout().id;
  return (
    <LengthField
      label={texts.diameter}
      value={circle.diameterM}
      isSize
      onApply={(diameterM) => {
        commit(setOutline(layoutId, id, roundShape({ ...circle, diameterM }), steps.resize(name)));
        return null;
      }}
    />
  );
}

interface RectangleFieldsProps extends OutlineFieldsProps {
  readonly outline: RectangleShape;
}

function RectangleFields({ id, name, outline, isLengthElsewhere }: RectangleFieldsProps) {
  const layoutId = useShownLayout().id;
  const set = ({ turnDeg, ...size }: Partial<RectangleShape>) => {
    if (turnDeg === undefined) {
      commit(setOutline(layoutId, id, { ...outline, ...size }, steps.resize(name)));
    } else {
      const centre = { x: outline.x, y: outline.y };
      commit(turnObjects(layoutId, [id], centre, turnDeg - outline.turnDeg, steps.turn(name)));
    }
    return null;
  };
  return <RectangleSizeFields sizes={outline} isLengthElsewhere={isLengthElsewhere} onSet={set} />;
}

function MiddleFields({ id, name, outline }: OutlineFieldsProps) {
  const layoutId = useShownLayout().id;
  const centre = shapeCentre(outline);
  const move = ({ x = centre.x, y = centre.y }: { readonly x?: number; readonly y?: number }) => {
    commit(moveObjects(layoutId, [id], x - centre.x, y - centre.y, steps.move(name)));
    return null;
  };
  return <PlaceFields place={centre} onSet={move} />;
}

function AreaLine({ outline }: { readonly outline: Shape }) {
  const unit = useShownPlan().units;
  const made = outlineOf(outline);
  return (
    <div className="field">
      <span className="field-name">{texts.ground}</span>
      <span className="field-value">
        {texts.areaAndEdge(
          formatArea(outlineArea(made), unit),
          formatLength(outlinePerimeter(made), unit),
        )}
      </span>
    </div>
  );
}
