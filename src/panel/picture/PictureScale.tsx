import { type FormEvent, useEffect, useRef, useState } from "react";
import { scalePicture } from "../../core/edits/picture-edits.ts";
import { type Point, pointDistance } from "../../core/geometry/point.ts";
import { formatLength } from "../../core/model/length.ts";
import type { Picture } from "../../core/model/plan.ts";
import { setMarks, usePictureWork } from "../../store/window/picture-work.ts";
import { useWindowStore } from "../../store/window/window-store.ts";
import { Field, useFieldParts } from "../form/Field.tsx";
import { scaleOf } from "./picture-scale.ts";
import { commit, windowNow } from "../state/plan-actions.ts";
import { useShownPlan } from "../state/use-shown-plan.ts";
import { viewNow } from "../state/view-state.ts";
import * as texts from "./dialog-words.ts";

/** The scale by a length the grower knows: two marks on the sheet, and how far apart they are. */
export function PictureScale({ picture }: { readonly picture: Picture }) {
  const isMarking = useWindowStore((state) => state.tool === "mark-length");
  const marks = usePictureWork((state) => state.marks);
  const [from, to] = marks;
  const toggle = () => {
    viewNow().showSheet();
    windowNow().pickTool(isMarking ? "select" : "mark-length");
  };
  return (
    <fieldset className="field-group">
      <legend>{texts.scaleKnownLength}</legend>
      <p>{texts.markBothEndsSomething}</p>
      <p>
        <button type="button" aria-pressed={isMarking} onClick={toggle}>
          {isMarking ? texts.stopMarking : texts.markALength}
        </button>
      </p>
      {from && to && (
        <MarkedLength key={`${from.x} ${from.y} ${to.x} ${to.y}`} {...{ picture, from, to }} />
      )}
    </fieldset>
  );
}

interface MarkedLengthProps {
  readonly picture: Picture;
  readonly from: Point;
  readonly to: Point;
}

/** What would come of the typed length stands beside it before it is applied. */
function MarkedLength({ picture, from, to }: MarkedLengthProps) {
  const { units } = useShownPlan();
  const [text, setText] = useState("");
  const input = useRef<HTMLInputElement>(null);
  const read = scaleOf(text, units, picture, from, to);
  const parts = useFieldParts(
    read.ok ? read.words : texts.marksApart(formatLength(pointDistance(from, to), units)),
    read.ok || text.trim() === "" ? null : read.reason,
  );
  useEffect(() => {
    // On a phone the panel lies in a drawer that went down for the marking.
    if (viewNow().drawer !== "particulars") viewNow().toggleDrawer("particulars");
    input.current?.focus();
  }, []);
  const apply = (event: FormEvent) => {
    event.preventDefault();
    if (!read.ok) return;
    commit(scalePicture(picture, read.factor, from));
    setMarks([]);
    windowNow().pickTool("select");
    document.getElementById("picture-heading")?.focus();
  };
  return (
    <form onSubmit={apply}>
      <Field label={texts.lengthBetweenTheMarks} parts={parts}>
        <input
          {...parts.control}
          ref={input}
          type="text"
          autoComplete="off"
          spellCheck={false}
          value={text}
          onChange={(event) => setText(event.target.value)}
        />
      </Field>
      <p className="region-foot">
        <button type="submit" className="primary" disabled={!read.ok}>
          {texts.scaleThePicture}
        </button>
      </p>
    </form>
  );
}
