import { setSiteOutline } from "../../core/edits/ground.ts";
import { growBounds, joinBounds } from "../../core/geometry/bounds.ts";
import { outlineArea, outlineOf } from "../../core/geometry/outline.ts";
import { formatArea } from "../../core/model/length.ts";
import type { Layout, Plan, PolygonShape } from "../../core/model/plan.ts";
import { CornerFields } from "../particulars/CornerFields.tsx";
import { cornerList } from "../outlines/commands.ts";
import { commit } from "../state/plan-actions.ts";
import { useShownLayout } from "../state/use-shown-plan.ts";
import { plotWords } from "./plot-words.ts";
import { drawEdge } from "./site-edge.ts";
import * as texts from "./words.ts";

/** Left free around what is drawn where the edge is laid about it, metres. No source; our choice. */
const MARGIN_M = 2;

/** The edge of the site: corner by corner, or laid around what is drawn. */
export function SiteOutline({ plan }: { readonly plan: Plan }) {
  const layout = useShownLayout();
  const { outline } = plan.site;
  const around = aroundDrawn(plan, layout);
  return (
    <>
      <div className="field">
        <span className="field-name">{texts.edge}</span>
        <span className="field-value">
          {outline ? formatArea(outlineArea(outlineOf(outline)), plan.units) : texts.notDrawn}{" "}
          <button type="button" className="act" onClick={drawEdge}>
            {texts.drawIt}
          </button>{" "}
          <button type="button" className="act" onClick={() => cornerList.open({ target: "site" })}>
            {plotWords.type}
          </button>{" "}
          {around && (
            <button
              type="button"
              className="act"
              onClick={() => commit(setSiteOutline(around, texts.drawEdge))}
            >
              {texts.addAroundDrawn}
            </button>
          )}{" "}
          {outline && (
            <button
              type="button"
              className="act"
              onClick={() => commit(setSiteOutline(undefined, texts.deleteEdge))}
            >
              {texts.deleteWord}
            </button>
          )}
        </span>
      </div>
      {outline && (
        <CornerFields
          outline={outline}
          onApply={(next) => commit(setSiteOutline(next, texts.reshapeSite))}
        />
      )}
    </>
  );
}

/** A rectangle around beds, plantings and surroundings, in whole metres; null when nothing is drawn. */
function aroundDrawn(plan: Plan, layout: Layout): PolygonShape | null {
  const items = [...layout.beds, ...layout.plantings, ...plan.surroundings];
  const drawn = joinBounds(items.map(({ outline }) => outlineOf(outline).bounds));
  if (!drawn) return null;
  const { minX, minY, maxX, maxY } = growBounds(drawn, MARGIN_M);
  const [left, near] = [Math.floor(minX), Math.floor(minY)];
  const [right, far] = [Math.ceil(maxX), Math.ceil(maxY)];
  return {
    shape: "polygon",
    corners: [
      [left, near],
      [right, near],
      [right, far],
      [left, far],
    ],
  };
}
