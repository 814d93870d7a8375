import { isCoarsePointer } from "../scene/handles.ts";
import { zoomAboutMiddle } from "../scene/view-store.ts";

const CORNER = { position: "absolute", right: 8, bottom: 8, display: "flex" } as const;

/** Zoom in and out for pointers without a wheel. */
export function ZoomButtons() {
  const side = isCoarsePointer() ? 44 : 28;
  const style = {
    display: "grid",
    placeItems: "center",
    width: side,
    height: side,
    minHeight: 0,
    padding: 0,
    background: "var(--sheet)",
  };
  return (
    <div className="zoom-buttons" role="group" aria-label="Zoom" style={CORNER}>
      <button
        type="button"
        style={style}
        aria-label="Zoom out"
        onClick={() => zoomAboutMiddle("out")}
      >
        <Sign strokes="M3 8h10" />
      </button>
      <button
        type="button"
        style={style}
        aria-label="Zoom in"
        onClick={() => zoomAboutMiddle("in")}
      >
        <Sign strokes="M3 8h10M8 3v10" />
      </button>
    </div>
  );
}

function Sign({ strokes }: { readonly strokes: string }) {
  return (
    <svg width="16" height="16" viewBox="0 0 16 16" aria-hidden="true" focusable="false">
      <path d={strokes} fill="none" stroke="currentColor" strokeWidth="1.5" />
    </svg>
  );
}
