import { useState } from "react";
import type { PolygonShape } from "../../core/model/plan.ts";
import { LengthField } from "../form/LengthField.tsx";
import { type CornerEdit, addCornerAfter, moveCorner, removeCorner } from "./corner-edits.ts";
import * as texts from "./dialog-words.ts";
import "./particulars.css";

interface CornerFieldsProps {
  readonly outline: PolygonShape;
  readonly onApply: (outline: PolygonShape) => void;
}

/** An outline as the list of its corners. */
export function CornerFields({ outline, onApply }: CornerFieldsProps) {
  const [reason, setReason] = useState<string | null>(null);
  const applied = (edit: CornerEdit): string | null => {
    if (!edit.ok) return edit.reason;
    setReason(null);
    onApply(edit.outline);
    return null;
  };
  return (
    <details className="corners">
      <summary>{texts.corners(outline.corners.length)}</summary>
      {reason !== null && (
        <p className="field-reason" role="alert">
          {reason}
        </p>
      )}
      <ol className="plain-list">
        {outline.corners.map(([x, y], index) => (
          <li key={index} className="corner-row">
            <LengthField
              label={texts.cornerRight(index + 1)}
              value={x}
              isCoordinate
              onApply={(value) => applied(moveCorner(outline, index, value, y))}
            />
            <LengthField
              label={texts.cornerUp(index + 1)}
              value={y}
              isCoordinate
              onApply={(value) => applied(moveCorner(outline, index, x, value))}
            />
            <div className="corner-actions">
              <button
                type="button"
                className="act"
                aria-label={texts.addCornerAfterCorner(index + 1)}
                onClick={() => onApply(addCornerAfter(outline, index))}
              >
                {texts.addAfter}
              </button>
              <button
                type="button"
                className="act"
                aria-label={texts.deleteCorner(index + 1)}
                onClick={() => setReason(applied(removeCorner(outline, index)))}
              >
                {texts.deleteWord}
              </button>
            </div>
          </li>
        ))}
      </ol>
    </details>
  );
}
