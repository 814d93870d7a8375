import { zoomAboutMiddle } from "../scene/view-store.ts";
import * as texts from "./words.ts";

/** Zoom in and out for pointers without a wheel. */
export function ZoomButtons() {
  return (
    <div className="zoom-buttons" role="group" aria-label={texts.zoom}>
      <button type="button" aria-label={texts.zoomOut} onClick={() => zoomAboutMiddle("out")}>
        <Sign strokes="M3 8h10" />
      </button>
      <button type="button" aria-label={texts.zoomIn} onClick={() => zoomAboutMiddle("in")}>
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
